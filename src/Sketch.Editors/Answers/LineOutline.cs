using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Kinds;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Editors.Answers;

/// <summary>The outline of a text: its title with everything under it.</summary>
internal static class LineOutline
{
    // Numbers of SymbolKind in the protocol.
    private const int File = 1;
    private const int Namespace = 3;
    private const int Class = 5;
    private const int Function = 12;
    private const int Constant = 14;
    private const int Object = 19;

    /// <summary>The lines that hold or name something, below the title if there is one.</summary>
    public static DocumentSymbol[] Of(OpenDocument document)
    {
        var lines = document.Syntax.Lines;
        if (lines is not [TitleLine title, ..])
        {
            return Listed(document, lines);
        }

        var whole = document.Lines.RangeOf(new(title.Span.Start, Folding.EndOf(lines[^1])));
        return [new(Named(title.Words.Text, title.Word), File, whole, document.Lines.RangeOf(title.Span), title.Word,
            Listed(document, lines.Skip(1)))];
    }

    private static DocumentSymbol[] Listed(OpenDocument document, IEnumerable<LineSyntax> lines) =>
        [.. lines.Select(l => Symbol(document, l)).OfType<DocumentSymbol>()];

    private static DocumentSymbol? Symbol(OpenDocument document, LineSyntax line)
    {
        (string Name, int Kind, string? Detail, TextSpan Span)? shown = line switch
        {
            FaceLine face => (face.Face, Namespace, null, face.Span),
            PartLine part => (part.Name.Text, Class, "part", part.Name.Span),
            RoleLine role => (role.Name.Text, Constant, "role", role.Name.Span),
            PieceLine piece => (piece.Name?.Text ?? piece.Head.Kind.Name, Object, Detail(piece), piece.Name?.Span ?? piece.Head.KindSpan),
            UseLine use => (use.Name?.Text ?? use.Part.Text, Function, $"use {use.Part.Text}", use.Name?.Span ?? use.Part.Span),
            StockLine stock => (stock.Name.Text, Constant, stock.Stock, stock.Name.Span),
            MakeLine make => (Named(make.File.Text, "make"), Object, $"make {make.Count.Value}", make.File.Span),
            UseOnHandLine use => (Named(use.File.Text, "use"), Object, $"use {use.Count.Value}", use.File.Span),
            ForLine forWhom => (Named(forWhom.Whom.Text, "for"), Namespace, "for", forWhom.Whom.Span),
            ChangeLine change => (change.Path.Text, Object, "change", change.Path.Span),
            AddToLine add => (add.Path.Text, Object, "add to", add.Path.Span),
            _ => null,
        };
        return shown is not { } found ? null : new(
            found.Name,
            found.Kind,
            document.Lines.RangeOf(new(line.Span.Start, Folding.EndOf(line))),
            document.Lines.RangeOf(found.Span),
            found.Detail,
            line.Children.IsEmpty ? null : Listed(document, line.Children));
    }

    private static string? Detail(PieceLine piece)
    {
        var words = piece.Head.Texts is [var first, ..] ? $" \"{first.Text}\"" : "";
        return piece.Name is null && words.Length == 0 ? null : $"{piece.Head.Kind.Name}{words}";
    }

    /// <summary>A name that is not empty, as editors require.</summary>
    private static string Named(string name, string otherwise) => string.IsNullOrWhiteSpace(name) ? otherwise : name;
}
