using Sketch.Colours;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>The words of the line of a new piece.</summary>
/// <param name="card">The card.</param>
/// <param name="kind">The kind of piece.</param>
/// <param name="ground">What it is put on.</param>
internal sealed class AddedWords(LaidOutCard card, PieceKind kind, Ground ground)
{
    private const string Said = "\"your words\"";

    /// <summary>The clauses of a place in the middle; what runs along an edge cannot lie there.</summary>
    public string Middle => RunsAlong ? ", along bottom" : "";

    private bool RunsAlong => Traits.IsCutToLength && kind != PieceKind.Tape;

    private readonly LengthFormat _format = card.Units.Format();

    private PieceTraits Traits => kind.Traits;

    private Size Room => ground.Box.Size;

    /// <summary>The line.</summary>
    /// <param name="places">The clauses of its place, each after a comma.</param>
    public string Line(string places) => $"{kind.Name}{Head()}{places}{Paper()}";

    /// <summary>The clauses that bring the middle of a piece to a point, to the marks of a ruler.</summary>
    /// <param name="box">The box of the piece in the middle of its ground.</param>
    /// <param name="at">The point, in millimetres on the face.</param>
    public string Places(Rect box, Point at)
    {
        var there = ground.Turning.Inverse().Apply(at);
        var left = Distance(there.X - box.Width.Millimetres / 2 - ground.Box.Left.Millimetres, Room.Width - box.Width);
        var top = Distance(there.Y - box.Height.Millimetres / 2 - ground.Box.Top.Millimetres, Room.Height - box.Height);
        var across = Place("left", "right", left, Room.Width - box.Width);
        var down = Place("top", "bottom", top, Room.Height - box.Height);
        if (!RunsAlong)
        {
            return across + down;
        }

        // It runs along an edge, from which it is shifted.
        return top + top < Room.Height - box.Height
            ? $", along top{(top == Length.Zero ? "" : $", shift down {Say(top)}")}"
            : $", along bottom{(Room.Height - box.Height - top is var up && up == Length.Zero ? "" : $", shift up {Say(up)}")}";
    }

    private string Head() => kind switch
    {
        PieceKind.Mat => $" +{Say(Round(Metric(3), Length.Inch(0, 1, 8)))}",
        PieceKind.Text => $" {Said}",
        PieceKind.Word or PieceKind.Sentiment => $" {Say(Part(Room.Width, 2, 3))} wide {Said}",
        PieceKind.Banner => $" {Said} fit x {Say(Letters * 2)}, letters {Say(Letters)}, swallowtail both",
        PieceKind.Strip or PieceKind.Tape => $" full x {Say(Part(Room.Height, 1, kind == PieceKind.Tape ? 10 : 6))}",
        PieceKind.Ruled => $" {Box(2, 3, 1, 2)}",
        PieceKind.Window => $" circle {Say(Part(Shorter, 1, 2))}",
        PieceKind.Gem or PieceKind.Dot or PieceKind.Brad => $" {Say(Round(Metric(5), Length.Inch(0, 3, 16)))}",
        PieceKind.Line or PieceKind.Twine => $" {Say(Round(Metric(2), Length.Inch(0, 1, 16)))}",
        PieceKind.Ribbon => $" {Say(Round(Metric(10), Length.Inch(0, 3, 8)))}",
        PieceKind.Button or PieceKind.Bow => $" {Say(Part(Shorter, 1, 5))}",
        _ when Traits.Shape is { } shape && ShapeProportions.Ratio(shape, ShapeStyle.Plain) is { } ratio =>
            $" {Say(Part(ratio > 1 ? Length.Min(Room.Width, new((long)(Room.Height.Nanometres / ratio))) : Shorter, 1, 3))}",
        PieceKind.Panel => $" {Box(1, 2, 1, 2)}",
        PieceKind.Frame => $" {Box(2, 3, 2, 3)}",
        _ => $" {Box(1, 2, 1, 4)}",
    };

    private string Paper()
    {
        if (Traits.Matter is PieceMatter.Hole || kind == PieceKind.Ruled)
        {
            return "";
        }

        var ink = new Rgb(0, 0, 0);
        if (kind == PieceKind.Text)
        {
            return Contrast.Ratio(ink, ground.Paint.Look.Ground) < Contrast.LeastForText ? ", of white" : "";
        }

        // Black words on it have to be read, so they decide on its paper.
        var beside = kind is PieceKind.Banner or PieceKind.Sentiment ? ink : ground.Paint.Look.Ground;
        var best = card.Roles.Where(r => r.Paint.Knowledge == PaperKnowledge.Look && r.Paint != ground.Paint && !r.Paint.AnyOffcut)
            .MaxBy(r => Contrast.Ratio(beside, r.Paint.Look.Ground));
        var name = best is not null && Contrast.Ratio(beside, best.Paint.Look.Ground) >= Contrast.LeastForLargeText
            ? best.Name : Contrast.Ratio(beside, new(255, 255, 255)) >= Contrast.LeastForLargeText ? "white" : "navy";
        return $", of {name}";
    }

    private Length Shorter => Length.Min(Room.Width, Room.Height);

    /// <summary>The height of letters on something small.</summary>
    private Length Letters => Round(Metric(5), Length.Inch(0, 3, 16));

    private string Box(int acrossOf, int across, int downOf, int down) =>
        $"{Say(Part(Room.Width, acrossOf, across))} x {Say(Part(Room.Height, downOf, down))}";

    /// <summary>A part of a length in round numbers: eighths of an inch or whole millimetres, and at least one.</summary>
    private Length Part(Length whole, int numerator, int denominator)
    {
        var step = _format.Step * (_format.Metric ? 1 : 2);
        var steps = whole.Scale(numerator, denominator).Nanometres / step.Nanometres;
        return step * Math.Max(1, steps);
    }

    private static Length Metric(int millimetres) => Length.Millimetre(millimetres);

    private Length Round(Length metric, Length inches) => _format.Metric ? metric : inches;

    /// <summary>A distance to the nearest mark; the free room is not exceeded on either side if there is any.</summary>
    private Length Distance(double millimetres, Length free)
    {
        var step = _format.Step;
        var wanted = step * (long)Math.Round(Length.NearestMillimetres(millimetres).Millimetres / step.Millimetres);
        return free > Length.Zero ? Length.Max(Length.Zero, Length.Min(wanted, _format.Down(free))) : wanted;
    }

    /// <summary>The distance from the nearer edge; none in the middle, to a sixteenth of the ground.</summary>
    private string Place(string low, string high, Length fromLow, Length free)
    {
        var fromHigh = free - fromLow;
        return (fromLow - fromHigh).Abs() * 8 <= free.Abs() ? ""
            : fromLow < fromHigh ? $", {low} {Say(fromLow)}"
            : $", {high} {Say(_format.Step * (long)Math.Round(fromHigh.Millimetres / _format.Step.Millimetres))}";
    }

    private string Say(Length length) => card.Units == UnitSystem.Centimetres ? _format.WithUnit(length) : _format.Written(length);
}
