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

    /// <summary>What is stuck on first, as the cards name it, then tools, envelopes, foam and adhesive.</summary>
    /// <param name="files">The batch and what it names.</param>
    /// <param name="book">What its designs need.</param>
    /// <param name="cancellation">Ends the search.</param>
    public static ImmutableArray<SupplyNeed> Of(BatchFiles files, OrderBook book, CancellationToken cancellation = default)
    {
        var list = new SupplyList(files.Stash);
        foreach (var ready in book.Ready)
        {
            list.AddReady(ready);
        }

        foreach (var design in files.Designs)
        {
            list.AddTools(design);
            list.AddEnvelope(design);
        }

        foreach (var design in files.Designs)
        {
            list.AddFastening(design, [.. book.Ready.Where(r => r.Design == design).Select(r => r.Piece)]);
        }

        return [.. list._needs.OrderBy(Rank).Select(n => InStrips(n, cancellation))];
    }

    private static int Rank(SupplyNeed need) => need.Kind switch
    {
        SupplyKind.Stamp or SupplyKind.Die => 1,
        SupplyKind.Envelope => 2,
        SupplyKind.Foam => 3,
        SupplyKind.Adhesive => 4,
        _ => 0,
    };

    private static SupplyNeed InStrips(SupplyNeed need, CancellationToken cancellation) =>
        !need.ByLength || need.Stock.IsEmpty || need.Stock.Any(s => s.StripLength is null) ? need : need with
        {
            Cutting = StripPlan.Of(
                need.Stock, need.Shares.SelectMany(s => s.Lengths.Select(l => (l, need.CardsOf(s.Design)))), cancellation),
        };

    private void AddReady(ReadyPiece ready)
    {
        var piece = ready.Piece;
        var traits = piece.Kind.Traits;
        var kind = SupplyKinds.Find(piece.Kind.Name)!.Value;
        var hasTwoSides = kind.Traits.Measure == SupplyMeasure.OneOrTwo && !piece.Shape.Traits.IsSizedByOneNumber;
        Length? measure = hasTwoSides ? null
            : traits.IsCutToLength ? Length.Min(piece.Box.Width, piece.Box.Height) : piece.Box.Width;
        Size? size = hasTwoSides ? piece.Box.Size : null;
        var stock = OnHand(kind, measure, size, [ready.Use.Name, .. ready.Use.OtherNames]);
        var name = !stock.IsEmpty ? stock[0].Name
            : ready.Use.Colours.Length > 0 && !ready.Use.OtherNames.IsEmpty ? ready.Use.OtherNames[^1] : ready.Use.Name;
        var cut = piece.Box.Grow(piece.Wrap).Size;
        var length = Length.Max(cut.Width, cut.Height) + piece.Tails * 2;
        Add(new(kind, name, measure, size, traits.IsCutToLength, stock) { IsExpected = true },
            new(ready.Design, traits.IsCutToLength ? length.Nanometres : 1) { Lengths = traits.IsCutToLength ? [length] : [] });
    }

    /// <summary>The dies and rubber stamps that pieces name: one of each is enough.</summary>
    private void AddTools(Design design)
    {
        foreach (var piece in design.Card.Pieces.Where(p => p.Tool is not null))
        {
            var listed = (_stash?.Supplies ?? [])
                .Where(s => s.Kind.Traits.Count == SupplyCount.Tool && s.Name.Equals(piece.Tool, StringComparison.OrdinalIgnoreCase))
                .ToImmutableArray();
            var kind = !listed.IsEmpty ? listed[0].Kind
                : piece.Matter == PieceMatter.Paper && !piece.Kind.Traits.IsWords ? SupplyKind.Die : SupplyKind.Stamp;
            Add(new(kind, listed.IsEmpty ? piece.Tool! : listed[0].Name, listed.IsEmpty ? null : listed[0].Measure,
                listed.IsEmpty ? null : listed[0].Size, false, listed)
            { IsExpected = true }, new(design, 0));
        }
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
        Add(new(SupplyKind.Envelope, name, null, size, false, stock) { IsExpected = face is not null || Counts(SupplyKind.Envelope) },
            new(design, 1));
    }

    private void AddFastening(Design design, ImmutableArray<Piece> ready)
    {
        var adhesive = OnHand(SupplyKind.Adhesive, null, null, ["adhesive"]);
        foreach (var piece in design.Card.Pieces.Where(p => p.Matter == PieceMatter.Paper && !ready.Contains(p)))
        {
            var strips = Fastening.Strips(piece.Box.Size).Nanometres;
            if (piece.Foam > Length.Zero)
            {
                var stock = OnHand(SupplyKind.Foam, piece.Foam, null, []);
                var byLength = stock.IsEmpty || stock[0].Long is not null;
                var need = new SupplyNeed(SupplyKind.Foam, stock.IsEmpty ? "foam" : stock[0].Name, piece.Foam, null, byLength, stock);
                Add(need with { IsExpected = Counts(SupplyKind.Foam) },
                    new(design, byLength ? strips : Fastening.Pads(piece.Box.Size)) { Strips = strips });
            }
            else
            {
                Add(new(SupplyKind.Adhesive, adhesive.IsEmpty ? "adhesive" : adhesive[0].Name, null, null, true, adhesive),
                    new(design, strips));
            }
        }
    }

    private bool Counts(SupplyKind kind) => (_stash?.Supplies ?? []).Any(s => s.Kind == kind);

    private ImmutableArray<Supply> OnHand(SupplyKind kind, Length? measure, Size? size, ImmutableArray<string> names)
    {
        var of = kind == SupplyKind.Adhesive ? SupplyKind.Tape : kind;
        var fitting = (_stash?.Supplies ?? []).Where(s => s.Kind == of && IsAsLarge(s, measure, size)).ToList();
        var named = names
            .Select(n => fitting.Where(s => s.Name.Equals(n, StringComparison.OrdinalIgnoreCase)).ToImmutableArray())
            .FirstOrDefault(s => !s.IsEmpty);
        return kind == SupplyKind.Foam ? [.. fitting.Take(1)] : named.IsDefault ? [] : named;
    }

    private static bool IsAsLarge(Supply supply, Length? measure, Size? size) => size is { } box
        ? supply.Size == box || supply.Size == box.Turned() || (supply.Measure is { } wide && wide == Length.Max(box.Width, box.Height))
        : measure is null || supply.Measure == measure;

    private void Add(SupplyNeed need, DesignShare share)
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
        var before = known.Shares.FirstOrDefault(s => s.Design == share.Design);
        _needs[at] = known with
        {
            IsExpected = known.IsExpected || need.IsExpected,
            Shares = before is null ? known.Shares.Add(share) : known.Shares.Replace(before, before with
            {
                PerCard = before.PerCard + share.PerCard,
                Strips = before.Strips + share.Strips,
                Lengths = before.Lengths.AddRange(share.Lengths),
            }),
        };
    }
}
