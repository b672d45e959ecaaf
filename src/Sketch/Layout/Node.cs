using Sketch.Binding;
using Sketch.Panels;

namespace Sketch.Layout;

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
