using System.Collections.Immutable;
using System.Globalization;
using Sketch.Stationery;

namespace Sketch.Templates;

/// <summary>The notes at the top of the first page: what this is, how to check the print, and how to work safely.</summary>
internal static class SafetyNotes
{
    /// <summary>The notes as a block as wide as the page allows.</summary>
    public static TemplateBlock Of(string title, TemplateOptions options, TemplateLettering lettering, double width)
    {
        var scale = options.Scale == PrinterScale.True
            ? "If they are off, make the templates again with --measured and the measured length of the 4 in bar."
            : string.Create(CultureInfo.InvariantCulture,
                $"The drawing is corrected for a printer that prints at {options.Scale.Value * 100:0.##} % of true size.");
        ImmutableArray<string> notes =
        [
            $"{title}: full-size templates",
            $"Check first: lay a ruler along the two bars at the foot of the page. {scale}",
            .. options.OnlyShapes ? ["Plain rectangles are left out: cut them with a ruler by the list of sizes."] : (string[])[],
            Cautions.Knives,
            Cautions.Guillotines,
        ];
        var text = lettering.Set([.. notes.SelectMany(n => lettering.Wrap(n, width))]);
        return new(width, text.Box.Height, [], [text]);
    }
}
