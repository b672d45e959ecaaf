using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Names;
using Sketch.Text;

namespace Sketch.Editors.Answers;

/// <summary>Where a name is declared and used, and other names for it.</summary>
internal static class NameUses
{
    /// <summary>Where the name at a place is declared; for the name of a file, that file if it exists.</summary>
    public static EditorLocation[] Declared(OpenDocument document, EditorPosition place)
    {
        var offset = document.Lines.OffsetOf(place);
        var names = WrittenNames.Of(document.Syntax);
        if (names.At(offset) is { } name)
        {
            return Located(document, names.SameAs(name).Where(n => n.IsDeclaration));
        }

        return NamePlace.At(document, offset) is { } path && File.Exists(path)
            ? [new(FileAddress.UriOf(path), new(new(0, 0), new(0, 0)))] : [];
    }

    /// <summary>Where the same is named as at a place.</summary>
    public static EditorLocation[] Used(OpenDocument document, EditorPosition place, bool withDeclaration)
    {
        var names = WrittenNames.Of(document.Syntax);
        return names.At(document.Lines.OffsetOf(place)) is { } name
            ? Located(document, names.SameAs(name).Where(n => withDeclaration || !n.IsDeclaration)) : [];
    }

    /// <summary>The name at a place, if it can be changed; null where there is none.</summary>
    public static RenamedWord? Renamed(OpenDocument document, EditorPosition place) =>
        WrittenNames.Of(document.Syntax).At(document.Lines.OffsetOf(place)) is { } name && CanChange(name)
            ? new(document.Lines.RangeOf(name.Span), name.Text) : null;

    /// <summary>The changes that give the name at a place another name.</summary>
    public static Result<EditorChanges> Rename(OpenDocument document, EditorPosition place, string other)
    {
        var names = WrittenNames.Of(document.Syntax);
        if (names.At(document.Lines.OffsetOf(place)) is not { } name)
        {
            return new Failure("Only pieces, roles and parts can be renamed. Put the caret on the name of one.");
        }

        return !CanChange(name)
            ? new Failure("Cards and batches use the names of a stash, so change this one in each file that uses it.")
            : names.Rename(name, other).Map(edits => new EditorChanges(new() { [document.Uri] = Edits(document, edits) }));
    }

    // What a stash lists is named in other files.
    private static bool CanChange(WrittenName name) => name.Kind is NameKind.Piece or NameKind.Role or NameKind.Part;

    private static EditorEdit[] Edits(OpenDocument document, ImmutableArray<TextEdit> edits) =>
        [.. edits.Select(e => new EditorEdit(document.Lines.RangeOf(e.Span), e.Text))];

    private static EditorLocation[] Located(OpenDocument document, IEnumerable<WrittenName> names) =>
        [.. names.Select(n => new EditorLocation(document.Uri, document.Lines.RangeOf(n.Span)))];
}
