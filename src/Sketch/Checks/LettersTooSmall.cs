using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Letters too small for older readers: a small x of less than 2 mm (RNIB clear print; better 2.3 mm). A note, because small print may be
/// meant so, as on the back.
/// </summary>
internal sealed class LettersTooSmall : IFitRule
{
    /// <summary>The least height of a small x.</summary>
    private static readonly Length Least = Length.Millimetre(2);

    public void Check(FitView view, FindingBag findings)
    {
        foreach (var line in view.Pieces.Where(p => p.Words is { } words && IsSmall(words)).GroupBy(p => p.Location))
        {
            var piece = line.MinBy(p => p.Words!.SmallLetterHeight)!;
            var words = piece.Words!;
            var small = words.SmallLetterHeight == words.LetterHeight ? "The letters" : "The small letters";
            findings.Add(FindingCatalogue.LettersTooSmall, line.Key,
                $"{small} of “{words.Text.Replace('\n', ' ')}” are {LengthFormat.Millimetres(words.SmallLetterHeight)} high; "
                    + $"older readers need at least {LengthFormat.Millimetres(Least)}.",
                Hint(view, piece, words));
        }
    }

    private static bool IsSmall(PieceWords words) => words.SmallLetterHeight > Length.Zero && words.SmallLetterHeight < Least;

    private static string Hint(FitView view, Piece piece, PieceWords words)
    {
        // What rounding takes away must not leave the letters too small again.
        var by = (Least.Millimetres + 0.0001) / words.SmallLetterHeight.Millimetres;
        return piece.Written switch
        {
            WrittenMeasure.Width when piece.Kind.Traits.IsWords => $"Make it {Larger(piece.Box.Width)} wide.",
            WrittenMeasure.Height when piece.Kind.Traits.IsWords => $"Make it {Larger(piece.Box.Height)} high.",
            _ => $"Write letters {Larger(words.LetterHeight)}.",
        };

        string Larger(Length length) => view.Say.Typed(view.Say.UpToMark(Length.NearestMillimetres(length.Millimetres * by)));
    }
}
