using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Sizes that follow from words, and letter heights that follow from sizes.</summary>
internal sealed class WordSizes(StackSizes sizes, Words words, UnitSystem units, SizeFindings findings)
{
    /// <summary>
    /// Room for the words at their letter height and an eighth at each end, between the notches of a banner, rounded up to a ruler mark.
    /// </summary>
    public Length? FitWords(Node node, Axis axis)
    {
        if (words.Shape(node) is not { } shaped)
        {
            if (node.Bound.Texts.IsEmpty)
            {
                findings.Refuse(node, null, $"{node.Set.Called} has no words to fit.", "Write the words in quotes, or a width.");
            }

            return null;
        }

        if (LetterHeight(node) is not { } letters)
        {
            return null;
        }

        var caps = axis == Axis.Across ? shaped.Width : shaped.Height;
        var ink = Length.NearestMillimetres(letters.Millimetres * caps);
        return node.Bound.Kind == PieceKind.Pennant ? FitPennant(node, axis, ink, letters.Millimetres * shaped.Height)
            : NotchesAlong(node, axis) is { } notches ? UpToMark(ink + Words.EndRoom * 2 + notches)
            : null;
    }

    private Length UpToMark(Length length)
    {
        var step = units.Format().Step.Nanometres;
        return new((length.Nanometres + step - 1) / step * step);
    }

    /// <summary>A pennant is twice as high as its words need; its width follows from how much its sides leave at their foot.</summary>
    private Length? FitPennant(Node node, Axis axis, Length ink, double inkHeight)
    {
        var needed = ink + Words.EndRoom * 2;
        if (axis == Axis.Down)
        {
            return UpToMark(needed * 2);
        }

        if (sizes.Of(node, Axis.Down) is not { } height)
        {
            return null;
        }

        if (PennantRoom.WidthFor(needed.Millimetres, inkHeight, height.Own.Millimetres) is { } width)
        {
            return UpToMark(Length.NearestMillimetres(width));
        }

        findings.Refuse(node, node.Bound.Size!.Span, $"The letters are as high as {node.Set.Called}.",
            "Write smaller letters, as in letters 1/4.");
        return null;
    }

    /// <summary>
    /// How much of a banner's length, which is not known yet, its notches take; null where its height cannot be computed.
    /// </summary>
    private Length? NotchesAlong(Node node, Axis axis)
    {
        if (axis == Axis.Down || node.Bound.Rules.Style.Swallowtail == Swallowtail.None)
        {
            return Length.Zero;
        }

        return sizes.Of(node, Axis.Down) is { } height
            && Words.Notches(node.Bound, new(Length.Limit, height.Own)) is var (left, right) ? left + right : null;
    }

    /// <summary>
    /// The cap height: as written; for text without a size that of large print; else half the height of the piece, shared by its
    /// lines.
    /// </summary>
    public Length? LetterHeight(Node node)
    {
        var bound = node.Bound;
        if (bound.Rules.Letters is { } written)
        {
            return written.Clause.Amount;
        }

        if (bound.Kind.Traits.IsWords)
        {
            if (bound.Size is null)
            {
                return words.UsualLetters;
            }

            if (bound.Size is SingleSize && words.Shape(node) is { } shaped)
            {
                return sizes.Of(node, Axis.Across) is not { } width ? null
                    : width.Own > Border(node) * 2
                        ? Length.NearestMillimetres((width.Own - Border(node) * 2).Millimetres / Ink(node, shaped).Width)
                    : RefuseNarrow(node);
            }
        }

        if (bound.Extent(Axis.Down) is FitExtent)
        {
            findings.Refuse(node, bound.Size!.Span, $"Nothing says how tall the letters of {node.Set.Called} are.", "Write letters 1/4.");
            return null;
        }

        var lines = Math.Max(1, Words.LinesOf(node).Length);
        return sizes.Of(node, Axis.Down) is not { } height ? null
            : bound.Kind == PieceKind.Pennant && words.Shape(node) is { } block ? OnPennant(node, block, height.Own)
            : Length.NearestMillimetres(height.Own.Millimetres / (WordBlock.HeightOf(lines) + 1));
    }

    /// <summary>
    /// Letters that take three fifths of the room between a pennant's sides, and on one that fits its words a quarter of its height.
    /// </summary>
    private Length? OnPennant(Node node, WordBlock block, Length height)
    {
        if (node.Bound.Extent(Axis.Across) is FitExtent)
        {
            return height / 4;
        }

        return sizes.Of(node, Axis.Across) is { } width
            ? Length.NearestMillimetres(0.6 / block.Height
                * PennantRoom.For(new(0, 0, width.Own.Millimetres, height.Millimetres), block.Width / block.Height).Height)
            : null;
    }

    private Length? RefuseNarrow(Node node)
    {
        findings.Refuse(node, node.Bound.Size!.Span, $"The border of {node.Set.Called} leaves no room for its words.",
            "Make it wider, or write a narrower border, as in border 1/16.");
        return null;
    }

    /// <summary>The paper around the ink on each side: for a sentiment 1/8 in or 3 mm unless it is written, for other words none.</summary>
    public Length Border(Node node) =>
        node.Bound.Kind != PieceKind.Sentiment ? Length.Zero
        : node.Bound.Rules.Borders is [var border, ..] ? border.Amount
        : UsualBorder;

    /// <summary>Wide enough to cut by hand, narrow enough to follow the words (common practice, no source).</summary>
    private Length UsualBorder => units == UnitSystem.Inches ? Length.Inch(0, 1, 8) : Length.Millimetre(3);

    /// <summary>
    /// Width and height of the box of words in cap heights: the whole ink of a word or sentiment, or lines of text from cap to baseline.
    /// </summary>
    public static (double Width, double Height) Ink(Node node, WordBlock block) =>
        node.Bound.Kind.Traits.FollowsLetters && block.Ink is { IsEmpty: false } ink ? (ink.Bounds.Width, ink.Bounds.Height)
            : (block.Width, block.Height);

    /// <summary>
    /// How far the ink of text extends beyond its box at most: the box ends at the baseline, and letters may have descenders.
    /// </summary>
    public Length Overhang(Node node, Axis axis)
    {
        if (words.Shape(node) is not { } shaped || LetterHeight(node) is not { } letters || sizes.Of(node, axis) is not { } box)
        {
            return Length.Zero;
        }

        var ink = shaped.Ink.Bounds;
        var reach = axis == Axis.Across ? Math.Max(-ink.Left, ink.Right) : Math.Max(-ink.Top, ink.Bottom);
        return Length.Max(Length.Zero, Length.NearestMillimetres(reach * letters.Millimetres - box.Own.Millimetres / 2));
    }

    /// <summary>The size of text or of a cut-out word whose size is not written.</summary>
    public Length InkSize(Node node, WordBlock block, Axis axis)
    {
        var letters = (node.Bound.Rules.Letters?.Clause.Amount ?? words.UsualLetters).Millimetres;
        var (width, height) = Ink(node, block);
        return Length.NearestMillimetres(letters * (axis == Axis.Across ? width : height)) + Border(node) * 2;
    }
}
