using System.Globalization;
using Sketch.Batches;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Planning.Demand;

/// <summary>How much one batch may order: no more than can be planned quickly, and nothing too small to cut by hand.</summary>
/// <param name="batch">The batch.</param>
/// <param name="findings">Receives what is beyond the limits.</param>
internal sealed class BatchLimits(Batch batch, FindingBag findings)
{
    /// <summary>The most pieces, of all cards and loose pieces together.</summary>
    public const int MostPieces = 20_000;

    /// <summary>The most different sizes of loose pieces; the search for the fewest sheets tries them all.</summary>
    public const int MostSizes = 200;

    /// <summary>The shortest side that a piece may have.</summary>
    public static readonly Length ShortestSide = Length.Millimetre(0.5m);

    private readonly HashSet<Size> _sizes = [];
    private long _pieces;

    /// <summary>Whether a line that makes cards is within the limits; counts its pieces if so, and reports it if not.</summary>
    public bool Allow(MakeRequest order, LaidOutCard card)
    {
        if (card.Pieces.FirstOrDefault(
            p => p is { Cut: { } size, Matter: not PieceMatter.Ready, Kind: not PieceKind.Line } && IsTooSmall(size)) is { } small)
        {
            findings.Add(FindingCatalogue.TooSmallToCut, small.Location, $"{small.Path} is too small to cut{Shortest(card.Units)}.",
                Larger(card.Units));
            findings.Add(
                FindingCatalogue.CardWithMistakes, order.Card.Location,
                $"\"{order.Card.Path}\" has a piece that is too small to cut, so it is left out of the plan.",
                    "Make the piece larger in that file.");
            return false;
        }

        var each = 1 + card.Pieces.Count(p => p.Cut is not null || p.Matter == PieceMatter.Ready);
        return Count(order.Count, each, order.Location, room => $"Write make {room} of \"{order.Card.Path}\"");
    }

    /// <summary>Whether a line of loose pieces is within the limits; counts them if so, and reports it if not.</summary>
    public bool Allow(CutRequest cut)
    {
        if (IsTooSmall(cut.Size))
        {
            findings.Add(FindingCatalogue.TooSmallToCut, cut.Location, $"These pieces are too small to cut{Shortest(batch.Units)}.",
                Larger(batch.Units));
            return false;
        }

        if (_sizes.Count == MostSizes && !_sizes.Contains(cut.Size))
        {
            findings.Add(FindingCatalogue.BatchTooLarge, cut.Location,
                $"The batch cuts loose pieces of more than {MostSizes} different sizes.", "Put this line into another batch.");
            return false;
        }

        _sizes.Add(cut.Size);
        return Count(cut.Count, 1, cut.Location, room =>
            $"Write cut {room} in place of cut {cut.Count.ToString(CultureInfo.InvariantCulture)}");
    }

    private bool Count(long count, long each, Text.Location place, Func<string, string> fewer)
    {
        var asked = count * each;
        if (_pieces + asked <= MostPieces)
        {
            _pieces += asked;
            return true;
        }

        var room = (MostPieces - _pieces) / each;
        var total = string.Create(
            CultureInfo.InvariantCulture,
                $"This line brings the batch to {_pieces + asked:N0} pieces; at most {MostPieces:N0} are planned at once.");
        findings.Add(FindingCatalogue.BatchTooLarge, place, total,
            room > 0 ? $"{fewer(room.ToString(CultureInfo.InvariantCulture))}, and put the rest into another batch."
                : "Put this line into another batch.");
        return false;
    }

    private static bool IsTooSmall(Size size) => Length.Min(size.Width, size.Height) < ShortestSide;

    private static string Shortest(UnitSystem units) =>
        units == UnitSystem.Inches ? ": a side is shorter than 0.5 mm, about 1/50 inch" : ": a side is shorter than 0.5 mm";

    private static string Larger(UnitSystem units) =>
        units == UnitSystem.Inches ? "Make each side at least 1/32." : "Make each side at least 0.5 mm.";
}
