using System.Reflection;
using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Tests.Language;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;
using Xunit;

namespace Sketch.Tests.Diagnostics;

/// <summary>Every kind of finding of reading and layout, each with a text that produces it.</summary>
public class FindingCatalogueTests
{
    private const string Head = "card \"x\"\nbase A2, of white\n";

    private static readonly Dictionary<string, string> Causes = new()
    {
        ["SK001"] = new string(' ', Limits.Characters + 1),
        ["SK002"] = "# nothing yet\n",
        ["SK101"] = Head + "front\n  star 1; of red\n",
        ["SK102"] = Head + "front\n  star 1/7, of red\n",
        ["SK103"] = Head + "front\n  star 1, of #12\n",
        ["SK104"] = Head + "front\n  text \"ahoy\n",
        ["SK105"] = Head + "front\n  star 1, of red\n\tstar 1, of red\n",
        ["SK106"] = Head + "front\n    star 1, of red\n  star 1, of red\n",
        ["SK107"] = HostileInputs.Text("nested a thousand deep"),
        ["SK108"] = Head + "front\n  star 1, of red,\ninside\n",
        ["SK110"] = Head + "front\n  stra 1\n",
        ["SK111"] = Head + "front\n  star 1, bottem 1\n",
        ["SK112"] = Head + "front\n  star 1, over bottom\n",
        ["SK113"] = Head + "front\n  star 1, top 1 bottom 1\n",
        ["SK114"] = Head + "front\n  back: star 1, of red\n",
        ["SK115"] = Head + "front\n  mat +1/8, of red\n",
        ["SK116"] = Head + "front\n  star 1, wrap 1/2, of red\n",
        ["SK117"] = Head + "front\n  star 1, top 1, top 2, of red\n",
        ["SK118"] = Head + "front\n  strip 1, of red\n",
        ["SK119"] = Head + "front\n  0 star 1, of red\n",
        ["SK201"] = "card \"x\"\nbase A12\n",
        ["SK202"] = Head + "front\n  use lantern\n",
        ["SK203"] = Head + "front\n  star 1, above lamp, of red\n",
        ["SK204"] = Head + "front\n  panel 1 x 1, of red\n    lamp: star 1, of red\n  panel 1 x 1, of red\n    lamp: star 1, of red\n  "
            + "star 1, above lamp, of red\n",
        ["SK205"] = Head + "front\n  lamp: star 1, of red\n  lamp: star 1, of red\n",
        ["SK206"] = "card \"x\"\nlike \"none.card\"\n",
        ["SK207"] = HostileInputs.Text("a card like itself"),
        ["SK210"] = Head + "front\n  star 1, of rde\n",
        ["SK211"] = Head + "role sky: red\nfront\n  star 1, of red\n",
        ["SK212"] = Head + "front\n  star 1\n",
        ["SK213"] = Head + "front\n  3 tag 1 \"a\" \"b\", of red\n",
        ["SK214"] = Head + "front\n  text \"bell ♪\"\n",
        ["SK215"] = Head + "front\n  text \"bell\", font \"None.ttf\"\n",
        ["SK216"] = "card \"x\"\nbase 148 x 105 mm, of white\n",
        ["SK217"] = "card \"x\"\nbase 148 x 105, of white\n",
        ["SK301"] = Head + "front\n  panel, of red\n",
        ["SK302"] = Head + "front\n  panel 1 x 1, showing 1, of red\n",
        ["SK303"] = Head + "front\n  a: panel 1 x 1, above b, of red\n  b: panel 1 x 1, above a, of red\n",
        ["SK304"] = Head + "front\n  panel, showing 3, of red\n",
        ["SK305"] = Head + "front\n  panel 1 x 1, left 1, right 1, of red\n",
        ["SK306"] = Head + "front\n  panel 4 x 4, of red\n    201 window 1/16 x 1/16, in a grid 20 across, gap 1/16\n",
        ["SK307"] = Head + "front\n  panel 1 x 1, left 900 m, shift right 900 m, of red\n",
        ["SK308"] = Head + "front\n  6 square 1, spread, of red\n",
        ["SK309"] = Head + "front\n  star 1, tucked under, of red\n",
        ["SK310"] = Head + "front\n  5 star 1, in a grid 2 x 2, of red\n",
        ["SK311"] = HostileInputs.Text("each piece above the next"),
        ["SK320"] = "card \"x\"\nlike \"one.card\"\nbase 5 x 7\nrefit sizes\n",
    };

    public static TheoryData<string> Codes =>
        [.. AllKinds().Select(k => k.Code).Where(c => string.CompareOrdinal(c, "SK4") < 0).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void Every_finding_of_reading_and_layout_can_be_produced(string code) =>
        Assert.Contains(Compiler.Compile(new SourceText("storm.card", Causes[code]), new Pier()).Findings, f => f.Code == code);

    [Fact]
    public void No_two_kinds_share_a_code() => Assert.Equal(AllKinds().Count(), AllKinds().Select(k => k.Code).Distinct().Count());

    private static IEnumerable<FindingKind> AllKinds() => typeof(FindingCatalogue)
        .GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => f.GetValue(null)).OfType<FindingKind>();

    /// <summary>A world with one card, no font file and letters only below U+2000.</summary>
    private sealed class Pier : IWorld
    {
        private readonly TestWorld _files = HostileInputs.World().WithText("one.card", Head + "front\n  star 1, top 1, of red\n");

        public Result<SourceText> ReadText(string path, string namedIn) => _files.ReadText(path, namedIn);

        public IEnumerable<string> NamesBeside(string path) => _files.NamesBeside(path);

        public Result<Outline> ReadArtwork(string path, string namedIn) => _files.ReadArtwork(path, namedIn);

        public Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width) => _files.ReadPicture(path, namedIn, width);

        public Result<ShapedWords> ShapeWords(string words, string? font, string namedIn) => font is not null
            ? new Failure("there is no such file.")
            : _files.ShapeWords(words, font, namedIn)
                .Map(shaped => shaped with { MissingCharacters = new([.. words.Where(c => c >= '\u2000').Distinct()]) });

        public TextRun SetWords(string words) => _files.SetWords(words);
    }
}
