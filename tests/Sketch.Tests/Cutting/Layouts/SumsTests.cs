using Sketch.Cutting.Layouts;
using Xunit;

namespace Sketch.Tests.Cutting.Layouts;

/// <summary>Sums over columns of any length are those that are made number by number.</summary>
public sealed class SumsTests
{
    private const int Longest = 70;

    [Fact]
    public void A_number_is_raised_to_the_one_beside_it() => ForEachLength(length =>
    {
        var (target, other) = (Numbers(length, 7), Numbers(length, 5));
        var raised = target.ToArray();
        Sums.Raise(raised, other);
        Assert.Equal(target.Zip(other, Math.Max), raised);
    });

    [Fact]
    public void A_number_is_raised_to_the_sum_of_two() => ForEachLength(length =>
    {
        var (target, first, second) = (Numbers(length, 7), Numbers(length, 5), Numbers(length, 3));
        var raised = target.ToArray();
        Sums.Raise(raised, first, second);
        Assert.Equal(target.Select((number, i) => Math.Max(number, first[i] + second[i])), raised);
    });

    [Fact]
    public void A_sum_of_counts_ends_at_its_limit() => ForEachLength(length =>
    {
        ushort[] most = [.. Numbers(length, 7).Select(n => (ushort)(n + 1))];
        ushort[] first = [.. most.Select((m, i) => (ushort)(m * (i % 3) / 2 % (m + 1)))];
        ushort[] second = [.. most.Select((m, i) => (ushort)(m * (i % 4) / 3))];
        var sums = new ushort[length];
        Sums.SetCapped(sums, first, second, most);
        Assert.Equal(most.Select((m, i) => (ushort)Math.Min(m, first[i] + second[i])), sums);
    });

    [Fact]
    public void Counts_may_be_as_large_as_their_numbers_allow()
    {
        ushort[] most = [.. Enumerable.Repeat(ushort.MaxValue, Longest)];
        var sums = new ushort[Longest];
        Sums.SetCapped(sums, most, most, most);
        Assert.Equal(most, sums);
    }

    private static void ForEachLength(Action<int> check)
    {
        for (var length = 0; length <= Longest; length++)
        {
            check(length);
        }
    }

    private static int[] Numbers(int length, int factor) => [.. Enumerable.Range(1, length).Select(i => i * factor * 31 % 97)];
}
