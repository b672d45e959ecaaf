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
    private const string Guidance = "Change the card, or ask first: the recipient's own word holds.";

    /// <summary>Adds a warning for each rule that a card breaks, at its piece, else at the line of the batch.</summary>
    public static void Report(BatchFiles files, FindingBag findings)
    {
        foreach (var rule in files.Batch.RuleSets.SelectMany(s => s.Rules).Where(r => !RecipientRule.IsChecked(r.Text)))
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

    private static IEnumerable<string> MessagesOf(BatchFiles files, Design design, Recipients recipient) =>
        files.PeopleOf(recipient).Select(p => p.Message).Append(design.MessageFor(recipient)).OfType<CardMessage>()
            .SelectMany(m => m.Lines).Distinct();
}
