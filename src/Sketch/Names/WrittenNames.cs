using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Names;

/// <summary>
/// The names in a text: where each is declared and where it is used. A name that the text does not declare is left out: a colour word, a
/// paper of a stash, a piece of the card that this one is like.
/// </summary>
public sealed class WrittenNames
{
    private WrittenNames(ImmutableArray<WrittenName> all) => All = all;

    /// <summary>All names, in the order of the text.</summary>
    public ImmutableArray<WrittenName> All { get; }

    /// <summary>Finds the names of a text.</summary>
    public static WrittenNames Of(FileSyntax file)
    {
        var lines = LineTree.Of(file);
        var declared = file.Lines is [TitleLine { Word: "batch" }, ..] ? [] : lines.All.Select(Declared).OfType<WrittenName>().ToList();
        var words = declared.Where(n => n.Kind != NameKind.Piece).ToLookup(n => (n.Kind, n.Text.ToLowerInvariant()));
        var used = lines.All.SelectMany(line => PiecesNamed(line, lines).Concat(WordsNamed(line.Line)
            .Select(w => words[(w.Kind, w.Name.Text.ToLowerInvariant())].FirstOrDefault() is { } found && found.Span != w.Name.Span
                ? found with { Text = w.Name.Text, Span = w.Name.Span, IsDeclaration = false } : null).OfType<WrittenName>()));
        return new([.. declared.Concat(used).OrderBy(n => n.Span.Start)]);
    }

    /// <summary>The name at an offset, also directly behind it; null where there is none.</summary>
    public WrittenName? At(int offset) => All.FirstOrDefault(n => n.Span.Start <= offset && offset <= n.Span.End);

    /// <summary>All places where the same is named, its declaration among them.</summary>
    public IEnumerable<WrittenName> SameAs(WrittenName name) =>
        All.Where(n => n.Kind == name.Kind && ReferenceEquals(n.Declaration, name.Declaration));

    /// <summary>The changes that give something another name everywhere in the text.</summary>
    /// <param name="name">A place where it is named.</param>
    /// <param name="other">The other name.</param>
    /// <returns>The changes; a problem if that cannot be a name, or is one of the same kind already.</returns>
    public Result<ImmutableArray<TextEdit>> Rename(WrittenName name, string other)
    {
        if (WhyNoName(other) is { } failure)
        {
            return failure;
        }

        var same = SameAs(name).ToList();
        return All.Any(n => n.Kind == name.Kind && !ReferenceEquals(n.Declaration, name.Declaration)
                && other.Equals(n.Text, StringComparison.OrdinalIgnoreCase))
            ? new Failure($"There is a \"{other}\" in this file already.")
            : Result.Of<ImmutableArray<TextEdit>>([.. same.Select(n => new TextEdit(n.Span, other))]);
    }

    /// <summary>Why something cannot be a name; null where it can.</summary>
    internal static Failure? WhyNoName(string other) => !IsName(other)
        ? new Failure($"\"{other}\" cannot be a name: a name is a letter, then letters, digits, _ and -.")
        : Vocabulary.NotNames.Contains(other) || Vocabulary.Openers.Contains(other)
            ? new Failure($"\"{other}\" is a word of the language and cannot be a name.") : null;

    private static bool IsName(string text) => text.Length > 0 && char.IsLetter(text[0]) && text[^1] != '-'
        && text.All(c => char.IsLetterOrDigit(c) || c is '_' or '-');

    private static WrittenName? Declared(TreeLine at) => at.Line switch
    {
        RoleLine role => Of(NameKind.Role, role.Name, role),
        PartLine part => Of(NameKind.Part, part.Name, part),
        PieceLine { Name: { } name } piece => Of(NameKind.Piece, name, piece),
        UseLine { Name: { } name } use => Of(NameKind.Piece, name, use),
        BadLine { Name: { } name } bad => Of(NameKind.Piece, name, bad),
        StockLine { Stock: "paper" or "cardstock" } stock => Of(NameKind.Paper, stock.Name, stock),
        StockLine { Stock: not "offcut" } stock => Of(NameKind.Supply, stock.Name, stock),
        _ => null,
    };

    private static WrittenName Of(NameKind kind, NameSyntax name, LineSyntax line) => new(kind, name.Text, name.Span, line, true);

    private static IEnumerable<WrittenName> PiecesNamed(TreeLine line, LineTree lines) =>
        PathsOn(line.Line).SelectMany(path => lines.Follow(line, path))
            .Select(step => new WrittenName(NameKind.Piece, step.Name.Text, step.Name.Span, step.Named.Line, false));

    private static IEnumerable<PathSyntax> PathsOn(LineSyntax line) => line.Clauses.Select(c => c switch
    {
        BesideClause beside => beside.Of,
        MeasuredFromClause measured => measured.From,
        OverClause over => over.Of,
        AlongClause along => along.Of,
        AroundClause around => around.What,
        SameSizeClause same => same.As,
        TuckedClause tucked => tucked.Under,
        _ => null,
    }).OfType<PathSyntax>().Concat(line switch
    {
        ChangeLine change => [change.Path],
        LeaveOutLine leave => [leave.Path],
        AddToLine add => [add.Path],
        _ => Array.Empty<PathSyntax>(),
    });

    /// <summary>Names on a line that are looked up in the whole file: roles, parts and papers.</summary>
    private static IEnumerable<(NameKind Kind, NameSyntax Name)> WordsNamed(LineSyntax line) => line.Clauses
        .SelectMany(c => c switch
        {
            OfClause of => of.Paints.Select(Painted),
            InkClause ink => [Painted(ink.Paint)],
            ShadowClause shadow => [Painted(shadow.Paint)],
            WithClause with => [with.Role, Painted(with.Paint)],
            _ => Array.Empty<NameSyntax>(),
        })
        .Select(n => (NameKind.Role, n))
        .Concat(line switch
        {
            UseLine use => [(NameKind.Part, use.Part)],
            StockLine { Stock: "offcut" } offcut => [(NameKind.Paper, offcut.Name)],
            _ => Array.Empty<(NameKind, NameSyntax)>(),
        });

    private static NameSyntax Painted(PaintSyntax paint) => new(paint.IsHex ? "" : paint.Text, paint.Span);
}
