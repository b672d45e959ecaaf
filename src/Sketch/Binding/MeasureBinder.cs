using Sketch.Diagnostics;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Binding;

/// <summary>A written size, or a named one with its name; no size where it is invalid, which has been reported.</summary>
internal readonly record struct NamedMeasure(Size? Size, string? Name);

/// <summary>Looks up the sizes of cards and envelopes.</summary>
internal sealed class MeasureBinder(SourceText source, FindingBag findings)
{
    /// <summary>The size as written or by its name.</summary>
    /// <param name="measure">The measure as written.</param>
    /// <param name="find">Where names are looked up.</param>
    /// <param name="what">What has the size: <c>card</c> or <c>envelope</c>.</param>
    public NamedMeasure Bind(MeasureSyntax measure, Func<string?, string, SizeLookup> find, string what)
    {
        if (measure.Size is { } written)
        {
            if (written is BoxSize { Width: LengthExtent w, Height: LengthExtent h })
            {
                if (w.Value > Length.Zero && h.Value > Length.Zero)
                {
                    return new(new(w.Value, h.Value), null);
                }

                Report(FindingCatalogue.BadSize, measure.Span, $"A {what} without width or height cannot be made.",
                    "Write its size, such as 5 x 7.");
                return default;
            }

            Report(FindingCatalogue.BadSize, measure.Span, $"A {what} needs width x height here.", "Write its size, such as A2 or 5 x 7.");
            return default;
        }

        var lookup = find(measure.System, measure.Name!);
        if (lookup.Found is { } found)
        {
            return new(found.Size, found.Name);
        }

        var offers = string.Join(" or ", lookup.Offers);
        var ambiguous = lookup.Outcome == LookupOutcome.Ambiguous;
        findings.Add(FindingCatalogue.UnknownSize, At(measure.Span),
            ambiguous ? $"{measure.Name} means a different {what} in the US and in ISO sizes."
                : $"There is no {what} size called {measure.Name}.",
            offers.Length > 0 ? $"Write {offers}." : "Write width x height, such as 4 1/4 x 5 1/2.",
            lookup.Offers is [var single] ? single : null);
        return default;
    }

    private Location At(TextSpan span) => new(source, span);

    private void Report(FindingKind kind, TextSpan span, string message, string hint) => findings.Add(kind, At(span), message, hint);
}
