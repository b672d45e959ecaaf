using Sketch.Drawing;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning;

/// <summary>Lets headings, sentences, tables and drawings flow down pages; each page is a picture of its true size.</summary>
internal sealed class PageFlow
{
    private const double Margin = 12.7;
    private const double UsualPoints = 12;
    private const double UsualLineHeight = 5.3;
    private const double ColumnGap = 6;
    private const double RuleGap = 1;

    private readonly Size _page;
    private readonly bool _inInches;
    private readonly string _title;
    private readonly Lettering _lettering;
    private readonly double _scale;
    private readonly double _points;
    private readonly double _lineHeight;
    private readonly List<string> _pages = [];
    private SvgWriter? _svg;
    private double _top;

    /// <summary>An empty flow; the first thing put in begins the first page.</summary>
    /// <param name="page">The page's size.</param>
    /// <param name="inInches">Whether its size is written in inches.</param>
    /// <param name="title">What the pages show.</param>
    /// <param name="lettering">The letters.</param>
    /// <param name="scale">Size of letters and lines: 1 is 12 points.</param>
    public PageFlow(Size page, bool inInches, string title, Lettering lettering, double scale = 1)
    {
        (_page, _inInches, _title, _lettering) = (page, inInches, title, lettering);
        (_scale, _points, _lineHeight) = (scale, scale * UsualPoints, scale * UsualLineHeight);
    }

    /// <summary>Room from margin to margin, in millimetres.</summary>
    public double Width => _page.Width.Millimetres - 2 * Margin;

    /// <summary>Height from margin to margin.</summary>
    public double Height => _page.Height.Millimetres - 2 * Margin;

    /// <summary>Height that a number of lines of text takes.</summary>
    public double HeightOf(int lines) => lines * _lineHeight;

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
    public void Heading(string words, bool isTitle = false)
    {
        var points = _scale * (isTitle ? 22 : 16);
        Need(4 * _lineHeight);
        foreach (var line in _lettering.Wrap(words, points, Width))
        {
            _top += _lineHeight * 1.4;
            _lettering.Write(_svg!, line, Margin, _top - _lineHeight * 0.3, points);
        }

        _top += _lineHeight * 0.3;
    }

    /// <summary>A paragraph.</summary>
    public void Paragraph(string words)
    {
        foreach (var line in _lettering.Wrap(words, _points, Width))
        {
            Line(line, Margin);
        }
    }

    /// <summary>Space between parts; none at the head of a page.</summary>
    public void Gap() => _top += _svg is null ? 0 : _lineHeight * 0.6;

    /// <summary>A table; a last column that is too wide goes on in further lines.</summary>
    public void Table(ReportTable table)
    {
        var count = table.Columns.Length;
        var widths = Enumerable.Range(0, count).Select(i => table.Rows.Prepend(table.Columns).Max(r => _lettering.Width(r[i], _points))).ToArray();
        widths[^1] = Math.Min(widths[^1], Math.Max(20, Width - widths[..^1].Sum(w => w + ColumnGap)));
        foreach (var (row, isHead) in table.Rows.Select(r => (r, false)).Prepend((table.Columns, true)))
        {
            var last = _lettering.Wrap(row[^1], _points, widths[^1] + 0.01).ToList();
            Need(_lineHeight * (isHead ? 2 : last.Count));
            var left = Margin;
            for (var i = 0; i < count; i++)
            {
                var lines = i == count - 1 ? last : [row[i]];
                for (var line = 0; line < lines.Count; line++)
                {
                    var (x, alignment) = table.IsNumeric(i) ? (left + widths[i], Alignment.Right) : (left, Alignment.Left);
                    _lettering.Write(_svg!, lines[line], x, _top + _lineHeight * (line + 0.75), _points, alignment);
                }

                left += widths[i] + ColumnGap;
            }

            _top += _lineHeight * last.Count;
            if (isHead)
            {
                Rule(Margin, left - ColumnGap);
                _top += RuleGap;
            }
        }
    }

    /// <summary>Lines in two columns; what the page does not hold goes on on the next.</summary>
    public void Columns(IReadOnlyList<string> first, IReadOnlyList<string> second, double firstWidth)
    {
        for (var i = 0; i < Math.Max(first.Count, second.Count); i++)
        {
            Need(_lineHeight);
            _top += _lineHeight;
            if (i < first.Count)
            {
                _lettering.Write(_svg!, first[i], Margin, _top - _lineHeight * 0.25, _points);
            }

            if (i < second.Count)
            {
                _lettering.Write(_svg!, second[i], Margin + firstWidth + ColumnGap, _top - _lineHeight * 0.25, _points);
            }
        }
    }

    /// <summary>Lines of words for a column.</summary>
    public IEnumerable<string> Wrapped(string words, double width) => _lettering.Wrap(words, _points, width);

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
        Need(_lineHeight);
        _top += _lineHeight;
        _lettering.Write(_svg!, words, left, _top - _lineHeight * 0.25, _points);
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
