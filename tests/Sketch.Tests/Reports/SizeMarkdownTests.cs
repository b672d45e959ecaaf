using Markdig;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Reports;
using Xunit;
using static Sketch.Tests.Reports.SampleCard;

namespace Sketch.Tests.Reports;

public class SizeMarkdownTests
{
    private static string Html(LaidOutCard card) => Markdown.ToHtml(
        Written(o => SizeMarkdown.Write(o, SizeList.Of(card), new(false))), new MarkdownPipelineBuilder().UsePipeTables().Build());

    [Fact]
    public void An_entry_is_a_row_of_the_table() => Assert.Contains(
        "<td>front/sky/mat</td>\n<td>mat</td>\n<td>4 x 5 1/4</td>\n<td></td>\n<td>1/16</td>\n<td>deep</td>\n<td>navy, back</td>\n<td "
            + "style=\"text-align: right;\">1</td>",
        Html(FairWinds()));

    [Fact]
    public void Columns_that_are_empty_in_all_rows_are_left_out() =>
        Assert.Contains("| Piece | What | Cut | Role | Count |\n| --- | --- | --- | --- | ---: |\n",
            Written(o => SizeMarkdown.Write(
                o, SizeList.Of(With(Paper("front/panel", PieceKind.Panel, Sixteenths(2, 2, 64, 84)))), new(false))));

    [Fact]
    public void Markdown_syntax_in_words_is_escaped()
    {
        var title = "a|b *c* _d_ <b>e</b> `f` [g](h) # &amp; ~i~ \\";
        Assert.Contains($"<h2>{title.Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;")}</h2>",
            Html(With() with { Title = title }));
    }
}
