using System.Net;

namespace Sketch.Reports;

/// <summary>Text from an untrusted file made safe for HTML, between elements and in attributes.</summary>
public static class HtmlText
{
    /// <summary>
    /// The text with its special characters written as entities, and without control characters, which HTML does not allow.
    /// </summary>
    public static string Of(string text) => WebUtility.HtmlEncode(Printable.Lines(text));
}
