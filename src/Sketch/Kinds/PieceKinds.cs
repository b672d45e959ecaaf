using System.Collections.Frozen;
using System.Collections.Immutable;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Kinds;

/// <summary>The table of all kinds of piece.</summary>
public static class PieceKinds
{
    private static readonly FrozenDictionary<PieceKind, PieceTraits> Table = new Dictionary<PieceKind, PieceTraits>
    {
        [PieceKind.Panel] = new("panel") { Shape = Shape.Rectangle, HasCorners = true, CanWrap = true, IsCutByRuler = true },
        [PieceKind.Mat] = new("mat") { IsLayer = true },
        [PieceKind.Shadow] = new("shadow") { IsLayer = true, HasLine = false },
        [PieceKind.Strip] = new("strip") { Shape = Shape.Rectangle, HasCorners = true, CanWrap = true, IsCutByRuler = true },
        [PieceKind.Line] = Lengthwise("line", PieceMatter.Paper) with { HasCorners = true, IsCutByRuler = true },
        [PieceKind.Frame] = new("frame") { HoldsWords = false, IsCutByRuler = true, IsSizedByThickness = true, SharesRoom = false },
        [PieceKind.Group] = new("group", PieceMatter.Unseen) { HoldsWords = false, HasOutlineToFrame = false },
        [PieceKind.Word] = new("word") { IsWords = true, FollowsLetters = true, IsSizedByOneNumber = true },
        [PieceKind.Sentiment] = new("sentiment") { IsWords = true, FollowsLetters = true, IsSizedByOneNumber = true },
        [PieceKind.Text] = new("text", PieceMatter.Ink) { IsWords = true, HasOutlineToFrame = false, IsSizedByOneNumber = true },
        [PieceKind.Stamp] = new("stamp", PieceMatter.Ink) { IsDrawing = true, HoldsWords = false, IsSizedByOneNumber = true },
        [PieceKind.Ruled] = new("ruled", PieceMatter.Ink) { HoldsWords = false, HasOutlineToFrame = false },
        [PieceKind.Gem] = Domed("gem") with { TakesShape = true, WidthsPerThickness = 2 },
        [PieceKind.Dot] = Domed("dot") with { WidthsPerThickness = 3 },
        [PieceKind.Brad] = Domed("brad") with { WidthsPerThickness = 4 },
        [PieceKind.Button] = Domed("button") with { Thickness = Length.Millimetre(2) },
        [PieceKind.Bow] = Ready("bow") with
        {
            Shape = Shape.Bow,
            HoldsWords = false,
            SharesRoom = false,
            IsSizedByOneNumber = true,
            Thickness = Length.Millimetre(3),
        },
        [PieceKind.Sticker] = Ready("sticker") with
        {
            Shape = Shape.Rectangle,
            TakesShape = true,
            HasCorners = true,
            Thickness = Length.Millimetre(0.1m),
        },
        [PieceKind.Tape] = Lengthwise("tape", PieceMatter.Ready) with
        {
            HasCorners = true,
            HoldsWords = true,
            SharesRoom = true,
            IsSizedByThickness = false,
            Thickness = Length.Millimetre(0.1m),
        },
        [PieceKind.Ribbon] = Lengthwise("ribbon", PieceMatter.Ready) with { HasTails = true, Thickness = Length.Millimetre(0.4m) },
        [PieceKind.Twine] = Lengthwise("twine", PieceMatter.Ready) with { HasTails = true, WidthsPerThickness = 1 },
        [PieceKind.Window] = new("window", PieceMatter.Hole) { TakesShape = true, HoldsWords = false },
        [PieceKind.Square] = Shaped("square", Shape.Square) with
        {
            HasCorners = true,
            CanWrap = true,
            IsCutByRuler = true,
            IsSizedByOneNumber = true,
        },
        [PieceKind.Rounded] = Shaped("rounded", Shape.Rounded) with { HasCorners = true, CanWrap = true, IsCutByRuler = true },
        [PieceKind.Circle] = Shaped("circle", Shape.Circle) with { IsSizedByOneNumber = true },
        [PieceKind.Oval] = Shaped("oval", Shape.Oval),
        [PieceKind.Star] = Shaped("star", Shape.Star) with { IsSizedByOneNumber = true },
        [PieceKind.Heart] = Shaped("heart", Shape.Heart) with { IsSizedByOneNumber = true },
        [PieceKind.Hexagon] = Shaped("hexagon", Shape.Hexagon) with { IsSizedByOneNumber = true },
        [PieceKind.Tile] = Shaped("tile", Shape.Tile) with { IsSizedByOneNumber = true },
        [PieceKind.Scallop] = Shaped("scallop", Shape.Scallop) with { IsSizedByOneNumber = true },
        [PieceKind.Arch] = Shaped("arch", Shape.Arch),
        [PieceKind.Tag] = Shaped("tag", Shape.Tag),
        [PieceKind.Banner] = Shaped("banner", Shape.Banner) with { CanWrap = true, IsCutByRuler = true },
        [PieceKind.Ticket] = Shaped("ticket", Shape.Ticket) with { HasCorners = true, IsCutByRuler = true },
        [PieceKind.Notched] = Shaped("notched", Shape.Notched) with { HasCorners = true, IsCutByRuler = true },
        [PieceKind.Quatrefoil] = Shaped("quatrefoil", Shape.Quatrefoil) with { IsSizedByOneNumber = true },
        [PieceKind.Pennant] = Shaped("pennant", Shape.Pennant) with { IsCutByRuler = true },
        [PieceKind.Pocket] = Shaped("pocket", Shape.Pocket) with { IsCutByRuler = true },
        [PieceKind.Drop] = Shaped("drop", Shape.Drop) with { IsSizedByOneNumber = true },
        [PieceKind.Outline] = new("outline") { IsShape = true, IsDrawing = true, IsSizedByOneNumber = true },
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<string, PieceKind> Named =
        Table.Where(t => t.Value.HasLine).ToFrozenDictionary(t => t.Value.Word, t => t.Key, StringComparer.OrdinalIgnoreCase);

    /// <summary>All kinds, in the order of <see cref="PieceKind"/>.</summary>
    public static ImmutableArray<PieceKind> All { get; } = [.. Table.Keys.Order()];

    /// <summary>The kind with a word, ignoring case; null when no kind has that word.</summary>
    public static PieceKind? Find(string word) => Named.TryGetValue(word, out var kind) ? kind : null;

    private static PieceTraits Shaped(string word, Shape shape) => new(word) { Shape = shape, IsShape = true };

    private static PieceTraits Ready(string word) => new(word, PieceMatter.Ready);

    /// <summary>What is round, small and hard.</summary>
    private static PieceTraits Domed(string word) => Ready(word) with
    {
        Shape = Shape.Circle,
        HoldsWords = false,
        SharesRoom = false,
        IsSizedByOneNumber = true,
        IsSmallPart = true,
    };

    /// <summary>What is bought by its thickness and cut to length.</summary>
    private static PieceTraits Lengthwise(string word, PieceMatter matter) => new(word, matter)
    {
        Shape = Shape.Rectangle,
        CanWrap = true,
        HoldsWords = false,
        SharesRoom = false,
        IsSizedByThickness = true,
        IsCutToLength = true,
    };

    extension(PieceKind kind)
    {
        /// <summary>What distinguishes the kind.</summary>
        public PieceTraits Traits => Table[kind];

        /// <summary>The kind's word in the language.</summary>
        public string Name => Table[kind].Word;
    }
}
