using System.Collections.Immutable;
using Sketch.Colours;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;

namespace Sketch.Planning.Demand;

/// <summary>What a paint of a card is cut from in a batch.</summary>
/// <param name="Name">The paper's name; as spelled in the stash if the stash has it.</param>
/// <param name="Stock">The paper in the stash, or null.</param>
/// <param name="Side">The side that shows.</param>
internal sealed record PaperUse(string Name, StockPaper? Stock, PaperSide Side)
{
    /// <summary>Whether any leftover will do.</summary>
    public bool AnyOffcut { get; init; }

    /// <summary>Whether its name is not a paper at all: neither the files nor the stash define it.</summary>
    public bool IsUnknown { get; init; }

    /// <summary>
    /// The colours of a paper that has no name of its own, only a pattern's or a role's: two such papers with one name and different
    /// colours are different papers. Empty for papers with names.
    /// </summary>
    public string Colours { get; init; } = "";

    /// <summary>How it looks; null if no file describes it.</summary>
    public PaperLook? Look { get; init; }

    /// <summary>
    /// Other names under which the stash may list a ready-made thing of this paint: its role, then the word for its colour.
    /// </summary>
    public ImmutableArray<string> OtherNames { get; init; } = [];

    /// <summary>What a paint is cut from.</summary>
    /// <param name="paint">The paint, in the papers of the batch.</param>
    /// <param name="stash">The stash, or null.</param>
    public static PaperUse For(Paint paint, Stash? stash)
    {
        if (paint.AnyOffcut)
        {
            return new(paint.OffcutName, null, paint.Side) { AnyOffcut = true };
        }

        var look = paint.Look;
        var name = paint.Paper ?? paint.Role ?? (IsWhite(look) ? "white" : look.Ground.Hex);
        var stock = stash?.Find(name);
        return new(stock?.Name ?? name, stock, paint.Side)
        {
            IsUnknown = stock is null && paint is { Knowledge: PaperKnowledge.Nothing, Paper: null },
            Look = paint.Knowledge == PaperKnowledge.Look ? look : null,
            Colours = IsNameless(paint.Paper, paint.Role) ? string.Join(' ', look.Figures.Prepend(look.Ground).Select(c => c.Hex)) : "",
            OtherNames = [.. new[] { paint.Role, MetalOf(look) }.OfType<string>()],
        };
    }

    // A pattern word, or a role that only gives a colour, names no paper that could be bought; a colour word does.
    private static bool IsNameless(string? paper, string? role) => paper is null
        ? role is not null && !ColourWords.TryGet(role, out _)
        : BuiltIn.PatternWords.Contains(paper, StringComparer.OrdinalIgnoreCase) && !ColourWords.TryGet(paper, out _);

    private static string? MetalOf(PaperLook look) =>
        ColourWords.All.FirstOrDefault(
            w => ColourWords.TryGet(w, out var named) && named.Pattern == look.Pattern && named.Ground == look.Ground);

    private static bool IsWhite(PaperLook look) => look.Ground == new Rgb(255, 255, 255);
}
