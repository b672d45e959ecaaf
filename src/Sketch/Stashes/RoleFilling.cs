using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using Sketch.Colours;
using Sketch.Panels;
using Sketch.Papers;

namespace Sketch.Stashes;

/// <summary>A paper put into a role from outside the card.</summary>
/// <param name="Role">The role.</param>
/// <param name="Paper">A paper of the shelf, a built-in paper, a colour word, or <c>#</c> and hex digits.</param>
/// <param name="Side">Which side shows.</param>
public sealed record PaperChoice(string Role, string Paper, PaperSide Side)
{
    /// <summary>The choice as <see cref="TryParse"/> reads it; the front is not said.</summary>
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

/// <summary>What fills the roles of a card: a shelf and choices. A choice goes before what the card says.</summary>
/// <param name="Stash">The shelf, or null when none is at hand: then papers are drawn in the colours that the card gives.</param>
/// <param name="Choices">The choices; of two for one role the last counts.</param>
public sealed record RoleFilling(Stash? Stash, ImmutableArray<PaperChoice> Choices)
{
    /// <summary>No shelf and no choices.</summary>
    public static RoleFilling None { get; } = new(null, []);

    /// <summary>The choice for a role, or null.</summary>
    public PaperChoice? ChoiceFor(string role) => Choices.LastOrDefault(c => c.Role.Equals(role, StringComparison.OrdinalIgnoreCase));

    /// <summary>What a choice is made of; null when neither the shelf nor the built-in papers have it.</summary>
    public Paint? Paint(PaperChoice choice)
    {
        if (Stash?.Find(choice.Paper) is { } paper)
        {
            return Paint(choice.Role, paper, choice.Side);
        }

        if (BuiltIn.Find(choice.Paper, []) is { } look)
        {
            return new(choice.Role, choice.Paper, choice.Side, look);
        }

        return choice.Paper is ['#', .. var digits] && digits.Length is 3 or 6 && digits.All(char.IsAsciiHexDigit)
            ? new(choice.Role, null, PaperSide.Front, new(PaperPattern.Cardstock, Rgb.FromHex(digits), []))
            : null;
    }

    /// <summary>A side of a paper of the shelf in a role; where the shelf does not say how it looks, as the card would draw it.</summary>
    public static Paint Paint(string? role, StockPaper paper, PaperSide side, PaperLook? otherwise = null) =>
        new(role, paper.Name, side, paper.Side(side) is { IsSaid: false } ? otherwise ?? paper.Side(side).Look : paper.Side(side).Look);
}
