using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>Words too large for the piece or the box that they are written in, or that run over the edge of a piece that is no rectangle.</summary>
internal sealed class WordsTooBig : IFitRule
{
    public void Check(FitView view, FindingBag findings)
    {
        var told = new HashSet<Location>();
        var asked = new Dictionary<(Location, string, Size), bool>();
        foreach (var piece in view.Pieces)
        {
            // A cut-out word is its own piece, so it cannot be too large for it.
            if (piece.Words is not { } words || piece.Kind == "word" || words.Ink.IsEmpty || told.Contains(piece.Location))
            {
                continue;
            }

            if (!words.Fits)
            {
                told.Add(piece.Location);
                TellSize(view, findings, piece, words);
                continue;
            }

            var key = (piece.Location, words.Text, piece.Box.Size);
            if (piece.Matter == PieceMatter.Paper && !asked.ContainsKey(key)
                && !(asked[key] = new Cover(piece.Outline.Grow(FitView.Tolerance.Millimetres)).Covers(words.Ink)))
            {
                told.Add(piece.Location);
                findings.Add(FindingCatalogue.WordsTooBig, piece.Location,
                    $"“{OneLine(words)}” runs over the edge of {Saying.Called(piece)} with letters {view.Say.Length(words.LetterHeight)} high.",
                    "Write smaller letters, or make the piece larger.");
            }
        }
    }

    private static void TellSize(FitView view, FindingBag findings, Piece piece, PieceWords words)
    {
        var lines = words.Text.Count(c => c == '\n') + 1;
        var (width, height) = (words.Ink.Bounds.Width, words.LetterHeight.Millimetres * Layout.Words.HeightInCaps(lines));
        var (roomAcross, roomDown) = (piece.Box.Width.Millimetres, piece.Box.Height.Millimetres);
        var share = Math.Min(roomAcross / width, piece.Kind == "text" ? 1 : roomDown / height);
        var excess = width > roomAcross
            ? $"{view.Say.Length(Length.NearestMillimetres(width - roomAcross))} too wide"
            : $"{view.Say.Length(Length.NearestMillimetres(height - roomDown))} too high";
        var smaller = view.Say.LettersUpTo(Length.NearestMillimetres(words.LetterHeight.Millimetres * share));
        var face = view.SizeOf(piece.Face);
        var (needed, room, measure) = width > roomAcross ? (width, face.Width, "wide") : (height, face.Height, "high");
        var larger = view.Say.UpToMark(Length.NearestMillimetres(needed));
        string[] ways =
        [
            smaller > Length.Zero ? $"letters {view.Say.Typed(smaller)}" : "fewer words",
            .. larger <= room ? [$"make it {view.Say.Typed(larger)} {measure}"] : Array.Empty<string>(),
            .. width > roomAcross && roomDown >= width ? ["write it lying, and turn it: turn left 90"] : Array.Empty<string>(),
        ];
        findings.Add(FindingCatalogue.WordsTooBig, piece.Location,
            $"“{OneLine(words)}” is {excess} for {Saying.Called(piece)} with letters {view.Say.Length(words.LetterHeight)} high.",
            $"Write {string.Join(", or ", ways)}.");
    }

    private static string OneLine(PieceWords words) => words.Text.Replace('\n', ' ');
}
