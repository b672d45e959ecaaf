using System.Globalization;

namespace Sketch.Text;

/// <summary>A number of things in words: <c>1 sheet</c>, <c>2 sheets</c>.</summary>
public static class Counted
{
    /// <summary>The count with its noun, in the plural unless the count is one.</summary>
    /// <param name="count">How many.</param>
    /// <param name="noun">The singular noun; its plural takes an s.</param>
    public static string Of(long count, string noun) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? "" : "s")}");
}
