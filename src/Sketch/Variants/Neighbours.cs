using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Layout;
using Sketch.Panels;

namespace Sketch.Variants;

/// <summary>A paint next to another: a varied role or a fixed paint.</summary>
/// <param name="Role">Index among the varied roles, or -1.</param>
/// <param name="Fixed">The fixed paint.</param>
internal readonly record struct Surface(int Role, Paint Fixed);

/// <summary>What lies on what in a card, and which words are written on what; each pair once.</summary>
/// <param name="Layers">Pairs of a layer and what it lies on.</param>
/// <param name="Words">Pairs of an ink and what it is written on.</param>
internal sealed record Neighbours(ImmutableArray<(Surface Upper, Surface Lower)> Layers, ImmutableArray<(Surface Ink, Surface Paper)> Words)
{
    /// <summary>The neighbours of a card.</summary>
    /// <param name="card">The card.</param>
    /// <param name="roles">The roles to vary.</param>
    public static Neighbours Of(LaidOutCard card, IReadOnlyList<string> roles)
    {
        var layers = new List<(Surface, Surface)>();
        var words = new List<(Surface, Surface)>();
        foreach (var piece in card.Pieces.Where(p => p.Matter is PieceMatter.Paper or PieceMatter.Ink or PieceMatter.Ready))
        {
            var beneath = SurfaceOf(card.GroundOf(piece));
            if (piece.Matter != PieceMatter.Ink)
            {
                layers.Add((SurfaceOf(piece.Paint), beneath));
            }

            if (piece.Words is { } own && (piece.Matter == PieceMatter.Ink || !own.Ink.IsEmpty))
            {
                var paper = piece.Matter == PieceMatter.Ink ? beneath : SurfaceOf(piece.Paint);
                words.Add((SurfaceOf(own.InkPaint), paper));
            }
        }

        return new([.. layers.Distinct()], [.. words.Distinct()]);

        Surface SurfaceOf(Paint paint)
        {
            for (var i = 0; i < roles.Count; i++)
            {
                if (roles[i].Equals(paint.Role, StringComparison.OrdinalIgnoreCase))
                {
                    return new(i, Paints.Plain);
                }
            }

            return new(-1, paint);
        }
    }
}
