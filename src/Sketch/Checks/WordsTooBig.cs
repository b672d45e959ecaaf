using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Words too large for the piece or the box that they are written in, or that run over the edge of a piece that is not a rectangle. The
/// proposed letter height is the largest that this check accepts on all copies of the line.
/// </summary>
internal sealed class WordsTooBig : IFitRule
{
    public void Check(FitView view, FindingBag findings)
    {
        // A cut-out word is its own piece, so it cannot be too large for it.
        var inked = view.Pieces.Where(p => p is { Words.Ink.IsEmpty: false, Kind.Traits.FollowsLetters: false });
        foreach (var line in inked.GroupBy(p => p.Location))
        {
            var written = line.DistinctBy(p => (p.Words!.Text, p.Box.Size, p.Words.LetterHeight))
                .Select(p => new Written(p, p.Words!)).ToImmutableArray();
            if (written.FirstOrDefault(w => !w.Accepts(w.Words.LetterHeight)) is { } first)
            {
                Report(view, findings, first, written);
            }
        }
    }

    private static void Report(FitView view, FindingBag findings, Written first, ImmutableArray<Written> line)
    {
        var (piece, words) = (first.Piece, first.Words);
        var called = CheckText.Called(piece);
        var letters = $"with letters {view.Say.Length(words.LetterHeight)} high";
        var quoted = $"“{words.Text.Replace('\n', ' ')}”";
        findings.Add(FindingCatalogue.WordsTooBig, piece.Location,
            first.TooWide(words.LetterHeight) ? $"{quoted} is {Excess(first.Width - first.RoomAcross)} too wide for {called} {letters}."
            : first.TooHigh(words.LetterHeight) ? $"{quoted} is {Excess(first.Height - first.RoomDown)} too high for {called} {letters}."
            : $"{quoted} runs over the edge of {called} {letters}.",
            Hint(view, first, line));

        string Excess(double millimetres) => view.Say.Length(Length.NearestMillimetres(millimetres));
    }

    private static string Hint(FitView view, Written first, ImmutableArray<Written> line)
    {
        var face = view.Card.SizeOf(first.Piece.Face);
        var ways = new List<string>();
        var smaller = line.All(w => w.KeepsItsBox)
            ? view.Say.LargestLetters(line.Max(w => w.Words.LetterHeight), height => line.All(w => w.Accepts(height)))
            : Length.Zero;
        ways.Add(smaller > Length.Zero ? $"letters {view.Say.Typed(smaller)}"
            : line.All(w => w.KeepsItsBox) ? "fewer words" : "fewer words or smaller letters");
        if (line.Length == 1 && first.IsStraight && first.Piece.Written is null)
        {
            var (tooWide, tooHigh) = (first.TooWide(first.Words.LetterHeight), first.TooHigh(first.Words.LetterHeight));
            var (notches, sizing) = (first.Piece.Notches.Left + first.Piece.Notches.Right, first.Piece.Sizing);
            var wide = view.Say.UpToMark(Length.NearestMillimetres(first.Width) + notches);
            var high = view.Say.UpToMark(Length.NearestMillimetres(Math.Max(first.Height, first.HeightWithTails)));
            if (tooWide && first.HeightWithTails <= first.RoomDown && sizing.Width == Sizing.Written
                && first.RoomAcross > 0 && wide <= face.Width)
            {
                ways.Add($"make it {view.Say.Typed(wide)} wide");
            }

            if (tooHigh && !tooWide && sizing.Height == Sizing.Written && notches == Length.Zero && high <= face.Height)
            {
                ways.Add($"make it {view.Say.Typed(high)} high");
            }

            if (tooWide && sizing == (Sizing.Written, Sizing.Written) && notches == Length.Zero && first.Piece.Turn == 0
                && first.Width <= first.RoomDown && Math.Max(first.Height, first.HeightWithTails) <= first.RoomAcross)
            {
                ways.Add($"write it lying and turn it: {view.Say.Typed(first.Piece.Box.Size.Turned())}, turn left 90");
            }
        }
        else if (!first.IsStraight)
        {
            ways.Add("make the piece larger");
        }

        return $"Write {string.Join(", or ", ways)}.";
    }

    /// <summary>The words of one copy of a line, with the room available to them.</summary>
    private sealed record Written(Piece Piece, PieceWords Words)
    {
        private Cover? _cover;

        public double Width => Words.Ink.Bounds.Width;

        public double Height => Words.Height;

        /// <summary>The height of the lowest room that also holds descenders below the last line and ascenders above the first.</summary>
        public double HeightWithTails =>
            2 * Math.Max(Words.Ink.Bounds.Bottom - Bounds.Of(Words.Room).Centre.Y, Bounds.Of(Words.Room).Centre.Y - Words.Ink.Bounds.Top);

        public double RoomAcross => Words.Room.Width.Millimetres;

        public double RoomDown => Words.Room.Height.Millimetres;

        /// <summary>Whether the cut shape is a rectangle, or a banner, whose words lie in a rectangle.</summary>
        public bool IsStraight => Piece.Matter != PieceMatter.Paper || Piece.Kind == PieceKind.Banner || Edge.IsRectangle;

        /// <summary>
        /// Whether smaller letters do not change the piece; a banner or rectangle that fits its words holds them anyway.
        /// </summary>
        public bool KeepsItsBox => IsStraight || Piece.Sizing is { Width: not Sizing.Words, Height: not Sizing.Words };

        private Cover Edge => _cover ??= new(Piece.Outline.Grow(FitView.Tolerance.Millimetres));

        public bool TooWide(Length letters) => Width * Share(letters) > RoomAcross + Layout.Words.Slack;

        /// <summary>Text may extend below its box.</summary>
        public bool TooHigh(Length letters) => Piece.Kind != PieceKind.Text && Height * Share(letters) > RoomDown + Layout.Words.Slack;

        /// <summary>Whether words with capitals of that height stay in their room and on their paper.</summary>
        public bool Accepts(Length letters) => !TooWide(letters) && !TooHigh(letters)
            && (Piece.Matter != PieceMatter.Paper
                || Edge.Covers(Words.Ink.Transform(About(Bounds.Of(Words.Room).Centre, Share(letters)))));

        private double Share(Length letters) => letters.Millimetres / Words.LetterHeight.Millimetres;

        private static Affine About(Point middle, double by) => by == 1 ? Affine.Identity
            : Affine.Shift(-middle.X, -middle.Y).Then(Affine.Scale(by, by)).Then(Affine.Shift(middle.X, middle.Y));
    }
}
