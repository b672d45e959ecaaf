using System.Collections.Immutable;
using System.Globalization;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>
/// What is written on or beside a template: name, material, cut size as on a ruler and in millimetres, how many to cut, and which parts its
/// inner cuts free.
/// </summary>
internal sealed class PieceLabel(TemplateLettering lettering)
{
    /// <summary>Room between the letters and any line to cut or fold, in millimetres.</summary>
    public const double Room = 1.5;

    /// <summary>The label in several forms, from narrow and tall to wide and flat.</summary>
    public ImmutableArray<TemplateText> Forms(TemplatePiece piece)
    {
        var (first, second) = Sizes(piece);
        var count = piece.CutCount;
        var freed = Freed(piece).ToArray();
        return
        [
            lettering.Set([piece.Name, piece.Material, first, second, count, .. freed]),
            lettering.Set([piece.Name, $"{piece.Material}, {count}", $"{first} ({second})", .. freed]),
            lettering.Set([$"{piece.Name}, {piece.Material}", $"{first} ({second}), {count}", .. freed]),
            lettering.Set([string.Join(", ", [piece.Name, piece.Material, $"{first} ({second})", count, .. freed])]),
        ];
    }

    /// <summary>The label of a tile, with as many lines as the width requires.</summary>
    public TemplateText OfTile(TemplatePiece piece, string tile, double width)
    {
        var (first, second) = Sizes(piece);
        var freed = Freed(piece).Select(f => $", {f}");
        return lettering.Set(lettering.Wrap(
            $"{piece.Name}, {tile}, {piece.Material}, {first} ({second}), {piece.CutCount}{string.Concat(freed)}. "
                + Tiles.HowToJoin, width));
    }

    private static IEnumerable<string> Freed(TemplatePiece piece) => piece.Freed.GroupBy(f => f.Words(piece.IsMetric))
        .Select(g => g.Count() == 1
        ? $"middle frees {g.Key}" : string.Create(CultureInfo.InvariantCulture, $"middle frees {g.Count()} of {g.Key}"));

    /// <summary>A size in both units, that of the file first.</summary>
    public static (string First, string Second) Sizes(TemplatePiece piece)
    {
        return (In(piece.IsMetric), In(!piece.IsMetric));

        string In(bool metric) =>
            piece.IsReadyMade ? new LengthFormat(metric).AboutReadyMade(piece.Cut) : new LengthFormat(metric).About(piece.Cut);
    }
}
