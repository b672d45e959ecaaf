using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Checks;

/// <summary>How small a piece must be made to stay on its face when nothing else of its line changes.</summary>
internal static class SmallerPiece
{
    /// <summary>What to write as its size; null if no size alone helps, or if its size is not written on its line.</summary>
    public static string? Hint(FitView view, int index)
    {
        var piece = view.Pieces[index];
        var stack = view.StackOf(index).Select(i => view.Pieces[i]).ToList();
        if (piece.Anchor is not { } anchor || stack.SkipLast(1).Any(m => m.Sizing != default))
        {
            return null;
        }

        var (outer, face) = (stack[0].Box, view.Card.SizeOf(piece.Face));
        var across = Largest(outer.Left, outer.Width, anchor.Left, face.Width);
        var down = Largest(outer.Top, outer.Height, anchor.Top, face.Height);
        if (across is null || down is null)
        {
            return null;
        }

        // Mats keep their borders, so the piece itself shrinks.
        var (width, height) = (piece.Box.Width - (outer.Width - across.Value), piece.Box.Height - (outer.Height - down.Value));
        return piece.Written switch
        {
            WrittenMeasure.Width => Say(Length.Min(width, piece.Box.Width.Scale(height.Nanometres, piece.Box.Height.Nanometres)), "wide"),
            WrittenMeasure.Height => Say(Length.Min(height, piece.Box.Height.Scale(width.Nanometres, piece.Box.Width.Nanometres)), "high"),
            _ => (width < piece.Box.Width, height < piece.Box.Height, piece.Sizing) switch
            {
                (true, false, { Width: Sizing.Written }) => Say(width, "wide"),
                (false, true, { Height: Sizing.Written }) => Say(height, "high"),
                (true, true, (Sizing.Written, Sizing.Written)) when Down(width) > Length.Zero && Down(height) > Length.Zero =>
                    $"Make it at most {view.Say.Typed(new Size(Down(width), Down(height)))}.",
                _ => null,
            },
        };

        Length Down(Length length) => view.Say.DownToMark(length);

        string? Say(Length length, string measure) =>
            Down(length) > Length.Zero ? $"Make it at most {view.Say.Typed(Down(length))} {measure}." : null;
    }

    /// <summary>
    /// The largest size along one axis at which a box that grows and shrinks about an anchor stays between 0 and the edge; its own size if
    /// it already does.
    /// </summary>
    private static Length? Largest(Length low, Length size, Length anchor, Length room)
    {
        if (anchor < Length.Zero || anchor > room || size <= Length.Zero)
        {
            return null;
        }

        var (before, after) = (anchor - low, low + size - anchor);
        var largest = size;
        if (before > anchor)
        {
            largest = Length.Min(largest, size.Scale(anchor.Nanometres, before.Nanometres));
        }

        return after > room - anchor ? Length.Min(largest, size.Scale((room - anchor).Nanometres, after.Nanometres)) : largest;
    }
}
