using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>A laid-out card with what the fit rules read from it.</summary>
internal sealed class FitView
{
    /// <summary>
    /// Less than this, a hundredth of a millimetre, is neither seen nor cut: turned and drawn outlines are accurate to it.
    /// </summary>
    public static readonly Length Tolerance = Length.Millimetre(0.01m);

    private readonly int[] _owners;
    private readonly int[] _grounds;
    private readonly Dictionary<Location, int> _copies = [];
    private Insets[]? _pastFace;

    public FitView(LaidOutCard card)
    {
        Card = card;
        Say = new(card.Units);
        _owners = new int[card.Pieces.Length];
        _grounds = new int[card.Pieces.Length];
        for (var i = card.Pieces.Length - 1; i >= 0; i--)
        {
            var isMat = card.Pieces[i].Kind.Traits.IsLayer && i + 1 < card.Pieces.Length && card.Pieces[i + 1].LiesOn == i;
            _owners[i] = isMat ? _owners[i + 1] : i;
        }

        for (var i = 0; i < card.Pieces.Length; i++)
        {
            var on = card.Pieces[i].LiesOn;
            _grounds[i] = on >= 0 && _owners[on] == _owners[i] ? _grounds[on] : on;
            _copies[card.Pieces[i].Location] = _copies.GetValueOrDefault(card.Pieces[i].Location) + 1;
        }
    }

    public LaidOutCard Card { get; }

    public CheckText Say { get; }

    public ImmutableArray<Piece> Pieces => Card.Pieces;

    /// <summary>The piece that a mat lies behind; any other piece is its own.</summary>
    public int OwnerOf(int index) => _owners[index];

    /// <summary>What the whole stack of a piece and its mats lies on; -1 for the face.</summary>
    public int GroundOf(int index) => _grounds[index];

    /// <summary>The pieces of a stack from its outermost mat to the piece itself.</summary>
    public IEnumerable<int> StackOf(int owner)
    {
        var first = owner;
        while (first > 0 && _owners[first - 1] == owner)
        {
            first--;
        }

        return Enumerable.Range(first, owner - first + 1);
    }

    /// <summary>How many pieces the line of this piece makes.</summary>
    public int CopiesOf(Piece piece) => _copies[piece.Location];

    /// <summary>Whether the piece can extend too far or be hidden.</summary>
    public static bool IsThere(Piece piece) => piece.Matter != PieceMatter.Unseen && !piece.Outline.IsEmpty;

    /// <summary>
    /// What an unturned piece takes up: its exact box; for text its ink, as its box ends at the baseline. Words that do not fit are
    /// reported by a rule of their own, so here their box counts.
    /// </summary>
    public static Rect Extent(Piece piece) =>
        piece is { Kind: PieceKind.Text, Words.Fits: true } ? Drawn(piece.Outline) : piece.Finished;

    /// <summary>The box of a drawn outline; endless words are cut off at ten times the limit of lengths.</summary>
    public static Rect Drawn(Outline outline)
    {
        var (bounds, most) = (outline.Bounds, Length.Limit.Millimetres * 10);
        return new Bounds(
            Math.Clamp(bounds.Left, -most, most), Math.Clamp(bounds.Top, -most, most),
            Math.Clamp(bounds.Right, -most, most), Math.Clamp(bounds.Bottom, -most, most)).ToRect();
    }

    /// <summary>How far each piece reaches past the edges of its face where it is drawn; zero if it does not.</summary>
    public Insets PastFace(int index)
    {
        _pastFace ??= [.. Pieces.Select(PastFace)];
        return _pastFace[index];
    }

    private Insets PastFace(Piece piece)
    {
        if (!IsThere(piece))
        {
            return default;
        }

        var size = Card.SizeOf(piece.Face);
        var extent = piece.Turning.IsIdentity ? Extent(piece) : Drawn(piece.TurnedOutline);
        return Beyond(extent, new(Length.Zero, Length.Zero, size.Width, size.Height));
    }

    /// <summary>How far a box reaches past another on each side, ignoring amounts below the tolerance.</summary>
    public static Insets Beyond(Rect box, Rect around)
    {
        return new(Over(around.Left - box.Left), Over(around.Top - box.Top), Over(box.Right - around.Right),
            Over(box.Bottom - around.Bottom));

        static Length Over(Length by) => by > Tolerance ? by : Length.Zero;
    }
}
