using Sketch.Diagnostics;
using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Guide;
using Sketch.Names;
using Sketch.Reports;
using Sketch.Syntax;

namespace Sketch.Editors.Answers;

/// <summary>What stands in a text: words of the language, names and findings.</summary>
internal static class Explaining
{
    /// <summary>What a word of the language means.</summary>
    public static MarkdownText Of(WordEntry entry) =>
        new(entry.Example is null ? entry.Means : $"{entry.Means}\n\n```card\n{entry.Example}\n```");

    /// <summary>What a finding means; null for what is no code of one.</summary>
    public static FindingMeaning? Of(string code)
    {
        if (FindingCatalogue.All.FirstOrDefault(k => k.Code.Equals(code, StringComparison.OrdinalIgnoreCase)) is not { } kind)
        {
            return null;
        }

        using var page = new StringWriter { NewLine = "\n" };
        ExplanationPage.Write(page, Explanations.Of(kind));
        return new(page.ToString());
    }

    /// <summary>What stands at a place: the line that declares a name, the meaning of a word of cards; null for anything else.</summary>
    public static Hover? At(OpenDocument document, EditorPosition place)
    {
        var offset = document.Lines.OffsetOf(place);
        if (WrittenNames.Of(document.Syntax).At(offset) is { } name)
        {
            var line = name.Declaration.Span;
            return new(new($"```card\n{document.Source.Content[line.Start..line.End]}\n```"), document.Lines.RangeOf(name.Span));
        }

        var word = Word(document.Syntax.Lines, offset);
        return word is not null && document.Syntax.Lines is [TitleLine { Word: "card" }, ..]
            && WordGuide.Find(word.Text.ToLowerInvariant()) is { } entry
            ? new(Of(entry), document.Lines.RangeOf(word.Span)) : null;
    }

    /// <summary>The word of the language at an offset, or directly before it; null for names.</summary>
    private static Token? Word(IEnumerable<LineSyntax> lines, int offset)
    {
        foreach (var line in lines)
        {
            if (line.Span.Start <= offset && offset <= line.Span.End)
            {
                var (tokens, names) = (line.Tokens.Tokens, line.NameTokens);
                var at = Enumerable.Range(0, tokens.Count).FirstOrDefault(
                    i => tokens[i].Kind == TokenKind.Word && tokens[i].Span.Start <= offset && offset <= tokens[i].Span.End
                        && !names.Contains(i), -1);
                return at < 0 ? null : tokens[at];
            }

            if (line.Children is [.., _] && line.Span.End < offset && offset <= Folding.EndOf(line))
            {
                return Word(line.Children, offset);
            }
        }

        return null;
    }
}
