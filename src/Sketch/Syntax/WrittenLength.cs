using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>A length as written on the command line, by the rules of the layout language.</summary>
public static class WrittenLength
{
    /// <summary>
    /// Reads a length, in inches unless another unit is given, such as <c>3 15/16</c>, <c>"3 15/16 in"</c> or <c>100 mm</c>.
    /// </summary>
    /// <param name="written">The text as written.</param>
    /// <param name="instead">How to write it, for the end of the problem.</param>
    /// <param name="problem">What is wrong and what to write, in sentences; empty when the length is valid.</param>
    /// <returns>The length, never negative, or null with a problem.</returns>
    public static Length? Read(string written, string instead, out string problem)
    {
        var text = written.Trim();
        var end = 0;
        if (text.Length == 0 || !NumberReader.Begins(text, 0, text.Length)
            || NumberReader.Read(text, ref end, text.Length, out _) is not { Kind: TokenKind.Number } number || end < text.Length)
        {
            problem = $"\"{written}\" is not a length: {instead}";
            return null;
        }

        var length = LengthReader.Read(number, Unit.Inch, false, out var wrong);
        problem = length is null ? $"{wrong.Message} {wrong.Hint}" : "";
        return length;
    }
}
