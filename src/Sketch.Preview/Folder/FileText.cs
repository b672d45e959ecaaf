using System.Security.Cryptography;
using System.Text;
using Sketch.Output.Files;

namespace Sketch.Preview.Folder;

/// <summary>A file's text as the page works with it: line ends are single line feeds, and how the file writes them is kept aside.</summary>
/// <param name="Text">The text, with line feeds only.</param>
/// <param name="Stamp">Tells this content from any other; two contents with one stamp are the same.</param>
/// <param name="Form">How the file itself writes it.</param>
public sealed record FileText(string Text, string Stamp, TextForm Form)
{
    /// <summary>Takes a file's content apart.</summary>
    /// <param name="content">The bytes.</param>
    /// <param name="problem">Why it is no text, as a sentence goes on after a colon; empty when it is.</param>
    public static FileText? Of(byte[] content, out string problem)
    {
        if (TextContent.Decode(content, out problem) is not { } text)
        {
            return null;
        }

        var form = new TextForm(content.AsSpan().StartsWith(Encoding.UTF8.Preamble), text.Contains("\r\n", StringComparison.Ordinal));
        return new(TextForm.Plain(text), StampOf(content), form);
    }

    /// <summary>The stamp of a content.</summary>
    public static string StampOf(byte[] content) => Convert.ToHexStringLower(SHA256.HashData(content).AsSpan(0, 16));
}

/// <summary>How a file writes its text.</summary>
/// <param name="HasMark">Whether it begins with a byte order mark.</param>
/// <param name="HasReturns">Whether its lines end with a carriage return and a line feed.</param>
public readonly record struct TextForm(bool HasMark, bool HasReturns)
{
    /// <summary>
    /// A text with line feeds for its line ends, as editors in a browser hold it. Form feeds and the separators of Unicode end no line.
    /// </summary>
    public static string Plain(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');

    /// <summary>The bytes of a text in this form.</summary>
    public byte[] Write(string text)
    {
        var written = HasReturns ? Plain(text).Replace("\n", "\r\n", StringComparison.Ordinal) : Plain(text);
        return HasMark ? [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(written)] : Encoding.UTF8.GetBytes(written);
    }
}
