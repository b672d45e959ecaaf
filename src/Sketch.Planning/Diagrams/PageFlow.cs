using Sketch.Drawing;
using Sketch.Planning.Summary;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Planning.Diagrams;

/// <summary>Lets headings, sentences, tables and drawings flow down pages; each page is a picture of its true size.</summary>
internal sealed class PageFlow
{
    /// <summary>Size of all letters but those of headings, which are larger: older people can read it at the cutter.</summary>
    public const double Points = 12;

    /// <summary>Colour of letters and lines.</summary>
    public const string Ink = "#1f1e1d";

    /// <summary>The gap between columns, in millimetres.</summary>
    public const double ColumnGap = 6;

    private const double TitlePoints = 22;
    private const double HeadingPoints = 16;
    private const double Margin = 12.7;
    private const double LineHeight = 5.3;
    private const double HeadingHeight = LineHeight * 1.4;
    private const double AfterHeading = LineHeight * 0.3;
    private const double GapHeight = LineHeight * 0.6;
    private const double RuleGap = 1;
    private const double NumberColumn = 9;

    private readonly Size _page;
    private readonly bool _inInches;
    private readonly string _title;
    private readonly Lettering _lettering;
    private readonly List<DrawnPage> _pages = [];
    private SvgWriter? _svg;
    private double _top;
    private double _head;

    /// <summary>An empty flow; the first item added begins the first page.</summary>
    /// <param name="page">The page's size.</param>
    /// <param name="inInches">Whether its size is written in inches.</param>
    /// <param name="title">What the pages show.</param>
    /// <param name="lettering">The letters.</param>
    public PageFlow(Size page, bool inInches, string title, Lettering lettering) =>
        (_page, _inInches, _title, _lettering) = (page, inInches, title, lettering);

    /// <summary>Width between the margins, in millimetres.</summary>
    public double Width => _page.Width.Millimetres - 2 * Margin;

    /// <summary>Height between the margins.</summary>
    public double Height => _page.Height.Millimetres - 2 * Margin;

    /// <summary>The height of a number of lines of text.</summary>
    public static double HeightOf(int lines) => lines * LineHeight;

    /// <summary>The height left on the page.</summary>
    public double Left => _svg is null ? Height : _page.Height.Millimetres - Margin - _top;

    /// <summary>Ends the page, so that what follows begins a new one.</summary>
    public void EndPage()
    {
        if (_svg is { } svg)
        {
            _pages.Add(svg.Close().ToPage());
            _svg = null;
        }
    }

    /// <summary>The pages.</summary>
    public IReadOnlyList<DrawnPage> Finish()
    {
        EndPage();
        return _pages;
    }

    /// <summary>A heading, never alone at the foot of a page; a title is never alone on one.</summary>
    public void Heading(string words, bool isTitle = false)
    {
        var points = isTitle ? TitlePoints : HeadingPoints;
        Need(4 * LineHeight);
        foreach (var line in _lettering.Wrap(words, points, Width))
        {
            _top += HeadingHeight;
            _lettering.Write(_svg!, line, Margin, _top - LineHeight * 0.3, points);
        }

        _top += AfterHeading;
        _head = isTitle ? _top : _head;
    }

    /// <summary>
    /// A part of a report, a little below the one before. It begins a new page if that keeps it whole; one longer than a page keeps at
    /// least its heading and sentences with the first row of its table.
    /// </summary>
    public void Section(ReportSection section)
    {
        var table = section.Table is null
            ? null : new TableLines(section.Table, _lettering, Points, Width - (section.Table.Columns.Length - 1) * ColumnGap);
        var sentences = section.Sentences.SelectMany(s => Wrapped(s, Width)).ToList();
        var beginning = _lettering.Wrap(section.Heading, HeadingPoints, Width)
            .Count() * HeadingHeight + AfterHeading + HeightOf(sentences.Count);
        var whole = GapHeight + beginning + HeightOf(table, table?.Rows.Count);
        Need(whole <= Height ? whole : Math.Min(Height, GapHeight + beginning + HeightOf(table, 1)));
        Gap();
        Heading(section.Heading);
        foreach (var line in sentences)
        {
            Line(line);
        }

        if (table is not null)
        {
            Gap();
            Table(section.Table!, table);
        }
    }

    /// <summary>A paragraph.</summary>
    public void Paragraph(string words)
    {
        foreach (var line in Wrapped(words, Width))
        {
            Line(line);
        }
    }

    /// <summary>A numbered paragraph, its lines aligned beneath each other.</summary>
    public void Item(string number, string words)
    {
        var isFirst = true;
        foreach (var line in Wrapped(words, Width - NumberColumn))
        {
            Need(LineHeight);
            if (isFirst)
            {
                _lettering.Write(_svg!, number, Margin + NumberColumn - 2, _top + LineHeight * 0.75, Points, Alignment.Right);
                isFirst = false;
            }

            _top += LineHeight;
            _lettering.Write(_svg!, line, Margin + NumberColumn, _top - LineHeight * 0.25, Points);
        }
    }

    /// <summary>Keeps what follows on one page, if its height in millimetres fits one.</summary>
    public void Together(double height) => Need(Math.Min(height, Height));

    /// <summary>Space between parts; none at the top of a page.</summary>
    public void Gap() => _top += _svg is null || _top == Margin ? 0 : GapHeight;

    /// <summary>Lines in two columns; what the page does not hold continues on the next, beneath the same heading.</summary>
    public void Columns(string heading, IReadOnlyList<string> first, IReadOnlyList<string> second, double firstWidth)
    {
        for (var i = 0; i < Math.Max(first.Count, second.Count); i++)
        {
            if (LineHeight > Left)
            {
                EndPage();
                Heading(heading);
            }

            _top += LineHeight;
            if (i < first.Count)
            {
                _lettering.Write(_svg!, first[i], Margin, _top - LineHeight * 0.25, Points);
            }

            if (i < second.Count)
            {
                _lettering.Write(_svg!, second[i], Margin + firstWidth + ColumnGap, _top - LineHeight * 0.25, Points);
            }
        }
    }

    /// <summary>Lines of words for a column.</summary>
    public IEnumerable<string> Wrapped(string words, double width) => _lettering.Wrap(words, Points, width);

    /// <summary>A drawing at the left margin.</summary>
    public void Drawing(double height, Action<SvgWriter> draw)
    {
        Need(height);
        _svg!.Open("g").Transform(Affine.Shift(Margin, _top));
        draw(_svg);
        _svg.Close();
        _top += height;
    }

    private static double HeightOf(TableLines? table, int? rows) =>
        table is null ? 0 : GapHeight + RuleGap + HeightOf(TableLines.Count(table.Head) + table.Rows.Take(rows ?? 0).Sum(TableLines.Count));

    // Its headings are repeated on each page that it continues on.
    private void Table(ReportTable table, TableLines lines)
    {
        Heads();
        foreach (var row in lines.Rows)
        {
            if (HeightOf(TableLines.Count(row)) > Left)
            {
                EndPage();
                Heads();
            }

            Row(row);
        }

        void Heads()
        {
            Need(HeightOf(TableLines.Count(lines.Head)) + RuleGap);
            Row(lines.Head);
            Rule(Margin, Margin + lines.Widths.Sum() + (lines.Widths.Count - 1) * ColumnGap);
            _top += RuleGap;
        }

        void Row(IReadOnlyList<string>[] cells)
        {
            var left = Margin;
            for (var i = 0; i < cells.Length; i++)
            {
                var (x, alignment) = table.IsNumeric(i) ? (left + lines.Widths[i], Alignment.Right) : (left, Alignment.Left);
                for (var line = 0; line < cells[i].Count; line++)
                {
                    _lettering.Write(_svg!, cells[i][line], x, _top + LineHeight * (line + 0.75), Points, alignment);
                }

                left += lines.Widths[i] + ColumnGap;
            }

            _top += HeightOf(TableLines.Count(cells));
        }
    }

    private void Line(string words)
    {
        Need(LineHeight);
        _top += LineHeight;
        _lettering.Write(_svg!, words, Margin, _top - LineHeight * 0.25, Points);
    }

    private void Rule(double from, double to) =>
        _svg!.Open("line").Attribute("x1", from).Attribute("y1", _top + 0.3).Attribute("x2", to).Attribute("y2", _top + 0.3)
            .Attribute("stroke", Ink).Attribute("stroke-width", 0.25).Close();

    private void Need(double height)
    {
        if (_svg is not null && height > Left && _top > _head)
        {
            EndPage();
        }

        if (_svg is null)
        {
            _svg = SvgWriter.Sheet(_page, _inInches, _title);
            _svg.Open("rect").Attribute("width", _page.Width.Millimetres).Attribute("height", _page.Height.Millimetres)
                .Attribute("fill", "#ffffff").Close();
            _top = _head = Margin;
        }
    }
}
