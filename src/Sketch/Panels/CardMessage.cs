using System.Collections.Immutable;
using Sketch.Lettering;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Panels;

/// <summary>A message to be written or printed inside a card.</summary>
/// <param name="Lines">Its lines as written; one that is too long for its place is broken.</param>
/// <param name="Location">The line of the file, or the cell, that gives it.</param>
public sealed record CardMessage(ImmutableArray<string> Lines, Location Location)
{
    /// <summary>What stands for the name of the person who gets the card.</summary>
    public const string NameMark = "{name}";

    /// <summary>The font that its line names and the path of the file that names it; null for the font of the card.</summary>
    public NamedFont? Font { get; init; }

    /// <summary>The height of a capital, or null for what fits.</summary>
    public Length? Letters { get; init; }

    /// <summary>How its lines are aligned; null for the usual way of its place.</summary>
    public LineRange? Range { get; init; }

    /// <summary>Whether it is written by hand, so that a guide is printed instead of a strip.</summary>
    public bool IsByHand { get; init; }

    /// <summary>Whether it has a place for the name of a person.</summary>
    public bool IsPersonal => Lines.Any(l => l.Contains(NameMark, StringComparison.OrdinalIgnoreCase));

    /// <summary>The message for a person.</summary>
    public CardMessage For(string name) => this with
    {
        Lines = [.. Lines.Select(l => l.Replace(NameMark, name, StringComparison.OrdinalIgnoreCase))],
    };

    /// <summary>This message instead of another one, with the lettering of that one unless it has its own.</summary>
    public CardMessage InsteadOf(CardMessage? other) => other is null ? this : this with
    {
        Font = Font ?? other.Font,
        Letters = Letters ?? other.Letters,
        Range = Range ?? other.Range,
        IsByHand = IsByHand || other.IsByHand,
    };

    /// <summary>Its lines as one sentence.</summary>
    public override string ToString() => string.Join(" / ", Lines);
}

/// <summary>A font as a file names it.</summary>
/// <param name="Name">A font file or the name of a font.</param>
/// <param name="NamedIn">The path of the file that names it.</param>
public readonly record struct NamedFont(string Name, string NamedIn);
