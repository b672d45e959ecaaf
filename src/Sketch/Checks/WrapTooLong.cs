using Sketch.Diagnostics;
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
            var across = Length.Max(piece.Wrap.Left, piece.Wrap.Right);
            var (wrap, round) = across > Length.Zero ? (across, size.Width) : (Length.Max(piece.Wrap.Top, piece.Wrap.Bottom), size.Height);
            if (wrap * 2 > round)
            {
                reported.Add(piece.Location);
                var parent = ground >= 0 ? CheckText.Called(view.Pieces[ground]) : "the card";
                var shorter = view.Say.DownToMark(Length.Min(round / 2, view.Say.UsualWrap));
                findings.Add(FindingCatalogue.WrapTooLong, piece.Location,
                    $"{CheckText.Begin(CheckText.Called(piece))} wraps {view.Say.Length(wrap)} around each side of {parent}, which is "
                        + $"only {view.Say.Length(round)} there, so the ends overlap behind it.",
                    shorter > Length.Zero ? $"Write wrap {view.Say.Typed(shorter)}." : "Leave the wrap out.");
            }
        }
    }
}
