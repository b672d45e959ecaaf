using Sketch.Batches;
using Sketch.Edits;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Tests.Project;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Edits;

public class KeptFillingsTests
{
    private const string Start = "batch \"Lamp day\"\n";

    [Theory]
    [InlineData("make 12 of \"a.card\"\n", "make 12 of \"a.card\"\n  role sky: gulls, back\n")]
    [InlineData("make 12 of \"a.card\" # twelve\nmakers 2\n", "make 12 of \"a.card\" # twelve\n  role sky: gulls, back\nmakers 2\n")]
    [InlineData("make 12 of \"a.card\"", "make 12 of \"a.card\"\n  role sky: gulls, back")]
    [InlineData("make 12 of \"a.card\"\n    message \"ahoy\"\n",
        "make 12 of \"a.card\"\n    role sky: gulls, back\n    message \"ahoy\"\n")]
    [InlineData("make 12 of \"a.card\"\n\trole deep: navy\n\tmessage \"ahoy\"",
        "make 12 of \"a.card\"\n\trole deep: navy\n\trole sky: gulls, back\n\tmessage \"ahoy\"")]
    [InlineData("make 12 of \"a.card\"\n  role sky: night #102030 # was\n", "make 12 of \"a.card\"\n  role sky: gulls, back # was\n")]
    [InlineData("make 12 of \"a.card\"\n  role Sky: any offcut\n", "make 12 of \"a.card\"\n  role Sky: gulls, back\n")]
    [InlineData("make 12 of \"a.card\"\r\n  role deep: navy", "make 12 of \"a.card\"\r\n  role deep: navy\r\n  role sky: gulls, back")]
    [InlineData("make 12 of \"a.card\"\nmake 2 of \"b.card\"\n\trole deep: navy\n",
        "make 12 of \"a.card\"\n\trole sky: gulls, back\nmake 2 of \"b.card\"\n\trole deep: navy\n")]
    public void A_make_line_gets_the_chosen_paper(string lines, string kept) =>
        Assert.Equal(Start + kept, Keep(Start + lines, 2, new PaperChoice("sky", "gulls", PaperSide.Back)));

    [Fact]
    public void Make_lines_directly_under_the_title_are_edited_too() => Assert.Equal(
        Start + "  make 12 of \"a.card\"\n    role sky: #16324f\n",
            Keep(Start + "  make 12 of \"a.card\"\n", 2, new PaperChoice("sky", "#16324f", PaperSide.Front)));

    [Theory]
    [InlineData(1, "gulls")]
    [InlineData(3, "gulls")]
    [InlineData(2, "two gulls")]
    [InlineData(2, "x")]
    [InlineData(2, "12")]
    public void Other_lines_and_names_that_cannot_be_written_change_nothing(int line, string paper) =>
        Assert.Equal(Start + "make 12 of \"a.card\"\n",
            Keep(Start + "make 12 of \"a.card\"\n", line, new PaperChoice("sky", paper, PaperSide.Front)));

    [Theory]
    [InlineData("\n", true)]
    [InlineData("\n", false)]
    [InlineData("\r\n", true)]
    [InlineData("\r\n", false)]
    public void Every_make_line_of_the_sample_reads_back_with_the_chosen_papers(string lineEnd, bool ends)
    {
        var text = File.ReadAllText(Repository.PathTo("sketches", "lamp-day.batch")).ReplaceLineEndings(lineEnd);
        text = ends ? text : text[..text.IndexOf("cut 12", StringComparison.Ordinal)].TrimEnd();
        PaperChoice[] choices = [new("sky", "shore", PaperSide.Back), new("light", "#cfa646", PaperSide.Front),
            new("sail", "plaid", PaperSide.Front), new("sand", "white", PaperSide.Front)];
        var makes = Read(text).Makes;
        for (var i = 0; i < makes.Length; i++)
        {
            var line = Read(text).Makes[i].Location.Start.Line;
            text = Keep(text, line, choices);
            Assert.Empty(KeptFillings.InBatch(new("lamp-day.batch", text), line, choices));
        }

        Assert.Equal(makes.Length, Read(text).Makes.Length);
        Assert.All(Read(text).Makes, make => Assert.All(choices, choice =>
        {
            var paint = make.Roles.Single(r => r.Role == choice.Role).Paint;
            Assert.Equal((choice.Paper, choice.Side), (paint.Paper ?? paint.Look.Ground.Hex, paint.Side));
        }));
        Assert.DoesNotContain("\n", text.Replace(lineEnd, "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    private static Batch Read(string text)
    {
        var compilation = Compiler.Compile(new SourceText("lamp-day.batch", text), new TestWorld());
        Assert.Empty(compilation.Findings);
        return compilation.Batch!;
    }

    private static string Keep(string text, int line, params PaperChoice[] choices) =>
        TextEdit.Apply(text, KeptFillings.InBatch(new("lamp-day.batch", text), line, choices));
}
