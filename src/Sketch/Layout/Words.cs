using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Syntax;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Layout;

/// <summary>The words of pieces, each shaped once, and their measures.</summary>
internal sealed class Words(IWorld world, BoundFont? cardFont, FindingBag findings)
{
    /// <summary>From one baseline to the next, in cap heights: common practice for type of usual proportions, no source.</summary>
    public const double LinePitch = 1.75;

    /// <summary>Room at each end of a piece that fits its words.</summary>
    public static readonly Length EndRoom = Length.Inch(0, 1, 8);

    /// <summary>The distance in millimetres by which words may be larger than their room and still fit.</summary>
    public const double Slack = 0.01;

    private readonly Dictionary<(string Words, string? Font), ShapedWords?> _shaped = [];
    private readonly HashSet<string> _badFonts = [];

    /// <summary>The part of a piece's box in which its words are centred: for a banner, the part between its notches.</summary>
    public static Rect Room(BoundPiece bound, Rect box)
    {
        var (left, right) = Notches(bound, box.Size);
        return box.Grow(new(-left, Length.Zero, -right, Length.Zero));
    }

    /// <summary>The depth of the notches at the left and right end of a banner of that size; zero for other pieces.</summary>
    public static (Length Left, Length Right) Notches(BoundPiece bound, Size size) =>
        bound.Kind == PieceKind.Banner ? bound.Rules.Style.Notches(size) : default;

    /// <summary>The lines of words of one copy: all texts of a line without a count, else its own.</summary>
    public static ImmutableArray<QuotedSyntax> LinesOf(Node node)
    {
        var texts = node.Bound.Texts;
        return !node.Set.IsRepeat || texts.Length <= 1 || texts.Length != node.Set.Copies.Length ? texts : [texts[node.Index]];
    }

    /// <summary>The shaped lines of a piece; null when it has no words or its font cannot be used.</summary>
    public ImmutableArray<ShapedWords>? Shape(Node node)
    {
        var lines = LinesOf(node);
        if (lines.IsEmpty)
        {
            return null;
        }

        var shaped = ImmutableArray.CreateBuilder<ShapedWords>(lines.Length);
        foreach (var line in lines)
        {
            if (Shape(node.Bound, line) is not { } words)
            {
                return null;
            }

            shaped.Add(words);
        }

        return shaped.MoveToImmutable();
    }

    private ShapedWords? Shape(BoundPiece bound, QuotedSyntax line)
    {
        var chosen = bound.Rules.Font is { } own ? new BoundFont(own.Clause.Font.Text, own.Location) : cardFont;
        var font = chosen?.Name;
        if (_shaped.TryGetValue((line.Text, font), out var known))
        {
            return known;
        }

        var location = bound.Location;
        var shaped = world.ShapeWords(line.Text, font, (chosen?.Location ?? location).Source.Path);
        var words = shaped.ValueOrDefault;
        if (shaped.Problem is { } problem && _badFonts.Add(font ?? ""))
        {
            findings.Add(FindingCatalogue.BadFont, chosen?.Location ?? location, $"The font \"{font}\" cannot be used: {problem}",
                "Write a kind of lettering, as in lettering script, or name an installed font or a .ttf or .otf file beside the card.");
        }
        else if (words is { MissingCharacters.Length: > 0 })
        {
            findings.Add(FindingCatalogue.MissingCharacter, location, $"The font has no '{words.MissingCharacters}'.",
                "Change the words, or name a font that has it: font \"Name\".");
        }

        _shaped[(line.Text, font)] = words;
        return words;
    }

    /// <summary>Width of the widest line in cap heights, at least a hundredth, so that blank words can be measured.</summary>
    public static double WidthInCaps(ImmutableArray<ShapedWords> lines) =>
        lines.Max(l => Math.Max(0.01, l.Outline.IsEmpty ? 0 : l.Outline.Bounds.Width));

    /// <summary>Height of the block of lines in cap heights, from the top of the first capital to the last baseline.</summary>
    public static double HeightInCaps(int lines) => 1 + (lines - 1) * LinePitch;
}
