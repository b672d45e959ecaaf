using Sketch.Reports;

namespace Sketch.Output.Gallery;

/// <summary>The text of a file as HTML: a line that is broken to fit continues further to the right.</summary>
internal static class TextHtml
{
    /// <summary>Renders lines.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="isFresh">Whether a line is marked as new; none is if this is left out.</param>
    /// <param name="isNumbered">Whether each line has its number.</param>
    public static string Of(IEnumerable<string> lines, Func<string, bool>? isFresh = null, bool isNumbered = false) =>
        $"<pre{(isNumbered ? " class=\"numbered\"" : "")}><code>"
            + string.Concat(lines.Select(l => isFresh?.Invoke(l) == true
                ? $"<span class=\"line\"><mark>{HtmlText.Of(l)}</mark>\n</span>"
                : $"<span class=\"line\">{HtmlText.Of(l)}\n</span>"))
            + "</code></pre>\n";
}
