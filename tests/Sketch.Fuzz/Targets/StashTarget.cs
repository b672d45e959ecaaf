using Sketch.Fuzz.Inputs;
using Sketch.Fuzz.Invariants;
using Sketch.Output.Contact;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Variants;

namespace Sketch.Fuzz.Targets;

/// <summary>A stash, and one card in the papers of it.</summary>
internal sealed class StashTarget : IFuzzTarget
{
    private const string Main = "shelf.stash";
    private const string Card = "storm.card";

    public string Name => "stash";

    public int Weight => 2;

    public FuzzInput Make(Draws draws)
    {
        var stash = draws.OnceIn(3) ? draws.Any(Corpus.Stashes) : new GrammarStashes(draws).Stash();
        var card = draws.OnceIn(2) ? RandomCards.Text(draws.Below(1_000_000)) : GrammarCards.Text(draws);
        return new([new(Main, draws.OnceIn(2) ? Damage.OfText(stash, Corpus.All, draws) : stash), new(Card, card),
            new("scan.png", draws.OnceIn(3) ? Pictures.Damaged(draws) : Pictures.Any(draws))]);
    }

    public void Run(FuzzInput input)
    {
        var world = input.Files.Aggregate(new MemoryFiles(), (files, file) => files.With(file.Name, file.Content));
        var read = Compiler.Compile(new SourceText(Main, input[Main].Text), world);
        FindingRules.Check(read.Findings);
        if (read.Stash is not { } stash)
        {
            return;
        }

        var filling = RoleFilling.None with { Stash = stash };
        var compilation = Compiler.Compile(new SourceText(Card, input[Card].Text), world, filling);
        FindingRules.Check(compilation.Findings);
        if (compilation.Card is not { } card || compilation.HasErrors)
        {
            return;
        }

        var variants = VariantSearch.Find(card, stash, new([], [], 4));
        if (variants.Best.IsEmpty)
        {
            BrokenInvariantException.Unless(variants.WhyNone(card).EndsWith('.'), "no variants have a reason", variants.WhyNone(card));
            return;
        }

        using var svg = new MemoryStream();
        new ContactSheetFile(new(card, FaceKind.Front, filling, variants, world), _ => { }, default).WriteSvg(svg, "");
        WellFormed.Svg(System.Text.Encoding.UTF8.GetString(svg.ToArray()));
    }
}
