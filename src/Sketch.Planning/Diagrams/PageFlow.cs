using Sketch.Drawing;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning;

/// <summary>Lets headings, sentences, tables and drawings flow down pages; each page is a picture of its true size.</summary>
internal sealed class PageFlow
{
    private const double Margin = 12.7;
    private const double TextPoints = 11;
    private const double HeadingPoints = 16;
    private const double LineHeight = 5;
    private const double ColumnGap = 6;

    private readonly Size _page;
    private readonly bool _inInches;
    private readonly string _title;
    private readonly Lettering _lettering;
    private readonly List<string> _pages = [];
    private SvgWriter? _svg;
    private double _top;

    /// <summary>An empty flow; the first thing put in begins the first page.</summary>
    public PageFlow(Size page, bool inInches, string title, Lettering lettering) =>
        (_page, _inInches, _title, _lettering) = (page, inInches, title, lettering);

    /// <summary>Room from margin to margin, in millimetres.</summary>
    public double Width => _page.Width.Millimetres - 2 * Margin;

    /// <summary>Height from margin to margin.</summary>
    public double Height => _page.Height.Millimetres - 2 * Margin;

    /// <summary>Height that a number of lines of text takes.</summary>
    public static double HeightOf(int lines) => lines * LineHeight;

    /// <summary>Height that is left on the page.</summary>
    public double Left => _svg is null ? Height : _page.Height.Millimetres - Margin - _top;

    /// <summary>Ends the page, so that what follows begins a new one.</summary>
    public void EndPage()
    {
        if (_svg is { } svg)
        {
            _pages.Add(svg.Close().ToString());
            _svg = null;
        }
    }

    /// <summary>The pages.</summary>
    public IReadOnlyList<string> Finish()
    {
        EndPage();
        return _pages;
    }

    /// <summary>A heading, never alone at the foot of a page.</summary>
    public void Heading(string words, double points = HeadingPoints)
    {
        Need(4 * LineHeight);
        foreach (var line in _lettering.Wrap(words, points, Width))
        {
            _top += LineHeight * 1.4;
            _lettering.Write(_svg!, line, Margin, _top - LineHeight * 0.3, points);
        }

        _top += LineHeight * 0.3;
    }

    /// <summary>A paragraph.</summary>
    public void Paragraph(string words)
    {
        foreach (var line in _lettering.Wrap(words, TextPoints, Width))
        {
            Line(line, Margin);
        }
    }

    /// <summary>Space between parts; none at the head of a page.</summary>
    public void Gap() => _top += _svg is null ? 0 : LineHeight * 0.6;

    /// <summary>A table; a last column that is too wide goes on in further lines.</summary>
    public void Table(ReportTable table)
    {
        var count = table.Columns.Length;
        var widths = Enumerable.Range(0, count).Select(i => table.Rows.Prepend(table.Columns).Max(r => _lettering.Width(r[i], TextPoints))).ToArray();
        widths[^1] = Math.Min(widths[^1], Math.Max(20, Width - widths[..^1].Sum(w => w + ColumnGap)));
        foreach (var (row, isHead) in table.Rows.Select(r => (r, false)).Prepend((table.Columns, true)))
        {
            var last = _lettering.Wrap(row[^1], TextPoints, widths[^1] + 0.01).ToList();
            Need(LineHeight * (isHead ? 2 : last.Count));
            var left = Margin;
            for (var i = 0; i < count; i++)
            {
                var lines = i == count - 1 ? last : [row[i]];
                for (var line = 0; line < lines.Count; line++)
                {
                    var (x, alignment) = table.IsNumeric(i) ? (left + widths[i], Alignment.Right) : (left, Alignment.Left);
                    _lettering.Write(_svg!, lines[line], x, _top + LineHeight * (line + 0.75), TextPoints, alignment);
                }

                left += widths[i] + ColumnGap;
            }

            _top += LineHeight * last.Count;
            if (isHead)
            {
                Rule(Margin, left - ColumnGap);
            }
        }
    }

    /// <summary>Lines in two columns; what the page does not hold goes on on the next.</summary>
    public void Columns(IReadOnlyList<string> first, IReadOnlyList<string> second, double firstWidth)
    {
        for (var i = 0; i < Math.Max(first.Count, second.Count); i++)
        {
            Need(LineHeight);
            _top += LineHeight;
            if (i < first.Count)
            {
                _lettering.Write(_svg!, first[i], Margin, _top - LineHeight * 0.25, TextPoints);
            }

            if (i < second.Count)
            {
                _lettering.Write(_svg!, second[i], Margin + firstWidth + ColumnGap, _top - LineHeight * 0.25, TextPoints);
            }
        }
    }

    /// <summary>Lines of words for a column.</summary>
    public IEnumerable<string> Wrapped(string words, double width) => _lettering.Wrap(words, TextPoints, width);

    /// <summary>A drawing at the left margin.</summary>
    public void Drawing(double height, Action<SvgWriter> draw)
    {
        Need(height);
        _svg!.Open("g").Transform(Affine.Shift(Margin, _top));
        draw(_svg);
        _svg.Close();
        _top += height;
    }

    private void Line(string words, double left)
    {
        Need(LineHeight);
        _top += LineHeight;
        _lettering.Write(_svg!, words, left, _top - LineHeight * 0.25, TextPoints);
    }

    private void Rule(double from, double to) =>
        _svg!.Open("line").Attribute("x1", from).Attribute("y1", _top + 0.3).Attribute("x2", to).Attribute("y2", _top + 0.3)
            .Attribute("stroke", "#1f1e1d").Attribute("stroke-width", 0.25).Close();

    private void Need(double height)
    {
        if (_svg is not null && height > Left && _top > Margin)
        {
            EndPage();
        }

        if (_svg is null)
        {
            _svg = SvgWriter.Sheet(_page, _inInches, _title);
            _svg.Open("rect").Attribute("width", _page.Width.Millimetres).Attribute("height", _page.Height.Millimetres).Attribute("fill", "#ffffff").Close();
            _top = Margin;
        }
    }
}
