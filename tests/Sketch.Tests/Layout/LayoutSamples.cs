namespace Sketch.Tests.Layout;

/// <summary>All complete cards of this folder, with the files that they name.</summary>
internal static class LayoutSamples
{
    public static readonly string[] All =
    [
        HarbourSquaresTests.Text, TentAndBannerTests.Text, PortholeTests.Text, PatchworkHeartTests.Text, PhotoTests.Text,
            QuartersTests.Text,
        ThreeStripsTests.Text, FiveTagsTests.Text, LikeHarbourSquaresTests.Larger, LikeHarbourSquaresTests.WiderMargins,
            InsideAndOutTests.Text,
        FairWindsTests.Text, LampTests.Text,
    ];

    public static TestWorld World() => new TestWorld()
        .WithText("01.card", HarbourSquaresTests.Text)
        .WithTriangle("boat.svg", 20, 30).WithTriangle("maker.svg", 20, 10).WithTriangle("gull.svg", 40, 20);
}
