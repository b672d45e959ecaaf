using System.Collections.Immutable;
using Sketch.Kinds;

namespace Sketch.Binding;

/// <summary>
/// Looks once for a piece on faces and on all that lies on them. Parts share their pieces, however often they are used, so each piece is
/// visited only once.
/// </summary>
internal sealed class PieceSearch(IEnumerable<BoundFace> faces)
{
    private readonly HashSet<BoundPiece> _visited = new(ReferenceEqualityComparer.Instance);

    /// <summary>
    /// The path of names to the first piece with a name; null where there is none, or where a piece on the way has no name.
    /// </summary>
    public string? PathTo(string name) => faces.Select(f => PathTo(f.Pieces, name)).FirstOrDefault(p => p is not null);

    /// <summary>Whether there is a piece of a kind that has no name.</summary>
    public bool HasUnnamed(PieceKind kind) => faces.Any(f => HasUnnamed(f.Pieces, kind));

    private string? PathTo(ImmutableArray<BoundPiece> among, string name)
    {
        foreach (var piece in among.Where(p => p.Name is not null && _visited.Add(p)))
        {
            if (name.Equals(piece.Name, StringComparison.OrdinalIgnoreCase))
            {
                return piece.Name;
            }

            if (PathTo(piece.Children, name) is { } below)
            {
                return $"{piece.Name}/{below}";
            }
        }

        return null;
    }

    private bool HasUnnamed(ImmutableArray<BoundPiece> among, PieceKind kind) =>
        among.Any(p => _visited.Add(p) && ((p.Name is null && p.Kind == kind) || HasUnnamed(p.Children, kind)));
}
