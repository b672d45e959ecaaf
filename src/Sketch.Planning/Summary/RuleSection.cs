using Sketch.Planning.Demand;
using Sketch.Planning.Rules;

namespace Sketch.Planning.Summary;

/// <summary>The rules of recipients that only a person can check, to tick.</summary>
internal static class RuleSection
{
    /// <summary>The part of the summary; null if no recipient has rules.</summary>
    public static ReportSection? Of(BatchFiles files)
    {
        var rules = files.Batch.For.SelectMany(f => files.Batch.RulesOf(f), (f, rule) => (f.Whom, rule.Text)).ToList();
        if (rules.Count == 0)
        {
            return null;
        }

        var ticked = rules.Where(r => !RecipientRule.IsChecked(r.Text)).Select(r => $"[  ] {r.Whom}: {r.Text}");
        return new("Rules of those who receive",
            ["The rules are guidance; what the recipient says takes precedence. "
                + "Rules that Sketch checks are reported where a card breaks them.",
                .. ticked]);
    }
}
