using System.Collections.Immutable;
using Sketch.Cutting.Model;
using Sketch.Units;

namespace Sketch.Tests.Cutting;

/// <summary>
/// Seeded problems of the ten classical classes of two-dimensional bin packing: 1 to 6 of J. O. Berkey and P. Y. Wang, "Two-dimensional
/// finite bin-packing algorithms", Journal of the Operational Research Society 38 (1987), and 7 to 10 of S. Martello and D. Vigo, "Exact
/// solution of the two-dimensional finite bin packing problem", Management Science 44 (1998). One unit is a millimetre.
/// </summary>
internal static class ClassicalClasses
{
    /// <summary>The number of classes.</summary>
    public const int Count = 10;

    private const int Wide = 100;

    private static readonly (int Most, int Bin)[] Uniform = [(10, 10), (10, 30), (35, 40), (35, 100), (100, 100), (100, 300)];

    /// <summary>A problem of a class, from 1; its pieces are not turned.</summary>
    public static CuttingProblem Problem(int number, int pieces, int seed)
    {
        var random = new Random(number * 1_000_000 + pieces * 1000 + seed);
        var bin = number <= Uniform.Length ? Uniform[number - 1].Bin : Wide;
        Size Piece() => number <= Uniform.Length
            ? Millimetres(random.Next(1, Uniform[number - 1].Most + 1), random.Next(1, Uniform[number - 1].Most + 1))
            : Shaped(random, random.Next(10) < 7 ? number - 7 : Other(random, number - 7));
        return new(new(Millimetres(bin, bin), default), [],
            [.. Enumerable.Range(0, pieces).Select(i => new PieceDemand($"p{i}", Piece(), 1, MayTurn: false)).ToImmutableArray()])
        {
            SmallestUse = Length.Millimetre(1),
        };
    }

    private static int Other(Random random, int own)
    {
        var other = random.Next(3);
        return other < own ? other : other + 1;
    }

    // The four types of Martello and Vigo: wide, tall, large, small.
    private static Size Shaped(Random random, int type) => type switch
    {
        0 => Millimetres(random.Next(67, Wide + 1), random.Next(1, Wide / 2 + 1)),
        1 => Millimetres(random.Next(1, Wide / 2 + 1), random.Next(67, Wide + 1)),
        2 => Millimetres(random.Next(Wide / 2, Wide + 1), random.Next(Wide / 2, Wide + 1)),
        _ => Millimetres(random.Next(1, Wide / 2 + 1), random.Next(1, Wide / 2 + 1)),
    };

    private static Size Millimetres(int width, int height) => new(Length.Millimetre(width), Length.Millimetre(height));
}
