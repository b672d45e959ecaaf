using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>A face with the piece lines on it.</summary>
internal sealed class FaceScope(FaceKind kind, Size size, Location location)
{
    public FaceKind Kind { get; } = kind;

    public Size Size { get; } = size;

    public Location Location { get; } = location;

    public List<CopySet> Units { get; } = [];

    /// <summary>All named sets of the face, however deep.</summary>
    public Dictionary<string, List<CopySet>> ByName { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The height of the flap of an envelope, which other pieces may refer to; it is not a piece.</summary>
    public Length? Flap { get; init; }
}

/// <summary>A piece line in its context: one piece, or the copies of a repeat as a block that is placed like one piece.</summary>
internal sealed class CopySet(BoundPiece bound, Node? parent, FaceScope face, string key)
{
    public BoundPiece Bound { get; } = bound;

    /// <summary>The piece that it lies on, or null for the face itself.</summary>
    public Node? Parent { get; } = parent;

    public FaceScope Face { get; } = face;

    /// <summary>Its name in paths: as written, or its kind with a number.</summary>
    public string Key { get; } = key;

    public Node[] Copies { get; set; } = [];

    public bool IsRepeat => Copies.Length > 1;

    public CopyGrid? Arrangement { get; set; }

    /// <summary>Its siblings, including itself.</summary>
    public List<CopySet> Siblings => Parent is null ? Face.Units : Parent.Children;

    /// <summary>The size of the block and the offsets of its copies, for each axis; null until computed.</summary>
    public CopyBlock?[] Blocks { get; } = new CopyBlock?[2];

    /// <summary>Whether the size of a copy could not be computed, so that there is no block on that axis.</summary>
    public bool[] HasNoBlock { get; } = new bool[2];

    /// <summary>The low edge of the outermost box on the face, for each axis.</summary>
    public Memo<Length>[] Places { get; } = [new(), new()];

    public string Called => Bound.Name ?? $"the {Bound.Kind.Name} of line {Bound.Location.Start.Line}";
}

/// <summary>The grid of a repeat: how many copies in each direction, and the cell of each copy.</summary>
internal sealed record CopyGrid(int Across, int Down)
{
    public int Count(Axis axis) => axis == Axis.Across ? Across : Down;

    public int Cell(int index, Axis axis) => axis == Axis.Across ? index % Across : index / Across;
}

/// <summary>One axis of a block: its whole size, and where in it the outermost box of each copy begins.</summary>
internal sealed record CopyBlock(Length Size, Length[] Offsets);

/// <summary>One piece with its mats.</summary>
internal sealed class Node(CopySet set, int index, BoundPiece bound)
{
    public CopySet Set { get; } = set;

    /// <summary>The index of the copy, from 0.</summary>
    public int Index { get; } = index;

    /// <summary>The bound piece of this copy, with the changes of its <c>item</c> line.</summary>
    public BoundPiece Bound { get; } = bound;

    public List<CopySet> Children { get; } = [];

    public Memo<Stack>[] Stacks { get; } = [new(), new()];

    public PiecePath Path => Set.Parent is { } parent ? parent.Path.Then(Set.Key, Copy) : PiecePath.On(Set.Face.Kind, Set.Key, Copy);

    /// <summary>The number in the path, from 1; null for a single piece.</summary>
    private int? Copy => Set.IsRepeat ? Index + 1 : null;
}

/// <summary>
/// One axis of a piece with its mats: sizes from the piece (0) outwards, and the border of each mat at the low and the high side.
/// </summary>
internal sealed record Stack(ImmutableArray<Length> Sizes, ImmutableArray<Length> Low, ImmutableArray<Length> High)
{
    public Length Own => Sizes[0];

    public Length Outer => Sizes[^1];

    private readonly Length[] _insets = Insets(Low);

    /// <summary>From the low edge of the outermost layer to that of layer <paramref name="layer"/>.</summary>
    public Length Inset(int layer) => _insets[layer];

    private static Length[] Insets(ImmutableArray<Length> low)
    {
        var insets = new Length[low.Length];
        for (var i = low.Length - 2; i >= 0; i--)
        {
            insets[i] = insets[i + 1] + low[i + 1];
        }

        return insets;
    }
}

/// <summary>A value that is computed once; if it is asked for again while it is being computed, it is circular.</summary>
internal sealed class Memo<T>
{
    public bool IsOpen { get; set; }

    public bool IsDone { get; private set; }

    /// <summary>The value; default when it could not be computed.</summary>
    public T? Value { get; private set; }

    public bool HasValue { get; private set; }

    public void Settle(T? value, bool hasValue)
    {
        IsOpen = false;
        IsDone = true;
        Value = value;
        HasValue = hasValue;
    }
}
