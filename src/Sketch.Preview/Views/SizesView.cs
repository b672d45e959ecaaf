using System.Globalization;
using Sketch.Output.Gallery;
using Sketch.Panels;
using Sketch.Reports;

namespace Sketch.Preview.Views;

/// <summary>The table of cut sizes.</summary>
/// <param name="Units">in or mm.</param>
/// <param name="Html">The table as an HTML fragment.</param>
internal sealed record SizesView(string Units, string Html)
{
    /// <summary>The table in inches as on a ruler, or in millimetres.</summary>
    /// <param name="card">The card.</param>
    /// <param name="isMetric">Whether in millimetres.</param>
    public static SizesView Of(LaidOutCard card, bool isMetric)
    {
        using var markdown = new StringWriter(CultureInfo.InvariantCulture);
        SizeMarkdown.Write(markdown, SizeList.Of(card), new(isMetric));
        return new(isMetric ? "mm" : "in", SizeHtml.Of(markdown.ToString(), 1));
    }
}
