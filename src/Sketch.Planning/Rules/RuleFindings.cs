using Sketch.Batches;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Planning.Post;
using Sketch.Text;

namespace Sketch.Planning.Rules;

/// <summary>Reports where cards break the rules of those who get them.</summary>
internal static class RuleFindings
{
    private const string Guidance = "Change the card, or ask first: what the recipient says takes precedence.";

    /// <summary>Adds a warning for each rule that a card breaks, at its piece, else at the line of the batch.</summary>
    public static void Report(BatchFiles files, FindingBag findings)
    {
        foreach (var rule in files.Batch.RuleSets.SelectMany(s => s.Rules)
            .Where(r => !RecipientRule.IsChecked(r.Text) && !RecipientRule.IsAboutNames(r.Text)))
        {
            if (Nearest.Find(rule.Text, RecipientRule.Known) is { } near)
            {
                findings.Add(FindingCatalogue.RuleMisspelt, rule.Location, $"\"{rule.Text}\" is not a rule that is checked.",
                    $"Did you mean \"{near}\"?", $"\"{near}\"");
            }
        }

        var thickness = files.Designs.ToDictionary(d => d, d => PostalItem.ThicknessOf(d.Card, files.Stash).High);
        var said = new HashSet<(Location, string)>();
        foreach (var recipient in files.Batch.For)
        {
            foreach (var rule in files.Batch.RulesOf(recipient))
            {
                Names(files, recipient, rule.Text, findings);
                foreach (var design in files.Designs.Where(d => Batch.Gets(recipient, d.Order)))
                {
                    var messages = MessagesOf(files, design, recipient);
                    foreach (var breach in RecipientRule.Of(rule.Text, design.Card, messages, thickness[design]))
                    {
                        var place = breach.Piece?.Location ?? design.Order.Location;
                        var message = $"\"{design.Card.Title}\" has {breach.What}, and \"{recipient.Whom}\" asks for: {rule.Text}.";
                        if (said.Add((place, message)))
                        {
                            findings.Add(FindingCatalogue.RuleBroken, place, message, Guidance);
                        }
                    }
                }
            }
        }
    }

    // Names that the batch knows: those of its list, and those of its makers where words or a message have them.
    private static void Names(BatchFiles files, Recipients recipient, string rule, FindingBag findings)
    {
        if (!RecipientRule.IsAboutNames(rule))
        {
            return;
        }

        foreach (var person in files.PeopleOf(recipient).Where(p => RecipientRule.HasSurname(p.Name)))
        {
            findings.Add(FindingCatalogue.RuleBroken, person.Location,
                $"\"{person.Name}\" is more than a first name, and \"{recipient.Whom}\" asks for: {rule}.",
                "Write only the first name, or ask first: what the recipient says takes precedence.");
        }

        foreach (var design in files.Designs.Where(d => Batch.Gets(recipient, d.Order)))
        {
            var words = design.Card.Pieces.Select(p => p.Words?.Text).OfType<string>()
                .Concat(MessagesOf(files, design, recipient)).ToList();
            foreach (var maker in files.Batch.MakerNames.Where(m => RecipientRule.HasSurname(m)
                && words.Exists(w => w.Contains(m, StringComparison.OrdinalIgnoreCase))))
            {
                findings.Add(FindingCatalogue.RuleBroken, design.MessageFor(recipient)?.Location ?? design.Order.Location,
                    $"\"{design.Card.Title}\" is signed \"{maker}\", and \"{recipient.Whom}\" asks for: {rule}.", Guidance);
            }
        }
    }

    private static IEnumerable<string> MessagesOf(BatchFiles files, Design design, Recipients recipient) =>
        files.PeopleOf(recipient).Select(p => p.Message).Append(design.MessageFor(recipient)).OfType<CardMessage>()
            .SelectMany(m => m.Lines).Distinct();
}
