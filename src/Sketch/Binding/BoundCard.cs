using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Binding;

/// <summary>The font of all words of a card without a font of their own.</summary>
/// <param name="Name">A font file or the name of a font.</param>
/// <param name="Location">Where it is named; a file is looked for beside that file.</param>
internal sealed record BoundFont(string Name, Location Location);

/// <summary>
/// A card with <c>like</c>, <c>part</c> and <c>change</c> applied and names of sizes resolved, but with sizes and places still as
/// clauses.
/// </summary>
internal sealed record BoundCard
{
    public required string Title { get; init; }

    public required Location Location { get; init; }

    public UnitSystem Units { get; init; }

    public BoundFont? Font { get; init; }

    public string Notes { get; init; } = "";

    /// <summary>The message to write inside, or null.</summary>
    public CardMessage? Message { get; init; }

    public BoundBase? Base { get; init; }

    public ImmutableArray<BoundRole> Roles { get; init; } = [];

    public ImmutableDictionary<string, BoundPart> Parts { get; init; } =
        ImmutableDictionary.Create<string, BoundPart>(StringComparer.OrdinalIgnoreCase);

    public ImmutableArray<BoundFace> Faces { get; init; } = [];

    /// <summary>Names given in lines that could not be read.</summary>
    public IReadOnlySet<string> BrokenNames { get; init; } = ImmutableHashSet<string>.Empty;
}

/// <summary>The base line, clause by clause, so that a card that is like another can replace some of them.</summary>
internal sealed record BoundBase(Size? Written, string? SizeName, bool Landscape, Fold? Fold, PaintSyntax? Paint, Location Location)
{
    /// <summary>Metric where the size is written in millimetres or centimetres and the file does not specify units; else null.</summary>
    public UnitSystem? UndeclaredUnits { get; init; }

    /// <summary>The closed size: <c>landscape</c> turns an upright size by a quarter.</summary>
    public Size? Closed => Written is { } size ? Landscape && size.Width < size.Height ? size.Turned() : size : null;

    /// <summary>Where it folds: if not specified, on the left when upright and at the top when landscape.</summary>
    public Fold Folds => Fold ?? (Closed is { } size && size.Width > size.Height ? Stationery.Fold.Top : Stationery.Fold.Left);
}

internal sealed record BoundRole(
    string Name, NameSyntax? Paper, ImmutableArray<PaintSyntax> Colours, bool AnyOffcut, PaperSide Side, Location Location)
{
    /// <summary>Which leftovers may be used; null for all.</summary>
    public NameSyntax? OffcutOf { get; init; }
}

internal sealed record BoundPart(string Name, SizeSyntax Size, ImmutableArray<BoundPiece> Pieces, Location Location);

internal sealed record BoundFace(FaceKind Kind, ImmutableArray<BoundPiece> Pieces, Location Location)
{
    public Size? EnvelopeSize { get; init; }

    public string? EnvelopeName { get; init; }

    public Length? Flap { get; init; }

    public bool ByHand { get; init; }

    public PaintSyntax? Paint { get; init; }
}

/// <summary>A clause with the file that it is written in: after <c>change</c>, the clauses of a piece may come from two files.</summary>
internal readonly record struct BoundClause(Clause Clause, SourceText Source)
{
    public Location Location => new(Source, Clause.Span);
}

/// <summary>A piece line with its mats and the pieces that lie on it.</summary>
internal sealed record BoundPiece
{
    public string? Name { get; init; }

    public int? Count { get; init; }

    public required PieceKind Kind { get; init; }

    /// <summary>The shape of a window, where one is written.</summary>
    public PieceKind? Shape { get; init; }

    /// <summary>The name of the rubber stamp of a stamp without a drawing, which is shown in its place; else null.</summary>
    public NameSyntax? NamedStamp => Kind == PieceKind.Stamp && Rules.File is null ? Rules.Using?.Clause.Tool : null;

    /// <summary>The kind whose outline it has: its own unless its line names a shape; a window without one is a rectangle.</summary>
    public PieceKind OutlineKind => Shape ?? (Kind == PieceKind.Window ? PieceKind.Panel : Kind);

    /// <summary>Whether it is a frame that covers a part of the way round.</summary>
    public bool IsArcFrame => Kind == PieceKind.Frame && Rules.Arc is not null;

    public SizeSyntax? Size { get; init; }

    public ImmutableArray<QuotedSyntax> Texts { get; init; } = [];

    public ImmutableArray<BoundClause> Clauses
    {
        get;
        init
        {
            field = value;
            Rules = new(value);
        }
    } = [];

    /// <summary>What the clauses specify.</summary>
    public PieceRules Rules { get; private init; } = PieceRules.None;

    /// <summary>The mats, innermost first.</summary>
    public ImmutableArray<BoundPiece> Mats { get; init; } = [];

    public ImmutableArray<BoundPiece> Children { get; init; } = [];

    public ImmutableArray<BoundItem> Items { get; init; } = [];

    /// <summary>Whether it is the use of a part: a group with the part's size.</summary>
    public bool IsUse { get; init; }

    /// <summary>
    /// Whether part of its line could not be read, which has been reported; what then seems to be missing is not reported as well.
    /// </summary>
    public bool IsDamaged { get; init; }

    public required Location Location { get; init; }

    /// <summary>The extent written for one direction of a width x height, or null.</summary>
    public ExtentSyntax? Extent(Axis axis) => Size is BoxSize box ? axis == Axis.Across ? box.Width : box.Height : null;

    /// <summary>Whether the piece fills its parent along an axis, less the distances written.</summary>
    public bool IsFull(Axis axis) => Extent(axis) is FullExtent;
}

/// <summary>What <c>item 3:</c> changes on one copy.</summary>
internal sealed record BoundItem(
    ImmutableArray<CountSyntax> Items, SizeSyntax? Size, ImmutableArray<QuotedSyntax> Texts, ImmutableArray<BoundClause> Clauses,
    ImmutableArray<BoundPiece> Children, Location Location);
