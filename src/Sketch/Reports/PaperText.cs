using Sketch.Panels;

namespace Sketch.Reports;

/// <summary>A paper and its side as the language writes them.</summary>
internal static class PaperText
{
    /// <summary>Such as <c>gulls, front</c>; null if only a colour is known.</summary>
    public static string? Of(Paint paint) =>
        paint.Paper is { } name ? $"{name}, {(paint.Side == PaperSide.Front ? "front" : "back")}" : null;
}
