using System.Collections.Immutable;
using System.Globalization;
using Sketch.Drawing;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.World;

namespace Sketch.Output.Handbook;

/// <summary>
/// A face as one jots it on squared paper: the outlines of its pieces in pencil, each with the number of the line that describes it.
/// </summary>
/// <param name="card">The card.</param>
/// <param name="linesAbove">How many lines of the file come before line 1.</param>
/// <param name="world">Sets the numbers.</param>
internal sealed class RoughLayout(LaidOutCard card, int linesAbove, IWorld world)
{
    private const double Square = 25.4 / 4;
    private const double Pencil = 0.5;
    private const double Radius = 4.3;
    private const double Free = 0.6;
    private const int OfCurve = 8;
    private const double CapHeight = 4;
    private const string Paper = "#fffdf6";
    private const string Ruling = "#d5e3ea";
    private const string Lead = "#4a4845";
    private const string Blue = "#1f5c8b";

    private readonly List<Bounds> _taken = [];

    /// <summary>Draws a face.</summary>
    /// <param name="face">The face.</param>
    public string Draw(FaceKind face)
    {
        var size = CardDrawing.SizeOf(card, face);
        var edge = new Bounds(0, 0, size.Width.Millimetres, size.Height.Millimetres);
        var sheet = edge.Grow(Square);
        var svg = SvgWriter.Sheet(sheet.ToRect().Size, inInches: false,
            $"{card.Title}, as it might be jotted down: {Face.NameOf(face).Replace('-', ' ')}");
        svg.Open("g").Transform(Affine.Shift(Square, Square));
        svg.Open("path").Attribute("fill", Paper)
            .Attribute("d", new PathText().Rectangle(sheet.Left, sheet.Top, sheet.Right, sheet.Bottom).ToString()).Close();
        Squares(svg, sheet);
        var pieces = card.On(face).Where(p => !p.TurnedOutline.Contours.IsEmpty).ToImmutableArray();
        foreach (var piece in pieces)
        {
            Outlines(svg, piece);
        }

        svg.Open("path").Attribute("fill", "none").Attribute("stroke", Lead).Attribute("stroke-width", 2 * Pencil)
            .Attribute("d", new PathText().Rectangle(0, 0, edge.Right, edge.Bottom).ToString()).Close();
        foreach (var line in pieces.GroupBy(p => p.Location).OrderBy(l => l.First().Kind.Traits.IsLayer))
        {
            Number(svg, line.First(), pieces, sheet);
        }

        return svg.Close().Close().ToString();
    }

    private static void Squares(SvgWriter svg, Bounds sheet)
    {
        var ruling = new PathText();
        for (var x = sheet.Left; x < sheet.Right; x += Square)
        {
            ruling.Move(x, sheet.Top).LineTo(x, sheet.Bottom);
        }

        for (var y = sheet.Top; y < sheet.Bottom; y += Square)
        {
            ruling.Move(sheet.Left, y).LineTo(sheet.Right, y);
        }

        svg.Open("path").Attribute("fill", "none").Attribute("stroke", Ruling).Attribute("stroke-width", 0.2)
            .Attribute("d", ruling.ToString()).Close();
    }

    private static void Outlines(SvgWriter svg, Piece piece)
    {
        var isInk = piece.Matter == PieceMatter.Ink;
        svg.Open("path").Attribute("fill", isInk ? Lead : Paper).Attribute("fill-opacity", isInk ? 1 : 0.85);
        if (!isInk)
        {
            svg.Attribute("stroke", Lead).Attribute("stroke-width", Pencil).Attribute("stroke-linejoin", "round");
            if (piece.Matter == PieceMatter.Hole)
            {
                svg.Attribute("stroke-dasharray", "1.6 1.2");
            }
        }

        svg.Attribute("fill-rule", "evenodd").Attribute("d", piece.TurnedOutline.ToSvgPath(2)).Close();
        if (!isInk && piece.Words is { Ink.IsEmpty: false } words)
        {
            svg.Open("path").Attribute("fill", Lead).Attribute("d", words.Ink.Transform(piece.Turning).ToSvgPath(2)).Close();
        }
    }

    private void Number(SvgWriter svg, Piece piece, ImmutableArray<Piece> pieces, Bounds sheet)
    {
        var place = Places(piece, pieces).FirstOrDefault(p => sheet.Covers(Around(p)) && !_taken.Any(t => t.Overlaps(Around(p))),
            piece.TurnedOutline.Bounds.Centre);
        _taken.Add(Around(place));
        var number = (piece.Location.Start.Line - linesAbove).ToString(CultureInfo.InvariantCulture);
        var run = world.SetWords(number);
        svg.Open("circle").Attribute("cx", place.X).Attribute("cy", place.Y).Attribute("r", Radius).Attribute("fill", "#ffffff")
            .Attribute("stroke", Blue).Attribute("stroke-width", 0.4).Close();
        svg.Words(new(number, Blue, [new(run, place.X - (run.Width * CapHeight / 2), place.Y + (CapHeight / 2), CapHeight)]));
    }

    private static Bounds Around(Point place) => new(place.X - Radius, place.Y - Radius, place.X + Radius, place.Y + Radius);

    /// <summary>Where the number of a piece may stand, the best place first: on what is seen of it, on its edge, beside it.</summary>
    private static IEnumerable<Point> Places(Piece piece, ImmutableArray<Piece> pieces)
    {
        var box = piece.TurnedOutline.Bounds;
        var over = pieces[(pieces.IndexOf(piece) + 1)..].Select(p => p.TurnedOutline.Bounds)
            .Concat(piece.Words is { Ink.IsEmpty: false } w ? [w.Ink.Transform(piece.Turning).Bounds] : []).ToList();
        var inside = Spread(box.Grow(-Radius - Free)).Where(p => !over.Any(o => o.Overlaps(Around(p))))
            .Where(p => Spread(Around(p)).All(q => Holds(piece.TurnedOutline, q)));
        var onEdge = Spread(box).Where(p => Spread(Around(p)).Select(q => Holds(piece.TurnedOutline, q)).Distinct().Count() == 2);
        var beside = Spread(box.Grow(Radius + Free)).Where(p => !Around(p).Overlaps(box));
        return piece.Kind.Traits.IsLayer ? onEdge
            : piece.Matter == PieceMatter.Ink || box.Height < 2 * Radius || box.Width < 2 * Radius ? beside.Concat(onEdge)
            : inside.Concat(onEdge).Concat(beside);
    }

    /// <summary>The corners of a box, the middles of its sides, and points between.</summary>
    private static List<Point> Spread(Bounds box)
    {
        ReadOnlySpan<double> shares = [0, 0.5, 1, 0.25, 0.75];
        var points = new List<Point>();
        foreach (var down in shares)
        {
            points.Add(new(box.Left, box.Top + (down * box.Height)));
            points.Add(new(box.Right, box.Top + (down * box.Height)));
        }

        foreach (var across in shares[1..])
        {
            points.Add(new(box.Left + (across * box.Width), box.Top));
            points.Add(new(box.Left + (across * box.Width), box.Bottom));
        }

        points.Add(box.Centre);
        return points;
    }

    /// <summary>Whether a point lies in an outline, whose curves count as a few straight lines: near enough for a label.</summary>
    private static bool Holds(Outline outline, Point point)
    {
        var isInside = false;
        foreach (var contour in outline.Contours)
        {
            var from = contour.Start;
            foreach (var segment in contour.Segments.Append(Segment.Line(contour.Start)))
            {
                foreach (var to in Stretches(from, segment))
                {
                    if (from.Y > point.Y != to.Y > point.Y
                        && point.X < from.X + ((point.Y - from.Y) / (to.Y - from.Y) * (to.X - from.X)))
                    {
                        isInside = !isInside;
                    }

                    from = to;
                }
            }
        }

        return isInside;
    }

    private static IEnumerable<Point> Stretches(Point from, Segment segment) => segment.IsLine
        ? [segment.End]
        : Enumerable.Range(1, OfCurve).Select(i => At((double)i / OfCurve, from, segment));

    /// <summary>A point of a cubic Bézier curve by its parameter.</summary>
    private static Point At(double t, Point from, Segment segment)
    {
        var u = 1 - t;
        var (a, b, c, d) = (u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t);
        return new(
            (a * from.X) + (b * segment.Control1.X) + (c * segment.Control2.X) + (d * segment.End.X),
            (a * from.Y) + (b * segment.Control1.Y) + (c * segment.Control2.Y) + (d * segment.End.Y));
    }
}
