using CsCheck;
using Sketch.Diagnostics;
using Sketch.Planning;
using Sketch.Planning.Demand;
using Sketch.Tests.Planning.Reports;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Planning;

public class BatchPlanTests
{
    private const string Top = "batch \"Lamp day\"\nstash \"shelf.stash\"\n";

    // By hand: three columns of 4 in by two rows of 5 1/4 in on 12 x 12, and the same for 3 7/8 x 5 1/8.
    [Theory]
    [InlineData("4 x 5 1/4", 6, 1)]
    [InlineData("4 x 5 1/4", 7, 2)]
    [InlineData("3 7/8 x 5 1/8", 6, 1)]
    [InlineData("3 7/8 x 5 1/8", 7, 2)]
    public void Six_panels_come_from_one_sheet(string size, int count, int sheets)
    {
        var run = PlanRun.Of($"{Top}cut {count} of {size} from gulls\n");
        Assert.Equal((sheets, true), (run.Paper("gulls").Plan.Sheets, run.Paper("gulls").Plan.IsProved));
    }

    [Fact]
    public void A_row_of_many_pieces_is_planned()
    {
        var run = PlanRun.Of("batch \"Row\"\nstash \"long.stash\"\ncut 12000 of 1 mm x 1 mm from ribbon\n",
            ("long.stash", "stash \"Long\"\npaper ribbon: 20 m x 1 mm, 1 sheet\n"));
        Assert.Equal(12_000, Assert.Single(run.Paper("ribbon").Plan.Layouts).Pieces.Length);
    }

    [Fact]
    public void The_two_sides_of_a_paper_share_its_sheets()
    {
        var run = PlanRun.Of($"{Top}cut 3 of 4 x 5 1/4 from gulls, front\ncut 3 of 4 x 5 1/4 from gulls, back\n");
        Assert.Equal(1, run.Paper("gulls").Plan.Sheets);
    }

    [Fact]
    public void A_card_is_cut_from_the_papers_of_its_roles()
    {
        var run = PlanRun.Of($"{Top}make 12 of \"gull.card\"\n");
        Assert.Equal([("white", 6), ("navy", 3), ("gulls", 2)], run.Plan!.Papers.Select(p => (p.Order.Paper, p.Plan.Sheets)));
    }

    [Fact]
    public void A_role_of_the_batch_overrides_that_of_the_card()
    {
        var run = PlanRun.Of($"{Top}make 12 of \"gull.card\"\n  role sky: navy\n");
        Assert.Equal(["white", "navy"], run.Plan!.Papers.Select(p => p.Order.Paper));
    }

    [Fact]
    public void Every_field_of_a_plan_agrees_with_an_independent_calculation()
    {
        var run = PlanRun.Of($"{Top}make 12 of \"gull.card\"\ncut 5 of 3 x 4 from gulls, back\ncut 4 of 5 x 7 from navy, upright\n");
        Assert.Empty(PlanJsonChecker.Faults(run.Json, run.Wanted()));
    }

    [Fact]
    public void Every_batch_is_planned_as_written()
    {
        var size = Gen.Select(Gen.Int[4, 90], Gen.Int[4, 90], Gen.Int[1, 60], Gen.Bool);
        Gen.Select(size.Array[1, 4], Gen.Int[0, 30], Gen.Int[0, 2], Gen.Int[0, 3]).Sample((cuts, cards, trim, kerf) =>
        {
            var shelf = PlanRun.Shelf.Replace(
                "3 sheets", $"3 sheets{(trim == 0 ? "" : $", trim {trim}/8 left, trim 1/4 bottom")}", StringComparison.Ordinal)
                    + "offcut gulls: 5 x 7, 2\n";
            var lines = cuts.Select(c => $"cut {c.Item3} of {c.Item1 / 8.0} x {c.Item2 / 8.0} from gulls{(c.Item4 ? ", upright" : "")}\n");
            var run = PlanRun.Of($"batch \"Day\", kerf {kerf}/64\nstash "
                + $"\"shelf.stash\"\n{string.Concat(lines)}{(cards > 0 ? $"make {cards} of \"gull.card\"\n" : "")}",
                    ("shelf.stash", shelf));
            var wanted = run.Wanted();
            foreach (var misfit in run.Plan!.Papers.SelectMany(p => p.Plan.Unplaced))
            {
                var piece = run.Plan.Pieces[misfit.Id];
                wanted[PlanJsonChecker.Key(
                    null, $"line {piece.Location.Start.Line}", piece.Size.Width.Nanometres, piece.Size.Height.Nanometres)] -= misfit.Count;
            }

            var upright = run.Plan.Files.Batch.Cuts.Where(c => c.Upright).Select(c => $"line {c.Location.Start.Line}|").ToList();
            Assert.Empty(PlanJsonChecker.Faults(
                run.Json, wanted, kerf * 396_875, key => !upright.Exists(u => key.StartsWith("|" + u, StringComparison.Ordinal))));
            Assert.True(run.Plan.Papers.SelectMany(p => p.Plan.Layouts).Where(l => l.IsOffcut).Sum(l => l.Times) <= 2);
        }, iter: 30);
    }

    [Fact]
    public void The_same_files_give_the_same_plan()
    {
        static string Once() => PlanRun.Of(
            $"{Top}make 30 of \"gull.card\"\ncut 17 of 1 3/8 x 2 1/2 from gulls\ncut 9 of 3 x 3 1/4 from gulls\n").Json.GetRawText();
        Assert.Equal(Once(), Once());
    }

    [Fact]
    public void Papers_that_share_only_a_pattern_word_do_not_share_sheets()
    {
        var second = PlanRun.Card.Replace("Gull", "Tern", StringComparison.Ordinal)
            .Replace("role sky: gulls", "role sky: dots #ffffff", StringComparison.Ordinal);
        var first = PlanRun.Card.Replace("role sky: gulls", "role sky: dots #336699", StringComparison.Ordinal);
        var papers = PlanRun.Of($"{Top}make 1 of \"gull.card\"\nmake 1 of \"tern.card\"\n", ("gull.card", first), ("tern.card", second))
            .Plan!.Papers;
        Assert.Equal(2, papers.Count(p => p.Order.Paper.StartsWith("dots #", StringComparison.Ordinal)));
    }

    [Fact]
    public void Five_thousand_cards_need_about_as_many_layouts_as_fifty()
    {
        static int Layouts(int cards) => PlanRun.Of($"{Top}make {cards} of \"gull.card\"\n").Plan!.Papers.Sum(p => p.Plan.Layouts.Length);
        Assert.InRange(Layouts(5000), 1, Layouts(50) + 4);
    }

    [Fact]
    public void Eighty_four_recipients_and_two_makers_are_forty_two_cards()
    {
        var run = PlanRun.Of($"{Top}for \"Cliff ward\", 50 cards\nfor \"Reading room\", 34 cards\nmakers 2\nmake 9 of "
            + "\"gull.card\"\nmake 12 of \"gull.card\"\nmake 10 of \"gull.card\"\nmake 11 of \"gull.card\"\n");
        Assert.Equal((84, 42, 42L), (run.Plan!.Files.Batch.Recipients, run.Plan.Files.Batch.Needed, run.Plan.Cards));
        Assert.Contains("exactly 42, with none to spare", run.Single("SK730").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Ninety_shared_by_two_and_six_of_her_own_are_fifty_one_for_her()
    {
        var run = PlanRun.Of($"{Top}makers 2\nfor \"Cliff ward\", 90 cards\nfor \"Reading room\", 6 cards, 1 maker\n"
            + "make 51 of \"gull.card\"\n");
        Assert.Equal(51, run.Plan!.Files.Batch.Needed);
        Assert.StartsWith("90 cards shared by 2 makers and 6 cards are 51 cards for this maker", run.Single("SK730").Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_design_may_be_meant_for_some_recipients_only()
    {
        var run = PlanRun.Of($"{Top}for \"Cliff ward\", 6 cards\nfor \"Reading room\", 6 cards\n"
            + "make 4 of \"gull.card\"\nmake 8 of \"tern.card\"\n  for \"Reading room\"\n", ("tern.card", PlanRun.Card));
        var finding = run.Single("SK723");
        Assert.Equal((3, "\"Cliff ward\" needs 6 cards, and the designs that it gets make 4."),
            (finding.Location.Start.Line, finding.Message));
    }

    [Fact]
    public void The_plan_says_for_whom_and_what_each_maker_makes()
    {
        var section = PlanRun.Of($"{Top}makers 2\nfor \"Cliff ward\", 91 cards, by post\n  date \"2026-12-10\"\n"
            + "for \"Reading room\", 6 cards, 1 maker, by hand\n  note \"Leave them at the desk.\"\nmake 52 of \"gull.card\"\n")
            .Summary.Sections.Single(s => s.Heading == "For whom");
        Assert.Equal("Reading room: Leave them at the desk.", Assert.Single(section.Sentences));
        Assert.Equal(["Cliff ward|91|2|45 or 46|2026-12-10|by post", "Reading room|6|1|6||by hand"],
            section.Table!.Rows.Select(r => string.Join('|', r)));
    }

    [Fact]
    public void Too_few_cards_for_the_recipients_are_a_warning()
    {
        var run = PlanRun.Of($"{Top}for \"Cliff ward\", 10 cards\nspare 1\nmake 9 of \"gull.card\"\n");
        Assert.Contains("2 are missing", run.Single("SK721").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Missing_sheets_are_an_error_at_the_line_that_needs_them()
    {
        var finding = PlanRun.Of($"{Top}cut 19 of 4 x 5 1/4 from gulls\n").Single("SK710");
        Assert.Equal((3, "gulls: 4 sheets are needed and 3 are on hand, so 1 is missing."), (finding.Location.Start.Line, finding.Message));
    }

    [Theory]
    [InlineData("", 215.9)]
    [InlineData("units mm\n", 210)]
    public void A_paper_that_is_not_in_the_stash_is_planned_on_the_default_sheet(string units, double width)
    {
        var paper = PlanRun.Of($"{Top}{units}cut 1 of 1 in x 1 in from rope\n").Paper("rope");
        Assert.Equal((width, 0, 1), (paper.Order.Sheet.Size.Width.Millimetres, paper.Order.Sheet.OnHand, paper.Short));
    }

    [Fact]
    public void Upright_paper_is_not_turned()
    {
        var upright = PlanRun.Of(
            $"{Top}cut 2 of 11 x 6 from gulls\n",
                ("shelf.stash", PlanRun.Shelf.Replace("gulls: 12 x 12", "gulls: 6 x 12", StringComparison.Ordinal)
                    .Replace("3 sheets", "3 sheets, upright", StringComparison.Ordinal)));
        Assert.Equal("SK711", upright.Findings[0].Code);
    }

    [Fact]
    public void A_piece_larger_than_its_sheet_is_reported_in_the_file_of_its_card()
    {
        const string big = "card \"Big\"\nbase 9 x 9, of white\n";
        var finding = PlanRun.Of($"{Top}make 1 of \"big.card\"\n", ("big.card", big)).Single("SK711");
        Assert.Equal(("big.card", 2), (finding.Location.Source.Path, finding.Location.Start.Line));
    }

    [Fact]
    public void Offcuts_are_used_before_new_sheets()
    {
        var run = PlanRun.Of($"{Top}cut 8 of 4 x 5 1/4 from gulls\n", ("shelf.stash", PlanRun.Shelf + "offcut gulls: 6 x 6, 2\n"));
        Assert.Equal((1, 2), (run.Paper("gulls").Plan.Sheets, run.Paper("gulls").Plan.Layouts.Where(l => l.IsOffcut).Sum(l => l.Times)));
    }

    [Fact]
    public void Any_offcut_adds_no_sheet()
    {
        var card = PlanRun.Card + "  scrap: strip 1/2 x 1, of scrap\n";
        var run = PlanRun.Of($"{Top}make 12 of \"gull.card\"\n",
            ("gull.card", card.Replace("role deep", "role scrap: any offcut\nrole deep", StringComparison.Ordinal)));
        Assert.Equal((11, 0), (run.Plan!.Papers.Sum(p => p.Plan.Sheets), run.Findings.Count(f => f.Severity == Severity.Error)));
        Assert.Empty(PlanJsonChecker.Faults(run.Json, run.Wanted()));
    }

    [Fact]
    public void Any_offcut_without_a_leftover_is_an_error_and_adds_no_sheet()
    {
        var card = PlanRun.Card.Replace("role deep", "role scrap: any offcut\nrole deep", StringComparison.Ordinal)
            .Replace("of white", "of scrap", StringComparison.Ordinal);
        var run = PlanRun.Of($"{Top}make 12 of \"gull.card\"\n", ("gull.card", card));
        Assert.Contains("no leftover is large enough", run.Single("SK712").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_hint_for_a_plan_without_proof_is_that_of_the_caller()
    {
        var lines = string.Concat(Enumerable.Range(0, 92).Select(i => $"cut 9 of {31 + i} x {47 + 2 * i % 83} from kraft\n"));
        var world = new TestWorld().WithText("museum.stash", "stash \"Museum\"\ncardstock kraft: A4, any sheets\n");
        var batch = new SourceText("tags.batch", $"batch \"Tags\"\nunits mm\nstash \"museum.stash\"\n{lines}");
        var findings = new FindingBag();
        BatchPlanner.Plan(BatchFiles.Read(batch, world, findings)!, TimeSpan.Zero, findings, hintForTime: "Wait longer.",
            cancellation: TestContext.Current.CancellationToken);
        Assert.Equal("Wait longer.", Assert.Single(findings.ToImmutable(), f => f.Kind == FindingCatalogue.NotProved).Hint);
    }
}
