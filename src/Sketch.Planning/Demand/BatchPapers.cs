using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Checks;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Variants;

namespace Sketch.Planning.Demand;

/// <summary>Fills the cards of a batch with the papers that the batch and its stash give them, and checks them in these papers.</summary>
/// <param name="stash">The stash, or null.</param>
/// <param name="findings">Where to report.</param>
internal sealed class BatchPapers(Stash? stash, FindingBag findings)
{
    private readonly HashSet<Finding> _passed = [];

    /// <summary>The card in the papers of a make line.</summary>
    public LaidOutCard Fill(MakeRequest order, LaidOutCard card) =>
        Repainting.With(card, new(stash, []) { Batch = [.. order.Roles.Select(r => r.Paint)] });

    /// <summary>
    /// Reports what depends on the papers of the cards of a make line: in the card if it also holds for the card's own papers, else at the
    /// line of the batch that gives the paper.
    /// </summary>
    /// <param name="order">The make line.</param>
    /// <param name="filled">The card in its papers.</param>
    /// <param name="own">What was found in the card by itself.</param>
    public void Report(MakeRequest order, LaidOutCard filled, ImmutableArray<Finding> own)
    {
        foreach (var found in PaperChecks.Of(filled))
        {
            if (own.Contains(found.Finding))
            {
                Pass(found.Finding);
            }
            else
            {
                findings.Add(InBatch(order, filled, found));
            }
        }
    }

    /// <summary>Reports what depends on the papers of a card that is not planned, as found in the card by itself.</summary>
    public void ReportOwn(ImmutableArray<Finding> own)
    {
        foreach (var finding in own.Where(f => PaperChecks.Give(f.Kind)))
        {
            Pass(finding);
        }
    }

    private void Pass(Finding finding)
    {
        if (_passed.Add(finding))
        {
            findings.Add(finding);
        }
    }

    private static Finding InBatch(MakeRequest order, LaidOutCard card, PaperFinding found)
    {
        var roles = found.Papers.Select(p => p.Role).OfType<string>().ToList();
        var given = roles.Select(r => order.Roles.FirstOrDefault(c => c.Role.Equals(r, StringComparison.OrdinalIgnoreCase)))
            .OfType<RoleChoice>().FirstOrDefault();
        var other = (given?.Role ?? roles.FirstOrDefault()) is { } role ? $"Choose another paper for {role}" : "Choose other papers";
        var (place, name) = (found.Finding.Location, Path.GetFileName(found.Finding.Location.Source.Path));
        return new(
            found.Finding.Kind, given?.Location ?? order.Location, $"\"{card.Title}\" in these papers: {found.Finding.Message}",
            $"{other}, or edit line {place.Start.Line} of \"{name}\". {found.Finding.Hint}");
    }
}
