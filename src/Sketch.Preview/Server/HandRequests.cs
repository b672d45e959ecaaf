using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Edits;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Preview.Server;

/// <summary>A piece that somebody takes hold of.</summary>
/// <param name="Sheet">The text of the window.</param>
/// <param name="Piece">The path of the piece.</param>
internal sealed record HoldRequest(SeeRequest? Sheet = null, string Piece = "");

/// <summary>What somebody does to a piece.</summary>
/// <param name="Sheet">The text of the window.</param>
/// <param name="Piece">The path of the piece.</param>
/// <param name="Wish">What is to be done.</param>
internal sealed record HandRequest(SeeRequest? Sheet = null, string Piece = "", WishRequest? Wish = null);

/// <summary>A wish as the page sends it; which members count follows from <paramref name="Kind"/>.</summary>
/// <param name="Kind">move, place, size, turn, foam, words, letters, lettering, paper, border, showing, up, down, copy or delete.</param>
/// <param name="Across">Nanometres to the right.</param>
/// <param name="Down">Nanometres down.</param>
/// <param name="CentredAcross">Whether the middle from left to right is meant.</param>
/// <param name="CentredDown">Whether the middle from top to bottom is meant.</param>
/// <param name="Width">The width in nanometres; null to leave it.</param>
/// <param name="Height">The height in nanometres; null to leave it.</param>
/// <param name="Held">The edges that stay, such as <c>left</c>.</param>
/// <param name="LetsGo">Whether what gives the size is given up.</param>
/// <param name="Text">A length, number or name as somebody types it; empty for none.</param>
/// <param name="Measure">width, height or the edge from which it is measured, where the text is a length.</param>
/// <param name="Lines">The words.</param>
internal sealed record WishRequest(
    string Kind = "",
    long Across = 0,
    long Down = 0,
    bool CentredAcross = false,
    bool CentredDown = false,
    long? Width = null,
    long? Height = null,
    IReadOnlyList<string>? Held = null,
    bool LetsGo = false,
    string Text = "",
    string Measure = "",
    IReadOnlyList<string>? Lines = null)
{
    private const double MostDegrees = 360;

    /// <summary>The wish; a problem says, in sentences, what is wrong with what was typed.</summary>
    /// <param name="units">The units of the file.</param>
    public Result<PieceWish> ToWish(UnitSystem units) => Kind switch
    {
        "move" => Wish(new MoveWish(Bounded(Across), Bounded(Down)) { Centred = (CentredAcross, CentredDown) }),
        "place" when Enum.TryParse<Edge>(Measure, ignoreCase: true, out var edge) && Enum.IsDefined(edge) =>
            Typed(units).Then(l => Wish(new PlaceWish(edge, l))),
        "size" when Measure.Length > 0 => Typed(units).Then(l => Wish(Measure == "width" ? new SizeWish(l, null) : new SizeWish(null, l))),
        "size" => Wish(new SizeWish(Width is { } w ? Bounded(w) : null, Height is { } h ? Bounded(h) : null)
        {
            Held = (HeldOn(Edge.Left, Edge.Right), HeldOn(Edge.Top, Edge.Bottom)),
            LetsGo = LetsGo,
        }),
        "turn" => double.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var degrees)
            && Math.Abs(degrees) <= MostDegrees
            ? Wish(new TurnWish(degrees))
            : new Failure($"\"{Text}\" is not a number of degrees: write one such as 5, or -5 to the left."),
        "foam" when Text.Trim().Length == 0 => Wish(new FoamWish(null)),
        "foam" => WrittenLength.Read(Text, "write one such as 2 mm.", Unit.Millimetre).Then(l => Wish(new FoamWish(l))),
        "letters" when Text.Trim().Length == 0 => Wish(new LettersWish(null)),
        "letters" => Typed(units).Then(l => Wish(new LettersWish(l))),
        "lettering" => Wish(new LetteringWish(Text.Length == 0 ? null : Text)),
        "words" => Wish(new WordsWish([.. Lines ?? []])),
        "paper" when Text.Trim().Length > 0 => Wish(new PaperWish(Text.Trim())),
        "border" => Typed(units).Then(l => Wish(new BorderWish(l))),
        "showing" => Typed(units).Then(l => Wish(new ShowingWish(l))),
        "up" or "down" => Wish(new OrderWish(Kind == "up")),
        "copy" => Wish(new CopyWish()),
        "delete" => Wish(new DeleteWish()),
        _ => new Failure("The page asks for something that Sketch does not know. Reload the page."),
    };

    private static Result<PieceWish> Wish(PieceWish wish) => Result.Of(wish);

    /// <summary>No card is a hundred metres wide, so sums stay in range.</summary>
    private static Length Bounded(long nanometres) =>
        new(Math.Clamp(nanometres, -Length.Limit.Nanometres / 10, Length.Limit.Nanometres / 10));

    private Result<Length> Typed(UnitSystem units) => WrittenLength.Read(Text, "write one such as "
        + (units == UnitSystem.Inches ? "2 5/8." : "65."), units switch
        {
            UnitSystem.Millimetres => Unit.Millimetre,
            UnitSystem.Centimetres => Unit.Centimetre,
            _ => Unit.Inch,
        });

    private Edge? HeldOn(Edge low, Edge high) =>
        Held?.Contains(low.Name()) == true ? low : Held?.Contains(high.Name()) == true ? high : null;
}
