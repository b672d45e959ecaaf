using Sketch.Diagnostics;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Stashes;

/// <summary>Reads the sizes of sheets and envelopes in a stash.</summary>
internal static class StockSizes
{
    /// <summary>The size by its name or as width x height; null, which is reported, where there is none.</summary>
    /// <param name="measure">What the line writes.</param>
    /// <param name="find">The table of names.</param>
    /// <param name="what">What has the size, for findings.</param>
    /// <param name="source">The file.</param>
    /// <param name="findings">Receives what is wrong.</param>
    public static Size? Of(
        MeasureSyntax measure, Func<string?, string, SizeLookup> find, string what, SourceText source, FindingBag findings)
    {
        if (measure.Name is { } name)
        {
            var lookup = find(measure.System, name);
            if (lookup.Found is null)
            {
                findings.Add(FindingCatalogue.UnknownSize, new(source, measure.Span), $"There is no {what} called {name}.",
                    lookup.Offers.IsEmpty ? "Write width x height, such as 12 x 12." : $"Write {string.Join(" or ", lookup.Offers)}.",
                    lookup.Offers is [var single] ? single : null);
            }

            return lookup.Found?.Size;
        }

        if (measure.Size is BoxSize { Width: LengthExtent { Value: var width }, Height: LengthExtent { Value: var height } }
            && width > Length.Zero && height > Length.Zero)
        {
            return new(width, height);
        }

        findings.Add(FindingCatalogue.BadSize, new(source, measure.Span),
            $"{(what == "envelope" ? "An" : "A")} {what} needs width x height, both greater than zero.",
                "Write width x height, such as 12 x 12.");
        return null;
    }
}
