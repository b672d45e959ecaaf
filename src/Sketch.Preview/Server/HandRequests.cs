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
/// <param name="Change">What is to be done.</param>
internal sealed record HandRequest(SeeRequest? Sheet = null, string Piece = "", ChangeRequest? Change = null);

/// <summary>A change as the page sends it; which members count follows from <paramref name="Kind"/>.</summary>
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
internal sealed record ChangeRequest(
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

    /// <summary>The change; a problem says, in sentences, what is wrong with what was typed.</summary>
    /// <param name="units">The units of the file.</param>
    public Result<PieceChange> ToChange(UnitSystem units) => Kind switch
    {
        "move" => Change(new MoveChange(Bounded(Across), Bounded(Down)) { Centred = (CentredAcross, CentredDown) }),
        "place" when Enum.TryParse<Edge>(Measure, ignoreCase: true, out var edge) && Enum.IsDefined(edge) =>
            Typed(units).Then(l => Change(new PlaceChange(edge, l))),
        "size" when Measure == "width" => Typed(units).Then(l => Change(new SizeChange(l, null))),
        "size" when Measure.Length > 0 => Typed(units).Then(l => Change(new SizeChange(null, l))),
        "size" => Change(new SizeChange(Width is { } w ? Bounded(w) : null, Height is { } h ? Bounded(h) : null)
        {
            Held = (HeldOn(Edge.Left, Edge.Right), HeldOn(Edge.Top, Edge.Bottom)),
            LetsGo = LetsGo,
        }),
        "turn" => double.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var degrees)
            && Math.Abs(degrees) <= MostDegrees
            ? Change(new TurnChange(degrees))
            : new Failure($"\"{Text}\" is not a number of degrees: write one such as 5, or -5 to the left."),
        "foam" when Text.Trim().Length == 0 => Change(new FoamChange(null)),
        "foam" => WrittenLength.Read(Text, "write one such as 2 mm.", Unit.Millimetre).Then(l => Change(new FoamChange(l))),
        "letters" when Text.Trim().Length == 0 => Change(new LettersChange(null)),
        "letters" => Typed(units).Then(l => Change(new LettersChange(l))),
        "lettering" => Change(new LetteringChange(Text.Length == 0 ? null : Text)),
        "words" => Change(new WordsChange([.. Lines ?? []])),
        "paper" when Text.Trim().Length > 0 => Change(new PaperChange(Text.Trim())),
        "border" => Typed(units).Then(l => Change(new BorderChange(l))),
        "showing" => Typed(units).Then(l => Change(new ShowingChange(l))),
        "up" or "down" => Change(new OrderChange(Kind == "up")),
        "copy" => Change(new CopyChange()),
        "delete" => Change(new DeleteChange()),
        _ => new Failure("The page asks for something that Sketch does not know. Reload the page."),
    };

    private static Result<PieceChange> Change(PieceChange change) => Result.Of(change);

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
