using System.Text.RegularExpressions;
using Sketch.Drawing;
using Sketch.Edits;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Tests.Project;
using Sketch.Tests.Stashes;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Edits;

public partial class KeptPapersTests
{
    private static readonly Stash Shelf = Stashed.Stash(
        """
        paper gulls: 12 x 12, 3 sheets, front waves #cfe3ea #6f9fb3, back stripes #f7f0df
        paper plain-side: 12 x 12, 3 sheets, front #101c33
        paper dots: 12 x 12, 3 sheets, front dots #102030 #f0e0d0
        paper stars: 12 x 12, 3 sheets, front plain #102030
        cardstock navy: letter, 25 sheets, front #16324f
        cardstock cream: letter, 25 sheets
        cardstock gold: A4, 6 sheets, front foil #cfa646
        cardstock unsaid: A4, 6 sheets
        """);

    [Theory]
    [InlineData("role sky: dots navy cream", "sky=gulls", "role sky: gulls #cfe3ea")]
    [InlineData("role sky: dots navy cream", "sky=gulls/back", "role sky: gulls #f7f0df, back")]
    [InlineData("role sky: white, back", "sky=gulls", "role sky: gulls #cfe3ea")]
    [InlineData("role sky: white , back # old", "sky=gulls", "role sky: gulls #cfe3ea # old")]
    [InlineData("role sky: white, front", "sky=gulls/back", "role sky: gulls #f7f0df, back")]
    [InlineData("role sky: white, front", "sky=gulls", "role sky: gulls #cfe3ea, front")]
    [InlineData("role sky: any offcut", "sky=gulls", "role sky: gulls #cfe3ea")]
    [InlineData("role  sky :   white     # the wide one", "sky=GULLS", "role  sky :   gulls #cfe3ea     # the wide one")]
    [InlineData("role sky: white, thick 1 mm, back", "sky=navy", "role sky: navy #16324f, thick 1 mm, front")]
    [InlineData("role sky: white", "sky=dots", "role sky: dots #102030 #f0e0d0")]
    [InlineData("role sky: white", "sky=stars", "role sky: stars #102030")]
    [InlineData("role sky: white", "sky=gold", "role sky: gold")]
    [InlineData("role sky: white", "sky=cream", "role sky: cream")]
    [InlineData("role sky: white", "sky=unsaid", "role sky: unsaid")]
    [InlineData("role sky: white", "sky=plaid", "role sky: plaid")]
    [InlineData("role sky: white", "sky=#16324f/back", "role sky: #16324f")]
    [InlineData("role sky: gulls #cfe3ea", "sky=gulls", "role sky: gulls #cfe3ea")]
    public void A_role_line_gets_the_chosen_paper(string line, string choice, string kept) =>
        Assert.Equal(kept, Keep("card \"Card\"\n" + line + "\n", choice)["card \"Card\"\n".Length..].TrimEnd('\n'));

    [Theory]
    [InlineData("deep=gulls")]
    [InlineData("sky=seagulls")]
    [InlineData("sky=#16324")]
    public void An_unknown_role_or_paper_changes_nothing(string choice) =>
        Assert.Equal("card \"Card\"\nrole sky: white\n", Keep("card \"Card\"\nrole sky: white\n", choice));

    [Fact]
    public void The_last_of_two_papers_for_one_role_counts() =>
        Assert.Equal("card \"Card\"\n  role sky: navy #16324f", Keep("card \"Card\"\n  role sky: white", "sky=gulls", "sky=navy"));

    public static TheoryData<string, string> Samples()
    {
        var samples = new TheoryData<string, string>();
        foreach (var card in Directory.GetFiles(Repository.PathTo("sketches"), "*.card").Order(StringComparer.Ordinal))
        {
            foreach (var form in (string[])["as written", "CRLF", "no last line end"])
            {
                samples.Add(Path.GetFileName(card), form);
            }
        }

        return samples;
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_sample_with_kept_papers_is_drawn_and_checked_like_one_with_those_papers_chosen(string sample, string form)
    {
        var world = new FolderFiles();
        var shelfPath = Repository.PathTo("sketches", "museum.stash");
        var stash = Compiler.Compile(new SourceText(shelfPath, File.ReadAllText(shelfPath)), world).Stash!;
        var path = Repository.PathTo("sketches", sample);
        var text = File.ReadAllText(path).ReplaceLineEndings(form == "CRLF" ? "\r\n" : "\n");
        var card = new SourceText(path, form == "no last line end" ? text.TrimEnd('\n') : text);
        string[] papers = [.. stash.Papers.Select(p => p.Name), "plaid", "coral", "#123456", "#abc"];
        for (var first = 0; first < papers.Length; first += 4)
        {
            PaperChoice[] choices = [.. Declared().Matches(card.Content).Select((m, i) =>
                new PaperChoice(m.Groups[1].Value, papers[(first + i) % papers.Length], i % 2 == 0 ? PaperSide.Back : PaperSide.Front))];

            var edits = KeptPapers.InCard(card, choices, stash);
            var kept = new SourceText(path, TextEdit.Apply(card.Content, edits));

            var chosen = Compiler.Compile(card, world, new(stash, [.. choices]));
            var read = Compiler.Compile(kept, world, new(stash, []));
            Assert.Equal(chosen.Findings.Select(f => (f.Code, f.Message)), read.Findings.Select(f => (f.Code, f.Message)));
            Assert.All(read.Card!.Faces, f => Assert.Equal(CardDrawing.Draw(chosen.Card!, f.Kind), CardDrawing.Draw(read.Card, f.Kind)));
            Assert.Empty(KeptPapers.InCard(kept, choices, stash));
        }
    }

    private static string Keep(string card, params string[] choices) => TextEdit.Apply(card, KeptPapers.InCard(
        new("card.card", card), choices.Select(c => PaperChoice.TryParse(c, out var choice) ? choice : throw new ArgumentException(c)),
            Shelf));

    [GeneratedRegex(@"^role (\w+):", RegexOptions.Multiline)]
    private static partial Regex Declared();
}
