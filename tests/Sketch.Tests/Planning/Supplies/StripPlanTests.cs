using System.Collections.Immutable;
using System.Globalization;
using Sketch.Planning.Supplies;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Planning.Supplies;

/// <summary>Lengths cut from strips, in whole millimetres.</summary>
public sealed class StripPlanTests
{
    // Falkenauer's uniform instances u120_00, u120_08 and u120_19 of the OR-Library (J. E. Beasley, file binpack1.txt: strips of 150,
    // 120 lengths from 20 to 100), with the fewest bins that the file states; E. Falkenauer, J. Heuristics 2 (1996) 5-30.
    private const string U120First = "42 69 67 57 93 90 38 36 45 42 33 79 27 57 44 84 86 92 46 38 85 33 82 73 49 70 59 23 57 72 74 69 33 "
        + "42 28 46 30 64 29 74 41 49 55 98 80 32 25 38 82 30 35 39 57 84 62 50 55 27 30 36 20 78 47 26 45 41 "
        + "58 98 91 96 73 84 37 93 91 43 73 85 81 79 71 80 76 83 41 78 70 23 42 87 43 84 60 55 49 78 73 62 36 "
        + "44 94 69 32 96 70 84 58 78 25 80 58 66 83 24 98 60 42 43 43 39";

    private const string U120Ninth = "100 22 25 51 95 58 97 30 79 23 53 80 20 65 64 21 26 100 81 98 70 85 92 97 86 71 91 29 63 34 67 23 "
        + "33 89 94 47 100 37 40 58 73 39 49 79 54 57 98 69 67 49 38 34 96 27 92 82 69 45 69 20 75 97 51 70 29 "
        + "91 98 77 48 45 43 61 36 82 89 94 26 35 58 58 57 46 44 91 49 52 65 42 33 60 37 57 91 52 95 84 72 75 "
        + "89 81 67 74 87 60 32 76 85 59 62 39 64 52 88 45 29 88 85 54 40 57";

    private const string U120Last = "49 95 38 62 63 97 42 62 100 43 44 77 97 94 68 23 50 36 89 58 97 27 64 65 54 58 24 35 33 63 32 50 58 "
        + "90 44 50 48 21 72 75 21 74 28 95 77 69 96 24 57 85 72 96 50 83 65 62 99 93 23 77 94 31 50 33 79 73 "
        + "23 55 44 78 84 66 31 59 97 95 22 76 90 66 29 100 90 92 50 49 47 43 37 40 60 52 54 99 34 46 88 97 85 "
        + "39 32 51 95 54 99 86 48 90 28 25 86 39 74 26 38 60 41 67 80 33";

    private static StripPlan Plan(IEnumerable<int> lengths, params (int Strip, int Count)[] stock) => StripPlan.Of(
        [.. stock.Select(s => Strips(s.Strip, s.Count))], lengths.Select(l => (Length.Millimetre(l), 1)),
        TestContext.Current.CancellationToken);

    private static Supply Strips(int length, int count) =>
        new(SupplyKind.Line, "silver", new(new SourceText("shelf.stash", ""), new(0, 0)))
        {
            Strips = count,
            StripLength = Length.Millimetre(length),
        };

    [Theory]
    [InlineData(U120First, 48)]
    [InlineData(U120Ninth, 50)]
    [InlineData(U120Last, 49)]
    public void Published_instances_take_the_fewest_strips_with_proof(string lengths, int fewest)
    {
        var wanted = lengths.Split(' ').Select(w => int.Parse(w, CultureInfo.InvariantCulture)).ToList();
        var plan = Plan(wanted, (150, 60));
        Assert.Equal((fewest, true), (plan.Plan.Sheets, plan.Plan.IsProved));
        Assert.Equal(wanted.Order(), Cut(plan).Order());
    }

    // V. Chvatal, Linear Programming (1983), chapter 13: rolls of 100, the relaxation gives 452.25 (quoted from memory).
    [Fact]
    public void The_textbook_order_of_four_widths_takes_453_rolls()
    {
        var wanted = new[] { (45, 97), (36, 610), (31, 395), (14, 211) }
            .SelectMany(w => Enumerable.Repeat(w.Item1, w.Item2));
        var plan = Plan(wanted, (100, 500));
        Assert.Equal((453, true), (plan.Plan.Sheets, plan.Plan.IsProved));
    }

    [Fact]
    public void Small_orders_take_as_few_strips_as_an_exhaustive_search_finds()
    {
        var random = new Random(20261128);
        for (var round = 0; round < 60; round++)
        {
            var strip = random.Next(8, 30);
            var wanted = Enumerable.Range(0, random.Next(1, 9)).Select(_ => random.Next(1, strip + 1)).ToList();
            var plan = Plan(wanted, (strip, 9));
            Assert.Equal((Fewest(wanted, strip), true), (plan.Plan.Sheets, plan.Plan.IsProved));
            Assert.Equal(wanted.Order(), Cut(plan).Order());
        }
    }

    [Fact]
    public void No_strip_is_cut_longer_than_it_is()
    {
        var plan = Plan([70, 60, 50, 40, 30, 20, 10], (100, 9), (45, 1));
        Assert.All(plan.Plan.Layouts, l => Assert.True(plan.Left(l) >= Length.Zero));
    }

    [Fact]
    public void Shorter_strips_are_used_first()
    {
        var plan = Plan([60, 40, 40], (100, 9), (45, 1));
        Assert.Equal(1, plan.Plan.Sheets);
        Assert.Contains(plan.Plan.Layouts, l => l.IsOffcut && plan.Left(l) == Length.Millimetre(5));
    }

    [Fact]
    public void A_length_longer_than_any_strip_is_named() =>
        Assert.Equal([(Length.Millimetre(120), 1)], Plan([120, 40], (100, 9)).TooLong);

    private static IEnumerable<int> Cut(StripPlan plan) =>
        from layout in plan.Plan.Layouts
        from cut in plan.Cut(layout)
        from length in Enumerable.Repeat((int)cut.Length.Millimetres, cut.Count * layout.Times)
        select length;

    /// <summary>Every way to put the lengths, one after the other, into strips that are begun or into a new one.</summary>
    private static int Fewest(List<int> wanted, int strip)
    {
        var fewest = wanted.Count;
        Put(0, []);
        return fewest;

        void Put(int next, ImmutableArray<int> rooms)
        {
            if (rooms.Length >= fewest && next < wanted.Count)
            {
                return;
            }

            if (next == wanted.Count)
            {
                fewest = Math.Min(fewest, rooms.Length);
                return;
            }

            for (var i = 0; i < rooms.Length; i++)
            {
                if (rooms[i] >= wanted[next])
                {
                    Put(next + 1, rooms.SetItem(i, rooms[i] - wanted[next]));
                }
            }

            Put(next + 1, rooms.Add(strip - wanted[next]));
        }
    }
}
