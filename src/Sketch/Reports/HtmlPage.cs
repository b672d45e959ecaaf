namespace Sketch.Reports;

/// <summary>The frame of a page of HTML: every page of the tool has this head.</summary>
public static class HtmlPage
{
    /// <summary>The end of a page, after the content of its body.</summary>
    public const string End = "</body>\n</html>\n";

    /// <summary>The beginning of a page, up to the content of its body.</summary>
    /// <param name="title">Its title as plain text.</param>
    /// <param name="elements">What else its head contains, such as a <see cref="Style"/>.</param>
    /// <param name="mark">A comment by which the tool recognizes its own files; empty for a page that is not written to a file.</param>
    public static string Begin(string title, string elements, string mark = "") =>
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n"
            + (mark.Length > 0 ? $"{mark}\n" : "")
            + "<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
            + $"<title>{HtmlText.Of(title)}</title>\n{elements}</head>\n<body>\n";

    /// <summary>A style sheet for the head of a page.</summary>
    /// <param name="css">The rules.</param>
    /// <param name="nonce">The nonce that a content security policy requires; null where there is no policy.</param>
    public static string Style(string css, string? nonce = null) =>
        $"<style{(nonce is null ? "" : $" nonce=\"{nonce}\"")}>\n{css}\n</style>\n";
}
