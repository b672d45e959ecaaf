namespace Sketch.Diagnostics;

/// <summary>
/// A value, or the problem that prevented it: what was asked of a file, a font or a written value may fail without a place in a text.
/// Whoever asked adds the place and reports the problem as a finding.
/// </summary>
/// <typeparam name="T">The value.</typeparam>
public readonly record struct Result<T>
    where T : notnull
{
    internal Result(T? value, string? problem) => (ValueOrDefault, Problem) = (value, problem);

    /// <summary>What is wrong, in words for the user; null when there is a value.</summary>
    public string? Problem { get; }

    /// <summary>The value, for callers to whom the problem does not matter; the default of its type when there is a problem.</summary>
    public T? ValueOrDefault { get; }

    /// <summary>The value.</summary>
    /// <exception cref="InvalidOperationException">There is a problem instead.</exception>
    public T Value => Problem is null && ValueOrDefault is { } value
        ? value : throw new InvalidOperationException($"There is no value: {Problem}");

    /// <summary>What a problem becomes where a value was expected.</summary>
    public static implicit operator Result<T>(Failure failure) => new(default, failure.Problem);

    /// <summary>A value computed from this one; the same problem if there is one.</summary>
    public Result<TOther> Map<TOther>(Func<T, TOther> map)
        where TOther : notnull => Then(value => Result.Of(map(value)));

    /// <summary>The result of a next step with the value; the same problem if there is one.</summary>
    public Result<TOther> Then<TOther>(Func<T, Result<TOther>> next)
        where TOther : notnull => Problem is null ? next(Value) : new Failure(Problem);

    /// <summary>The value or the problem as text.</summary>
    public override string ToString() => Problem ?? $"{ValueOrDefault}";
}

/// <summary>Why there is no value, or why something was not done.</summary>
/// <param name="Problem">What is wrong, in words for the user.</param>
public sealed record Failure(string Problem);

/// <summary>Makes results.</summary>
public static class Result
{
    /// <summary>The result that has a value.</summary>
    public static Result<T> Of<T>(T value)
        where T : notnull => new(value, null);
}
