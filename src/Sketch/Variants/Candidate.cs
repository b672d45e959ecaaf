using System.Collections.Immutable;
using Sketch.Colours;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;

namespace Sketch.Variants;

/// <summary>A side of a paper that may fill a role.</summary>
internal sealed record Candidate(StockPaper Paper, PaperSide Side)
{
    public PaperLook Look => Paper.Side(Side).Look;

    /// <summary>What it is to a maker.</summary>
    public PaperCharacter Character { get; } = PaperCharacters.Of(Paper.Side(Side).Look);

    private Lab Mean { get; } = Lab.FromRgb(LookColours.Mean(Paper.Side(Side).Look));

    /// <summary>
    /// The sides that suit a role, in the order of the stash: all of those that are named, else those of the character of the role's own
    /// paper, so that patterned stays patterned and foil stays foil. Where the stash has none of that character any paper stands in.
    /// </summary>
    public static ImmutableArray<Candidate> For(RoleUse use, Stash stash, ImmutableArray<string> named)
    {
        var sides = stash.Papers.SelectMany(p => p.Kind == StockKind.Cardstock || p.Front.Look == p.Back.Look
            ? [new(p, PaperSide.Front)]
            : (Candidate[])[new(p, PaperSide.Front), new(p, PaperSide.Back)]);
        var suited = sides.Where(c => named.IsEmpty ? c.Suits(use) : named.Any(c.IsNamed)).ToImmutableArray();
        var alike = suited.Where(c => c.Character == use.Character).ToImmutableArray();
        return named.IsEmpty && !alike.IsEmpty ? alike : suited;
    }

    /// <summary>Whether they are two sides of one sheet, or sheets of one collection, which are made to go together.</summary>
    public bool GoesWith(Candidate other) => ReferenceEquals(Paper, other.Paper)
        || (Paper.Collection is { } own && own.Equals(other.Paper.Collection, StringComparison.OrdinalIgnoreCase));

    /// <summary>How different a role looks with one and with the other: 0 for the same, 1 for a completely different colour.</summary>
    public double Unlike(Candidate other)
    {
        const double Wide = 40, OtherPrint = 0.5;
        return this == other ? 0 : OtherPrint + (1 - OtherPrint) * Math.Min(1, ColourDifference.Between(Mean, other.Mean) / Wide);
    }

    /// <summary>Whether a name is the paper's, with or without this side.</summary>
    public bool IsNamed(string name) => name.Split('/') switch
    {
        [var paper] => Is(paper),
        [var paper, var side] => Is(paper) && side.Equals(Side.ToString(), StringComparison.OrdinalIgnoreCase),
        _ => false,
    };

    private bool Is(string paper) => Paper.Name.Equals(paper, StringComparison.OrdinalIgnoreCase);

    private bool Suits(RoleUse use) =>
        Paper.Side(Side).IsDescribed && (!use.IsInk || !LookColours.IsPrinted(Look)) && (!use.IsBase || Paper.Kind == StockKind.Cardstock);
}
