using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Papers;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Names;

/// <summary>A place in one of several files.</summary>
/// <param name="File">The file.</param>
/// <param name="Span">The place.</param>
/// <param name="IsDeclaration">Whether what is named there is declared there.</param>
public sealed record NamedPlace(FileSyntax File, TextSpan Span, bool IsDeclaration)
{
    /// <summary>Whether an offset in the file is in it or directly behind it.</summary>
    public bool IsAt(int offset) => Span.Start <= offset && offset <= Span.End;
}

/// <summary>A name that the files of a folder share.</summary>
/// <param name="Kind">A paper or a role.</param>
/// <param name="Text">The name.</param>
/// <param name="DeclaredIn">The name of the file that declares it: of several cards, the one that the others are like.</param>
public sealed record SharedName(NameKind Kind, string Text, string DeclaredIn);

/// <summary>Changes to one file.</summary>
/// <param name="File">The file.</param>
/// <param name="Edits">The changes.</param>
public sealed record FileEdits(FileSyntax File, ImmutableArray<TextEdit> Edits);

/// <summary>
/// The names that the files of a folder share. The role of a card is named in cards that are like it, and in batches that make them. A
/// paper of a stash is named in batches with that stash and in the cards that they make; in other cards only if no other stash lists a
/// paper of that name and it is no colour word. What is printed or ready-made names a paper only by what is no colour word.
/// </summary>
public sealed class SharedNames
{
    private readonly ImmutableArray<FileWords> _files;
    private readonly ImmutableArray<FileWords> _stashes;
    private readonly ILookup<string, FileWords> _madeWith;

    /// <summary>Reads files of one folder.</summary>
    public SharedNames(IEnumerable<FileSyntax> files)
    {
        _files = [.. files.Select(FileWords.Of).OrderBy(f => f.Name, StringComparer.Ordinal)];
        _stashes = [.. _files.Where(f => f.File.Kind == "stash")];
        _madeWith = _files.Where(f => f.File.Kind == "batch")
            .SelectMany(batch => StashesOf(batch).SelectMany(stash => batch.Files.Select(q => Find(q.Text)).OfType<FileWords>()
                .Where(f => f.File.Kind == "card").SelectMany(WithLike).Select(card => (Stash: stash.Name, Card: card))))
            .Distinct().ToLookup(m => m.Stash, m => m.Card, StringComparer.Ordinal);
    }

    /// <summary>What is named at a place.</summary>
    /// <returns>The name; several if the card is made with several stashes that list such a paper; none if no file declares it.</returns>
    public ImmutableArray<SharedName> At(FileSyntax file, int offset) =>
        _files.FirstOrDefault(f => ReferenceEquals(f.File, file)) is { } words
            ? [.. Named(words).Where(n => n.Place.IsAt(offset)).SelectMany(n => n.Meanings).Distinct()] : [];

    /// <summary>All places where something is named, in the order of the files' names.</summary>
    public ImmutableArray<NamedPlace> Places(SharedName name) =>
        [.. _files.SelectMany(Named).Where(n => n.Meanings.Contains(name)).Select(n => n.Place)];

    /// <summary>The changes that give something another name in all files.</summary>
    /// <param name="name">A name that <see cref="At"/> gave.</param>
    /// <param name="other">The other name.</param>
    /// <returns>The changes; a problem if that cannot be a name, or would mean something else somewhere.</returns>
    public Result<ImmutableArray<FileEdits>> Rename(SharedName name, string other)
    {
        if ((WrittenNames.WhyNoName(other) ?? WhyNot(name, other)) is { } failure)
        {
            return failure;
        }

        return Result.Of<ImmutableArray<FileEdits>>([.. Places(name).GroupBy(p => p.File)
            .Select(g => new FileEdits(g.Key, [.. g.Select(p => new TextEdit(p.Span, other))]))]);
    }

    /// <summary>The changes to other files when a card, stash or batch gets another name in the same folder.</summary>
    /// <param name="name">The name of the file.</param>
    /// <param name="other">Its new name.</param>
    public ImmutableArray<FileEdits> RenameFile(string name, string other) =>
    [
        .. _files.Select(f => new FileEdits(
            f.File, [.. f.Files.Where(q => IsFile(q.Text, name)).Select(q => new TextEdit(q.Span, $"\"{other}\""))]))
            .Where(e => e.Edits.Length > 0),
    ];

    private Failure? WhyNot(SharedName name, string other)
    {
        if (Is(name.Text, other))
        {
            return null;
        }

        var named = _files.SelectMany(f => Named(f).Where(n => n.Meanings.Contains(name)).Select(n => (File: f, n.Meanings, n.Word)))
            .ToList();
        if (named.FirstOrDefault(n => n.Meanings.Length > 1) is { File: { } shared } both)
        {
            return new($"{shared.Name} is made with {string.Join(" and with ", both.Meanings.Select(m => m.DeclaredIn))}, and both list a "
                + $"paper \"{name.Text}\". Change the name by hand in each file.");
        }

        if (_stashes.Any(s => name.Kind == NameKind.Paper && s.Name == name.DeclaredIn && Has(s.Papers, other)))
        {
            return new($"There is a paper \"{other}\" in {name.DeclaredIn} already.");
        }

        // Where a role of that name comes first, the word would mean the role, and so would a word that a role now takes over.
        var users = name.Kind == NameKind.Role ? _files.Where(f => f.File.Kind == "card" && RoleOf(f, name.Text) == name)
            : named.Where(n => n.Word?.Use is WordUse.Paper or WordUse.Colour).Select(n => CardOf(n.File, n.Word!)).OfType<FileWords>();
        return users.FirstOrDefault(f => RoleOf(f, other) is not null) is { } card
            ? new($"There is a role \"{other}\" in {card.Name} already.")
            : _files.FirstOrDefault(f => f.Words.Any(w => Is(w.Text, other) && WouldMean(f, w, name))) is { } taken
                ? new Failure($"{taken.Name} names the paper or colour \"{other}\" already, which would then be this {KindOf(name)}.")
                : null;
    }

    private static string KindOf(SharedName name) => name.Kind == NameKind.Role ? "role" : "paper";

    /// <summary>Whether a word that is the new name of something would mean it, though it does not name it now.</summary>
    private bool WouldMean(FileWords file, UsedWord word, SharedName name) => name.Kind == NameKind.Role
        ? word.Use is WordUse.Paper or WordUse.Colour && CardOf(file, word) is { } card && RoleOf(card, name.Text) == name
        : word.Use is WordUse.Paper or WordUse.Stock && (word.Use == WordUse.Stock || CardOf(file, word) is not { } own
            || RoleOf(own, word.Text) is null) && _stashes.Any(s => s.Name == name.DeclaredIn && IsUsedBy(s, file));

    /// <summary>All that a file declares for others or names, with what it means.</summary>
    private IEnumerable<(NamedPlace Place, ImmutableArray<SharedName> Meanings, UsedWord? Word)> Named(FileWords file)
    {
        foreach (var role in file.Roles)
        {
            yield return (new(file.File, role.Span, true), [RoleOf(file, role.Text)!], null);
        }

        foreach (var paper in file.Papers)
        {
            yield return (new(file.File, paper.Span, true), [PaperOf(file, paper.Text)], null);
        }

        foreach (var word in file.Words)
        {
            yield return (new(file.File, word.Span, false), Meanings(file, word), word);
        }
    }

    private ImmutableArray<SharedName> Meanings(FileWords file, UsedWord word)
    {
        if (word.Use != WordUse.Stock && CardOf(file, word) is { } card && RoleOf(card, word.Text) is { } role)
        {
            return [role];
        }

        var isColour = ColourWords.TryGet(word.Text, out _);
        if (word.Use == WordUse.Role || (word.Use == WordUse.Colour && isColour))
        {
            return [];
        }

        var listing = _stashes.Where(s => Has(s.Papers, word.Text)).ToList();
        return [.. listing.Where(s => IsUsedBy(s, file) || (file.File.Kind == "card" && listing.Count == 1 && !isColour))
            .Select(s => PaperOf(s, word.Text))];
    }

    /// <summary>The card whose roles count for a word; null where that file is not there.</summary>
    private FileWords? CardOf(FileWords file, UsedWord word) => file.File.Kind == "card" ? file : word.Card is { } card ? Find(card) : null;

    /// <summary>The role that a card has by itself or from a card that it is like.</summary>
    private SharedName? RoleOf(FileWords card, string name) => WithLike(card).LastOrDefault(f => Has(f.Roles, name)) is { } declaring
        ? new(NameKind.Role, name.ToLowerInvariant(), declaring.Name) : null;

    private static SharedName PaperOf(FileWords stash, string name) => new(NameKind.Paper, name.ToLowerInvariant(), stash.Name);

    private bool IsUsedBy(FileWords stash, FileWords file) => ReferenceEquals(file, stash)
        || (file.File.Kind == "batch" ? StashesOf(file).Contains(stash) : _madeWith[stash.Name].Contains(file));

    private IEnumerable<FileWords> StashesOf(FileWords batch) => _stashes.Where(s => batch.Files.Any(q => IsFile(q.Text, s.Name)));

    /// <summary>A card, the card that it is like, and so on.</summary>
    private List<FileWords> WithLike(FileWords card)
    {
        var chain = new List<FileWords>();
        for (var at = card; at is not null && !chain.Contains(at); at = at.Files.Select(q => Find(q.Text)).FirstOrDefault())
        {
            chain.Add(at);
        }

        return chain;
    }

    private FileWords? Find(string written) => _files.FirstOrDefault(f => IsFile(written, f.Name));

    private static bool IsFile(string written, string name) =>
        string.Equals(written.StartsWith("./", StringComparison.Ordinal) ? written[2..] : written, name, StringComparison.Ordinal);

    private static bool Has(ImmutableArray<NameSyntax> names, string name) => names.Any(n => Is(n.Text, name));

    private static bool Is(string one, string other) => one.Equals(other, StringComparison.OrdinalIgnoreCase);
}
