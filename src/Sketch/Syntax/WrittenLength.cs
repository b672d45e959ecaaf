using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>A length as a person writes it on the command line, with the rules of the layout language.</summary>
public static class WrittenLength
{
    /// <summary>
    /// Reads a length; inches unless another unit is named, such as <c>3 15/16</c>, <c>"3 15/16 in"</c> or <c>100 mm</c>.
    /// </summary>
    /// <param name="written">As written.</param>
    /// <param name="instead">How to write it, for the problem's end.</param>
    /// <param name="problem">What is wrong and what to write, in sentences; empty when it is a length.</param>
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
