using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Binding;

/// <summary>Reads a line <c>message "…"</c>, which cards and batches share.</summary>
internal sealed class MessageReader(SourceText source, FindingBag findings)
{
    private const string Hint = "A message takes lettering, letters, ranged and by hand: message \"Keep a good light\", lettering script.";

    /// <summary>The message of a line after that of the lines before it, whose clauses still hold.</summary>
    /// <param name="before">The message so far, or null.</param>
    /// <param name="line">The line.</param>
    public CardMessage Read(CardMessage? before, WordsLine line)
    {
        var words = line.Words.Select(w => w.Text);
        var message = before is null
            ? new CardMessage([.. words], new(source, line.Span)) : before with { Lines = [.. before.Lines, .. words] };
        foreach (var clause in line.Clauses)
        {
            switch (clause)
            {
                case FontClause font:
                    message = message with { Font = new(font.Font.Text, source.Path) };
                    break;
                case MeasureClause { Word: "letters" } letters:
                    message = message with { Letters = letters.Amount };
                    break;
                case RangedClause ranged:
                    message = message with { Range = ranged.Range };
                    break;
                case FlagClause { Word: "by hand" }:
                    message = message with { IsByHand = true };
                    break;
                default:
                    findings.Add(FindingCatalogue.IdleClause, new(source, clause.Span), "This clause has no effect on a message.", Hint);
                    break;
            }
        }

        return message;
    }
}
