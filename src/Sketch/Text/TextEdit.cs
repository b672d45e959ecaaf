using System.Text;

namespace Sketch.Text;

/// <summary>A change to a text.</summary>
/// <param name="Span">What is replaced; empty for an insertion.</param>
/// <param name="Text">What takes its place.</param>
public sealed record TextEdit(TextSpan Span, string Text)
{
    /// <summary>The text with all changes applied; their spans refer to the original text and must not overlap.</summary>
    public static string Apply(string content, IEnumerable<TextEdit> edits)
    {
        var text = new StringBuilder(content);
        foreach (var edit in edits.OrderByDescending(e => e.Span.Start).ThenByDescending(e => e.Span.End))
        {
            text.Remove(edit.Span.Start, edit.Span.Length).Insert(edit.Span.Start, edit.Text);
        }

        return text.ToString();
    }
}
