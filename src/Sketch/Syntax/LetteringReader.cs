using Sketch.Lettering;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reads how words are lettered.</summary>
internal static class LetteringReader
{
    private static readonly string[] Styles = ["bold", "italic"];

    /// <summary>The font that a kind of lettering stands for, with its style: <c>script bold</c>; null with a finding otherwise.</summary>
    public static QuotedSyntax? ReadKind(Cursor cursor)
    {
        var first = cursor.Current;
        if (first.Kind != TokenKind.Word || LetteringKinds.Find(first.Text) is not { } kind)
        {
            cursor.MissingWord("a kind of lettering",
                $"Write one of {string.Join(", ", LetteringKinds.All.Select(k => k.Word))}, as in lettering script bold.",
                [.. LetteringKinds.All.Select(k => k.Word)]);
            return null;
        }

        var (name, span) = (kind.Family, cursor.Take().Span);
        while (Array.Exists(Styles, cursor.Current.Is))
        {
            var style = cursor.Take();
            (name, span) = ($"{name} {style.Text.ToLowerInvariant()}", TextSpan.Cover(span, style.Span));
        }

        return new(name, span);
    }
}
