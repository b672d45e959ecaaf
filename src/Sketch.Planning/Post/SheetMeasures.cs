using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;

namespace Sketch.Planning.Post;

/// <summary>How thick and how heavy a paper is: as the stash says, else as usual papers of its kind are.</summary>
/// <param name="Thickness">In millimetres.</param>
/// <param name="Grammage">In grams per square metre.</param>
internal readonly record struct SheetMeasures(Spread Thickness, Spread Grammage)
{
    // Micrometres per g/m2 from dense coated papers to bulky ones (computed from published bulks of 0.97 to 1.59 cm3/g).
    private static readonly Spread Bulk = new(0.001, 0.0016);

    // 65 to 100 lb cover by weight; 8 to 13.5 points thick in a printed chart and in two measured covers.
    private static readonly SheetMeasures Cardstock = new(new(0.203, 0.343), new(175.77, 270.41));

    // Usual patterned papers are 80 to 200 g/m2 (from memory).
    private static readonly SheetMeasures Patterned = new(new(0.08, 0.32), new(80, 200));

    /// <summary>Envelopes of 20 lb bond to 80 lb text (common practice, no source).</summary>
    public static SheetMeasures Envelope { get; } = OfGrammage(new(75.19, 118.41));

    /// <summary>The measures of a paint.</summary>
    /// <param name="paint">The paint, in the papers of the batch.</param>
    /// <param name="stash">The stash, or null.</param>
    public static SheetMeasures Of(Paint paint, Stash? stash)
    {
        var usual = IsCardstock(paint.Look.Pattern) ? Cardstock : Patterned;
        var stock = (paint.Paper ?? paint.Role) is { } name ? stash?.Find(name) : null;
        return (stock?.Grammage, Measured(stock)) switch
        {
            ({ } weight, { } thick) => new(Spread.Exactly(thick), Spread.Exactly(weight)),
            ({ } weight, null) => OfGrammage(Spread.Exactly(weight)),
            (null, { } thick) => new(Spread.Exactly(thick), new(thick / Bulk.High, thick / Bulk.Low)),
            _ => usual,
        };
    }

    // A thickness that only follows from the weight is an estimate, and its spread follows from the weight as well.
    private static double? Measured(StockPaper? stock) =>
        stock?.Thickness is { } thick && (stock.Grammage is not { } weight || thick != PaperWeights.EstimatedThickness(weight))
            ? thick.Millimetres : null;

    private static SheetMeasures OfGrammage(Spread grammage) =>
        new(new(grammage.Low * Bulk.Low, grammage.High * Bulk.High), grammage);

    private static bool IsCardstock(PaperPattern pattern) => pattern is PaperPattern.Plain or PaperPattern.Cardstock
        or PaperPattern.Kraft or PaperPattern.Foil or PaperPattern.Pearl or PaperPattern.Patches;
}
