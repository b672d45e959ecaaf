using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Tells what is wrong with sizes. The same line is asked for both directions and for every copy; it is told once.</summary>
internal sealed class SizeFindings(UnitSystem units, FindingBag findings)
{
    private readonly HashSet<(Location, string)> _reported = [];
    private readonly HashSet<Location> _unsized = [];

    /// <summary>A length as the file's readers know it.</summary>
    public string Text(Length length) => units.Format().WithUnit(length);

    /// <summary>Tells of a size that its kind cannot have; always false, for the caller to hand on.</summary>
    public bool Refuse(Node node, TextSpan? span, string message, string hint)
    {
        if (!node.Bound.IsDamaged)
        {
            Report(FindingCatalogue.BadSize, new(node.Bound.Location.Source, span ?? node.Bound.Location.Span), message, hint);
        }

        return false;
    }

    /// <summary>Tells once what is found for both directions or for every copy.</summary>
    public void Report(FindingKind kind, Location location, string message, string hint)
    {
        if (_reported.Add((location, message)))
        {
            findings.Add(kind, location, message, hint);
        }
    }

    /// <summary>Tells that nothing says how large a piece is.</summary>
    public void ReportHowLarge(Node node, Axis axis)
    {
        // Asked for both directions and for every copy; told once a line, and not at all where the size could not be read.
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
        PieceKind.Frame => "Write frame 1/8, around another piece, or frame 1/8, showing 1/4.",
        PieceKind.Gem => "Write gem 1/8.",
        var kind => $"Write {kind.Name} 2 x 3, or showing 1/8, or the size of its mat.",
    };

    /// <summary>What a direction's size is called.</summary>
    public static string Name(Axis axis) => axis == Axis.Across ? "width" : "height";
}
