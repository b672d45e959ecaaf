using System.Text;
using System.Text.Unicode;
using Sketch.Diagnostics;
using Sketch.Syntax;

namespace Sketch.Output.Files;

/// <summary>Distinguishes text from other content.</summary>
public static class TextContent
{
    /// <summary>Bytes of the largest text file read: a character takes at most four in UTF-8.</summary>
    public const int Limit = 4 * Limits.Characters;

    private static ReadOnlySpan<byte> Utf8Mark => [0xEF, 0xBB, 0xBF];

    /// <summary>The text in UTF-8, without its byte order mark; a problem reads as the end of a sentence after a colon.</summary>
    /// <param name="content">A file's bytes.</param>
    public static Result<string> Decode(ReadOnlySpan<byte> content)
    {
        if (content is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            return new Failure("it is saved as UTF-16; save it as UTF-8.");
        }

        var text = content.StartsWith(Utf8Mark) ? content[Utf8Mark.Length..] : content;
        if (text.Contains((byte)0))
        {
            return new Failure("it is not a text file: it contains zero bytes, as pictures and programs do.");
        }

        if (!Utf8.IsValid(text))
        {
            return new Failure($"it is not saved as UTF-8 (line {LineOfFirstFault(text)}); save it as UTF-8.");
        }

        return Result.Of(Encoding.UTF8.GetString(text));
    }

    private static int LineOfFirstFault(ReadOnlySpan<byte> text)
    {
        var line = 1;
        while (Rune.DecodeFromUtf8(text, out var rune, out var used) == System.Buffers.OperationStatus.Done)
        {
            line += rune.Value == '\n' ? 1 : 0;
            text = text[used..];
        }

        return line;
    }
}
