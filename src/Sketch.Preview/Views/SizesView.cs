using System.Globalization;
using Sketch.Output.Gallery;
using Sketch.Panels;
using Sketch.Reports;

namespace Sketch.Preview.Views;

/// <summary>The table of cut sizes as an HTML fragment.</summary>
public static class SizesView
{
    /// <summary>Writes the table in inches as on a ruler, or in millimetres.</summary>
    /// <param name="card">The card.</param>
    /// <param name="isMetric">Whether in millimetres.</param>
    public static string Html(LaidOutCard card, bool isMetric)
    {
        using var markdown = new StringWriter(CultureInfo.InvariantCulture);
        SizeMarkdown.Write(markdown, SizeList.Of(card), new(isMetric));
        return SizeHtml.Of(markdown.ToString(), 1);
    }
}
