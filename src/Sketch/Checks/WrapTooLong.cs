using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>
/// Ends that go round to the back and are so long that they would meet or overlap there: more than half of what they go round.
/// </summary>
internal sealed class WrapTooLong : IFitRule
{
    public void Check(FitView view, FindingBag findings)
    {
        var reported = new HashSet<Location>();
        for (var i = 0; i < view.Pieces.Length; i++)
        {
            var piece = view.Pieces[i];
            if (piece.Wrap == default || reported.Contains(piece.Location))
            {
                continue;
            }

            var ground = view.GroundOf(i);
            var size = ground >= 0 ? view.Pieces[ground].Box.Size : view.Card.SizeOf(piece.Face);
            var ends = piece.Wrap.Left + piece.Wrap.Right is var across && across > Length.Zero
                ? (Low: Edge.Left, First: piece.Wrap.Left, High: Edge.Right, Second: piece.Wrap.Right, Round: size.Width)
                : (Low: Edge.Top, First: piece.Wrap.Top, High: Edge.Bottom, Second: piece.Wrap.Bottom, Round: size.Height);
            var (wrap, round) = (Length.Max(ends.First, ends.Second), ends.Round);
            if (ends.First + ends.Second > round && !piece.Kind.Traits.HasTails)
            {
                reported.Add(piece.Location);
                var parent = ground >= 0 ? CheckText.Called(view.Pieces[ground]) : "the card";
                var shorter = view.Say.DownToMark(Length.Min(round / 2, view.Say.UsualWrap));
                var isEven = ends.First == ends.Second;
                var (where, problem, typed) = isEven ? ("each side", "so the ends overlap behind it", "wrap")
                    : ends.First == Length.Zero || ends.Second == Length.Zero
                        ? ("one side", "so it reaches past the other edge", $"wrap {(wrap == ends.First ? ends.Low : ends.High).Name()}")
                        : ("the longer side", "so the ends overlap behind it", "wrap");
                findings.Add(FindingCatalogue.WrapTooLong, piece.Location,
                    $"{CheckText.Begin(CheckText.Called(piece))} wraps {view.Say.Length(wrap)} around {where} of {parent}, which is "
                        + $"only {view.Say.Length(round)} there, {problem}.",
                    shorter > Length.Zero ? $"Write {typed} {view.Say.Typed(shorter)}." : "Leave the wrap out.");
            }
        }
    }
}
