using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Panels;

/// <summary>
/// A card with every size and place resolved: no references, shares or defaults are left. Checks, drawing, sizes and the cutting plan
/// read only this.
/// </summary>
/// <param name="Title">The words after <c>card</c>.</param>
/// <param name="Base">The card itself.</param>
/// <param name="Faces">The faces that the file mentions, in the order of <see cref="FaceKind"/>.</param>
/// <param name="Pieces">Every physical piece and every printed thing except the base, in drawing order face by face: what comes later lies
/// on top.</param>
/// <param name="Units">The units that the file is written in.</param>
/// <param name="Location">The title line.</param>
public sealed record LaidOutCard(
    string Title,
    CardBase Base,
    ImmutableArray<Face> Faces,
    ImmutableArray<Piece> Pieces,
    UnitSystem Units,
    Location Location)
{
    /// <summary>The roles that the file declares, in its order.</summary>
    public ImmutableArray<Role> Roles { get; init; } = [];

    /// <summary>The maker's notes in Markdown; empty when there are none.</summary>
    public string Notes { get; init; } = "";

    /// <summary>The message that the file gives, or null.</summary>
    public CardMessage? Message { get; init; }

    /// <summary>The font of all words without a font of their own, or null for the tool's own.</summary>
    public NamedFont? Font { get; init; }

    /// <summary>The pieces on one face, in drawing order.</summary>
    public IEnumerable<Piece> On(FaceKind face) => Pieces.Where(p => p.Face == face);

    /// <summary>The mats of a piece, innermost first.</summary>
    public IEnumerable<Piece> MatsOf(Piece piece) => Pieces.Where(p => p.Kind == PieceKind.Mat && p.Path.Parent == piece.Path).Reverse();

    /// <summary>The box of a piece with its mats, unturned.</summary>
    public Rect WithMats(Piece piece) => MatsOf(piece).Select(m => m.Box).Aggregate(piece.Box, Rect.Cover);

    /// <summary>A face, or null if the file does not mention it.</summary>
    public Face? Find(FaceKind face) => Faces.FirstOrDefault(f => f.Kind == face);

    /// <summary>What a piece is painted on: the paper that it and its shadow lie on, the face's own paper, or that of the base.</summary>
    public Paint GroundOf(Piece piece)
    {
        var on = piece.LiesOn;
        while (on >= 0 && Pieces[on].Kind == PieceKind.Shadow)
        {
            on = Pieces[on].LiesOn;
        }

        return on >= 0 ? Pieces[on].Paint : PaperOf(piece.Face);
    }

    /// <summary>What a face is made of: its own paper, or that of the base.</summary>
    internal Paint PaperOf(FaceKind face) => Find(face)?.Paint ?? Base.Paint;

    /// <summary>The size of a face; that of the closed card if the file does not mention it.</summary>
    public Size SizeOf(FaceKind face) => Find(face)?.Size ?? Base.Closed;

    /// <summary>Whether it is handed over in its envelope, so that no postal limit applies to its thickness.</summary>
    public bool IsHandedOver => Faces.Any(f => f.ByHand);
}

/// <summary>The card base.</summary>
/// <param name="Closed">Its size when closed.</param>
/// <param name="Fold">How it is folded.</param>
/// <param name="SizeName">The named size, such as "A2", or null.</param>
/// <param name="Paint">What it is made of.</param>
/// <param name="Outline">The front's outline with the windows cut in it, in millimetres on the front.</param>
/// <param name="Location">The line that declares it.</param>
public sealed record CardBase(Size Closed, Fold Fold, string? SizeName, Paint Paint, Outline Outline, Location Location)
{
    /// <summary>
    /// Millimetres or centimetres if its size is written in them although the file, which does not declare its units, is taken to be in
    /// inches; this has been reported. Else null.
    /// </summary>
    public UnitSystem? UndeclaredUnits { get; init; }

    /// <summary>The sheet before it is folded.</summary>
    public BaseSheet Sheet => BaseSheet.Of(Closed, Fold);

    /// <summary>The size of the sheet before it is folded.</summary>
    public Size Flat => Sheet.Size;

    /// <summary>How many layers of the base lie on each other when it is closed.</summary>
    public int Layers => Fold == Fold.Z ? 3 : 2;

    /// <summary>Whether the base has a face.</summary>
    public bool Has(FaceKind face) => Sheet.Outside.Concat(Sheet.Inside).Any(p => p.Face == face);

    /// <summary>
    /// The sides of a face along which the base is folded, looking at that face. Envelopes have none.
    /// </summary>
    public ImmutableArray<Edge> FoldsOf(FaceKind face) => (Fold, face) switch
    {
        (_, FaceKind.Envelope or FaceKind.EnvelopeBack) => [],
        (Fold.Gate, _) or (Fold.Z, FaceKind.InsideLeft) => [Edge.Left, Edge.Right],
        (Fold.Z, FaceKind.Front) or (_, FaceKind.InsideLeft) => [Edge.Right],
        (_, FaceKind.InsideTop) => [Edge.Bottom],
        (Fold.Top, _) => [Edge.Top],
        (_, FaceKind.Back) => [Edge.Right],
        _ => [Edge.Left],
    };

    /// <summary>What is cut out of the front, in millimetres on the front; empty for nothing.</summary>
    public Outline Windows
    {
        get
        {
            var whole = Outline.Rectangle(new(Length.Zero, Length.Zero, Closed.Width, Closed.Height));
            // Windows that do not touch the edge are contours of their own and keep their curves.
            var isFramed = new Outline([Outline.Contours[0]]) is var outer && outer.AsRectangle() is not null
                && outer.Bounds == whole.Bounds;
            return isFramed ? new(Outline.Contours[1..]) : whole.Subtract(Outline);
        }
    }

    /// <summary>The sheet with the windows of the front, seen from the side that shows the front.</summary>
    public Outline CutSheet
    {
        get
        {
            var (sheet, windows) = (Sheet, Windows);
            var outline = Outline.Rectangle(new(Length.Zero, Length.Zero, sheet.Size.Width, sheet.Size.Height));
            return windows.IsEmpty ? outline
                : sheet.Outside.Where(p => p.Face == FaceKind.Front).Aggregate(outline,
                    (left, front) => left.Subtract(Outline.Rectangle(front.Part).Intersect(windows).Transform(front.Place)));
        }
    }
}

/// <summary>The faces of a card and its envelope.</summary>
public enum FaceKind
{
    /// <summary>The front.</summary>
    Front,

    /// <summary>The half behind the front, on which the message is written.</summary>
    Inside,

    /// <summary>The back of the front of a card folded on the left.</summary>
    InsideLeft,

    /// <summary>The back of the front of a card folded at the top.</summary>
    InsideTop,

    /// <summary>The back.</summary>
    Back,

    /// <summary>The address side of the envelope, lying landscape.</summary>
    Envelope,

    /// <summary>The flap side of the envelope.</summary>
    EnvelopeBack,
}

/// <summary>A face that the file mentions.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Size">Its size.</param>
/// <param name="Paint">Its own paper if it is not the base's: envelopes only.</param>
/// <param name="SizeName">The named size of an envelope, or null.</param>
/// <param name="Flap">Depth of the envelope's flap, or null.</param>
/// <param name="Location">The line that opens the face.</param>
public sealed record Face(FaceKind Kind, Size Size, Paint? Paint, string? SizeName, Length? Flap, Location Location)
{
    /// <summary>Whether the file states that this envelope is handed over and not posted.</summary>
    public bool ByHand { get; init; }

    /// <summary>The face's name in paths and file names, such as <c>inside-left</c>.</summary>
    public string Name => NameOf(Kind);

    /// <summary>A face's name in paths and file names.</summary>
    public static string NameOf(FaceKind kind) => kind switch
    {
        FaceKind.Front => "front",
        FaceKind.Inside => "inside",
        FaceKind.InsideLeft => "inside-left",
        FaceKind.InsideTop => "inside-top",
        FaceKind.Back => "back",
        FaceKind.Envelope => "envelope",
        FaceKind.EnvelopeBack => "envelope-back",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}

/// <summary>What a piece is made of, with the role already resolved.</summary>
/// <param name="Role">The role that the piece names, or null when it names none.</param>
/// <param name="Paper">The name of the paper that fills the role, or null if only a colour is known.</param>
/// <param name="Side">Which side of the paper shows.</param>
/// <param name="Look">How it looks.</param>
/// <param name="AnyOffcut">Whether any leftover will do.</param>
public sealed record Paint(string? Role, string? Paper, PaperSide Side, PaperLook Look, bool AnyOffcut = false)
{
    /// <summary>How much is known of the paper.</summary>
    public PaperKnowledge Knowledge { get; init; }

    /// <summary>Whether the print of the paper has a direction, so that no piece is turned to cut it.</summary>
    public bool IsUpright { get; init; }

    /// <summary>Which leftovers will do: patterned, cardstock, a colour word or a paper; null for all.</summary>
    public string? OffcutOf { get; init; }

    /// <summary>What a maker calls any leftover that will do.</summary>
    public string OffcutName => OffcutOf is null ? "any offcut" : $"any offcut of {OffcutOf}";

    /// <summary>The ink of printed and stamped words if the file names none, whatever they are printed on.</summary>
    public static Paint BlackInk { get; } = new(null, null, PaperSide.Front, PaperLook.Plain(new(0, 0, 0)));
}

/// <summary>How much is known of the paper that a piece is made of.</summary>
public enum PaperKnowledge
{
    /// <summary>How it looks.</summary>
    Look,

    /// <summary>Only its name: no file describes it, so it is drawn white.</summary>
    Name,

    /// <summary>Nothing: neither the files nor the stash have such a paper. It is drawn hatched, and its look is meaningless.</summary>
    Nothing,
}

/// <summary>A side of a double-sided paper.</summary>
public enum PaperSide
{
    /// <summary>Front.</summary>
    Front,

    /// <summary>Back.</summary>
    Back,
}

/// <summary>A role that a card declares.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Paint">What fills it.</param>
/// <param name="Location">The line that declares it.</param>
public sealed record Role(string Name, Paint Paint, Location Location);
