using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Fuzz.Inputs;
using Sketch.Fuzz.Invariants;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Planning.Plans;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Fuzz.Targets;

/// <summary>Files of all kinds with bytes changed: texts, drawings, pictures, fonts, lists of names, limits of the post, counts.</summary>
internal sealed class FileTarget : IFuzzTarget
{
    private const string Card = "storm.card";

    private static readonly string[] Texts = [.. Corpus.All];

    private static readonly string[] Fonts = ["AmaticSC-Bold.ttf", "SairaStencilOne-Regular.ttf", "CourierPrime-Regular.ttf"];

    private const string WithFiles = "card \"Lamp\"\nbase A2, fold left, of white\nrole sky: waves\nfont \"x.ttf\"\nfront\n"
        + "  outline 2, file \"x.svg\", of sky\n    mat +1/8, of navy\n  stamp 1, file \"x.svg\", left 1/4, ink navy\n"
        + "  text \"Fair winds\", top 1/4\n  word \"Lamp\", bottom 1/2, of red\n  panel 2 x 3, of sky\n";

    private const string Batch = "batch \"Day\"\nstash \"shelf.stash\"\nfor \"Cliff ward\", by post\n"
        + "  names \"names.csv\"\nmake 2 of \"storm.card\"\n";

    private const string Stash = "stash \"Shelf\"\npaper sky: 12 x 12, 3 sheets, front \"scan.png\" 12 wide, back \"scan.png\"\n";

    public string Name => "file";

    public int Weight => 3;

    public FuzzInput Make(Draws draws) => draws.Below(6) switch
    {
        0 => new([new("text", Damage.OfBytes(System.Text.Encoding.UTF8.GetBytes(draws.Any(Texts)), draws))]),
        1 => new([new(Card, WithFiles.Replace("font \"x.ttf\"\n", "", StringComparison.Ordinal)), new("x.svg",
            Pictures.DamagedDrawing(draws))]),
        2 => new([new(Card, WithFiles), new("x.ttf", Damage.OfBytes(Font(draws), draws)), new("x.svg", Corpus.Read("sketches",
            "boat.svg"))]),
        3 => new([new(Card, WithFiles), new("shelf.stash", Stash), new("scan.png", Pictures.Damaged(draws)), new("x.ttf", Font(draws))]),
        4 => new([new("day.batch", Batch), new(Card, RandomCards.Text(draws.Below(1_000_000))), new("shelf.stash", Stash),
            new("names.csv", Damage.OfBytes("Ann Lamp\nBeth,\"Ahoy, {name}\"\n\"Carol \"\"C\"\" Sail\",x\n"u8.ToArray(), draws)),
            new("post.csv", draws.OnceIn(2) ? Damage.OfBytes(Post, draws) : Post)]),
        _ => new([new("day.batch", Batch), new("day.count",
            Damage.OfBytes("2026-11-24 19:05 cut 12 \"Lamp\" #5d2c8e0b71f4a936\n# two\n2026-11-27 16:40 given 6 "u8
            .ToArray().Concat("\"Lamp\" to \"Cliff ward\" note \"a \"\"b\"\"\" #c4a8e6f213579bd0\n"u8.ToArray()).ToArray(), draws))]),
    };

    private static readonly byte[] Post = Corpus.Read("src", "Sketch", "Stationery", "letter-limits.csv");

    private static byte[] Font(Draws draws) => Corpus.Read("src", "Sketch.Output", "Lettering", "Fonts", draws.Any(Fonts));

    public void Run(FuzzInput input)
    {
        var world = input.Files.Aggregate(new MemoryFiles(), (files, file) => files.With(file.Name, file.Content));
        foreach (var file in input.Files)
        {
            var read = TextContent.Decode(file.Content);
            BrokenInvariantException.Unless(read.Problem is null or { Length: > 5 }, "a file that is no text has a reason",
                read.Problem ?? "");
            if (read.ValueOrDefault is { } text && !file.Name.EndsWith("svg", StringComparison.Ordinal))
            {
                Read(new(file.Name, text), world);
            }
        }
    }

    private static void Read(SourceText source, MemoryFiles world)
    {
        var findings = new FindingBag();
        if (source.Path.EndsWith(".count", StringComparison.Ordinal))
        {
            CountLog.Read(source, findings);
            FindingRules.Check(findings.ToImmutable());
            return;
        }

        var shelf = world.ReadText("shelf.stash", source.Path).ValueOrDefault;
        var stash = shelf is null ? null : Compiler.Compile(shelf, world).Stash;
        var filling = RoleFilling.None with { Stash = stash, Choices = stash is null ? [] : [new("sky", "sky", PaperSide.Back)] };
        var compilation = BatchCheck.Of(Compiler.Compile(source, world, filling), world);
        FindingRules.Check(compilation.Findings);
        Formatter.Format(source, findings);
        if (compilation.Card is { } card)
        {
            WellFormed.Svg(CardDrawing.Draw(card, FaceKind.Front));
        }
    }
}
