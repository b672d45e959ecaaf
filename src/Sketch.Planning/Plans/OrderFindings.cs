using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Checks;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Planning.Rules;
using Sketch.Planning.Supplies;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Plans;

/// <summary>Reports what is wrong with the orders of a batch, regardless of how its sheets are cut.</summary>
internal sealed class OrderFindings(BatchFiles files, FindingBag findings)
{
    private readonly LengthFormat _lengths = files.Batch.Units.Format();

    /// <summary>Adds all findings that need no plan.</summary>
    public static void Report(BatchFiles files, FindingBag findings)
    {
        var book = OrderBook.Of(files, findings);
        var orders = new OrderFindings(files, findings);
        orders.Recipients();
        foreach (var paper in book.Papers.Where(p => !p.Pieces.IsEmpty))
        {
            orders.Misfits(paper, SheetPlanner.Misfits(paper.Problem(files.Batch.Kerf)));
            orders.Missing(paper);
        }

        orders.Shortages(SupplyList.Of(files, book));
    }

    /// <summary>Reports what concerns the cards: how they add up, rules of recipients, dies and stamps, and messages.</summary>
    public void Recipients()
    {
        CardsAddUp();
        RuleFindings.Report(files, findings);
        Tools();
        MessageFindings.Report(files, findings);
    }

    private void Tools()
    {
        if (files.Stash is { } stash)
        {
            ToolFit.Check(files.Designs.Select(d => d.Card), stash, findings);
        }
    }

    private void CardsAddUp()
    {
        var batch = files.Batch;
        if (files.Count is { } count)
        {
            findings.Add(FindingCatalogue.LeftToCut, batch.Location, LeftToMake.Sentence(files, count),
                "The plan uses the stash as listed now. Update it to what is left: see left.stash of the earlier plan.");
            return;
        }

        if (!files.LeftOut.IsEmpty)
        {
            // Cards left out are reported already; that they are missing follows from that.
            return;
        }

        if (batch.Needed is not { } needed)
        {
            return;
        }

        if (!batch.MakerNames.IsEmpty)
        {
            ShortOfDesigns();
            EachMaker(needed);
            return;
        }

        var shares = batch.Shares;
        var isShared = shares.Any(s => s.Makers > 1);
        var spare = batch.Spare > 0 ? $" and {batch.Spare} spare" : "";
        var sum = !isShared && batch.Spare == 0
            ? $"{Counted.Of(needed, "card")} {(needed == 1 ? "is" : "are")} asked for"
            : $"{string.Join(" and ", shares)}{spare} are {Counted.Of(needed, "card")}"
                + (!isShared ? "" : shares.Length == 1 ? " for each" : " for this maker");
        ShortOfDesigns();
        var place = batch.Makes.IsEmpty ? batch.Location : batch.Makes[^1].Location;
        var designs = batch.Makes.Length == 1 ? "the design makes" : "the designs make";
        var (exactly, made) = batch.Available == files.Cards ? (" exactly", $"{files.Cards}")
            : ("", $"{files.Cards}, and {batch.Available - files.Cards} {(batch.Available - files.Cards == 1 ? "is" : "are")} on hand");
        var over = batch.Surplus!.Value;
        if (over < 0)
        {
            findings.Add(FindingCatalogue.TooFewCards, place,
                $"{sum}; {designs} {made}, so {-over} {(over == -1 ? "is" : "are")} missing.", $"Make {-over} more of one of them.");
        }
        else if (over == 0)
        {
            findings.Add(FindingCatalogue.CardsAddUp, place, $"{sum}; {designs}{exactly} {made}, with none to spare.",
                batch.Spare == 0 ? "Write spare 1 to allow for a card that goes wrong." : "Nothing needs to change.");
        }
        else
        {
            findings.Add(FindingCatalogue.CardsAddUp, place,
                $"{sum}; {designs} {made}, so {over} {(over == 1 ? "is" : "are")} over.", $"Make {over} fewer if paper is short.");
        }
    }

    private void EachMaker(int needed)
    {
        var makers = NamedMakers.Each(files.Batch).Select(m => (m.Name, m.Own, Makes: m.Own.Available)).ToList();
        var place = files.Batch.Makes.IsEmpty ? files.Batch.Location : files.Batch.Makes[^1].Location;
        foreach (var (name, own, makes) in makers.Where(m => m.Makes < m.Own.Needed))
        {
            findings.Add(FindingCatalogue.TooFewCards, place,
                $"{name} needs {Counted.Of(own.Needed ?? 0, "card")}, and the designs that {name} makes are {makes}, so "
                    + $"{own.Needed - makes} {(own.Needed - makes == 1 ? "is" : "are")} missing.",
                $"Add a line such as make {own.Needed - makes} of \"fair-winds.card\", made by \"{name}\".");
        }

        if (makers.All(m => m.Makes >= (m.Own.Needed ?? 0)))
        {
            findings.Add(FindingCatalogue.CardsAddUp, place,
                $"{string.Join(", ", makers.Select(m => $"{m.Name} needs {m.Own.Needed ?? 0} and makes {m.Makes}"))}: "
                    + $"together {Counted.Of(needed, "card")}.", "Nothing needs to change.");
        }
    }

    private void ShortOfDesigns()
    {
        var batch = files.Batch;
        foreach (var recipient in batch.For)
        {
            var share = batch.CardsHere(recipient);
            var made = batch.Makes.Where(m => Batch.Gets(recipient, m)).Sum(m => (long)m.Count + m.OnHand) + batch.OtherOnHand;
            if (made < share && batch.Makes.Any(m => !m.For.IsEmpty))
            {
                findings.Add(FindingCatalogue.TooFewForRecipient, recipient.Location,
                    $"\"{recipient.Whom}\" needs {Counted.Of(share, "card")}, and the designs that it gets make {made}.",
                    "Make more of these designs, or let it get another one.");
            }
        }
    }

    /// <summary>Reports pieces that fit no sheet and no offcut of their paper.</summary>
    public void Misfits(PaperOrder paper, ImmutableArray<UnplacedPieces> misfits)
    {
        foreach (var misfit in misfits)
        {
            var piece = paper.Pieces.First(p => p.Id == misfit.Id);
            var turned = paper.Stock is { Upright: true } || piece.Upright ? ", which is not turned" : "";
            findings.Add(FindingCatalogue.FitsNowhere, piece.Location,
                $"{Called(piece)}, {_lengths.Text(piece.Size)}{turned}, is larger than a sheet of {paper.Paper}, "
                + $"{_lengths.Text(paper.Sheet.Usable.Size)} without its trim; {misfit.Count} {(misfit.Count == 1 ? "is" : "are")} "
                + "left out.",
                "Make it smaller, join it from two pieces, or take a paper with larger sheets.");
        }
    }

    // How many sheets to buy is left to the plan.
    private void Missing(PaperOrder paper)
    {
        if (paper.Stock is null && !files.IsStashUnreadable)
        {
            findings.Add(FindingCatalogue.PaperShort, PlaceOf(files, paper),
                files.Batch.Stash is null ? $"The batch names no stash, so there is no paper called {paper.Paper}."
                    : $"The stash has no paper called {paper.Paper}.",
                MissingPaperHint(files, paper));
        }
    }

    /// <summary>What to do about a paper that the stash does not have.</summary>
    public static string MissingPaperHint(BatchFiles files, PaperOrder paper) =>
        files.Batch.Stash is null ? "Name the stash: stash \"museum.stash\"."
        : Nearest.Find(paper.Paper, files.Stash?.Papers.Select(p => p.Name) ?? []) is { } near ? $"Did you mean {near}?"
        : paper.Pieces[0].Design is null ? "Put it into the stash, or name another paper."
        : "Add it to the stash, or give its role another paper under the make line.";

    /// <summary>Reports supplies that run short; nothing if the stash cannot be read, as that is reported already.</summary>
    public void Shortages(ImmutableArray<SupplyNeed> supplies)
    {
        foreach (var need in files.IsStashUnreadable ? [] : supplies)
        {
            Shortage(need);
        }
    }

    private void Shortage(SupplyNeed need)
    {
        foreach (var (length, count) in need.Cutting?.TooLong ?? [])
        {
            findings.Add(FindingCatalogue.FitsNowhere, PlaceOf(need),
                $"{SupplyText.Named(need, _lengths)}: {count} pieces of {_lengths.WithUnit(length)} are needed, but its "
                    + $"{need.Cutting!.Noun}s are {_lengths.WithUnit(need.Cutting.Strip)} long.",
                "Make the piece or its wrap shorter, or take a longer strip or a roll.");
        }

        if (need.Short == 0)
        {
            return;
        }

        var place = PlaceOf(need);
        var what = $"{SupplyText.Named(need, _lengths)}: {SupplyText.Amount(need, need.Needed, _lengths)} "
            + $"{(need.IsEstimate ? "by estimate " : "")}needed";
        if (need.Stock.IsEmpty)
        {
            findings.Add(FindingCatalogue.SupplyMissing, place, $"{what}, and the stash has none.",
                "Add it to the stash so that it can be counted.");
            return;
        }

        findings.Add(need.IsEstimate ? FindingCatalogue.EstimateShort : FindingCatalogue.SupplyShort, place,
            $"{what}, {SupplyText.Amount(need, need.OnHand!.Value, _lengths)} on hand, so "
                + $"{SupplyText.Amount(need, need.Short, _lengths)} missing.",
            files.Batch.CanSpare(1) ? "Buy more, or make fewer of the cards that use it." : "Buy more.");
    }

    private Location PlaceOf(SupplyNeed need) =>
        need.Shares.IsEmpty ? files.Batch.Location : need.Shares[0].Design.Order.Location;

    /// <summary>The line of the batch that first needs this paper.</summary>
    public static Location PlaceOf(BatchFiles files, PaperOrder paper) => paper.Pieces.IsEmpty ? files.Batch.Location
        : paper.Pieces[0].Design is { } design ? design.Order.Location : paper.Pieces[0].Location;

    /// <summary>The name of a piece in findings.</summary>
    public static string Called(PieceOrder piece) => piece.Design is { } design ? $"{piece.Path} of \"{design.Card.Title}\"" : "This piece";
}
