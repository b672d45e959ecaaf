using System.Globalization;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Units;

namespace Sketch.Drawing;

/// <summary>What a piece is, in plain words, for tooltips and screen readers.</summary>
public static class PieceTitle
{
    /// <summary>Name, kind, size, words, paper, turn and height, such as "lamp: star, 1 3/4 in wide, navy, raised 2 mm".</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="units">Inches are written as on a ruler, anything else in millimetres.</param>
    public static string Of(Piece piece, UnitSystem units)
    {
        List<string> parts = [Name(piece), Measures(piece, units.Format())];
        if (piece.Words is { } words)
        {
            parts.Add($"“{words.Text}”");
        }

        parts.Add(Paint(piece.Paint));
        if (piece.Turn != 0)
        {
            parts.Add(string.Create(
                CultureInfo.InvariantCulture, $"turned {Math.Abs(piece.Turn):0.##}° to the {(piece.Turn < 0 ? "left" : "right")}"));
        }

        if (piece.Raised > Length.Zero)
        {
            parts.Add("raised " + LengthFormat.Millimetres(piece.Raised));
        }

        return string.Join(", ", parts);
    }

    /// <summary>Width by height, such as "4 1/4 x 5 1/2 in" or "105 x 148 mm".</summary>
    public static string Size(Size size, UnitSystem units) => units.Format().About(size);

    /// <summary>What something is made of: the paper's name, else its role, else its colour.</summary>
    public static string Paint(Paint paint) => paint.Paper ?? paint.Role ?? Look(paint.Look);

    private static string Look(PaperLook look) => look.Pattern is PaperPattern.Plain or PaperPattern.Cardstock
        ? look.Ground.Hex
        : $"{look.Pattern.ToString().ToLowerInvariant()} {look.Ground.Hex}";

    private static string Measures(Piece piece, LengthFormat lengths)
    {
        var (box, isWidth) = (piece.Finished.Size, piece.Kind.Traits.IsSizedByOneNumber);
        return piece.IsReadyMade ? isWidth ? lengths.WithUnit(box.Width) + " wide" : lengths.AboutReadyMade(box)
            : isWidth ? lengths.About(box.Width) + " wide"
            : lengths.About(box);
    }

    /// <summary>The last name of the path and the kind, written once if they are the same; a mat is named by what it lies behind.</summary>
    internal static string Name(Piece piece)
    {
        if (piece is { Kind.Traits.IsLayer: true, Path.Parent: { } behind })
        {
            return $"{piece.Kind.Name} behind {Spoken(behind)}";
        }

        var (name, kind) = (piece.Path.Name, piece.Kind.Name);
        return name.StartsWith(kind, StringComparison.OrdinalIgnoreCase) && !name.AsSpan(kind.Length).ContainsAnyInRange('a', 'z')
            ? Spoken(piece.Path)
            : $"{Spoken(piece.Path)}: {kind}";
    }

    private static string Spoken(PiecePath path) =>
        path.Copy is { } copy ? string.Create(CultureInfo.InvariantCulture, $"{path.Name} {copy}") : path.Name;
}
