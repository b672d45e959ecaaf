using Sketch.Batches;
using Sketch.Colours;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;

namespace Sketch.Planning.Demand;

/// <summary>What a paint of a card is cut from in a batch.</summary>
/// <param name="Name">The paper's name; as the shelf spells it where the shelf has it.</param>
/// <param name="Stock">The paper in the stash, or null.</param>
/// <param name="Side">The side that shows.</param>
internal sealed record PaperUse(string Name, StockPaper? Stock, PaperSide Side)
{
    /// <summary>Whether any leftover will do.</summary>
    public bool AnyOffcut { get; init; }

    /// <summary>Whether neither the card nor the batch says what it is, and the shelf does not know the word.</summary>
    public bool IsUnknown { get; init; }

    /// <summary>
    /// The colours of a paper that has no name of its own, only a pattern's or a role's: two such papers of one name and different colours
    /// are different papers. Empty for papers with names.
    /// </summary>
    public string Colours { get; init; } = "";

    /// <summary>How it looks: as the shelf says, else as the batch or the card does; null where neither says.</summary>
    public PaperLook? Look { get; init; }

    /// <summary>
    /// Another name under which the shelf may have a ready-made thing of this paint: its role, or the word for its colour.
    /// </summary>
    public string? OtherName { get; init; }

    /// <summary>What fills a paint: the batch goes before the card.</summary>
    public static PaperUse For(Paint paint, MakeRequest? order, Stash? stash)
    {
        var filling = order?.Roles.FirstOrDefault(r => r.Role.Equals(paint.Role, StringComparison.OrdinalIgnoreCase));
        if (filling is not null)
        {
            return filling.AnyOffcut
                ? new("any offcut", null, PaperSide.Front) { AnyOffcut = true }
                : Named(filling.Paper ?? filling.Role, stash, filling.Side, LookOf(filling)) with
                {
                    Colours = IsNameless(filling.Paper, filling.Role) ? string.Join(' ', filling.Colours) : "",
                    OtherName = filling.Role,
                };
        }

        if (paint.AnyOffcut)
        {
            return new("any offcut", null, paint.Side) { AnyOffcut = true };
        }

        var look = paint.Look;
        var name = paint.Paper ?? paint.Role ?? (IsWhite(look) ? "white" : look.Ground.Hex);
        var choice = Named(name, stash, paint.Side, look);
        return choice with
        {
            IsUnknown = choice.Stock is null && look.Pattern == PaperPattern.Hatched,
            Colours = IsNameless(paint.Paper, paint.Role) ? string.Join(' ', look.Figures.Prepend(look.Ground).Select(c => c.Hex)) : "",
            OtherName = MetalOf(look) ?? paint.Role,
        };
    }

    private static PaperUse Named(string name, Stash? stash, PaperSide side, PaperLook? otherwise) => stash?.Find(name) is { } stock
        ? new(stock.Name, stock, side) { Look = stock.Side(side) is { IsSaid: true, Look: var shown } ? shown : otherwise }
        : new(name, null, side) { Look = otherwise };

    private static PaperLook? LookOf(RoleChoice filling) => filling.Paper is { } paper ? BuiltIn.FromWords([paper, .. filling.Colours])
        : filling.Colours is [['#', .. var digits], ..] ? new(PaperPattern.Cardstock, Rgb.FromHex(digits), [])
        : null;

    // A pattern word or a role that only says a colour names no paper that could be bought; a colour word does.
    private static bool IsNameless(string? paper, string? role) => paper is null
        ? role is not null && !ColourWords.TryGet(role, out _)
        : BuiltIn.PatternWords.Contains(paper, StringComparer.OrdinalIgnoreCase) && !ColourWords.TryGet(paper, out _);

    private static string? MetalOf(PaperLook look) =>
        ColourWords.All.FirstOrDefault(
            w => ColourWords.TryGet(w, out var named) && named.Pattern == look.Pattern && named.Ground == look.Ground);

    private static bool IsWhite(PaperLook look) => look.Ground == new Rgb(255, 255, 255);
}
