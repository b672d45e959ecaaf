using System.Collections.Immutable;
using System.Globalization;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>The lines of a piece as a block: with the comments directly above it and all that is indented beneath.</summary>
internal static class PieceLines
{
    /// <summary>Swaps a piece with the next one above or beneath; mats of a piece are in the order from the inside out.</summary>
    public static PieceEdit Reorder(WrittenPiece piece, bool up)
    {
        var source = piece.File.Source;
        var isMat = piece.Piece.Kind == PieceKind.Mat;
        var siblings = Siblings(piece).Where(l => l is UseLine or PieceLine && IsMat(l) == isMat).ToList();
        var at = siblings.IndexOf(piece.Line);
        var other = up == isMat ? at - 1 : at + 1;
        if (other < 0 || other >= siblings.Count)
        {
            return PieceEdit.Refused(up ? "It lies on top already." : "Nothing lies beneath it here.");
        }

        var (first, second) = (BlockOf(source, siblings[Math.Min(at, other)]), BlockOf(source, siblings[Math.Max(at, other)]));
        var (content, start) = (source.Content, piece.Line.Span.Start);
        return PieceEdit.Of([new(new(first.Start, second.End),
            content[second.Start..second.End] + content[first.End..second.Start] + content[first.Start..first.End])]) with
        {
            LineStart = start < second.Start ? start + second.End - first.End : start - second.Start + first.Start,
        };
    }

    /// <summary>Writes the piece once more below itself, with a name of its own and a little further to the right and down.</summary>
    public static PieceEdit Copy(WrittenPiece piece)
    {
        var source = piece.File.Source;
        var block = BlockOf(source, piece.Line);
        var line = new LineEditing(source, piece.Line, piece.Card.Units);
        if (piece.Piece.Kind != PieceKind.Mat)
        {
            var by = piece.Card.Units == UnitSystem.Inches ? Length.Inch(0, 1, 4) : Length.Millimetre(5);
            Moving.Write(piece, new(by, by), line, []);
        }

        if (NameOf(piece.Line) is { } name)
        {
            line.Replace(name.Span, FreeName(piece, name.Text));
        }

        var copy = TextEdit.Apply(source.Content[block.Start..block.End],
            line.ToEdits().Select(e => e with { Span = new(e.Span.Start - block.Start, e.Span.End - block.Start) }));
        var lineEnd = LineEnd(source);
        return PieceEdit.Of([new(new(block.End, block.End), lineEnd + copy)]) with
        {
            LineStart = block.End + lineEnd.Length + piece.Line.Span.Start - block.Start,
        };
    }

    /// <summary>Takes the piece away.</summary>
    public static PieceEdit Delete(WrittenPiece piece)
    {
        var source = piece.File.Source;
        var (start, end) = BlockOf(source, piece.Line);
        var next = source.Content.IndexOf('\n', end);
        return PieceEdit.Of([next >= 0 ? new(new(start, next + 1), "")
            : new(new(source.Content.LastIndexOf('\n', Math.Max(0, start - 1)) is var before and >= 0 ? before : start, end), "")]);
    }

    private static ImmutableArray<LineSyntax> Siblings(WrittenPiece piece) =>
        CardOutline.Within(piece.File.Lines).Select(l => l.Children).Append(piece.File.Lines).First(c => c.Contains(piece.Line));

    private static bool IsMat(LineSyntax line) => line is PieceLine { Head.Kind: PieceKind.Mat };

    private static NameSyntax? NameOf(LineSyntax line) => line is PieceLine piece ? piece.Name : (line as UseLine)?.Name;

    /// <summary>The name with the lowest number that no line of the file has.</summary>
    private static string FreeName(WrittenPiece piece, string name)
    {
        var taken = CardOutline.Within(piece.File.Lines).Select(NameOf).OfType<NameSyntax>().Select(n => n.Text)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        var stem = name.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        for (var number = 2; ; number++)
        {
            var free = stem + number.ToString(CultureInfo.InvariantCulture);
            if (!taken.Contains(free))
            {
                return free;
            }
        }
    }

    /// <summary>From the start of its first line to the end of its last, without the line end.</summary>
    private static TextSpan BlockOf(SourceText source, LineSyntax line)
    {
        var content = source.Content;
        var first = source.PositionOf(line.Span.Start).Line - 1;
        for (var comments = line.Tokens.Before.Count; comments > 0 && line.Tokens.Before[comments - 1].Length > 0; comments--)
        {
            first--;
        }

        var last = CardOutline.Within([line]).Max(l => l.Span.End);
        var end = content.IndexOf('\n', last) is var next and >= 0 ? next : content.Length;
        return new(source.LineStart(first), end > last && content[end - 1] == '\r' ? end - 1 : end);
    }

    private static string LineEnd(SourceText source) => source.Content.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
}
