using System.Collections.Immutable;
using Sketch.Colours;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Syntax;

namespace Sketch.Stashes;

/// <summary>The paper that a role line gives, in a card or in a batch, before it is looked up in a stash.</summary>
public static class RolePaper
{
    private static readonly PaperLook White = ColourWords.TryGet("white", out var white) ? white : PaperLook.Plain(new(255, 255, 255));

    /// <summary>White cardstock without a role.</summary>
    public static Paint Plain { get; } = new(null, null, PaperSide.Front, White);

    /// <summary>The paper as the line gives it: a built-in paper in these colours, else cardstock of the first colour.</summary>
    /// <param name="role">The role.</param>
    /// <param name="paper">The paper's name, or null where the line gives only colours.</param>
    /// <param name="colours">The colours after the name; a word that is not a colour is ignored.</param>
    /// <param name="side">The side that shows.</param>
    /// <param name="anyOffcut">Whether any leftover will do.</param>
    public static Paint Of(string role, string? paper, IEnumerable<PaintSyntax> colours, PaperSide side, bool anyOffcut)
    {
        var given = colours
            .Select(c => c.IsHex ? Rgb.FromHex(c.Text) : ColourWords.TryGet(c.Text, out var word) ? word.Ground : (Rgb?)null)
            .OfType<Rgb>().ToImmutableArray();
        var look = (paper is null ? null : BuiltIn.Find(paper, given))
            ?? (given.IsEmpty ? anyOffcut ? BuiltIn.AnyOffcut : null : Cardstock(given[0]));
        return new(role, paper, side, look ?? White, anyOffcut) { Knowledge = Known(look is not null || paper is null) };
    }

    /// <summary>The paper that a choice names.</summary>
    internal static Paint Of(PaperChoice choice)
    {
        if (choice.Colour is { } colour)
        {
            return new(choice.Role, null, PaperSide.Front, Cardstock(colour));
        }

        var look = BuiltIn.Find(choice.Paper, []);
        return new(choice.Role, choice.Paper, choice.Side, look ?? White) { Knowledge = Known(look is not null) };
    }

    /// <summary>The paper of a name that no role line declares: a built-in paper, else an unknown paper.</summary>
    internal static Paint Undeclared(string name) => BuiltIn.Find(name, []) is { } look
        ? new(name, null, PaperSide.Front, look)
        : new(name, null, PaperSide.Front, PaperLook.Missing) { Knowledge = PaperKnowledge.Nothing };

    /// <summary>Plain cardstock of a colour.</summary>
    internal static PaperLook Cardstock(Rgb colour) => new(PaperPattern.Cardstock, colour, []);

    private static PaperKnowledge Known(bool isLookKnown) => isLookKnown ? PaperKnowledge.Look : PaperKnowledge.Name;
}
