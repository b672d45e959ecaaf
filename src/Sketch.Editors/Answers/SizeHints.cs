using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Panels;

namespace Sketch.Editors.Answers;

/// <summary>The size to cut of each piece, behind its line.</summary>
internal static class SizeHints
{
    private const int MostOnLine = 4;

    /// <summary>The sizes in a part of a text; none while the card cannot be laid out.</summary>
    public static InlayHint[] Of(OpenDocument document, Compilation compilation, EditorRange range)
    {
        if (compilation.Card is not { } card)
        {
            return [];
        }

        var asked = document.Lines.SpanOf(range);
        var format = card.Units.Format();
        var flat = (Span: card.Base.Location.Span, card.Base.Location.Source, Text: format.Text(card.Base.Flat));
        return [.. card.Pieces
            .Where(p => p.Cut is not null)
            .Select(p => (p.Location.Span, p.Location.Source, Text: SizeOf(p)))
            .Prepend(flat)
            // A compilation may be of an earlier text that is equal.
            .Where(s => s.Source.Path == document.Source.Path && s.Span.Start <= asked.End && asked.Start <= s.Span.End)
            .GroupBy(s => s.Span, s => s.Text)
            .OrderBy(g => g.Key.Start)
            .Select(g => new InlayHint(document.Lines.PlaceOf(g.Key.End), Label([.. g.Distinct(StringComparer.Ordinal)]), true,
                $"Cut size, width x height in {format.UnitName}"))];

        string SizeOf(Piece piece) => piece.IsReadyMade ? format.ReadyMade(piece.Cut!.Value) : format.Text(piece.Cut!.Value);
    }

    /// <summary>The sizes of all copies that the line makes.</summary>
    private static string Label(IReadOnlyList<string> sizes) =>
        $"cut {string.Join(", ", sizes.Take(MostOnLine))}{(sizes.Count > MostOnLine ? ", …" : "")}";
}
