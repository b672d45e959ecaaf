using System.Xml;

namespace Sketch.Output.Rendering;

/// <summary>What a picture shows, as its titles say.</summary>
internal static class PictureTitle
{
    // Listening to more takes too long.
    private const int Most = 40;

    /// <summary>The title of the whole picture and those of what is in it, each once; null if it has none.</summary>
    public static string? Of(string svg)
    {
        var titles = Titles(svg).ToList();
        var inside = titles.Where(t => t.Depth > 1).Select(t => t.Title).Distinct().ToList();
        var whole = titles.FirstOrDefault(t => t.Depth == 1).Title;
        var listed = string.Join("; ", inside.Take(Most)) + (inside.Count > Most ? $"; and {inside.Count - Most} more" : "");
        return inside.Count == 0 ? whole : whole is null ? listed : $"{whole}: {listed}";
    }

    /// <summary>Whether something in the picture has a title of its own; ruled lines and boxes to tick have none.</summary>
    public static bool IsPicture(string svg) => Titles(svg).Any(t => t.Depth > 1);

    private static IEnumerable<(int Depth, string Title)> Titles(string svg)
    {
        using var reader = XmlReader.Create(new StringReader(svg), new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
        while (reader.Read())
        {
            if (reader is { NodeType: XmlNodeType.Element, LocalName: "title", Depth: var depth }
                && reader.Read() && reader is { NodeType: XmlNodeType.Text, Value: var title })
            {
                yield return (depth, title.Trim());
            }
        }
    }
}
