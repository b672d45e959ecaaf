using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>A change of the text that a window shows, for its editor. Lines and columns count from 1.</summary>
/// <param name="Line">The line where the replaced text begins.</param>
/// <param name="Column">The column where it begins.</param>
/// <param name="EndLine">The line where it ends.</param>
/// <param name="EndColumn">The column where it ends.</param>
/// <param name="Text">The new text.</param>
/// <param name="Touched">The line of the piece that is changed or added, after the change.</param>
internal sealed record EditView(int Line, int Column, int EndLine, int EndColumn, string Text, int Touched)
{
    /// <summary>An edit for the page.</summary>
    public static EditView Of(SourceText source, TextEdit edit, int touched)
    {
        var (start, end) = (source.PositionOf(edit.Span.Start), source.PositionOf(edit.Span.End));
        return new(start.Line, start.Column, end.Line, end.Column, edit.Text, touched);
    }
}
