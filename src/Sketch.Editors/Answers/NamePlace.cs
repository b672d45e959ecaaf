using Sketch.Editors.Documents;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Editors.Answers;

/// <summary>Where a text names another file.</summary>
internal static class NamePlace
{
    /// <summary>The first place in quotes with the name of a file; the start of the text if there is none.</summary>
    public static TextSpan Of(OpenDocument document, string path) => AllTokens(document.Syntax.Lines)
        .FirstOrDefault(t => t.Kind == TokenKind.Quoted && PathOf(document, t.Text) is { } named
            && string.Equals(named, Path.GetFullPath(path), StringComparison.Ordinal))?.Span ?? default;

    /// <summary>The path of the file whose name stands at an offset, whether or not it exists; null where there is no name.</summary>
    public static string? At(OpenDocument document, int offset) => AllTokens(document.Syntax.Lines)
        .FirstOrDefault(t => t.Kind == TokenKind.Quoted && t.Span.Start <= offset && offset <= t.Span.End) is { } token
        ? PathOf(document, token.Text) : null;

    private static string? PathOf(OpenDocument document, string name)
    {
        try
        {
            var folder = Path.GetDirectoryName(Path.GetFullPath(document.Source.Path));
            return folder is null || name.Length == 0 ? null : Path.GetFullPath(name.Replace('\\', '/'), folder);
        }
        catch (Exception refused) when (refused is ArgumentException or IOException or NotSupportedException)
        {
            return null;
        }
    }

    private static IEnumerable<Token> AllTokens(IEnumerable<LineSyntax> lines) =>
        lines.SelectMany(l => l.Tokens.Tokens.Concat(AllTokens(l.Children)));
}
