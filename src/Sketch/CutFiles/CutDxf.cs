using Sketch.Shapes;

namespace Sketch.CutFiles;

/// <summary>
/// A sheet as DXF of release 2000 (AC1015) in millimetres, x right and y up from the lower left corner of the sheet: a layer for each
/// kind of line, and one polyline of straight lines and arcs for each line, in the order of work. Curves are true to
/// <see cref="Tolerance"/>.
/// </summary>
/// <remarks>
/// The format is that of the published "DXF Reference" for release 2000: sections HEADER, CLASSES, TABLES, BLOCKS, ENTITIES and OBJECTS, of
/// which readers ask that the tables have the entries written here, and that each object has a handle and an owner.
/// </remarks>
public static class CutDxf
{
    /// <summary>The comment that marks the file as made by Sketch.</summary>
    public const string Mark = "Drawn by Sketch";

    /// <summary>How far the arcs of a file may lie from the curves that they replace, in millimetres.</summary>
    public const double Tolerance = 0.01;

    private const int Millimetres = 4;
    private const int Thinnest = 0;

    /// <summary>The sheet as the text of a DXF file.</summary>
    public static string Of(CutSheet sheet)
    {
        var dxf = new DxfText();
        var (model, paper) = (dxf.NewHandle(), dxf.NewHandle());
        dxf.Add(999, Mark);
        Header(dxf, sheet);
        Section(dxf, "CLASSES");
        dxf.Add(0, "ENDSEC");
        Section(dxf, "TABLES");
        Tables(dxf, sheet, model, paper);
        dxf.Add(0, "ENDSEC");
        Section(dxf, "BLOCKS");
        Block(dxf, "*Model_Space", model, inPaperSpace: false);
        Block(dxf, "*Paper_Space", paper, inPaperSpace: true);
        dxf.Add(0, "ENDSEC");
        Section(dxf, "ENTITIES");
        var upwards = new Affine(1, 0, 0, -1, 0, sheet.Page.Height.Millimetres);
        foreach (var path in sheet.Paths)
        {
            Polyline(dxf, path.Transform(upwards), model);
        }

        dxf.Add(0, "ENDSEC");
        Section(dxf, "OBJECTS");
        var (root, groups) = (dxf.NewHandle(), dxf.NewHandle());
        Dictionary(dxf, root, "0").Add(3, "ACAD_GROUP").Add(350, groups);
        Dictionary(dxf, groups, root);
        dxf.Add(0, "ENDSEC").Add(0, "EOF");
        return dxf.ToString();
    }

    private static void Section(DxfText dxf, string name) => dxf.Add(0, "SECTION").Add(2, name);

    private static void Header(DxfText dxf, CutSheet sheet)
    {
        Point far = new(sheet.Page.Width.Millimetres, sheet.Page.Height.Millimetres);
        Section(dxf, "HEADER");
        dxf.Add(9, "$ACADVER").Add(1, "AC1015").Add(9, "$DWGCODEPAGE").Add(3, "ANSI_1252")

            // Any handle above all that are used.
            .Add(9, "$HANDSEED").Add(5, "FFFFFF")
            .Add(9, "$INSUNITS").Add(70, Millimetres).Add(9, "$MEASUREMENT").Add(70, 1)
            .Add(9, "$EXTMIN").Add(10, new Point(0, 0)).Add(30, 0.0).Add(9, "$EXTMAX").Add(10, far).Add(30, 0.0)
            .Add(9, "$LIMMIN").Add(10, new Point(0, 0)).Add(9, "$LIMMAX").Add(10, far)
            .Add(0, "ENDSEC");
    }

    private static void Tables(DxfText dxf, CutSheet sheet, string model, string paper)
    {
        Point centre = new(sheet.Page.Width.Millimetres / 2, sheet.Page.Height.Millimetres / 2);
        Table(dxf, "VPORT", 1, table =>
            Record(dxf, "VPORT", table, "AcDbViewportTableRecord", "*Active")
                .Add(10, new Point(0, 0)).Add(11, new Point(1, 1)).Add(12, centre).Add(40, centre.Y * 2).Add(41, centre.X / centre.Y));
        Table(dxf, "LTYPE", 3, table =>
        {
            foreach (var name in (ReadOnlySpan<string>)["ByBlock", "ByLayer", "Continuous"])
            {
                Record(dxf, "LTYPE", table, "AcDbLinetypeTableRecord", name).Add(3, "").Add(72, 65).Add(73, 0).Add(40, 0.0);
            }
        });
        Table(dxf, "LAYER", CutLayer.All.Length + 1, table =>
        {
            foreach (var (name, colour) in CutLayer.All.Select(l => (l.Name, l.Number)).Prepend(("0", CutLayer.Cut.Number)))
            {
                Record(dxf, "LAYER", table, "AcDbLayerTableRecord", name).Add(62, colour).Add(6, "Continuous").Add(370, Thinnest);
            }
        });
        Table(dxf, "STYLE", 1, table =>
            Record(dxf, "STYLE", table, "AcDbTextStyleTableRecord", "Standard").Add(40, 0.0).Add(41, 1.0).Add(3, "txt").Add(4, ""));
        Table(dxf, "VIEW", 0, _ => { });
        Table(dxf, "UCS", 0, _ => { });
        Table(dxf, "APPID", 1, table => Record(dxf, "APPID", table, "AcDbRegAppTableRecord", "ACAD"));
        Table(dxf, "DIMSTYLE", 1, table =>
        {
            // The only record whose handle has another number, since 5 once was a name of its own.
            dxf.Add(100, "AcDbDimStyleTable").Add(0, "DIMSTYLE").Add(105, dxf.NewHandle()).Add(330, table)
                .Add(100, "AcDbSymbolTableRecord").Add(100, "AcDbDimStyleTableRecord").Add(2, "Standard").Add(70, 0);
        });
        Table(dxf, "BLOCK_RECORD", 2, table =>
        {
            Record(dxf, "BLOCK_RECORD", table, "AcDbBlockTableRecord", "*Model_Space", model);
            Record(dxf, "BLOCK_RECORD", table, "AcDbBlockTableRecord", "*Paper_Space", paper);
        });
    }

    private static void Table(DxfText dxf, string name, int records, Action<string> addRecords)
    {
        var handle = dxf.NewHandle();
        dxf.Add(0, "TABLE").Add(2, name).Add(5, handle).Add(330, "0").Add(100, "AcDbSymbolTable").Add(70, records);
        addRecords(handle);
        dxf.Add(0, "ENDTAB");
    }

    private static DxfText Record(DxfText dxf, string type, string table, string kind, string name, string? handle = null)
    {
        dxf.Add(0, type).Add(5, handle ?? dxf.NewHandle()).Add(330, table).Add(100, "AcDbSymbolTableRecord").Add(100, kind).Add(2, name);
        return type == "BLOCK_RECORD" ? dxf : dxf.Add(70, 0);
    }

    private static void Block(DxfText dxf, string name, string record, bool inPaperSpace)
    {
        Entity(dxf, "BLOCK", record, "0", inPaperSpace).Add(100, "AcDbBlockBegin").Add(2, name).Add(70, 0).Add(10, new Point(0, 0))
            .Add(30, 0.0).Add(3, name).Add(1, "");
        Entity(dxf, "ENDBLK", record, "0", inPaperSpace).Add(100, "AcDbBlockEnd");
    }

    private static DxfText Entity(DxfText dxf, string type, string owner, string layer, bool inPaperSpace = false)
    {
        dxf.Add(0, type).Add(5, dxf.NewHandle()).Add(330, owner).Add(100, "AcDbEntity");
        return (inPaperSpace ? dxf.Add(67, 1) : dxf).Add(8, layer);
    }

    private static void Polyline(DxfText dxf, CutPath path, string model)
    {
        var corners = ArcFit.Of(path.Line, path.IsClosed, Tolerance);
        Entity(dxf, "LWPOLYLINE", model, path.Layer.Name).Add(100, "AcDbPolyline").Add(90, corners.Count).Add(70, path.IsClosed ? 1 : 0)
            .Add(43, 0.0);
        foreach (var (at, bulge) in corners)
        {
            dxf.Add(10, at);
            if (bulge != 0)
            {
                dxf.Add(42, bulge);
            }
        }
    }

    private static DxfText Dictionary(DxfText dxf, string handle, string owner) =>
        dxf.Add(0, "DICTIONARY").Add(5, handle).Add(330, owner).Add(100, "AcDbDictionary").Add(281, 1);
}
