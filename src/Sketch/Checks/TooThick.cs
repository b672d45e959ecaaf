using Sketch.Diagnostics;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>Cards thicker than the strictest known letter; cards that are handed over may be thicker.</summary>
internal sealed class TooThick : IFitRule
{
    public void Check(FitView view, FindingBag findings)
    {
        if (view.Card.IsHandedOver)
        {
            return;
        }

        var height = StackHeight.Of(view.Card);
        var limits = PostalThickness.All;
        if (height.Highest is not { } highest || height.Front <= limits[0].Limit)
        {
            return;
        }

        var allowed = CheckText.List([.. limits.Select(l => $"{l.Wording} for {l.Service}")]);
        var over = height.Front - limits[0].Limit;
        var foam = highest.Raised > over
            ? $"Lift {CheckText.Called(highest)} {LengthFormat.Millimetres(over)} less"
            : "Leave out a layer";
        findings.Add(FindingCatalogue.TooThick, highest.Location,
            $"The card is about {LengthFormat.Millimetres(height.Front)} thick at {CheckText.Called(highest)}; a letter may be {allowed}.",
            $"{foam}, or send it as a large letter or parcel; check the limits with your post office.");
    }
}
