using Sketch.Diagnostics;
using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Syntax;

namespace Sketch.Editors.Answers;

/// <summary>The canonical spelling of a text.</summary>
internal static class Formatting
{
    /// <summary>The change to the canonical spelling: one, so that the caret stays where it can; none for a text with errors.</summary>
    public static EditorEdit[] Of(OpenDocument document)
    {
        var (before, after) = (document.Source.Content, Formatter.Format(document.Source, new FindingBag()));
        if (after is null)
        {
            return [];
        }

        after = before.Contains("\r\n", StringComparison.Ordinal) ? after.ReplaceLineEndings("\r\n") : after;
        if (before == after)
        {
            return [];
        }

        var (start, least) = (0, Math.Min(before.Length, after.Length));
        while (start < least && before[start] == after[start])
        {
            start++;
        }

        var end = 0;
        while (end < least - start && before[^(end + 1)] == after[^(end + 1)])
        {
            end++;
        }

        // A change begins and ends between characters: neither between the halves of one nor within a line break.
        while (start > 0 && (char.IsLowSurrogate(At(before, start)) || before[start - 1] == '\r'))
        {
            start--;
        }

        while (end > 0 && (char.IsLowSurrogate(before[^end]) || before[^end] == '\n'))
        {
            end--;
        }

        return [new(document.Lines.RangeOf(new(start, before.Length - end)), after[start..(after.Length - end)])];
    }

    private static char At(string text, int index) => index < text.Length ? text[index] : '\0';
}
