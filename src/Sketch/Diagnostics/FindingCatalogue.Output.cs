namespace Sketch.Diagnostics;

public static partial class FindingCatalogue
{
    /// <summary>Two files of one run would be drawn to the same picture.</summary>
    public static readonly FindingKind SamePicture = Error("SK501", "two cards share one picture file");
}
