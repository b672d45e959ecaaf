using Sketch.Drawing;
using Sketch.Planning.CutSteps;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning.Diagrams;

/// <summary>
/// A stack of sheets that takes at most half a page: the heading, and beneath it the diagram beside its steps and pieces, never parted by
/// the turn of a page.
/// </summary>
internal sealed class SheetBlock
{
    private const double DrawingWidth = 84;
    private const double HeadingHeight = 9;
    private const double HeadingPoints = 16;
    private const double AfterBlock = 7;

    // With more, the letters and numbers of so small a diagram would crowd each other.
    private const int MostPieces = 18;

    private readonly SheetWork _work;
    private readonly LengthFormat _lengths;
    private readonly Lettering _lettering;
    private readonly double _scale;
    private readonly double _linesFrom;
    private readonly List<string> _lines;

    private SheetBlock(SheetWork work, LengthFormat lengths, Lettering lettering, double width, double height, string note)
    {
        (_work, _lengths, _lettering) = (work, lengths, lettering);
        var (wide, high) = (work.Layout.Stock.Width.Millimetres, work.Layout.Stock.Height.Millimetres);
        _scale = Math.Min(1, Math.Min(DrawingWidth / wide, (height - HeadingHeight - AfterBlock) / high));
        _linesFrom = wide * _scale + PageFlow.ColumnGap;
        var room = width - _linesFrom;
        _lines =
        [
            .. note.Length > 0 ? lettering.Wrap(note, PageFlow.Points, room) : [],
            .. work.Steps.SelectMany(s => lettering.Wrap($"{s.Number}. {s.ShortText(lengths)}", PageFlow.Points, room)),
            .. work.Pieces.SelectMany(p => lettering.Wrap($"{p.Key} {p.Text(lengths)}", PageFlow.Points, room)),
        ];
        Height = HeadingHeight + Math.Max(high * _scale, PageFlow.HeightOf(_lines.Count)) + AfterBlock;
    }

    /// <summary>Its height in millimetres.</summary>
    public double Height { get; }

    /// <summary>The block; null if the stack needs a page of its own.</summary>
    /// <param name="work">The stack.</param>
    /// <param name="lengths">The format of sizes.</param>
    /// <param name="lettering">The letters.</param>
    /// <param name="flow">The pages that it goes to.</param>
    /// <param name="note">What to know before cutting; may be empty.</param>
    public static SheetBlock? Of(SheetWork work, LengthFormat lengths, Lettering lettering, PageFlow flow, string note)
    {
        var half = flow.Height / 2;
        return work.Layout.Pieces.Length <= MostPieces
            && new SheetBlock(work, lengths, lettering, flow.Width, half, note) is var block && block.Height <= half ? block : null;
    }

    /// <summary>Draws it from 0, 0 into the open element.</summary>
    public void Draw(SvgWriter svg)
    {
        _lettering.Write(svg, _work.Heading(_lengths), 0, HeadingHeight - 3.5, HeadingPoints, colour: PageFlow.Ink);
        svg.Open("g").Transform(Affine.Shift(0, HeadingHeight));
        SheetDrawing.Draw(_work, _lengths, _lettering, svg, _scale);
        svg.Close();
        for (var i = 0; i < _lines.Count; i++)
        {
            _lettering.Write(svg, _lines[i], _linesFrom, HeadingHeight + PageFlow.HeightOf(i + 1) - PageFlow.HeightOf(1) * 0.25,
                PageFlow.Points, colour: PageFlow.Ink);
        }
    }
}
