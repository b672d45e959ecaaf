using System.Text;

namespace Sketch.Output.Rendering;

/// <summary>Text of a PDF that is not drawn, such as a title (ISO 32000-1, 7.9.2.2).</summary>
internal static class PdfText
{
    /// <summary>The text as a PDF writes it: plain where it is ASCII, otherwise in hexadecimal UTF-16 with its mark.</summary>
    public static string Of(string text) => text.All(c => c is >= ' ' and <= '~')
        ? $"({text.Replace(@"\", @"\\", StringComparison.Ordinal).Replace("(", @"\(", StringComparison.Ordinal)
            .Replace(")", @"\)", StringComparison.Ordinal)})"
        : $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";
}
