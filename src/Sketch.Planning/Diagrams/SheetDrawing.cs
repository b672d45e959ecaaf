using Sketch.Drawing;
using Sketch.Reports;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning;

/// <summary>
/// A sheet as it lies before the cutter, in true proportions: every piece with its letter, the first of each size with name and size too, and
/// every cut with the number of its step.
/// </summary>
internal sealed class SheetDrawing
{
    private const double LabelPoints = 12;
    private const double SmallestPoints = 9;
    private const double NumberPoints = 10.5;
    private const double DiscRadius = 2.7;
    private const double LineSpacing = 5.2;
    private const double SameStepNear = 8;

    // Quiet tints that differ in lightness too, so that a grey print still tells them apart.
    private static readonly string[] Tints = ["#ffffff", "#e3eef2", "#f6e7d0", "#d8e6d3", "#efd9d9", "#dcd7ea", "#fbf3c8", "#cfe0ea"];

    private readonly SheetWork _work;
    private readonly LengthStyle _lengths;
    private readonly Lettering _lettering;
    private readonly SvgWriter _svg;
    private readonly double _scale;
    private readonly Bounds _sheet;
    private readonly List<Bounds> _taken = [];
    private readonly List<(int Step, Bounds Box)> _discs = [];

    private SheetDrawing(SheetWork work, LengthStyle lengths, Lettering lettering, SvgWriter svg, double scale) =>
        (_work, _lengths, _lettering, _svg, _scale, _sheet) = (work, lengths, lettering, svg, scale, Scaled(new(default, default, work.Layout.Stock.Width, work.Layout.Stock.Height), scale));

    /// <summary>Draws into an open element, the sheet's upper left corner at 0, 0.</summary>
    /// <param name="work">The sheet.</param>
    /// <param name="lengths">How sizes are written.</param>
    /// <param name="lettering">The letters.</param>
    /// <param name="svg">Where to.</param>
    /// <param name="scale">Millimetres drawn for a millimetre of paper.</param>
    public static void Draw(SheetWork work, LengthStyle lengths, Lettering lettering, SvgWriter svg, double scale) =>
        new SheetDrawing(work, lengths, lettering, svg, scale).Draw();

    private void Draw()
    {
        var layout = _work.Layout;
        Box(new(default, default, layout.Stock.Width, layout.Stock.Height), "#f1f1ef");
        foreach (var trim in layout.Trim)
        {
            Box(trim, "#b9b9b6");
        }

        foreach (var piece in layout.Pieces)
        {
            Box(piece.Place, TintOf(piece.Place.Size));
        }

        foreach (var cut in _work.Steps.SelectMany(s => s.Cuts))
        {
            Line(At(cut.From), At(cut.To));
        }

        Frame(layout.Stock);
        foreach (var step in _work.Steps)
        {
            Number(step);
        }

        var named = new HashSet<string>();
        var small = new List<(string Key, Bounds Box)>();
        foreach (var piece in layout.Pieces)
        {
            var (key, box) = (_work.KeyOf(piece.Place.Size), Scaled(piece.Place));
            if (!Label(box, key, named.Add(key)))
            {
                small.Add((key, box));
            }
        }

        foreach (var leftover in layout.Leftovers.Where(l => Length.Min(l.Width, l.Height) >= BatchPlan.SmallestUse))
        {
            Leftover(leftover);
        }

        new Callouts(_lettering, _svg, SmallestPoints, _sheet, [.. layout.Pieces.Select(p => Scaled(p.Place))], _taken).Write(small);
    }

    private string TintOf(Size size) => Tints[_work.Pieces.IndexOf(_work.Pieces.First(p => p.Key == _work.KeyOf(size))) % Tints.Length];

    private Point At(Place place) => new(place.Left.Millimetres * _scale, place.Top.Millimetres * _scale);

    private Bounds Scaled(Rect rect) => Scaled(rect, _scale);

    private static Bounds Scaled(Rect rect, double scale)
    {
        var bounds = Bounds.Of(rect);
        return new(bounds.Left * scale, bounds.Top * scale, bounds.Right * scale, bounds.Bottom * scale);
    }

    private void Box(Rect rect, string fill)
    {
        var bounds = Scaled(rect);
        _svg.Open("rect").Attribute("x", bounds.Left).Attribute("y", bounds.Top).Attribute("width", bounds.Width).Attribute("height", bounds.Height)
            .Attribute("fill", fill).Close();
    }

    private void Frame(Size size) =>
        _svg.Open("rect").Attribute("x", 0).Attribute("y", 0).Attribute("width", size.Width.Millimetres * _scale).Attribute("height", size.Height.Millimetres * _scale)
            .Attribute("fill", "none").Attribute("stroke", "#1f1e1d").Attribute("stroke-width", 0.6).Close();

    private void Line(Point from, Point to) =>
        _svg.Open("line").Attribute("x1", from.X).Attribute("y1", from.Y).Attribute("x2", to.X).Attribute("y2", to.Y)
            .Attribute("stroke", "#1f1e1d").Attribute("stroke-width", 0.35).Close();

    // A row of cuts of one step that begin in line carries its number once at each end of the row.
    private void Number(CutStep step)
    {
        foreach (var row in step.Cuts.GroupBy(c => c.IsUpright ? (c.From.Top, c.To.Top) : (c.From.Left, c.To.Left)))
        {
            var cuts = row.ToList();
            Disc(step, cuts[0]);
            if (cuts.Count > 1)
            {
                Disc(step, cuts[^1]);
            }
        }
    }

    // On the cut where that is free, else beside it with a line to it; a cut amid others of its step is numbered by theirs.
    private void Disc(CutStep step, Cutting.Cut cut)
    {
        var (from, to) = (At(cut.From), At(cut.To));
        var length = Math.Max(to.X - from.X, to.Y - from.Y);
        for (var along = Math.Min(DiscRadius + 0.6, length / 2); along <= Math.Max(length - DiscRadius, length / 2); along += DiscRadius)
        {
            var box = AroundDisc(cut.IsUpright ? new(from.X, from.Y + along) : new(from.X + along, from.Y));
            if (!_taken.Exists(t => t.Overlaps(box)))
            {
                Disc(step, box);
                return;
            }
        }

        var middle = new Point((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        if (_discs.Exists(d => d.Step == step.Number && d.Box.Grow(SameStepNear).Overlaps(AroundDisc(middle))))
        {
            return;
        }

        var beside = FreePlace.Near(middle, 2 * DiscRadius, 2 * DiscRadius, _sheet.Width + _sheet.Height, _sheet, _taken) ?? AroundDisc(middle);
        Line(middle, beside.Centre);
        Disc(step, beside);
    }

    private void Disc(CutStep step, Bounds box)
    {
        _taken.Add(box);
        _discs.Add((step.Number, box));
        _svg.Open("circle").Attribute("cx", box.Centre.X).Attribute("cy", box.Centre.Y).Attribute("r", DiscRadius).Attribute("fill", "#1f1e1d").Close();
        _svg.Open("g").Attribute("fill", "#ffffff");
        _lettering.WriteCentred(_svg, step.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), box.Centre, NumberPoints);
        _svg.Close();
    }

    private static Bounds AroundDisc(Point middle) => FreePlace.Around(middle, 2 * DiscRadius, 2 * DiscRadius);

    // False when the piece is too small for a letter clear of the numbers.
    private bool Label(Bounds piece, string key, bool isFirst)
    {
        var pieces = _work.Pieces.First(p => p.Key == key);
        if (isFirst)
        {
            string[] lines = [key, pieces.Uses[0].Card ?? "", pieces.Uses[0].Name, _lengths.Text(pieces.Size)];
            string[][] shorter = [lines, [key, lines[2], lines[3]], [key, lines[3]], [$"{key}  {lines[3]}"]];
            if (shorter.Any(l => Fits(piece, [.. l.Where(x => x.Length > 0)], LabelPoints)))
            {
                return true;
            }
        }

        return Fits(piece, [key], LabelPoints) || Fits(piece, [key], SmallestPoints);
    }

    // Writes lines in a box where they are clear of the cuts' numbers: in its middle, else nearer to an edge.
    private bool Fits(Bounds box, string[] lines, double points)
    {
        var (width, height) = (lines.Max(l => _lettering.Width(l, points)) + 1.2, (lines.Length - 1) * LineSpacing + Lettering.CapitalHeight(points) * 1.4);
        var (spareX, spareY) = (box.Width - width, box.Height - height);
        if (spareX < 0 || spareY < 0)
        {
            return false;
        }

        foreach (var (x, y) in new[] { (0.5, 0.5), (0.5, 0.8), (0.5, 0.2), (0.8, 0.5), (0.2, 0.5), (1.0, 1.0), (1.0, 0.0), (0.0, 1.0), (0.0, 0.0) })
        {
            var place = new Bounds(box.Left + spareX * x, box.Top + spareY * y, box.Left + spareX * x + width, box.Top + spareY * y + height);
            if (_taken.Exists(t => t.Overlaps(place)))
            {
                continue;
            }

            _taken.Add(place);
            for (var i = 0; i < lines.Length; i++)
            {
                _lettering.Write(_svg, lines[i], place.Centre.X, place.Top + Lettering.CapitalHeight(points) * 1.2 + i * LineSpacing, points, Alignment.Centre);
            }

            return true;
        }

        return false;
    }

    private void Leftover(Rect leftover)
    {
        var box = Scaled(leftover);
        _svg.Open("g").Attribute("fill", "#5b5a57");
        if (!Fits(box, ["left over", _lengths.Text(leftover.Size)], LabelPoints) && !Fits(box, [$"left over {_lengths.Text(leftover.Size)}"], LabelPoints))
        {
            Fits(box, [_lengths.Text(leftover.Size)], SmallestPoints);
        }

        _svg.Close();
    }
}
