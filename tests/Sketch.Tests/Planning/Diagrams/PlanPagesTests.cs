using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Diagrams;
using Sketch.Planning.Reports;
using Sketch.Tests.Output.Rendering;
using Xunit;

namespace Sketch.Tests.Planning.Diagrams;

public partial class PlanPagesTests
{
    private const string Batch = "batch \"Lamp day\"\nstash \"shelf.stash\"\nmake 7 of \"gull.card\"\ncut 5 of 1 1/2 x 3 from gulls\n";

    private static (PlanPages Pages, SheetWork Work) Drawn(string paper = "gulls")
    {
        var pages = new PlanPages(PlanRun.Of(Batch).Plan!, new TestWorld());
        return (pages, pages.Work.First(w => w.Paper == paper));
    }

    private static List<string> Words(string svg) =>
        [.. XDocument.Parse(svg).Descendants().Where(e => e.Name.LocalName == "title").Select(e => e.Value)];

    [Fact]
    public void Every_piece_of_a_diagram_has_its_letter()
    {
        var (pages, work) = Drawn();
        var words = Words(pages.Diagram(work, 180, 180));
        Assert.All(work.Pieces, p =>
            Assert.Equal(p.PerSheet, words.Count(w => w == p.Key || w.StartsWith(p.Key + "  ", StringComparison.Ordinal))));
    }

    [Fact]
    public void Equal_pieces_too_small_for_letters_share_one_with_their_count()
    {
        var plan = PlanRun.Of("batch \"Strips\"\nstash \"shelf.stash\"\ncut 9 of 1/16 x 5 from gulls\n").Plan!;
        var pages = new PlanPages(plan, new TestWorld());
        Assert.Contains("9 of A", Words(pages.Diagram(pages.Work[0], 180, 180)));
    }

    [Fact]
    public void Every_step_of_a_diagram_is_numbered()
    {
        var (pages, work) = Drawn();
        var words = Words(pages.Diagram(work, 180, 180));
        Assert.All(work.Steps, s => Assert.Contains(s.Number.ToString(CultureInfo.InvariantCulture), words));
    }

    [Fact]
    public void A_diagram_has_the_proportions_of_its_sheet()
    {
        var (pages, work) = Drawn("navy");
        var root = XDocument.Parse(pages.Diagram(work, 180, 110)).Root!;
        double Millimetres(string name) => double.Parse(Number().Match((string)root.Attribute(name)!).Value, CultureInfo.InvariantCulture);
        Assert.Equal(8.5 / 11, Millimetres("width") / Millimetres("height"), 4);
    }

    [Fact]
    public void Diagram_and_steps_of_a_sheet_of_the_sample_are_never_parted()
    {
        var pages = new PlanPages(PlanRun.OfFile(Project.Repository.PathTo("sketches/lamp-day.batch")).Plan!, new TestWorld());
        var words = PrintedWords.On(pages.Sheets()).SelectMany(p => p).Select(w => w.Words).ToList();
        Assert.All(pages.Work, w => Assert.Single(words, w.Heading(new(false))));
    }

    [Fact]
    public void A_page_has_letter_size() =>
        Assert.Contains(" width=\"8.5in\" height=\"11in\"", Drawn()
            .Pages.Summary()[0].Svg, StringComparison.Ordinal);

    [Fact]
    public void Consecutive_steps_have_different_settings()
    {
        var (_, work) = Drawn();
        Assert.All(work.Steps.Zip(work.Steps.Skip(1)), pair =>
            Assert.NotEqual((pair.First.Against, pair.First.Setting), (pair.Second.Against, pair.Second.Setting)));
    }

    [Fact]
    public void A_cut_list_has_a_line_for_each_step()
    {
        var (pages, _) = Drawn();
        var lines = CutListCsv.Write(PlanRun.Of(Batch).Plan!, pages).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(1 + pages.Work.Sum(w => w.Steps.Length), lines.Length);
    }

    [Fact]
    public void The_booklet_escapes_all_text()
    {
        var plan = PlanRun.Of(Batch.Replace("Lamp day", "Lamp <script>day", StringComparison.Ordinal)).Plan!;
        Assert.DoesNotContain("<script>", PlanHtml.Write(plan, new(plan, new TestWorld())), StringComparison.Ordinal);
    }

    [GeneratedRegex(@"^[\d.]+")]
    private static partial Regex Number();
}
