using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting.Model;

/// <summary>Which numbers cannot be planned with, and what a plan says of the sheets on hand.</summary>
public sealed class CuttingProblemTests
{
    private static readonly Length _tooLong = new(Length.Limit.Nanometres + 1);

    private static readonly CuttingProblem _sound = Given
        .Problem(Given.Sheet(12, 12), (Given.Inches(4, 4), 1, true), (Given.Inches(3, 3), 1, true)).With((Given.Inches(5, 5), 1));

    public static TheoryData<CuttingProblem> Unsound =>
    [
        _sound with { Sheet = new(new(Length.Zero, Length.Inch(12)), default) },
        _sound with { Sheet = new(new(Length.Inch(12), Length.Zero), default) },
        _sound with { Sheet = new(new(_tooLong, Length.Inch(12)), default) },
        _sound with { Sheet = new(new(Length.Inch(12), _tooLong), default) },
        _sound with { Sheet = _sound.Sheet with { Trim = new(new(-1), Length.Zero, Length.Zero, Length.Zero) } },
        _sound with { Sheet = _sound.Sheet with { Trim = new(Length.Zero, new(-1), Length.Zero, Length.Zero) } },
        _sound with { Sheet = _sound.Sheet with { Trim = new(Length.Zero, Length.Zero, new(-1), Length.Zero) } },
        _sound with { Sheet = _sound.Sheet with { Trim = new(Length.Zero, Length.Zero, Length.Zero, new(-1)) } },
        _sound with { Kerf = new(-1) },
        _sound with { Kerf = _tooLong },
        _sound.With((Given.Inches(0, 5), 1)),
        _sound.With((Given.Inches(5, 5), 1), (Given.Inches(5, 4), -1)),
        _sound with { Pieces = [new("a", Given.Inches(1, 0), 1)] },
        _sound with { Pieces = [new("a", Given.Inches(1, 1), 1), new("b", Given.Inches(1, 1), -1)] },
        _sound with { Pieces = [new("a", Given.Inches(1, 1), 1), new("a", Given.Inches(2, 1), 1)] },
    ];

    [Theory]
    [MemberData(nameof(Unsound), DisableDiscoveryEnumeration = true)]
    public void A_size_or_count_that_no_file_has_is_refused(CuttingProblem problem) =>
        Assert.Throws<ArgumentException>(() => SheetPlanner.Misfits(problem));

    [Fact]
    public void The_largest_sizes_and_empty_counts_are_accepted() => Assert.Empty(SheetPlanner.Misfits(new(
        new(new(Length.Limit, Length.Limit), default), [new(Given.Inches(1, 1), 0)], [new("a", new(Length.Limit, Length.Limit), 0)])
    {
        Kerf = Length.Limit,
    }));

    [Theory]
    [InlineData(null, 0)]
    [InlineData(3, 2)]
    [InlineData(5, 0)]
    [InlineData(6, 0)]
    public void As_many_sheets_are_missing_as_are_not_on_hand(int? onHand, int missing) =>
        Assert.Equal(missing, new CuttingPlan(5, 1, [], []).Short(_sound.Sheet with { OnHand = onHand }));

    [Theory]
    [InlineData(4, false)]
    [InlineData(5, true)]
    public void A_plan_is_proved_when_the_bound_is_its_sheets(int bound, bool isProved) =>
        Assert.Equal(isProved, new CuttingPlan(5, bound, [], []).IsProved);
}
