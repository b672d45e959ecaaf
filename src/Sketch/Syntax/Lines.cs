using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>A file as a tree of lines.</summary>
/// <param name="Source">The text.</param>
/// <param name="Lines">The lines without indentation, each with those indented below it.</param>
/// <param name="Trailing">Blank and comment lines after the last.</param>
public sealed record FileSyntax(SourceText Source, ImmutableArray<LineSyntax> Lines, IReadOnlyList<string> Trailing)
{
    /// <summary>Whether it is a <c>card</c>, <c>stash</c> or <c>batch</c>: as its first line says, else its name.</summary>
    public string Kind => Lines is [TitleLine { Word: "card" or "stash" or "batch" } title, ..] ? title.Word
        : Path.GetExtension(Source.Path).ToLowerInvariant() switch { ".stash" => "stash", ".batch" => "batch", _ => "card" };

    /// <summary>The units assumed for lengths without a unit, except for zero lengths, which are the same in every unit.</summary>
    public ImmutableHashSet<Unit> BareUnits { get; init; } = [];
}

/// <summary>A line and the lines indented below it.</summary>
/// <param name="Tokens">The line as tokens.</param>
public abstract record LineSyntax(LogicalLine Tokens)
{
    /// <summary>The place of the line, without indentation and comment.</summary>
    public TextSpan Span => Tokens.Span;

    /// <summary>Its clauses in order; those that could not be read are left out.</summary>
    public ImmutableArray<Clause> Clauses { get; init; } = [];

    /// <summary>The lines indented below it.</summary>
    public ImmutableArray<LineSyntax> Children { get; init; } = [];

    /// <summary>Whether part of it could not be read, so that what seems to be missing may be there.</summary>
    public bool IsDamaged { get; init; }

    /// <summary>Tokens (by index) at which clauses begin without a comma before them.</summary>
    public ImmutableArray<int> MissingCommas { get; init; } = [];

    /// <summary>Tokens (by index) that are names, whose capitals are kept as written.</summary>
    public ImmutableArray<int> NameTokens { get; init; } = [];
}

/// <summary>A name with its place.</summary>
public sealed record NameSyntax(string Text, TextSpan Span);

/// <summary>Words in quotes with their place.</summary>
public sealed record QuotedSyntax(string Text, TextSpan Span);

/// <summary>A length with its place.</summary>
public readonly record struct LengthSyntax(Length Value, TextSpan Span);

/// <summary>
/// A whole number with its place. One out of range is reported and replaced by the nearest in range; it is then marked as corrected.
/// </summary>
public readonly record struct CountSyntax(int Value, TextSpan Span, bool IsCorrected = false);

/// <summary>Names from the face or the nearest known piece inwards, such as <c>front/sky/lamp</c>.</summary>
public sealed record PathSyntax(ImmutableArray<NameSyntax> Names)
{
    /// <summary>The span from its first to its last name.</summary>
    public TextSpan Span => TextSpan.Cover(Names[0].Span, Names[^1].Span);

    /// <summary>The path as written in a file.</summary>
    public string Text => string.Join("/", Names.Select(n => n.Text));
}

/// <summary>A role, a colour word or a colour in hex digits.</summary>
/// <param name="Text">The name, or the hex digits.</param>
/// <param name="IsHex">Whether these are hex digits.</param>
/// <param name="Span">The place in the source.</param>
public sealed record PaintSyntax(string Text, bool IsHex, TextSpan Span)
{
    /// <summary>Whether <c>any offcut</c> is written, which only a role can be; the text is these words.</summary>
    public bool IsAnyOffcut { get; init; }
}

/// <summary>One direction of a size.</summary>
public abstract record ExtentSyntax(TextSpan Span);

/// <summary>A written length.</summary>
public sealed record LengthExtent(Length Value, TextSpan Span) : ExtentSyntax(Span);

/// <summary>The parent's size less the distances from its sides.</summary>
public sealed record FullExtent(TextSpan Span) : ExtentSyntax(Span);

/// <summary>As large as its words require.</summary>
public sealed record FitExtent(TextSpan Span) : ExtentSyntax(Span);

/// <summary>A share of the size of full.</summary>
public sealed record ShareExtent(int Numerator, int Denominator, TextSpan Span) : ExtentSyntax(Span);

/// <summary>The direction that a single length measures.</summary>
public enum SingleMeasure
{
    /// <summary>Not specified.</summary>
    Unspecified,

    /// <summary>Across.</summary>
    Wide,

    /// <summary>Down.</summary>
    High,
}

/// <summary>A size: two extents, one length, or the total that a mat adds.</summary>
public abstract record SizeSyntax(TextSpan Span);

/// <summary>Width x height.</summary>
public sealed record BoxSize(ExtentSyntax Width, ExtentSyntax Height, TextSpan Span) : SizeSyntax(Span);

/// <summary>One length.</summary>
public sealed record SingleSize(Length Value, SingleMeasure Measure, TextSpan Span) : SizeSyntax(Span);

/// <summary>The total that a mat adds, across and down.</summary>
public sealed record AddedSize(Length Across, Length Down, TextSpan Span) : SizeSyntax(Span);

/// <summary>A named size or a written one.</summary>
/// <param name="System">"US" or "ISO" where written.</param>
/// <param name="Name">The size's name, or null.</param>
/// <param name="Size">The written size, or null.</param>
/// <param name="Span">The place in the source.</param>
public sealed record MeasureSyntax(string? System, string? Name, SizeSyntax? Size, TextSpan Span);

/// <summary>What opens a file: <c>card "…"</c>, <c>batch "…"</c>, <c>stash "…"</c>, and <c>like "…"</c>.</summary>
public sealed record TitleLine(LogicalLine Tokens, string Word, QuotedSyntax Words) : LineSyntax(Tokens);

/// <summary>A line with only quoted words: <c>message</c>, <c>note</c>, <c>date</c>.</summary>
public sealed record WordsLine(LogicalLine Tokens, string Word, ImmutableArray<QuotedSyntax> Words) : LineSyntax(Tokens);

/// <summary>
/// The font of all words of a card: <c>font "Lighthouse.ttf"</c>, or <c>lettering script</c>, which stands for the font of that kind.
/// </summary>
public sealed record FontLine(LogicalLine Tokens, QuotedSyntax Font) : LineSyntax(Tokens);

/// <summary><c>units mm</c>.</summary>
public sealed record UnitsLine(LogicalLine Tokens, Unit Unit) : LineSyntax(Tokens);

/// <summary>What <c>refit</c> changes.</summary>
public enum RefitWhat
{
    /// <summary>Sizes and distances.</summary>
    Sizes,

    /// <summary>Only distances.</summary>
    Margins,

    /// <summary>Sizes, distances and borders.</summary>
    All,
}

/// <summary><c>refit sizes</c>.</summary>
public sealed record RefitLine(LogicalLine Tokens, RefitWhat What) : LineSyntax(Tokens);

/// <summary><c>base A2, fold left</c>; without a measure it changes only the clauses.</summary>
public sealed record BaseLine(LogicalLine Tokens, MeasureSyntax? Measure) : LineSyntax(Tokens);

/// <summary><c>role sky: gulls #9fc9e8</c>.</summary>
/// <param name="Tokens">The line.</param>
/// <param name="Name">The role.</param>
/// <param name="Paper">The paper's name, or null.</param>
/// <param name="Colours">Colours after it.</param>
/// <param name="AnyOffcut">Whether any leftover may be used.</param>
public sealed record RoleLine(LogicalLine Tokens, NameSyntax Name, NameSyntax? Paper, ImmutableArray<PaintSyntax> Colours, bool AnyOffcut)
    : LineSyntax(Tokens)
{
    /// <summary>Which leftovers may be used: patterned, cardstock, a colour or a paper; null for all.</summary>
    public NameSyntax? OffcutOf { get; init; }
}

/// <summary><c>part lantern 1 x 2</c> with its pieces indented below.</summary>
public sealed record PartLine(LogicalLine Tokens, NameSyntax Name, SizeSyntax Size) : LineSyntax(Tokens);

/// <summary>A line of stock in a stash: <c>paper gulls: 12 x 12, 3 sheets</c>.</summary>
public sealed record StockLine(LogicalLine Tokens, string Stock, NameSyntax Name, MeasureSyntax? Measure) : LineSyntax(Tokens);

/// <summary>A face: <c>front</c>, <c>inside left</c>, <c>envelope US A2</c>.</summary>
public sealed record FaceLine(LogicalLine Tokens, string Face, MeasureSyntax? Measure) : LineSyntax(Tokens);

/// <summary>The part of a piece line before its clauses.</summary>
/// <param name="Count">How many copies, or null for one.</param>
/// <param name="Kind">The kind.</param>
/// <param name="KindSpan">The place of the kind.</param>
/// <param name="Shape">A window's shape, or null.</param>
/// <param name="Size">The size, or null.</param>
/// <param name="Texts">The words.</param>
public sealed record PieceHead(
    CountSyntax? Count, PieceKind Kind, TextSpan KindSpan, PieceKind? Shape, SizeSyntax? Size, ImmutableArray<QuotedSyntax> Texts);

/// <summary>A piece: <c>lamp: star 1 3/4, right 1/4</c>.</summary>
public sealed record PieceLine(LogicalLine Tokens, NameSyntax? Name, PieceHead Head) : LineSyntax(Tokens);

/// <summary><c>first: use lantern, left 1/2</c>.</summary>
public sealed record UseLine(LogicalLine Tokens, NameSyntax? Name, NameSyntax Part) : LineSyntax(Tokens);

/// <summary><c>item 3: of pearl</c>.</summary>
public sealed record ItemLine(LogicalLine Tokens, ImmutableArray<CountSyntax> Items, SizeSyntax? Size, ImmutableArray<QuotedSyntax> Texts)
    : LineSyntax(Tokens);

/// <summary><c>change sky/lamp: star 2</c>.</summary>
public sealed record ChangeLine(LogicalLine Tokens, PathSyntax Path, PieceHead? Head, SizeSyntax? Size, ImmutableArray<QuotedSyntax> Texts)
    : LineSyntax(Tokens);

/// <summary><c>leave out sky/lamp</c>.</summary>
public sealed record LeaveOutLine(LogicalLine Tokens, PathSyntax Path) : LineSyntax(Tokens);

/// <summary><c>add to sky</c> with pieces beneath.</summary>
public sealed record AddToLine(LogicalLine Tokens, PathSyntax Path) : LineSyntax(Tokens);

/// <summary><c>make 12 of "fair-winds.card"</c>.</summary>
public sealed record MakeLine(LogicalLine Tokens, CountSyntax Count, QuotedSyntax File) : LineSyntax(Tokens);

/// <summary><c>use 4 of "fair-winds.card" on hand</c>.</summary>
public sealed record UseOnHandLine(LogicalLine Tokens, CountSyntax Count, QuotedSyntax File) : LineSyntax(Tokens);

/// <summary><c>for "Cliff ward", 24 cards</c>.</summary>
public sealed record ForLine(LogicalLine Tokens, QuotedSyntax Whom) : LineSyntax(Tokens);

/// <summary><c>makers 2</c>, <c>spare 1</c>.</summary>
public sealed record CountLine(LogicalLine Tokens, string Word, CountSyntax Count) : LineSyntax(Tokens);

/// <summary><c>cut 12 of 4 x 5 1/4 from gulls</c>.</summary>
public sealed record CutLine(LogicalLine Tokens, CountSyntax Count, SizeSyntax Size, NameSyntax Paper) : LineSyntax(Tokens);

/// <summary>A line already reported as not understood.</summary>
public sealed record BadLine(LogicalLine Tokens) : LineSyntax(Tokens)
{
    /// <summary>The name that it gives its piece, so that references to it are not reported.</summary>
    public NameSyntax? Name { get; init; }

    /// <summary>The word with which the line was probably meant to begin, or null.</summary>
    public string? Meant { get; init; }
}
