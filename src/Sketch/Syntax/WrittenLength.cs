using Sketch.Diagnostics;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>A length as written on the command line, by the rules of the layout language.</summary>
public static class WrittenLength
{
    /// <summary>
    /// Reads a length such as <c>3 15/16</c>, <c>"3 15/16 in"</c> or <c>100 mm</c>; without a unit it is in inches.
    /// </summary>
    /// <param name="written">The text as written.</param>
    /// <param name="instead">How to write it, for the end of the problem.</param>
    /// <returns>The length, never negative; a problem says, in sentences, what is wrong and what to write.</returns>
    public static Result<Length> Read(string written, string instead) => Read(written, instead, Unit.Inch);

    /// <summary>The same, in <paramref name="units"/> unless another unit is given.</summary>
    /// <param name="written">The text as written.</param>
    /// <param name="instead">How to write it, for the end of the problem.</param>
    /// <param name="units">The unit of a bare number.</param>
    public static Result<Length> Read(string written, string instead, Unit units)
    {
        var text = written.Trim();
        var end = 0;
        if (text.Length == 0 || !NumberReader.Begins(text, 0, text.Length)
            || NumberReader.Read(text, ref end, text.Length, out _) is not { Kind: TokenKind.Number } number || end < text.Length)
        {
            return new Failure($"\"{written}\" is not a length: {instead}");
        }

        return LengthReader.Read(number, units, false, out var wrong) is { } length
            ? Result.Of(length) : new Failure($"{wrong.Message} {wrong.Hint}");
    }
}
