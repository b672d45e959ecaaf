using CsCheck;
using Sketch.Fuzz.Inputs;
using Sketch.Kinds;
using Sketch.Planning.Demand;
using Sketch.Reports;
using Sketch.Tests.Layout;
using Sketch.Tests.Templates;
using Sketch.Text;
using Xunit;
using Size = Sketch.Units.Size;

namespace Sketch.Tests.Planning.Demand;

/// <summary>The same pieces are listed, traced and planned.</summary>
public sealed class PlannedSizesTests
{
    [Fact]
    public void A_random_card_is_listed_traced_and_planned_in_the_same_sizes() => Gen.Int[1, 1_000_000].Sample(number =>
    {
        var text = RandomCards.Text(number);
        var card = Laid.Out(text);
        var listed = SizeList.Of(card).Entries.Where(e => e.Cut is not null && e.Kind != PieceKind.Line && !e.IsReadyMade).Select(e =>
            e.Cut!.Value);
        var traced = Printed.Of([card]).Pieces.Where(p => !p.IsReadyMade).SelectMany(p => Enumerable.Repeat(p.Cut, p.Count));

        Assert.Equal(Sorted(listed), Sorted(traced));
        Assert.Equal(Sorted(listed), Sorted(Planned(text)));
    }, iter: 60);

    private static IEnumerable<Size> Planned(string card)
    {
        var world = new TestWorld().WithText("one.card", card);
        var files = BatchFiles.Read(new SourceText("day.batch", "batch \"Day\", blanks exact\nmake 1 of \"one.card\"\n"), world, new());
        return OrderBook.Of(files!, new()).Papers.SelectMany(p => p.Pieces).SelectMany(p => Enumerable.Repeat(p.Size, p.Count));
    }

    private static IEnumerable<Size> Sorted(IEnumerable<Size> sizes) => sizes.OrderBy(s => s.Width).ThenBy(s => s.Height);
}
