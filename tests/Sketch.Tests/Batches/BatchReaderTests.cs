using Sketch.Batches;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Batches;

/// <summary>What the lines of a batch mean, before any of its files is read.</summary>
public sealed class BatchReaderTests
{
    [Fact]
    public void The_lines_about_the_run_are_read()
    {
        var batch = Read("stash \"museum.stash\"\nunits mm\ndate \"2026-11-25\"\nnote \"Dry overnight.\"\nmakers 2\nspare 3\n");
        Assert.Equal(
            ("Lamp day", "museum.stash", UnitSystem.Millimetres, "2026-11-25", "Dry overnight.\n", 2, 3),
            (batch.Title, batch.Stash!.Path, batch.Units, batch.Date, batch.Notes, batch.Makers, batch.Spare));
    }

    [Theory]
    [InlineData("batch \"Lamp day\", kerf 1/32\n")]
    [InlineData("batch \"Lamp day\"\nstash \"museum.stash\", kerf 1/32\n")]
    public void The_kerf_is_written_with_the_batch_or_with_its_stash(string text) =>
        Assert.Equal(Length.Inch(0, 1, 32), ReadFile(text).Kerf);

    [Theory]
    [InlineData("batch \"Lamp day\", hollow\n", 0)]
    [InlineData("batch \"Lamp day\", hollow 1/2\n", 32)]
    public void A_batch_may_be_cut_hollow(string text, int of64) => Assert.Equal(Length.Inch(0, of64, 64), ReadFile(text).Hollow);

    [Fact]
    public void A_batch_is_not_cut_hollow_unless_it_says_so() => Assert.Null(Read("").Hollow);

    [Fact]
    public void A_trimmer_removes_nothing_where_no_kerf_is_written() => Assert.Equal(Length.Zero, Read("").Kerf);

    [Fact]
    public void A_make_line_names_a_card_with_its_papers_and_messages()
    {
        var make = Assert.Single(Read("make 12 of \"fair-winds.card\"\n  role sky: gulls, back\n  message \"Keep\" \"watch\"\n").Makes);
        Assert.Equal((12, "fair-winds.card"), (make.Count, make.Card.Path));
        Assert.Equal(["Keep", "watch"], make.Message!.Lines);
        var role = Assert.Single(make.Roles);
        Assert.Equal(("sky", "gulls", PaperSide.Back), (role.Role, role.Paint.Paper, role.Paint.Side));
    }

    [Theory]
    [InlineData("", null, false)]
    [InlineData(", front", PaperSide.Front, false)]
    [InlineData(", back, upright", PaperSide.Back, true)]
    public void A_cut_line_asks_for_loose_pieces_of_a_paper(string clauses, PaperSide? side, bool upright)
    {
        var cut = Assert.Single(Read($"cut 12 of 4 x 5 1/4 from gulls{clauses}\n").Cuts);
        Assert.Equal(
            (12, new Size(Length.Inch(4), Length.Inch(5, 1, 4)), "gulls", side, upright),
            (cut.Count, cut.Size, cut.Paper, cut.Side, cut.Upright));
    }

    [Fact]
    public void Lines_indented_under_the_title_mean_the_same_as_lines_below_it() =>
        Assert.Equal(Read("makers 2\n").Makers, Read("  makers 2\n").Makers);

    /// <summary>The example of the language reference: 42 cards shared by 2 makers with 2 spare make 23.</summary>
    [Fact]
    public void Each_maker_makes_a_share_rounded_up_and_all_the_spare_cards()
    {
        var batch = Read("for \"Cliff ward\", 24 cards\nfor \"Reading room\", 18 cards, spare 1\nmakers 2\nspare 1\n");
        Assert.Equal((42, 23), (batch.Recipients, batch.Needed));
        Assert.Equal(24, Read("for \"Cliff ward\", 43 cards\nmakers 2\nspare 2\n").Needed);
    }

    [Theory]
    [InlineData(9, -1)]
    [InlineData(10, 0)]
    [InlineData(12, 2)]
    public void The_surplus_is_what_is_made_beyond_what_is_needed(int made, long surplus)
    {
        var batch = Read($"for \"Cliff ward\", 10 cards\nmake {made} of \"fair-winds.card\"\n");
        Assert.Equal(surplus, batch.Surplus);
        Assert.Equal(made >= 11, batch.CanSpare(1));
    }

    [Fact]
    public void Without_recipients_no_number_of_cards_is_needed()
    {
        var batch = Read("make 9 of \"fair-winds.card\"\n");
        Assert.Equal((null, null, null), (batch.Recipients, batch.Needed, batch.Surplus));
        Assert.True(batch.CanSpare(9));
    }

    [Theory]
    [InlineData("card \"Lamp\"\nbase A2, of white\n")]
    [InlineData("stash \"Museum\"\n")]
    public void Another_kind_of_file_is_not_a_batch(string text) => Assert.Null(Compile(text).Batch);

    private static Batch Read(string lines) => ReadFile("batch \"Lamp day\"\n" + lines);

    private static Batch ReadFile(string text)
    {
        var compilation = Compile(text);
        Assert.Empty(compilation.Findings);
        return compilation.Batch!;
    }

    private static Compilation Compile(string text) => Compiler.Compile(new SourceText("day.batch", text), new TestWorld());
}
