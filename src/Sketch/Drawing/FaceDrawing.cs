using Sketch.Panels;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Drawing;

/// <summary>Draws faces one over the other: the base or envelope, then the pieces on it.</summary>
internal sealed class FaceDrawing(
    LaidOutCard card, SvgWriter svg, Definitions definitions, SvgIds ids, double dotsPerInch, List<DrawnPiece> drawn)
{
    /// <summary>Width of the shade along a fold in millimetres.</summary>
    private const double FoldShade = 2.4;

    /// <summary>Width of the line between the doors of a gate in millimetres.</summary>
    private const double DoorLine = 0.35;

    /// <summary>Height at which a closed front is drawn above the inside, in millimetres.</summary>
    private const double FrontLift = 1.2;

    /// <summary>Characters after which further pieces show no figures, so that a picture stays small enough to open.</summary>
    private const int FigureLimit = 400_000;

    /// <summary>
    /// Characters of path data of raised pieces from which a face is crowded: each of their soft shadows is painted many times over.
    /// </summary>
    private const int CrowdedFrom = 100_000;

    /// <summary>Characters of path data of all pieces from which a face is packed.</summary>
    private const int PackedFrom = 150_000;

    /// <summary>
    /// What a piece counts for in addition to its path data: some 200 plain pieces on foam make a face crowded, some 300 of any kind
    /// packed.
    /// </summary>
    private const int CountOfPiece = 500;

    private readonly PieceDrawing _drawing = new(definitions, ids, dotsPerInch);

    /// <summary>
    /// The envelope that a side belongs to: as the file describes that side, else the other; null if it describes neither.
    /// </summary>
    internal static Face? EnvelopeOf(LaidOutCard card, FaceKind side) =>
        card.Find(side) ?? card.Find(side == FaceKind.Envelope ? FaceKind.EnvelopeBack : FaceKind.Envelope);

    /// <summary>Draws a face and all that is on it.</summary>
    internal void Draw(FaceKind face, Size size)
    {
        Ground(face, size);
        Pieces(face);
    }

    /// <summary>Draws the base or envelope alone.</summary>
    internal void Ground(FaceKind face, Size size)
    {
        if (face is FaceKind.Envelope or FaceKind.EnvelopeBack)
        {
            Envelope(face, EnvelopeOf(card, face)!);
        }
        else
        {
            Base(face, size);
        }
    }

    private void Base(FaceKind face, Size size)
    {
        var outline = BaseOutline(face, size);
        var isOverInside = face == FaceKind.Front && outline.Contours.Length > 1;
        var id = ids.Claim(Face.NameOf(face) + "-base");
        svg.Open("g").Attribute("id", id)
            .Title(Reported(id, $"base, {PieceTitle.Size(size, card.Units)} closed, {PieceTitle.Paint(card.Base.Paint)}",
                card.Base.Location));
        _drawing.Draw(svg, Sheet(outline, card.Base.Paint, size, isOverInside ? FrontLift : 0), id);
        var (w, h) = (size.Width.Millimetres, size.Height.Millimetres);
        foreach (var side in card.Base.FoldsOf(face))
        {
            var isUpright = side is Edge.Left or Edge.Right;
            svg.Open("rect")
                .Attribute("x", side == Edge.Right ? w - FoldShade : 0).Attribute("y", side == Edge.Bottom ? h - FoldShade : 0)
                .Attribute("width", isUpright ? FoldShade : w).Attribute("height", isUpright ? h : FoldShade)
                .Attribute("fill", definitions.Fold(side)).Close();
        }

        if (face == FaceKind.Front && card.Base.Fold == Fold.Gate)
        {
            Doors(w, h);
        }

        svg.Close();
    }

    /// <summary>The line where the two doors of the front meet.</summary>
    private void Doors(double width, double height) => svg.Open("line").Attribute("class", "doors")
        .Attribute("x1", width / 2).Attribute("y1", 0.0).Attribute("x2", width / 2).Attribute("y2", height)
        .Attribute("stroke", Shadow.Colour.Hex).Attribute("stroke-opacity", 0.5).Attribute("stroke-width", DoorLine).Close();

    private Outline BaseOutline(FaceKind face, Size size) => face switch
    {
        FaceKind.Front => card.Base.Outline,
        FaceKind.InsideLeft when card.Base.Fold == Fold.Left => card.Base.Outline.Transform(new(-1, 0, 0, 1, size.Width.Millimetres, 0)),
        FaceKind.InsideTop => card.Base.Outline.Transform(new(1, 0, 0, -1, 0, size.Height.Millimetres)),
        _ => Outline.Rectangle(new(Length.Zero, Length.Zero, size.Width, size.Height)),
    };

    private void Envelope(FaceKind side, Face envelope)
    {
        var paint = envelope.Paint ?? new Paint(null, null, PaperSide.Front, PaperLook.Plain(new(255, 255, 255)));
        var id = ids.Claim(Face.NameOf(side) + "-base");
        svg.Open("g").Attribute("id", id)
            .Title(Reported(id, $"envelope, {PieceTitle.Size(envelope.Size, card.Units)}, {PieceTitle.Paint(paint)}", envelope.Location));
        var whole = Outline.Rectangle(new(Length.Zero, Length.Zero, envelope.Size.Width, envelope.Size.Height));
        _drawing.Draw(svg, Sheet(whole, paint, envelope.Size, 0), id);
        svg.Close();
        if (side == FaceKind.EnvelopeBack)
        {
            var flaps = new EnvelopeFlaps(envelope.Size, envelope.Flap);
            Flap("envelope-back-lower-flap", "lower flap", flaps.Lower, 0.3);
            Flap("envelope-back-flap", "flap", flaps.Upper, 0.5);
        }

        void Flap(string name, string title, Outline outline, double lift)
        {
            var flapId = ids.Claim(name);
            var box = outline.Bounds;
            var origin = Affine.Shift(box.Left, box.Top);
            svg.Open("g").Attribute("id", flapId).Transform(origin).Title(Reported(flapId, title, envelope.Location));
            _drawing.Draw(svg, Sheet(outline.Transform(Affine.Shift(-box.Left, -box.Top)), paint, box.ToRect().Size, lift), flapId);
            svg.Close();
        }
    }

    /// <summary>A base or envelope by itself.</summary>
    internal static PieceDesign Sheet(Outline outline, Paint paint, Size size, double lift) => new(
        Appearance.Paper, paint.Look, outline.ToSvgPath(), size.Width.Millimetres, size.Height.Millimetres,
            Seeded.SeedOf(PieceTitle.Paint(paint), size))
    {
        Lift = lift,
    };

    /// <summary>Draws what lies on a face.</summary>
    internal void Pieces(FaceKind face)
    {
        var seen = new List<(Piece Piece, PieceDesign Design)>();
        // Equal pieces share one design: its path data can be long.
        var alike = new Dictionary<PieceDesign, PieceDesign>();
        var times = new Dictionary<PieceDesign, int>();
        var copies = new Dictionary<PieceDesign, int>();
        foreach (var piece in card.On(face))
        {
            if (PieceDesign.Of(piece) is not { } design)
            {
                continue;
            }

            if (design.IsScattered)
            {
                var copy = copies.GetValueOrDefault(design);
                copies[design] = copy + 1;
                design = design.CutFrom(copy % PieceDesign.Cuts);
            }

            if (!alike.TryAdd(design, design))
            {
                design = alike[design];
            }

            times[design] = times.GetValueOrDefault(design) + 1;
            seen.Add((piece, design));
        }

        _drawing.Crowding = CrowdingOf(seen.ConvertAll(s => s.Design));
        var shared = new Dictionary<PieceDesign, string>();
        foreach (var (piece, design) in seen)
        {
            var id = ids.Claim(piece.Path.ToString());
            var place = Affine.Shift(piece.Box.Left.Millimetres, piece.Box.Top.Millimetres).Then(piece.Turning);
            var title = Reported(id, PieceTitle.Of(piece, card.Units), piece.Location, piece.Path);
            svg.Open("g").Attribute("id", id);
            if (times[design] == 1)
            {
                svg.Transform(place).Title(title);
                _drawing.Draw(svg, Affordable(design), id);
            }
            else
            {
                svg.Title(title);
                svg.Open("use").Reference("#" + SharedId(design, id)).Transform(place).Close();
            }

            svg.Close();
        }

        string SharedId(PieceDesign design, string first)
        {
            if (!shared.TryGetValue(design, out var id))
            {
                id = shared[design] = ids.Claim(first + "-and-alike");
                // Gradients that the drawing uses precede it, so it is written separately and inserted when finished.
                var apart = new SvgWriter(indent: 2);
                apart.Open("g").Attribute("id", id);
                _drawing.Draw(apart, Affordable(design), id);
                apart.Close();
                definitions.Svg.Insert(apart);
            }

            return id;
        }
    }

    private static Crowding CrowdingOf(List<PieceDesign> designs)
    {
        return PathsOf(designs) >= PackedFrom ? Crowding.Packed
            : PathsOf(designs.Where(d => d.Lift > Shadow.FlatHeight)) >= CrowdedFrom ? Crowding.Crowded
            : Crowding.None;

        static long PathsOf(IEnumerable<PieceDesign> designs) => designs.Sum(d => (long)d.Cut.Length + CountOfPiece);
    }

    /// <summary>Records what a group shows and returns its title.</summary>
    private string Reported(string id, string title, Location location, PiecePath? path = null)
    {
        drawn.Add(new(id, title, location) { Path = path });
        return title;
    }

    private PieceDesign Affordable(PieceDesign design) =>
        svg.Length + definitions.Svg.Length < FigureLimit ? design : design with { Look = PaperLook.Plain(design.Look.Ground) };
}
