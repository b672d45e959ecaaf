using Sketch.Diagnostics;
using Sketch.Fuzz.Inputs;
using Sketch.Fuzz.Invariants;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Fuzz.Targets;

/// <summary>
/// From a damaged text of any kind to the findings of the parser and to its tidy form: nothing is laid out, so that millions can run.
/// </summary>
internal sealed class TextTarget : IFuzzTarget
{
    private const string Stem = "storm";

    public string Name => "text";

    public int Weight => 6;

    public FuzzInput Make(Draws draws)
    {
        var (kind, text) = draws.Below(8) switch
        {
            0 => ("stash", draws.OnceIn(2) ? draws.Any(Corpus.Stashes) : new GrammarStashes(draws).Stash()),
            1 => ("batch", draws.Any(Corpus.Batches)),
            2 => ("card", draws.Any(Corpus.Cards)),
            _ => ("card", GrammarCards.Text(draws)),
        };
        return new([new($"{Stem}.{kind}", Damage.OfText(text, Corpus.All, draws))]);
    }

    public void Run(FuzzInput input)
    {
        if (input.Files.FirstOrDefault(f => f.Name.StartsWith(Stem, StringComparison.Ordinal)) is not { } file)
        {
            return;
        }

        var source = new SourceText(file.Name, file.Text);
        var findings = new FindingBag();
        Parser.Parse(source, findings);
        FindingRules.Check(findings.ToImmutable());
        if (Formatter.Format(source, new()) is { } formatted)
        {
            var again = Formatter.Format(new(file.Name, formatted), new());
            BrokenInvariantException.Unless(formatted == again, "format is idempotent", formatted);
        }
    }
}
