using System.Collections.Immutable;
using Sketch.Assembly;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Units;

namespace Sketch.Planning.Supplies;

/// <summary>Adds up what a batch needs besides paper.</summary>
internal sealed class SupplyList
{
    private readonly Stash? _stash;
    private readonly List<SupplyNeed> _needs = [];

    private SupplyList(Stash? stash) => _stash = stash;

    /// <summary>Lines, gems and tape first, as the cards name them, then envelopes, foam and adhesive.</summary>
    public static ImmutableArray<SupplyNeed> Of(BatchFiles files, OrderBook book)
    {
        var list = new SupplyList(files.Stash);
        foreach (var ready in book.Ready)
        {
            list.AddReady(ready);
        }

        foreach (var design in files.Designs)
        {
            list.AddEnvelope(design);
        }

        foreach (var design in files.Designs)
        {
            list.AddFastening(design, [.. book.Ready.Where(r => r.Design == design).Select(r => r.Piece)]);
        }

        return [.. list._needs.OrderBy(n => n.Kind switch { NeedKind.Envelope => 1, NeedKind.Foam => 2, NeedKind.Adhesive => 3, _ => 0 })];
    }

    private void AddReady(ReadyPiece ready)
    {
        var size = ready.Piece.Box.Grow(ready.Piece.Wrap).Size;
        var kind = ready.Piece.Kind switch { PieceKind.Line => NeedKind.Line, PieceKind.Tape => NeedKind.Tape, _ => NeedKind.Gem };
        var measure = Length.Min(ready.Piece.Box.Width, ready.Piece.Box.Height);
        var stock = OnHand(kind, measure, ready.Use.Name, ready.Use.OtherName);
        var name = stock.IsEmpty ? (ready.Use.Colours.Length > 0 ? ready.Use.OtherName : null) ?? ready.Use.Name : stock[0].Name;
        var byLength = kind != NeedKind.Gem;
        Add(new(kind, name, measure, null, byLength, stock) { IsExpected = true },
            ready.Design, byLength ? Length.Max(size.Width, size.Height).Nanometres : 1);
    }

    private void AddEnvelope(Design design)
    {
        var face = design.Card.Find(FaceKind.Envelope) ?? design.Card.Find(FaceKind.EnvelopeBack);
        var usual = NamedSizes.UsualEnvelope(design.Card.Base.Closed);
        if ((face?.Size ?? usual?.Size) is not { } size)
        {
            return;
        }

        var colour = face?.Paint is { } paint ? PaperUse.For(paint, _stash).Name : null;
        var fitting = (_stash?.Supplies ?? []).Where(s => s.Kind == SupplyKind.Envelope && s.Size == size).ToImmutableArray();
        var stock = fitting.Where(s => s.Name.Equals(colour, StringComparison.OrdinalIgnoreCase)).Concat(fitting).Take(1)
            .ToImmutableArray();
        var name = stock.IsEmpty ? NamedSizes.Envelopes.FirstOrDefault(e => e.Size == size)?.Name ?? "envelope" : stock[0].Name;
        Add(new(NeedKind.Envelope, name, null, size, false, stock) { IsExpected = face is not null || Counts(SupplyKind.Envelope) },
            design, 1);
    }

    private void AddFastening(Design design, ImmutableArray<Piece> ready)
    {
        var adhesive = OnHand(NeedKind.Adhesive, null, "adhesive", null);
        foreach (var piece in design.Card.Pieces.Where(p => p.Matter == PieceMatter.Paper && !ready.Contains(p)))
        {
            if (piece.Foam > Length.Zero)
            {
                var stock = OnHand(NeedKind.Foam, piece.Foam, null, null);
                var byLength = stock.IsEmpty || stock[0].Long is not null;
                Add(new(NeedKind.Foam, stock.IsEmpty
                    ? "foam" : stock[0].Name, piece.Foam, null, byLength, stock)
                { IsExpected = Counts(SupplyKind.Foam) },
                    design, byLength ? Fastening.Strips(piece.Box.Size)
                        .Nanometres : Fastening.Pads(piece.Box.Size), Fastening.Strips(piece.Box.Size).Nanometres);
            }
            else
            {
                Add(new(NeedKind.Adhesive, adhesive.IsEmpty ? "adhesive" : adhesive[0].Name, null, null, true, adhesive),
                    design, Fastening.Strips(piece.Box.Size).Nanometres);
            }
        }
    }

    private bool Counts(SupplyKind kind) => (_stash?.Supplies ?? []).Any(s => s.Kind == kind);

    private ImmutableArray<Supply> OnHand(NeedKind kind, Length? measure, string? name, string? otherName)
    {
        var of = kind switch
        {
            NeedKind.Line => SupplyKind.Line,
            NeedKind.Gem => SupplyKind.Gem,
            NeedKind.Foam => SupplyKind.Foam,
            _ => SupplyKind.Tape,
        };
        var fitting = (_stash?.Supplies ?? []).Where(s => s.Kind == of && (measure is null || s.Measure == measure)).ToList();
        var named = new[] { name, otherName }.OfType<string>()
            .Select(n => fitting.Where(s => s.Name.Equals(n, StringComparison.OrdinalIgnoreCase)).ToImmutableArray())
            .FirstOrDefault(s => !s.IsEmpty);
        return kind == NeedKind.Foam ? [.. fitting.Take(1)] : named.IsDefault ? [] : named;
    }

    private void Add(SupplyNeed need, Design design, long perCard, long strips = 0)
    {
        var at = _needs.FindIndex(
            n => n.Kind == need.Kind && n.Measure == need.Measure && n.Size == need.Size && n.ByLength == need.ByLength
            && n.Name.Equals(need.Name, StringComparison.OrdinalIgnoreCase));
        if (at < 0)
        {
            _needs.Add(need);
            at = _needs.Count - 1;
        }

        var known = _needs[at];
        var share = known.Shares.FirstOrDefault(s => s.Design == design);
        _needs[at] = known with
        {
            IsExpected = known.IsExpected || need.IsExpected,
            Shares = share is null ? known.Shares.Add(new(design, perCard) { Strips = strips })
                : known.Shares.Replace(share, share with { PerCard = share.PerCard + perCard, Strips = share.Strips + strips }),
        };
    }
}
