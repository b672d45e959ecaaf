using System.Globalization;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Variants;

/// <summary>
/// Small pictures of variants in rows, each with its number and papers beneath. It is written strip by strip, a heading and then the rows,
/// so that a long sheet is never held as a whole. Lengths in it are millimetres; the sheet is as wide as a page (8 1/2 in, or 210 mm for a
/// metric card).
/// </summary>
public sealed class ContactSheet
{
    /// <summary>The margin at each side, in millimetres.</summary>
    public const double Margin = 10;

    private const double Gap = 6;
    private const double HeadingHeight = 17;
    private const double CaptionLine = 3;
    private const string Ink = "#33302c";
    private const string Quiet = "#6b665f";

    private static readonly Lettering TitleLettering = new(3.2, Ink);
    private static readonly Lettering CountLettering = new(1.55, Quiet);
    private static readonly Lettering NumberLettering = new(2.1, Ink);
    private static readonly Lettering CaptionLettering = new(1.55, Ink);

    private readonly LaidOutCard _card;
    private readonly RoleFilling _filling;
    private readonly IWorld _world;
    private readonly double _scale;
    private readonly double _tileWidth;
    private readonly double _pictureHeight;

    /// <summary>Lays out a sheet.</summary>
    /// <param name="card">The card.</param>
    /// <param name="face">The face to show, which the card must have.</param>
    /// <param name="filling">The stash, and the papers of the roles that stay fixed.</param>
    /// <param name="variants">The variants, at least one.</param>
    /// <param name="world">Shapes the words.</param>
    public ContactSheet(LaidOutCard card, FaceKind face, RoleFilling filling, VariantList variants, IWorld world)
    {
        (_card, Face, _filling, Variants, _world) = (card, face, filling, variants, world);
        var size = CardDrawing.SizeOf(card, face);
        var (width, height) = (size.Width.Millimetres, size.Height.Millimetres);
        Columns = width > height ? 3 : 4;
        Width = card.Units == UnitSystem.Inches ? 215.9 : 210;
        _tileWidth = (Width - 2 * Margin - (Columns - 1) * Gap) / Columns;
        _scale = Math.Min(_tileWidth / width, _tileWidth * 1.45 / height);
        _pictureHeight = height * _scale;
        RowHeight = _pictureHeight + 5.5 + CaptionLine * variants.Best.Max(v => v.Choices.Length) + Gap;
    }

    /// <summary>The face that it shows.</summary>
    public FaceKind Face { get; }

    /// <summary>The variants that it shows, in their order.</summary>
    public VariantList Variants { get; }

    /// <summary>Variants in a row.</summary>
    public int Columns { get; }

    /// <summary>Width of the sheet in millimetres.</summary>
    public double Width { get; }

    /// <summary>Height of a row in millimetres.</summary>
    public double RowHeight { get; }

    /// <summary>How many rows there are.</summary>
    public int Rows => (Variants.Best.Length + Columns - 1) / Columns;

    /// <summary>Height of the heading strip in millimetres.</summary>
    public static double Heading => HeadingHeight;

    /// <summary>Height of the whole sheet in millimetres.</summary>
    public double Height => Heading + Rows * RowHeight;

    /// <summary>The sheet's title.</summary>
    public string Title => $"{_card.Title} in papers of {_filling.Stash!.Title}";

    /// <summary>How many variants there are, and why not more.</summary>
    public string Count => string.Create(CultureInfo.InvariantCulture,
        $"{Variants.Best.Length} of {Counted.Of(Variants.Found, "way")} to fill its roles, the most different "
            + $"first.{(Variants.Lacking > 0 ? $" {Variants.Lacking} more lack paper for even one card." : "")}");

    /// <summary>The start of a drawing of strips, to be closed by <see cref="End"/>.</summary>
    /// <param name="height">Its height in millimetres.</param>
    public string Start(double height)
    {
        var size = new Size(Length.NearestMillimetres(Width), Length.NearestMillimetres(height));
        var paper = new SvgWriter(indent: 1).Open("rect").Attribute("width", Width).Attribute("height", height).Attribute("fill", "#ffffff")
            .Close();
        return SvgWriter.Sheet(size, _card.Units == UnitSystem.Inches, Title).Insert(paper).ToString().TrimEnd('\n');
    }

    /// <summary>The end of a drawing.</summary>
    public static string End => "\n</svg>\n";

    /// <summary>The heading: title and counts.</summary>
    public string HeadingStrip()
    {
        var svg = new SvgWriter(indent: 1).Open("g").Attribute("id", "heading").Title($"{Title}. {Count}");
        Words(svg, Title, new(Margin, 9), TitleLettering, Width - 2 * Margin);
        Words(svg, Count, new(Margin, 14), CountLettering, Width - 2 * Margin);
        return Text(svg.Close());
    }

    /// <summary>A row of variants.</summary>
    /// <param name="row">From 0.</param>
    /// <param name="top">Where it begins, in millimetres from the top of the drawing.</param>
    /// <param name="dotsPerInch">The most pixels per inch of the sheet for pictured papers.</param>
    public string RowStrip(int row, double top, double dotsPerInch)
    {
        var svg = new SvgWriter(indent: 1);
        for (var i = row * Columns; i < Math.Min((row + 1) * Columns, Variants.Best.Length); i++)
        {
            Tile(svg, i, Margin + (i % Columns) * (_tileWidth + Gap), top, dotsPerInch);
        }

        return Text(svg);
    }

    /// <summary>The card in the papers of a variant.</summary>
    public LaidOutCard Painted(PaperVariant variant) => Repainting.With(_card, variant.Over(_filling));

    private static string Text(SvgWriter svg) => svg.ToString().TrimEnd('\n');

    private void Tile(SvgWriter svg, int index, double left, double top, double dotsPerInch)
    {
        var variant = Variants.Best[index];
        var name = string.Create(CultureInfo.InvariantCulture, $"v{index + 1}");
        var card = Painted(variant);
        var size = CardDrawing.SizeOf(card, Face);
        var (width, height) = (size.Width.Millimetres, size.Height.Millimetres);
        svg.Open("g").Attribute("id", name).Transform(Affine.Shift(left, top))
            .Title(string.Create(CultureInfo.InvariantCulture, $"{index + 1}: {variant.Id}"));
        svg.Open("clipPath").Attribute("id", name + "-edge").Open("rect").Attribute("width", width).Attribute("height", height).Close()
            .Close();
        svg.Open("g").Transform(new(_scale, 0, 0, _scale, 0, 0)).Open("g").Attribute("clip-path", $"url(#{name}-edge)")
            .Insert(CardDrawing.Part(card, Face, dotsPerInch * _scale, new(name + "-"), [])).Close().Close();
        svg.Open("rect").Attribute("width", width * _scale).Attribute("height", height * _scale)
            .Attribute("fill", "none").Attribute("stroke", "#cfcac2").Attribute("stroke-width", 0.15).Close();
        var line = _pictureHeight + 3.8;
        var number = (index + 1).ToString(CultureInfo.InvariantCulture);
        Words(svg, number, new(0, line), NumberLettering, _tileWidth);
        foreach (var choice in variant.Choices)
        {
            Words(svg, choice.ToString(), new(7, line), CaptionLettering, _tileWidth - 7);
            line += CaptionLine;
        }

        svg.Close();
    }

    /// <summary>Words whose baseline begins at a point, shrunk if they are wider than the room.</summary>
    private void Words(SvgWriter svg, string words, Point start, Lettering lettering, double room)
    {
        if (_world.ShapeWords(words, null, "").ValueOrDefault is { Outline.IsEmpty: false } shaped)
        {
            var scale = Math.Min(lettering.CapHeight, room / Math.Max(shaped.Outline.Bounds.Right, 1e-6));
            svg.Open("path").Attribute("fill", lettering.Colour)
                .Attribute("d", shaped.Outline.Transform(new(scale, 0, 0, scale, start.X, start.Y)).ToSvgPath()).Close();
        }
    }
    /// <summary>How words are lettered.</summary>
    /// <param name="CapHeight">Height of their capitals in millimetres.</param>
    /// <param name="Colour">Their colour.</param>
    private readonly record struct Lettering(double CapHeight, string Colour);
}
