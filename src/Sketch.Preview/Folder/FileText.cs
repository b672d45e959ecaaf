using System.Security.Cryptography;
using System.Text;
using Sketch.Diagnostics;
using Sketch.Output.Files;

namespace Sketch.Preview.Folder;

/// <summary>The text of a file as the page uses it: line ends are single line feeds; its form in the file is kept separately.</summary>
/// <param name="Text">The text, with line feeds only.</param>
/// <param name="Stamp">Identifies this content; two contents with the same stamp are equal.</param>
/// <param name="Form">The form of the text in the file.</param>
public sealed record FileText(string Text, string Stamp, TextForm Form)
{
    /// <summary>Decodes the content of a file.</summary>
    /// <param name="content">The bytes.</param>
    /// <returns>The text; a problem reads as the end of a sentence after a colon.</returns>
    public static Result<FileText> Of(byte[] content) => TextContent.Decode(content).Map(text =>
    {
        var form = new TextForm(content.AsSpan().StartsWith(Encoding.UTF8.Preamble), text.Contains("\r\n", StringComparison.Ordinal));
        return new FileText(TextForm.Plain(text), StampOf(content), form);
    });

    /// <summary>The stamp of a content.</summary>
    public static string StampOf(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content).AsSpan(0, 16));
}

/// <summary>The form in which a file stores its text.</summary>
/// <param name="HasMark">Whether it begins with a byte order mark.</param>
/// <param name="HasReturns">Whether its lines end with a carriage return and a line feed.</param>
public readonly record struct TextForm(bool HasMark, bool HasReturns)
{
    /// <summary>
    /// A text with line feeds as line ends, as editors in a browser hold it. Form feeds and Unicode separators do not end a line.
    /// </summary>
    public static string Plain(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');

    /// <summary>The bytes of a text in this form.</summary>
    public byte[] Write(string text)
    {
        var written = HasReturns ? Plain(text).Replace("\n", "\r\n", StringComparison.Ordinal) : Plain(text);
        return HasMark ? [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(written)] : Encoding.UTF8.GetBytes(written);
    }
}
