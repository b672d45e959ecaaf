using System.Collections.Immutable;
using Sketch.Cutting;
using Sketch.Diagnostics;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Planning;

/// <summary>Tells what a plan shows to be wrong or worth knowing.</summary>
internal sealed class PlanFindings(BatchPlan plan, FindingBag findings)
{
    private readonly LengthStyle _lengths = LengthStyle.For(plan.Files.Batch.Units);

    /// <summary>Adds the findings of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="noLeftover">Pieces of any offcut that found no room.</param>
    /// <param name="findings">Where to.</param>
    public static void Tell(BatchPlan plan, ImmutableArray<UnplacedPieces> noLeftover, FindingBag findings)
    {
        var tell = new PlanFindings(plan, findings);
        tell.CardsAddUp();
        foreach (var paper in plan.Papers)
        {
            tell.Misfits(paper);
            tell.Shortage(paper);
        }

        tell.NoLeftover(noLeftover);
        foreach (var need in plan.Supplies)
        {
            tell.Shortage(need);
        }
    }

    private void CardsAddUp()
    {
        var batch = plan.Files.Batch;
        if (!plan.Files.LeftOut.IsEmpty)
        {
            // What is left out for its mistakes is told already, and that its cards are missing follows from it.
            return;
        }

        if (batch.Recipients is not { } recipients || batch.Needed is not { } needed)
        {
            return;
        }

        var shared = batch.Makers > 1 ? $" shared by {batch.Makers} makers" : "";
        var spare = batch.Spare > 0 ? $" and {batch.Spare} spare" : "";
        var sum = batch is { Makers: <= 1, Spare: 0 }
            ? $"{Counted.Of(needed, "card")} {(needed == 1 ? "is" : "are")} asked for"
            : $"{Counted.Of(recipients, "card")}{shared}{spare} are {Counted.Of(needed, "card")}{(batch.Makers > 1 ? " for each" : "")}";
        var place = batch.Makes.IsEmpty ? batch.Location : batch.Makes[^1].Location;
        var designs = batch.Makes.Length == 1 ? "the design makes" : "the designs make";
        if (plan.Cards < needed)
        {
            findings.Add(FindingCatalogue.TooFewCards, place, $"{sum}; {designs} {plan.Cards}, so {needed - plan.Cards} {(needed - plan.Cards == 1 ? "is" : "are")} missing.", $"Make {needed - plan.Cards} more of one of them.");
        }
        else if (plan.Cards == needed)
        {
            findings.Add(FindingCatalogue.CardsAddUp, place, $"{sum}; {designs} exactly {plan.Cards}, with none over.", batch.Spare == 0 ? "Add spare 1 and make one more if a card may go wrong." : "Nothing is to be done.");
        }
        else
        {
            findings.Add(FindingCatalogue.CardsAddUp, place, $"{sum}; {designs} {plan.Cards}, so {plan.Cards - needed} {(plan.Cards - needed == 1 ? "is" : "are")} over.", $"Make {plan.Cards - needed} fewer if paper is short.");
        }
    }

    private void Misfits(PaperPlan paper)
    {
        foreach (var misfit in paper.Plan.Unplaced)
        {
            var piece = plan.Pieces[misfit.Id];
            var sheet = paper.Order.Sheet;
            var turned = paper.Order.Stock is { Upright: true } || piece.Upright ? ", which is not turned" : "";
            findings.Add(FindingCatalogue.FitsNowhere, piece.Location,
                $"{Called(piece)}, {_lengths.Text(piece.Size)}{turned}, is larger than a sheet of {paper.Order.Paper}, {_lengths.Text(sheet.Usable.Size)} without its trim; {misfit.Count} {(misfit.Count == 1 ? "is" : "are")} left out.",
                "Make it smaller, join it from two pieces, or take a paper with larger sheets.");
        }
    }

    private void Shortage(PaperPlan paper)
    {
        if (paper.Short == 0)
        {
            if (!paper.Plan.IsProved)
            {
                findings.Add(FindingCatalogue.NotProved, PlaceOf(paper.Order), $"{paper.Order.Paper} takes {Counted.Of(paper.Plan.Sheets, "sheet")}; {paper.Plan.LowerBound} might do, which is not settled.", "Allow more time with --time.");
            }

            return;
        }

        var needed = $"{paper.Order.Paper}: {Counted.Of(paper.Plan.Sheets, "sheet")} {(paper.Plan.Sheets == 1 ? "is" : "are")} needed";
        if (paper.Order.Stock is { } stock)
        {
            findings.Add(FindingCatalogue.PaperShort, PlaceOf(paper.Order), $"{needed} and {stock.Sheets} {(stock.Sheets == 1 ? "is" : "are")} on hand, so {paper.Short} {(paper.Short == 1 ? "is" : "are")} missing.", $"Buy {Counted.Of(paper.Short, "sheet")}, or see in the plan what would help.");
        }
        else
        {
            findings.Add(FindingCatalogue.PaperShort, PlaceOf(paper.Order),
                $"{needed}, {_lengths.Text(paper.Order.Sheet.Size)} each, and the shelf has no paper of that name.",
                plan.Files.Batch.Stash is null ? "Name the shelf: stash \"museum.stash\"." : $"Put it into the stash, or another paper into its role under the make line.");
        }
    }

    private void NoLeftover(ImmutableArray<UnplacedPieces> unplaced)
    {
        foreach (var piece in unplaced)
        {
            var order = plan.Pieces[piece.Id];
            findings.Add(FindingCatalogue.NoLeftover, order.Location,
                $"{Called(order)}, {_lengths.Text(order.Size)}, may come from any offcut, and for {piece.Count} of {order.Count} no leftover is large enough.", "Name a paper for it, such as kraft.");
        }
    }

    private void Shortage(SupplyNeed need)
    {
        if (need.Short == 0)
        {
            return;
        }

        var place = need.Shares.IsEmpty ? plan.Files.Batch.Location : need.Shares[0].Design.Order.Location;
        var what = $"{SupplyText.Named(need, _lengths)}: {SupplyText.Amount(need, need.Needed, _lengths)} {(need.IsEstimate ? "by estimate " : "")}needed";
        if (need.Stock.IsEmpty)
        {
            findings.Add(FindingCatalogue.SupplyMissing, place, $"{what}, and the shelf has none.", "Put it into the stash, so that it can be counted.");
            return;
        }

        findings.Add(need.IsEstimate ? FindingCatalogue.EstimateShort : FindingCatalogue.SupplyShort, place,
            $"{what}, {SupplyText.Amount(need, need.OnHand!.Value, _lengths)} on hand, so {SupplyText.Amount(need, need.Short, _lengths)} missing.", "Buy more, or make fewer of the cards that take it.");
    }

    /// <summary>The line of the batch that first asks for something of this paper.</summary>
    private Location PlaceOf(PaperOrder paper) => paper.Pieces.IsEmpty ? plan.Files.Batch.Location
        : paper.Pieces[0].Design is { } design ? design.Order.Location : paper.Pieces[0].Location;

    private static string Called(PieceOrder piece) => piece.Design is { } design ? $"{piece.Path} of \"{design.Card.Title}\"" : "This piece";
}
