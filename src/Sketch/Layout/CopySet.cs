using Sketch.Binding;
using Sketch.Kinds;
using Sketch.Units;

namespace Sketch.Layout;

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
    /// <summary>Whether every second row fits between the copies of the row above it, as in a honeycomb.</summary>
    public bool Interlocks { get; init; }

    /// <summary>
    /// How far an interlocking row begins below the one above it, if copies in a row begin a distance apart: then neighbours in two rows
    /// are as far apart as those in one, at the corners of even triangles.
    /// </summary>
    public static Length RowBelow(Length apart) => new((long)Math.Round(apart.Nanometres * Math.Sqrt(0.75)));

    public int Count(Axis axis) => axis == Axis.Across ? Across : Down;

    public int Cell(int index, Axis axis) => axis == Axis.Across ? index % Across : index / Across;
}

/// <summary>One axis of a block: its whole size, and where in it the outermost box of each copy begins.</summary>
internal sealed record CopyBlock(Length Size, Length[] Offsets);
