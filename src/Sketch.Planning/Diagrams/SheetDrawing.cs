using Sketch.Drawing;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Plans;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning.Diagrams;

/// <summary>
/// A sheet as it lies at the cutter, in true proportions: every piece with its letter, the first of each size with name and size too,
/// and every cut with the number of its step.
/// </summary>
internal sealed class SheetDrawing
{
    private const double Points = PageFlow.Points;
    private const double CutLine = 0.35;
    private const double ThinLine = 0.25;
    private const double DotRadius = 0.55;
    private const string Ink = PageFlow.Ink;
    private const string White = "#ffffff";

    // Quiet tints that also differ in lightness, so that they can be distinguished in a grey print.
    private static readonly string[] Tints = ["#ffffff", "#e3eef2", "#f6e7d0", "#d8e6d3", "#efd9d9", "#dcd7ea", "#fbf3c8", "#cfe0ea"];

    private readonly SheetWork _work;
    private readonly LengthFormat _lengths;
    private readonly Lettering _lettering;
    private readonly SvgWriter _svg;
    private readonly DrawnScale _scale;
    private readonly Bounds _sheet;
    private readonly List<Bounds> _taken = [];

    private SheetDrawing(SheetWork work, LengthFormat lengths, Lettering lettering, SvgWriter svg, DrawnScale scale) =>
        (_work, _lengths, _lettering, _svg, _scale, _sheet) =
            (work, lengths, lettering, svg, scale, scale.Of(new Rect(default, default, work.Layout.Stock.Width, work.Layout.Stock.Height)));

    /// <summary>Draws into an open element, the sheet's upper left corner at 0, 0.</summary>
    /// <param name="work">The sheet.</param>
    /// <param name="lengths">The format of sizes.</param>
    /// <param name="lettering">The letters.</param>
    /// <param name="svg">Where to.</param>
    /// <param name="scale">Millimetres drawn per millimetre of paper.</param>
    public static void Draw(SheetWork work, LengthFormat lengths, Lettering lettering, SvgWriter svg, double scale) =>
        new SheetDrawing(work, lengths, lettering, svg, new(scale)).Draw();

    private void Draw()
    {
        var layout = _work.Layout;
        Box(new(default, default, layout.Stock.Width, layout.Stock.Height), "#f1f1ef");
        foreach (var trim in layout.Trim)
        {
            Box(trim, "#b9b9b6");
        }

        foreach (var alike in layout.Pieces.GroupBy(p => _work.KeyOf(p.Place.Size)))
        {
            Boxes(alike.Select(p => p.Place), TintOf(alike.Key));
        }

        Cuts();
        Frame();
        var numbers = new CutNumbers(_lettering, _sheet, _scale, _taken).Of(_work.Steps);
        var labels = new PieceLabels(_work, _lengths, _lettering, _taken);
        var small = layout.Pieces.Select(p => (Key: _work.KeyOf(p.Place.Size), Box: _scale.Of(p.Place)))
            .Where(p => !labels.AddPiece(p.Key, p.Box)).ToList();
        foreach (var leftover in layout.Leftovers.Where(l => Length.Min(l.Width, l.Height) >= BatchPlan.SmallestUse))
        {
            labels.AddLeftover(leftover.Size, _scale.Of(leftover));
        }

        var callouts = new Callouts(_lettering, _sheet, [.. layout.Pieces.Select(p => _scale.Of(p.Place))], _taken).Of(small);
        foreach (var note in numbers.Concat(callouts))
        {
            Leader(note);
        }

        foreach (var number in numbers)
        {
            Box(number, Ink, number.Box.Height / 2);
        }

        foreach (var callout in callouts)
        {
            Box(callout, White, 0);
        }

        // Words come last, since a page shows them above all shapes.
        foreach (var number in numbers)
        {
            _lettering.WriteCentred(_svg, number.Words, number.Box.Centre, Points, White);
        }

        foreach (var callout in callouts)
        {
            _lettering.WriteCentred(_svg, callout.Words, callout.Box.Centre, Points, Ink);
        }

        labels.Write(_svg);
    }

    private string TintOf(string key) => Tints[_work.Pieces.IndexOf(_work.Pieces.First(p => p.Key == key)) % Tints.Length];

    // One element for all: a sheet can hold thousands.
    private void Boxes(IEnumerable<Rect> rects, string fill)
    {
        var path = new PathText();
        foreach (var bounds in rects.Select(r => _scale.Of(r)))
        {
            path.Rectangle(bounds.Left, bounds.Top, bounds.Right, bounds.Bottom);
        }

        _svg.Open("path").Attribute("fill", fill).Attribute("d", path.ToString()).Close();
    }

    private void Cuts()
    {
        var path = new PathText();
        foreach (var cut in _work.Steps.SelectMany(s => s.Cuts))
        {
            var (from, to) = (_scale.Of(cut.From), _scale.Of(cut.To));
            path.Move(from.X, from.Y).LineTo(to.X, to.Y);
        }

        if (!path.IsEmpty)
        {
            _svg.Open("path").Attribute("fill", "none").Attribute("stroke", Ink).Attribute("stroke-width", CutLine)
                .Attribute("d", path.ToString()).Close();
        }
    }

    private void Box(Rect rect, string fill)
    {
        var bounds = _scale.Of(rect);
        _svg.Open("rect").Attribute("x", bounds.Left).Attribute("y", bounds.Top).Attribute("width", bounds.Width)
            .Attribute("height", bounds.Height)
            .Attribute("fill", fill).Close();
    }

    private void Frame() =>
        _svg.Open("rect").Attribute("x", 0).Attribute("y", 0).Attribute("width", _sheet.Width).Attribute("height", _sheet.Height)
            .Attribute("fill", "none").Attribute("stroke", Ink).Attribute("stroke-width", 0.6).Close();

    private void Line(Point from, Point to, double width) =>
        _svg.Open("line").Attribute("x1", from.X).Attribute("y1", from.Y).Attribute("x2", to.X).Attribute("y2", to.Y)
            .Attribute("stroke", Ink).Attribute("stroke-width", width).Close();

    private void Leader(Note note)
    {
        if (note.Target is { } target)
        {
            Line(target, note.Box.Centre, ThinLine);
            _svg.Open("circle").Attribute("cx", target.X).Attribute("cy", target.Y).Attribute("r", DotRadius).Attribute("fill", Ink)
                .Close();
        }
    }

    private void Box(Note note, string fill, double radius)
    {
        var box = note.Box;
        _svg.Open("rect").Attribute("x", box.Left).Attribute("y", box.Top).Attribute("width", box.Width).Attribute("height", box.Height)
            .Attribute("rx", radius)
            .Attribute("fill", fill).Attribute("stroke", Ink).Attribute("stroke-width", ThinLine).Close();
    }
}
