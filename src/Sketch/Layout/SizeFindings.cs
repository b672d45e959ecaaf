using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Reports what is wrong with sizes. A line is examined in both directions and for every copy, but reported once.</summary>
internal sealed class SizeFindings(UnitSystem units, FindingBag findings)
{
    private readonly HashSet<(Location, string)> _reported = [];
    private readonly HashSet<Location> _unsized = [];

    /// <summary>A length in the units of the file.</summary>
    public string Text(Length length) => units.Format().WithUnit(length);

    /// <summary>Reports a size that its kind cannot have; always false, for the caller to return.</summary>
    public bool Refuse(Node node, TextSpan? span, string message, string hint)
    {
        if (!node.Bound.IsDamaged)
        {
            Report(FindingCatalogue.BadSize, new(node.Bound.Location.Source, span ?? node.Bound.Location.Span), message, hint);
        }

        return false;
    }

    /// <summary>Reports once what is found in both directions or for every copy.</summary>
    public void Report(FindingKind kind, Location location, string message, string hint)
    {
        if (_reported.Add((location, message)))
        {
            findings.Add(kind, location, message, hint);
        }
    }

    /// <summary>Reports that nothing specifies how large a piece is.</summary>
    public void ReportHowLarge(Node node, Axis axis)
    {
        // Found in both directions and for every copy; reported once per line, and not at all where the size could not be read.
        if (!node.Bound.IsDamaged && _unsized.Add(node.Bound.Location))
        {
            var how = node.Bound.Size is null ? "large" : axis == Axis.Across ? "wide" : "high";
            findings.Add(FindingCatalogue.HowLarge, node.Bound.Location, $"Nothing says how {how} {node.Set.Called} is.",
                HowLargeHint(node));
        }
    }

    private static string HowLargeHint(Node node) => node.Bound.Kind switch
    {
        PieceKind.Line => "Write line 1/16, along top, or strip full x 1/16.",
        PieceKind.Ribbon or PieceKind.Twine => $"Write {node.Bound.Kind.Name} 1/8, along bottom, or {node.Bound.Kind.Name} full x 1/8.",
        PieceKind.Frame => "Write frame 1/8, around another piece, or frame 1/8, showing 1/4.",
        var kind when kind.Traits.IsSmallPart => $"Write {kind.Name} 1/8.",
        PieceKind.Bow => "Write bow 1.",
        var kind when kind.Traits.Matter == PieceMatter.Ready => $"Write {kind.Name} 2 x 1.",
        var kind => $"Write {kind.Name} 2 x 3, or showing 1/8, or the size of its mat.",
    };

    /// <summary>The name of the size along an axis.</summary>
    public static string Name(Axis axis) => axis == Axis.Across ? "width" : "height";
}
