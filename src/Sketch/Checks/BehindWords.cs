using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;

namespace Sketch.Checks;

/// <summary>
/// What text and cut-out words are seen against. A piece beside the one that they lie on may reach beneath them, and words may reach beyond
/// what they lie on, so each letter counts by itself.
/// </summary>
internal sealed class BehindWords(FitView view)
{
    private readonly Dictionary<int, Cover> _covers = [];

    /// <summary>For each letter the topmost paper beneath it, by the point where its outline begins; each paper once.</summary>
    /// <param name="index">The words.</param>
    public IEnumerable<Paint> Of(int index)
    {
        var words = view.Pieces[index];
        var letters = words.TurnedOutline.Contours.Select(c => c.Start).ToList();
        if (letters.Count == 0)
        {
            yield return view.Card.GroundOf(words);
        }

        for (var i = index - 1; i >= 0 && letters.Count > 0; i--)
        {
            var piece = view.Pieces[i];
            var mayBeBehind = piece.Face == words.Face && piece.Kind != PieceKind.Shadow
                && (piece.Matter == PieceMatter.Paper || i == words.LiesOn);
            if (mayBeBehind && letters.RemoveAll(CoverOf(i).Holds) > 0)
            {
                yield return piece.Paint;
            }
        }

        if (letters.Count > 0)
        {
            yield return view.Card.PaperOf(words.Face);
        }
    }

    private Cover CoverOf(int index) =>
        _covers.TryGetValue(index, out var cover) ? cover : _covers[index] = new(view.Pieces[index].TurnedOutline);
}
