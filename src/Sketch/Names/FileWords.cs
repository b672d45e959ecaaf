using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Names;

/// <summary>How a word is looked up.</summary>
internal enum WordUse
{
    /// <summary>A role of a card.</summary>
    Role,

    /// <summary>A role, or else a paper or a colour.</summary>
    Paper,

    /// <summary>A role, or else a colour, or a paper whose name is no colour: what is printed or ready-made.</summary>
    Colour,

    /// <summary>A paper of a stash or a colour, never a role: what a role is filled with, what is cut from.</summary>
    Stock,
}

/// <summary>A word that names what may be declared in another file.</summary>
/// <param name="Text">The word.</param>
/// <param name="Span">Its place.</param>
/// <param name="Use">How it is looked up.</param>
/// <param name="Card">In a batch: the file of the card whose roles count there; else null.</param>
internal sealed record UsedWord(string Text, TextSpan Span, WordUse Use, string? Card);

/// <summary>What a file declares for others, and what it names that others may declare.</summary>
/// <param name="file">The file.</param>
internal sealed class FileWords(FileSyntax file)
{
    /// <summary>The file.</summary>
    public FileSyntax File => file;

    /// <summary>Its name, without its folder.</summary>
    public string Name { get; } = Path.GetFileName(file.Source.Path);

    /// <summary>The roles that a card declares.</summary>
    public ImmutableArray<NameSyntax> Roles { get; private init; } = [];

    /// <summary>The papers that a stash lists.</summary>
    public ImmutableArray<NameSyntax> Papers { get; private init; } = [];

    /// <summary>Its words, in the order of the file.</summary>
    public ImmutableArray<UsedWord> Words { get; private init; } = [];

    /// <summary>The names of other files: of the card that it is like, of its stash, of the cards that it makes.</summary>
    public ImmutableArray<QuotedSyntax> Files { get; private init; } = [];

    /// <summary>Reads a file.</summary>
    public static FileWords Of(FileSyntax file)
    {
        var all = LineTree.Of(file).All;
        var lines = all.Select(l => l.Line).ToList();
        return new(file)
        {
            Roles = file.Kind == "card" ? [.. lines.OfType<RoleLine>().Select(r => r.Name)] : [],
            Papers = file.Kind == "stash"
                ? [.. lines.OfType<StockLine>().Where(s => s.Stock is "paper" or "cardstock").Select(s => s.Name)] : [],
            Words = [.. all.SelectMany(line => WordsOn(line.Line, line.Outermost.Line is MakeLine make ? make.File.Text : null))],
            Files = [.. lines.Skip(1).Select(l => l switch
            {
                TitleLine { Word: "like" or "stash" } title => title.Words,
                MakeLine make => make.File,
                UseOnHandLine use => use.File,
                _ => null,
            }).OfType<QuotedSyntax>()],
        };
    }

    private static IEnumerable<UsedWord> WordsOn(LineSyntax line, string? card)
    {
        var body = line is PieceLine { Head.Kind.Traits.Matter: not (PieceMatter.Paper or PieceMatter.Unseen) }
            ? WordUse.Colour : WordUse.Paper;
        return Heading().Concat(line.Clauses.SelectMany(Clause)).Where(w => w.Text.Length > 0);

        IEnumerable<UsedWord> Heading() => line switch
        {
            RoleLine role => Words((role.Name, card is null ? null : WordUse.Role), (role.Paper, WordUse.Stock),
                (role.OffcutOf, WordUse.Stock)),
            StockLine { Stock: "offcut" } offcut => Words((offcut.Name, WordUse.Stock)),
            CutLine cut => Words((cut.Paper, WordUse.Stock)),
            _ => [],
        };

        IEnumerable<UsedWord> Clause(Clause clause) => clause switch
        {
            OfClause of => of.Paints.Select(p => Painted(p, body)),
            InkClause ink => [Painted(ink.Paint, WordUse.Colour)],
            ShadowClause shadow => [Painted(shadow.Paint, WordUse.Paper)],
            WithClause with => [new(with.Role.Text, with.Role.Span, WordUse.Role, card), Painted(with.Paint, WordUse.Paper)],
            _ => [],
        };

        IEnumerable<UsedWord> Words(params (NameSyntax? Name, WordUse? Use)[] words) => words
            .Where(w => w is { Name: not null, Use: not null }).Select(w => new UsedWord(w.Name!.Text, w.Name.Span, w.Use!.Value, card));

        // Hex digits and "any offcut" name nothing.
        UsedWord Painted(PaintSyntax paint, WordUse use) => new(paint.IsHex || paint.IsAnyOffcut ? "" : paint.Text, paint.Span, use, card);
    }
}
