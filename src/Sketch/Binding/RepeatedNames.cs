using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Binding;

/// <summary>
/// Reports names that two pieces on the same parent share, however they got there: on lines below each other, by <c>add to</c>,
/// <c>change</c> or <c>item</c>, on a face that another card has begun, or on the use of a part.
/// </summary>
internal sealed class RepeatedNames
{
    private readonly SourceText _source;
    private readonly FindingBag _findings;
    private readonly HashSet<Location> _reported = [];

    // The pieces of a part are the same objects in each of its uses.
    private readonly HashSet<BoundPiece> _seen = new(ReferenceEqualityComparer.Instance);

    private RepeatedNames(SourceText source, FindingBag findings) => (_source, _findings) = (source, findings);

    /// <summary>Reports the names that lines of this file repeat; those of another file are reported where that file is read.</summary>
    public static void Check(BoundCard card, SourceText source, FindingBag findings)
    {
        var names = new RepeatedNames(source, findings);
        foreach (var pieces in card.Parts.Values.Select(p => p.Pieces).Concat(card.Faces.Select(f => f.Pieces)))
        {
            names.Among(pieces, mats: 0);
        }
    }

    /// <summary>Checks the pieces on one parent, and returns where each name is given first.</summary>
    private Dictionary<string, Location> Among(IEnumerable<BoundPiece> pieces, int mats)
    {
        var first = new Dictionary<string, Location>(StringComparer.OrdinalIgnoreCase);
        foreach (var piece in pieces)
        {
            if (piece.Name is { } name)
            {
                if (IsMat(name, mats))
                {
                    Report(piece.Location, $"The name {name} is taken by a mat of the piece that this one lies on.", name);
                }
                else if (!first.TryAdd(name, piece.Location))
                {
                    ReportTwice(name, piece.Location, first[name]);
                }
            }

            if (_seen.Add(piece))
            {
                InItems(piece, Among(piece.Children, piece.Mats.Length));
            }
        }

        return first;
    }

    /// <summary>Pieces that an item puts on one copy are siblings of the pieces on every copy.</summary>
    private void InItems(BoundPiece piece, Dictionary<string, Location> onAll)
    {
        var onCopies = new Dictionary<(int Copy, string Name), Location>();
        foreach (var item in piece.Items)
        {
            Among(item.Children, piece.Mats.Length);
            foreach (var (name, location) in item.Children.Where(c => c.Name is not null).Select(c => (c.Name!, c.Location)))
            {
                if (onAll.TryGetValue(name, out var every))
                {
                    ReportTwice(name, location, every);
                    continue;
                }

                foreach (var copy in item.Items.Select(i => i.Value).Distinct())
                {
                    var key = (copy, name.ToUpperInvariant());
                    if (!onCopies.TryAdd(key, location) && onCopies[key] != location)
                    {
                        ReportTwice(name, location, onCopies[key]);
                    }
                }
            }
        }
    }

    /// <summary>Whether a name is that of one of a number of mats: the innermost is <c>mat</c>, the next <c>mat2</c>.</summary>
    public static bool IsMat(string name, int mats) =>
        name.StartsWith("mat", StringComparison.OrdinalIgnoreCase)
        && int.TryParse(name.AsSpan(3), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        && number >= 2 && number <= mats && name[3] != '0';

    private void ReportTwice(string name, Location later, Location first)
    {
        var file = ReferenceEquals(first.Source, later.Source) ? "" : $" of {first.Source.Path}";
        Report(later, $"The name {name} is already taken by line {first.Start.Line}{file}.", name);
    }

    private void Report(Location location, string message, string name)
    {
        if (ReferenceEquals(location.Source, _source) && _reported.Add(location))
        {
            _findings.Add(FindingCatalogue.NameTwice, location, message, $"Give one of them another name, such as {name}2.");
        }
    }
}
