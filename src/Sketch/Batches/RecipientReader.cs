using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Batches;

/// <summary>Reads a line that names a recipient, with what is indented beneath it.</summary>
internal sealed class RecipientReader(SourceText source, FindingBag findings)
{
    private const string Example = "Write for \"Cliff ward\", 24 cards.";

    /// <summary>
    /// The recipient; null if the number of cards is missing, which is reported.
    /// </summary>
    public Recipients? Read(ForLine line)
    {
        var recipient = new Recipients(line.Whom.Text, 0, new(source, line.Span));
        foreach (var clause in line.Clauses)
        {
            switch (clause)
            {
                case QuantityClause { Noun: null or "cards" } cards when recipient.Cards == 0:
                    recipient = recipient with { Cards = cards.Count };
                    break;
                case QuantityClause { Noun: "makers" } makers when recipient.SharedBy is null:
                    recipient = recipient with { SharedBy = makers.Count };
                    break;
                case FlagClause { Word: "by hand" or "by post" } way when recipient.Delivery == Delivery.Unsaid:
                    recipient = recipient with { Delivery = way.Word == "by hand" ? Delivery.ByHand : Delivery.ByPost };
                    break;
                case SpareClause spare:
                    recipient = recipient with { Spare = recipient.Spare + spare.Count };
                    break;
                case MadeByClause makers when recipient.SharedBy is null:
                    recipient = recipient with { MadeBy = NamedMaker.Of(makers, source), SharedBy = makers.Makers.Length };
                    break;
                default:
                    findings.Add(FindingCatalogue.IdleClause, new(source, clause.Span),
                        "This clause has no effect on those who receive cards.", Example);
                    break;
            }
        }

        foreach (var child in line.Children)
        {
            recipient = ReadChild(child, recipient);
        }

        if (recipient.Cards > 0)
        {
            return recipient;
        }

        if (!findings.HasErrors || line.Clauses.IsEmpty)
        {
            findings.Add(FindingCatalogue.Expected, new(source, line.Span),
                $"The number of cards for \"{line.Whom.Text}\" is missing.", $"Write for \"{line.Whom.Text}\", 24 cards.");
        }

        return null;
    }

    private Recipients ReadChild(LineSyntax child, Recipients recipient)
    {
        switch (child)
        {
            case WordsLine { Word: "date" } date when recipient.Date is null:
                return recipient with { Date = date.Words[0].Text };
            case WordsLine { Word: "note" } note:
                return recipient with { Notes = recipient.Notes + string.Concat(note.Words.Select(w => w.Text + "\n")) };
            case WordsLine { Word: "message" } message:
                return recipient with { Message = new MessageReader(source, findings).Read(recipient.Message, message) };
            case WordsLine { Word: "names" } names when recipient.Names is null:
                return recipient with { Names = new(names.Words[0].Text, new(source, names.Words[0].Span)) };
            case WordsLine { Word: "rules" } rules:
                var named = rules.Words.Select(w => new NamedRules(w.Text, new(source, w.Span)));
                return recipient with { Rules = recipient.Rules.AddRange(named) };
            case BadLine:
                return recipient;
            default:
                findings.Add(FindingCatalogue.Misplaced, new(source, child.Span), "This line does not belong under a recipient.",
                    "A recipient has lines such as date \"2026-12-10\", rules \"Care home\", message \"Keep a good light\", "
                        + "names \"names.csv\" and note \"Leave them at the desk.\"");
                return recipient;
        }
    }
}
