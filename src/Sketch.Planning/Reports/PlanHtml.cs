using System.Globalization;
using System.Text;
using Sketch.Panels;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Diagrams;
using Sketch.Planning.Plans;
using Sketch.Planning.Summary;
using Sketch.Reports;

namespace Sketch.Planning.Reports;

/// <summary>A plan as one page of HTML without scripts, which prints well and needs no other file.</summary>
public static class PlanHtml
{
    private const string Style = """
        body { font: 12pt/1.4 system-ui, sans-serif; color: #1f1e1d; background: #fff;
            max-width: 19cm; margin: 1cm auto; padding: 0 0.5cm; }
        h1 { font-size: 22pt; margin: 0 0 0.3em; } h2 { font-size: 15pt; margin: 1.2em 0 0.3em; }
            h3 { font-size: 13pt; margin: 1em 0 0.3em; }
        table { border-collapse: collapse; margin: 0.5em 0; }
            th, td { text-align: left; padding: 0.15em 1em 0.15em 0; vertical-align: top; }
        th { border-bottom: 1px solid #1f1e1d; } td.number, th.number { text-align: right; } svg { max-width: 100%; height: auto; }
        ol, ul { margin: 0.4em 0; padding-left: 2em; } h2, h3 { break-after: avoid; } tr, ul { break-inside: avoid; }
        .work { break-before: page; } @page { margin: 1.2cm; }
        @media print { body { max-width: none; margin: 0; padding: 0; } } /* so that no diagram shrinks on A4 */
        """;

    /// <summary>The page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="pages">Its drawings.</param>
    public static string Write(BatchPlan plan, PlanPages pages)
    {
        var title = plan.Files.Batch.Title;
        var html = new StringBuilder(HtmlPage.Begin(title, HtmlPage.Style(Style), "<!-- Written by Sketch -->"));
        html.Append(CultureInfo.InvariantCulture, $"<main>\n<h1>{Safe(title)}</h1>\n");
        Write(html, plan, pages);
        return html.Append(CultureInfo.InvariantCulture, $"</main>\n{HtmlPage.End}").ToString();
    }

    /// <summary>The content of the page beneath its title, for insertion into another page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="pages">Its drawings.</param>
    public static string Body(BatchPlan plan, PlanPages pages)
    {
        var html = new StringBuilder();
        Write(html, plan, pages);
        return html.ToString();
    }

    private static void Write(StringBuilder html, BatchPlan plan, PlanPages pages)
    {
        var lengths = plan.Files.Batch.Units.Format();
        foreach (var section in pages.Content.Sections)
        {
            html.Append(CultureInfo.InvariantCulture, $"<h2>{Safe(section.Heading)}</h2>\n");
            foreach (var sentence in section.Sentences)
            {
                html.Append(CultureInfo.InvariantCulture, $"<p>{Safe(sentence)}</p>\n");
            }

            if (section.Table is { } table)
            {
                Write(html, table);
            }
        }

        foreach (var work in pages.Work)
        {
            html.Append(CultureInfo.InvariantCulture,
                $"<section class=\"work\">\n<h2>{Safe(work.Heading(lengths))}</h2>\n{pages.Diagram(work, 180, 150)}<h3>Cuts in "
                    + $"order</h3>\n<p>{CutStep.Instruction}.</p>\n<ol>\n");
            foreach (var step in work.Steps)
            {
                html.Append(CultureInfo.InvariantCulture, $"<li>{Safe(step.Text(lengths))}</li>\n");
            }

            html.Append("</ol>\n<h3>Pieces</h3>\n<ul>\n");
            foreach (var pieces in work.Pieces)
            {
                html.Append(CultureInfo.InvariantCulture, $"<li><strong>{pieces.Key}</strong> {Safe(pieces.Text(lengths))}</li>\n");
            }

            html.Append("</ul>\n</section>\n");
        }

        foreach (var (design, index) in DesignInstructions.Of(plan.Files).Select((d, i) => (d, i)))
        {
            Write(html, design, pages.Picture(design, $"design-{(index + 1).ToString(CultureInfo.InvariantCulture)}-"));
        }
    }

    private static void Write(StringBuilder html, DesignInstructions design, string picture)
    {
        html.Append(CultureInfo.InvariantCulture,
            $"<section class=\"work\">\n<h2>{Safe(design.Title)}</h2>\n<p>{Safe(design.Introduction)}</p>\n{picture}<ol>\n");
        foreach (var step in design.Steps)
        {
            html.Append(CultureInfo.InvariantCulture, $"<li>{Safe(design.TextOf(step))}</li>\n");
        }

        html.Append("</ol>\n");
        foreach (var section in design.After)
        {
            Write(html, section, "h3");
        }

        html.Append("</section>\n");
    }

    private static void Write(StringBuilder html, ReportSection section, string heading)
    {
        html.Append(CultureInfo.InvariantCulture, $"<{heading}>{Safe(section.Heading)}</{heading}>\n");
        foreach (var sentence in section.Sentences)
        {
            html.Append(CultureInfo.InvariantCulture, $"<p>{Safe(sentence)}</p>\n");
        }

        if (section.Table is { } table)
        {
            Write(html, table);
        }
    }

    private static void Write(StringBuilder html, ReportTable table)
    {
        html.Append("<table>\n<thead><tr>");
        Row(table.Columns, "th scope=\"col\"", "th");
        html.Append("</tr></thead>\n<tbody>\n");
        foreach (var row in table.Rows)
        {
            html.Append("<tr>");
            Row(row, "td", "td");
            html.Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n");

        void Row(IReadOnlyList<string> cells, string open, string close)
        {
            for (var i = 0; i < cells.Count; i++)
            {
                html.Append(CultureInfo.InvariantCulture,
                    $"<{open}{(table.IsNumeric(i) ? " class=\"number\"" : "")}>{Safe(cells[i])}</{close}>");
            }
        }
    }

    private static string Safe(string text) => HtmlText.Of(text);
}
