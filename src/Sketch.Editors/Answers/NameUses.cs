using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Names;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Editors.Answers;

/// <summary>
/// Where a name is declared and used, and other names for it. Pieces and parts are named in their own file, roles and papers in all
/// files of the folder.
/// </summary>
internal static class NameUses
{
    /// <summary>Where the name at a place is declared; for the name of a file, that file if it exists.</summary>
    /// <param name="document">The text.</param>
    /// <param name="beside">All texts of its folder, itself among them.</param>
    /// <param name="place">The place.</param>
    public static EditorLocation[] Declared(OpenDocument document, IReadOnlyList<OpenDocument> beside, EditorPosition place)
    {
        var places = Places(document, beside, place);
        return places.Length > 0 ? [.. places.Where(p => p.IsDeclaration).Select(p => p.Location)]
            : NamePlace.At(document, document.Lines.OffsetOf(place)) is { } path && File.Exists(path)
                ? [new(FileAddress.UriOf(path), new(new(0, 0), new(0, 0)))] : [];
    }

    /// <summary>Where the same is named as at a place.</summary>
    public static EditorLocation[] Used(
        OpenDocument document, IReadOnlyList<OpenDocument> beside, EditorPosition place, bool withDeclaration) =>
        [.. Places(document, beside, place).Where(p => withDeclaration || !p.IsDeclaration).Select(p => p.Location)];

    /// <summary>The name at a place, if it can be changed; null where there is none.</summary>
    public static RenamedWord? Renamed(OpenDocument document, IReadOnlyList<OpenDocument> beside, EditorPosition place)
    {
        var offset = document.Lines.OffsetOf(place);
        if (OwnName(document, offset) is { } own)
        {
            return own.Kind == NameKind.Supply ? null : Word(own.Span);
        }

        var shared = new SharedNames(beside.Select(d => d.Syntax));
        return shared.At(document.Syntax, offset) is [var name, ..]
            ? Word(shared.Places(name).First(p => ReferenceEquals(p.File, document.Syntax) && p.IsAt(offset)).Span) : null;

        RenamedWord Word(TextSpan span) => new(document.Lines.RangeOf(span), document.Source.Content[span.Start..span.End]);
    }

    /// <summary>The changes that give the name at a place another name.</summary>
    public static Result<EditorChanges> Rename(
        OpenDocument document, IReadOnlyList<OpenDocument> beside, EditorPosition place, string other)
    {
        var offset = document.Lines.OffsetOf(place);
        if (OwnName(document, offset) is { } own)
        {
            return own.Kind == NameKind.Supply
                ? new Failure("Cards and batches name what a stash lists beside papers, so change this one in each file that uses it.")
                : WrittenNames.Of(document.Syntax).Rename(own, other)
                    .Map(edits => new EditorChanges(new() { [document.Uri] = Edits(document, edits) }));
        }

        var shared = new SharedNames(beside.Select(d => d.Syntax));
        return shared.At(document.Syntax, offset) switch
        {
            [] => new Failure("Only pieces, parts, roles and papers can be renamed. Put the caret on the name of one."),
            [var name] => shared.Rename(name, other).Map(files => Changes(files, beside)),
            [var name, var second, ..] => new Failure(
                $"{name.DeclaredIn} and {second.DeclaredIn} both list a paper \"{name.Text}\". Change the name by hand in each file."),
        };
    }

    /// <summary>
    /// The changes to texts when files beside them get other names. A file that goes into another folder changes nothing, since its name
    /// would not lead there.
    /// </summary>
    public static EditorChanges RenameFiles(OpenDocuments documents, IEnumerable<RenamedFile> files)
    {
        var changes = new Dictionary<string, EditorEdit[]>();
        foreach (var (path, other) in files.Select(f => (FileAddress.PathOf(f.OldUri), FileAddress.PathOf(f.NewUri)))
            .Where(f => Path.GetDirectoryName(f.Item1) == Path.GetDirectoryName(f.Item2)))
        {
            var beside = documents.InFolderOf(path);
            var renamed = new SharedNames(beside.Select(d => d.Syntax)).RenameFile(Path.GetFileName(path), Path.GetFileName(other));
            foreach (var (uri, edits) in Changes(renamed, beside).Changes)
            {
                changes[uri] = [.. changes.GetValueOrDefault(uri, []), .. edits];
            }
        }

        return new(changes);
    }

    /// <summary>The name of what no other file names; null where there is none.</summary>
    private static WrittenName? OwnName(OpenDocument document, int offset) =>
        WrittenNames.Of(document.Syntax).At(offset) is { Kind: NameKind.Piece or NameKind.Part or NameKind.Supply } name ? name : null;

    private static (EditorLocation Location, bool IsDeclaration)[] Places(
        OpenDocument document, IReadOnlyList<OpenDocument> beside, EditorPosition place)
    {
        var offset = document.Lines.OffsetOf(place);
        if (OwnName(document, offset) is { } own)
        {
            return [.. WrittenNames.Of(document.Syntax).SameAs(own).Select(n => (At(document, n.Span), n.IsDeclaration))];
        }

        var shared = new SharedNames(beside.Select(d => d.Syntax));
        return [.. shared.At(document.Syntax, offset).SelectMany(n => shared.Places(n))
            .Select(p => (At(In(p.File, beside), p.Span), p.IsDeclaration))];
    }

    private static EditorChanges Changes(ImmutableArray<FileEdits> files, IReadOnlyList<OpenDocument> beside) =>
        new(files.Select(f => (Document: In(f.File, beside), f.Edits)).ToDictionary(f => f.Document.Uri, f => Edits(f.Document, f.Edits)));

    private static OpenDocument In(FileSyntax file, IReadOnlyList<OpenDocument> beside) =>
        beside.First(d => ReferenceEquals(d.Syntax, file));

    private static EditorEdit[] Edits(OpenDocument document, ImmutableArray<TextEdit> edits) =>
        [.. edits.Select(e => new EditorEdit(document.Lines.RangeOf(e.Span), e.Text))];

    private static EditorLocation At(OpenDocument document, TextSpan span) => new(document.Uri, document.Lines.RangeOf(span));
}
