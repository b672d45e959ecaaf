using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Sketch.Colours;
using Sketch.Panels;
using Sketch.Papers;

namespace Sketch.Stashes;

/// <summary>A paper put into a role from outside the card.</summary>
/// <param name="Role">The role.</param>
/// <param name="Paper">A paper of the stash, a built-in paper, a colour word, or <c>#</c> and hex digits.</param>
/// <param name="Side">Which side shows.</param>
public sealed record PaperChoice(string Role, string Paper, PaperSide Side)
{
    /// <summary>The colour, where the choice is one in hex digits and not a paper by name; else null.</summary>
    public Rgb? Colour =>
        Paper is ['#', .. var digits] && digits.Length is 3 or 6 && digits.All(char.IsAsciiHexDigit) ? Rgb.FromHex(digits) : null;

    /// <summary>The choice as <see cref="TryParse"/> reads it; the front is not written.</summary>
    public override string ToString() => $"{Role}={Paper}{(Side == PaperSide.Back ? "/back" : "")}";

    /// <summary>Reads <c>ROLE=PAPER</c>, <c>ROLE=PAPER/front</c> or <c>ROLE=PAPER/back</c>.</summary>
    /// <returns>Whether the text is such a choice.</returns>
    public static bool TryParse(string text, [NotNullWhen(true)] out PaperChoice? choice)
    {
        choice = null;
        if (text.Split('=') is not [var role, var rest])
        {
            return false;
        }

        var (paper, side) = rest.Split('/', ',') switch
        {
            [var name] => (name, "front"),
            [var name, var last] => (name, last),
            _ => ("", ""),
        };
        PaperSide? shown = side.Trim().ToLowerInvariant() switch { "front" => PaperSide.Front, "back" => PaperSide.Back, _ => null };
        if (role.Trim().Length == 0 || paper.Trim().Length == 0 || shown is null)
        {
            return false;
        }

        choice = new(role.Trim(), paper.Trim(), shown.Value);
        return true;
    }
}

/// <summary>
/// Resolves the papers of a card. This is the only place where it is decided which paper fills a role, for the drawing of a card, a batch,
/// the page and variants. The first of these that names the role counts:
/// <list type="number">
/// <item>a choice: <c>--paper</c> on the command line, a paper tried on the page, a paper of a variant;</item>
/// <item>a <c>role</c> line beneath the <c>make</c> line of a batch;</item>
/// <item>the card itself.</item>
/// </list>
/// The stash is then searched for a paper of that name; a batch, whose pieces must be cut from something, also looks for the name of the
/// role where only a colour is given. The stash decides how its paper looks. If it does not describe the paper or does not have it, the
/// paper looks as the line that names it describes it.
/// </summary>
/// <param name="Stash">The stash, or null when there is none: then papers are drawn in the colours that the files give.</param>
/// <param name="Choices">The choices; of two for one role the last counts.</param>
public sealed record RoleFilling(Stash? Stash, ImmutableArray<PaperChoice> Choices)
{
    /// <summary>No stash and no choices.</summary>
    public static RoleFilling None { get; } = new(null, []);

    /// <summary>The papers that the <c>make</c> line of a batch gives to roles, each with its role; null outside a batch.</summary>
    public ImmutableArray<Paint>? Batch { get; init; }

    /// <summary>The choice for a role, or null.</summary>
    public PaperChoice? ChoiceFor(string role) => Choices.LastOrDefault(c => c.Role.Equals(role, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether the stash or the built-in papers have what a choice names.</summary>
    public bool Has(PaperChoice choice) => Resolve(choice).Knowledge != PaperKnowledge.Nothing;

    /// <summary>What a piece is made of.</summary>
    /// <param name="own">
    /// What the card gives, or the result of an earlier resolution with the same stash; a paint without a role is returned as it is.
    /// </param>
    public Paint Resolve(Paint own)
    {
        if (own.Role is not { } role)
        {
            return own;
        }

        if (ChoiceFor(role) is { } choice)
        {
            return Resolve(choice) with { Role = role };
        }

        var given = Batch?.FirstOrDefault(p => role.Equals(p.Role, StringComparison.OrdinalIgnoreCase)) ?? own;
        return FromStash(given, given.Paper ?? (Batch is null ? null : role)) with { Role = role };
    }

    /// <summary>What a piece is made of if no line declares the role that it names: a paper of the stash or a built-in one.</summary>
    public Paint ResolveUndeclared(string name)
    {
        var found = Resolve(RolePaper.Undeclared(name));
        return found.Paper is null ? FromStash(found, name) : found;
    }

    private Paint Resolve(PaperChoice choice)
    {
        var chosen = RolePaper.Of(choice);
        var found = FromStash(chosen, chosen.Paper);
        return found.Knowledge == PaperKnowledge.Name && Stash?.Find(choice.Paper) is null ? Missing(found) : found;
    }

    private Paint FromStash(Paint paint, string? name)
    {
        if (paint.AnyOffcut)
        {
            return paint with { Look = OffcutKinds.Look(paint.OffcutOf, Stash) };
        }

        if (Stash is null || name is null)
        {
            return paint;
        }

        if (Stash.Find(name) is not { } paper)
        {
            return Stash.FindSupply(name) is { } supply && FromSupply(paint, supply) is { } ready ? ready
                : paint.Knowledge == PaperKnowledge.Name ? Missing(paint) : paint;
        }

        paint = paint with { IsUpright = paper.Upright };
        var face = paper.Side(paint.Side);
        return face.IsDescribed ? paint with { Paper = paper.Name, Look = face.Look, Knowledge = PaperKnowledge.Look }
            : paint.Knowledge == PaperKnowledge.Look ? paint with { Paper = paper.Name }
            : paint with { Paper = paper.Name, Look = face.Look, Knowledge = PaperKnowledge.Name };
    }

    /// <summary>
    /// The look of a ready-made thing. Null where its line gives none, and for a colour word that is not named as a paper: red paper does
    /// not look like gems called red.
    /// </summary>
    private static Paint? FromSupply(Paint paint, Supply supply) =>
        paint is { Paper: null, Knowledge: PaperKnowledge.Look } ? null
        : supply.Face is { IsDescribed: true } face ? paint with { Paper = supply.Name, Look = face.Look, Knowledge = PaperKnowledge.Look }
        : paint.Knowledge == PaperKnowledge.Look ? null
        : paint with { Paper = supply.Name, Look = RolePaper.Plain.Look, Knowledge = PaperKnowledge.Name };

    private static Paint Missing(Paint paint) => paint with { Look = PaperLook.Missing, Knowledge = PaperKnowledge.Nothing };
}
