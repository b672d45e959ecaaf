using Sketch.Diagnostics;
using Sketch.Editors.Protocol;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Editors.Documents;

/// <summary>A text that is open in the editor.</summary>
/// <param name="Uri">Its address, as the editor writes it.</param>
/// <param name="Version">The number of the text.</param>
/// <param name="Source">The text, with the path of its file.</param>
internal sealed record OpenDocument(string Uri, int Version, SourceText Source)
{
    private readonly Lazy<LineMap> _lines = new(() => new(Source.Content));
    private readonly Lazy<FileSyntax> _syntax = new(() => Parser.Parse(Source, new FindingBag()));

    /// <summary>Its lines as the editor counts them.</summary>
    public LineMap Lines => _lines.Value;

    /// <summary>Its lines as the language reads them.</summary>
    public FileSyntax Syntax => _syntax.Value;

    /// <summary>A text just opened.</summary>
    public static OpenDocument Of(DocumentText opened) =>
        new(opened.Uri, opened.Version, new(FileAddress.PathOf(opened.Uri, opened.LanguageId), opened.Text));

    /// <summary>The text after changes.</summary>
    public OpenDocument After(int version, IEnumerable<TextChange> changes)
    {
        var (text, lines) = (Source.Content, (LineMap?)Lines);
        foreach (var change in changes)
        {
            if (change.Range is { } range)
            {
                var span = (lines ?? new(text)).SpanOf(range);
                text = string.Concat(text.AsSpan(0, span.Start), change.Text, text.AsSpan(span.End));
            }
            else
            {
                text = change.Text;
            }

            lines = null;
        }

        return new(Uri, version, new(Source.Path, text));
    }
}
