using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Lettering;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Layout;

/// <summary>The words of pieces, each shaped once, and their measures.</summary>
internal sealed class Words(IWorld world, BoundFont? cardFont, UnitSystem units, FindingBag findings)
{
    /// <summary>Room at each end of a piece that fits its words.</summary>
    public static readonly Length EndRoom = Length.Inch(0, 1, 8);

    /// <summary>The distance in millimetres by which words may be larger than their room and still fit.</summary>
    public const double Slack = 0.01;

    private static readonly QuotedSyntax SmallX = new("x", default);

    private readonly Dictionary<Node, WordBlock?> _blocks = [];
    private readonly Dictionary<(string Words, string? Font, LetteringStyle Style), ShapedWords?> _set = [];
    private readonly HashSet<string> _badFonts = [];
    private readonly HashSet<Location> _reportedBends = [];

    /// <summary>
    /// The part of a piece's box in which its words are centred: of a banner the part between its notches, of a pennant the largest part of
    /// the words' proportions between its slanted sides.
    /// </summary>
    public static Rect Room(BoundPiece bound, Rect box, WordBlock words)
    {
        if (bound.Kind == PieceKind.Pennant && box.Width > Length.Zero && box.Height > Length.Zero)
        {
            return PennantRoom.For(Bounds.Of(box), words.Width / words.Height).ToRect();
        }

        var (left, right) = Notches(bound, box.Size);
        return box.Grow(new(-left, Length.Zero, -right, Length.Zero));
    }

    /// <summary>The depth of the notches at the left and right end of a banner of that size; zero for other pieces.</summary>
    public static (Length Left, Length Right) Notches(BoundPiece bound, Size size) =>
        bound.Kind == PieceKind.Banner ? bound.Rules.Style.Notches(size) : default;

    /// <summary>
    /// The lines of words of one copy: all texts of a line without a count, else its own; of a rubber stamp without a drawing its name.
    /// </summary>
    public static ImmutableArray<QuotedSyntax> LinesOf(Node node)
    {
        if (node.Bound.NamedStamp is { } stamp)
        {
            return [new(stamp.Text.Replace('-', ' '), stamp.Span)];
        }

        var texts = node.Bound.Texts;
        return !node.Set.IsRepeat || texts.Length <= 1 || texts.Length != node.Set.Copies.Length ? texts : [texts[node.Index]];
    }

    /// <summary>Capitals of 3/16 in (about 19 point type: large print is 16 to 22 point, RNIB), or 5 mm in metric files.</summary>
    public Length UsualLetters => units == UnitSystem.Inches ? Length.Inch(0, 3, 16) : Length.Millimetre(5);

    /// <summary>The set lines of a piece; null when it has no words or its font cannot be used.</summary>
    public WordBlock? Shape(Node node)
    {
        if (!_blocks.TryGetValue(node, out var block))
        {
            _blocks[node] = block = Set(node);
        }

        return block;
    }

    private WordBlock? Set(Node node)
    {
        var (lines, rules) = (LinesOf(node), node.Bound.Rules);
        var isBent = lines.Length == 1 && rules.Bend is not null;
        if (lines.Length > 1 && rules.Bend is { } bend && _reportedBends.Add(bend.Location))
        {
            findings.Add(FindingCatalogue.IdleClause, bend.Location, "Several lines of words cannot be bent together.",
                "Write each line as a piece of its own, or leave this out.");
        }

        var set = ImmutableArray.CreateBuilder<ShapedWords>(lines.Length);
        foreach (var line in lines)
        {
            var straight = new LetteringStyle(rules.Spacing, 0);
            if (Set(node.Bound, line, straight) is not { } shaped)
            {
                return null;
            }

            set.Add(isBent ? Set(node.Bound, line, straight with { Arc = ArcOf(rules, line, shaped) })! : shaped);
        }

        return lines.IsEmpty ? null : new(set.MoveToImmutable(), rules.Range, isBent)
        {
            Diameter = isBent && rules.Circle is { } circle ? circle.Clause.Diameter.Millimetres / LettersOn(rules) : null,
        };
    }

    /// <summary>The height of a small x in cap heights, in the font of a piece; 1 where its words have no small letters.</summary>
    public double SmallLetters(Node node) =>
        !node.Bound.Rules.IsCapitals && LinesOf(node).Any(l => l.Text.Any(char.IsLower))
            && Set(node.Bound, SmallX, new(0, 0)) is { Outline: { IsEmpty: false } x } ? x.Bounds.Height : 1;

    /// <summary>The degrees of a circle that a line covers.</summary>
    private double ArcOf(PieceRules rules, QuotedSyntax line, ShapedWords shaped)
    {
        if (rules.Circle is not { } circle)
        {
            return rules.Arc!.Value.Clause.Degrees;
        }

        var letters = LettersOn(rules);
        var round = Math.PI * circle.Clause.Diameter.Millimetres;
        var length = shaped.Outline.IsEmpty ? 0 : shaped.Outline.Bounds.Width * letters;
        if (length > round && _reportedBends.Add(circle.Location))
        {
            var step = units.Format().Step;
            var enough = step * (Length.NearestMillimetres(length / Math.PI).Nanometres / step.Nanometres + 1);
            findings.Add(FindingCatalogue.BadSize, circle.Location, $"\"{line.Text}\" is longer than the circle is round.",
                $"Write on circle {units.Format().WithUnit(enough)}, or smaller letters.");
        }

        return LetteringStyle.FullCircle * (length < round ? length / round : 1);
    }

    /// <summary>The height in millimetres of letters that stand on a circle: a circle does not follow from a size.</summary>
    private double LettersOn(PieceRules rules) => Math.Max(0.01, (rules.Letters?.Clause.Amount ?? UsualLetters).Millimetres);

    private ShapedWords? Set(BoundPiece bound, QuotedSyntax line, LetteringStyle style)
    {
        var text = bound.Rules.IsCapitals ? line.Text.ToUpperInvariant() : line.Text;
        text = style.Spacing > 0 ? Typesetting.Apart(text) : text;
        var font = bound.Rules.Font is { } own ? new BoundFont(own.Clause.Font.Text, own.Location) : cardFont;
        var key = (text, font?.Name, style);
        if (!_set.TryGetValue(key, out var set))
        {
            _set[key] = set = Shape(bound, text, font) is { } shaped ? Typesetting.Set(shaped, style) : null;
        }

        return set;
    }

    private ShapedWords? Shape(BoundPiece bound, string text, BoundFont? font)
    {
        var location = bound.Location;
        var shaped = world.ShapeWords(text, font?.Name, (font?.Location ?? location).Source.Path);
        var words = shaped.ValueOrDefault;
        if (shaped.Problem is { } problem && _badFonts.Add(font?.Name ?? ""))
        {
            findings.Add(FindingCatalogue.BadFont, font?.Location ?? location, $"The font \"{font?.Name}\" cannot be used: {problem}",
                "Write a kind of lettering, as in lettering script, or name an installed font or a .ttf or .otf file beside the card.");
        }
        else if (words is { MissingCharacters.Length: > 0 })
        {
            findings.Add(FindingCatalogue.MissingCharacter, location, $"The font has no '{words.MissingCharacters}'.",
                "Change the words, or name a font that has it: font \"Name\".");
        }

        return words;
    }
}
