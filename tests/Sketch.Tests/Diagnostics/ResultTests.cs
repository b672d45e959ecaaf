using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Diagnostics;

public sealed class ResultTests
{
    private static readonly Result<int> Problem = new Failure("it is locked.");

    [Fact]
    public void A_value_is_no_problem() => Assert.Null(Result.Of(3).Problem);

    [Fact]
    public void A_problem_has_no_value() =>
        Assert.Contains("it is locked.", Assert.Throws<InvalidOperationException>(() => Problem.Value).Message, StringComparison.Ordinal);

    [Fact]
    public void The_next_step_gets_the_value() => Assert.Equal(Result.Of("lamp 3"), Result.Of(3).Then(n => Result.Of($"lamp {n}")));

    [Fact]
    public void A_problem_skips_the_next_step() =>
        Assert.Equal("it is locked.", Problem.Then<string>(_ => throw new InvalidOperationException()).Problem);

    [Fact]
    public void The_problem_of_the_next_step_is_that_of_the_whole() =>
        Assert.Equal("it is empty.", Result.Of(3).Then<string>(_ => new Failure("it is empty.")).Problem);
}
