using Sketch.Drafts;
using Sketch.Syntax;

namespace Sketch.Layout;

/// <summary>
/// How many pieces and letters a draft comes to once copies and parts are spelt out, found without spelling them out: what parts use in
/// common is counted once and multiplied.
/// </summary>
/// <param name="deepest">The depth below which nothing is laid out.</param>
internal sealed class PieceCount(int deepest)
{
    // Far above every limit, and far enough below the largest number to be multiplied by any count of copies.
    private const long Most = 1L << 40;

    private readonly Dictionary<PieceDraft, (long Pieces, long Letters)> _known = new(ReferenceEqualityComparer.Instance);

    /// <summary>Pieces with their mats, and letters, of all copies of a draft and of what lies on them.</summary>
    public (long Pieces, long Letters) Of(PieceDraft draft, int depth = 0)
    {
        if (depth >= deepest)
        {
            return default;
        }

        if (_known.TryGetValue(draft, out var known))
        {
            return known;
        }

        var copies = CopiesOf(draft);
        var (pieces, letters) = (copies * OneCopy(draft), copies * LettersOf(draft));
        foreach (var child in draft.Children)
        {
            var on = Of(child, depth + 1);
            (pieces, letters) = (pieces + copies * on.Pieces, letters + copies * on.Letters);
        }

        foreach (var item in draft.Items)
        {
            foreach (var child in item.Children)
            {
                var on = Of(child, depth + 1);
                var changed = Math.Min(item.Items.Length, copies);
                (pieces, letters) = (pieces + changed * on.Pieces, letters + changed * on.Letters);
            }
        }

        return _known[draft] = (Math.Min(pieces, Most), Math.Min(letters, Most));
    }

    /// <summary>A piece with its mats.</summary>
    public static int OneCopy(PieceDraft draft) => 1 + draft.Mats.Length;

    /// <summary>The letters of one copy: one text where there are as many texts as copies, else all of them.</summary>
    public static long LettersOf(PieceDraft draft) =>
        draft.Texts.Length == draft.Count ? draft.Texts.Max(t => (long)t.Text.Length) : draft.Texts.Sum(t => (long)t.Text.Length);

    /// <summary>How many copies a line asks for, up to one more than a line may have.</summary>
    public static long CopiesOf(PieceDraft draft) =>
        draft.Count ?? (draft.Find<ArrangeClause>() is { Down: { } rows } grid ? Math.Min((long)grid.Across * rows, Parser.CountLimit + 1) : 1);
}
