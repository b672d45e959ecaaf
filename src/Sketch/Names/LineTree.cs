using System.Collections.Immutable;
using Sketch.Syntax;

namespace Sketch.Names;

/// <summary>A line with the line it is indented under.</summary>
/// <param name="line">The line.</param>
/// <param name="above">The line under which it is indented; null for none.</param>
internal sealed class TreeLine(LineSyntax line, TreeLine? above)
{
    /// <summary>The line.</summary>
    public LineSyntax Line => line;

    /// <summary>The line under which it is indented; null for none.</summary>
    public TreeLine? Above => above;

    /// <summary>The name that it gives its piece, or null.</summary>
    public string? Name => Line switch
    {
        PieceLine piece => piece.Name?.Text,
        UseLine use => use.Name?.Text,
        BadLine bad => bad.Name?.Text,
        _ => null,
    };

    /// <summary>The line without indentation that it is below, or is.</summary>
    public TreeLine Outermost => Above?.Outermost ?? this;
}

/// <summary>The lines of a file. Paths of pieces are followed as the layout does: among siblings, outwards, then on the face.</summary>
internal sealed class LineTree
{
    private readonly Dictionary<LineSyntax, ImmutableArray<TreeLine>> _below = new(ReferenceEqualityComparer.Instance);
    private readonly ILookup<string, TreeLine> _named;

    private LineTree(FileSyntax file)
    {
        Top = [.. file.Lines.Select(l => new TreeLine(l, null))];
        All = [.. Within(Top)];
        _named = All.Where(l => l.Name is not null).ToLookup(l => l.Name!, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>All lines in the order of the file.</summary>
    public ImmutableArray<TreeLine> All { get; }

    private ImmutableArray<TreeLine> Top { get; }

    /// <summary>Reads the lines of a file.</summary>
    public static LineTree Of(FileSyntax file) => new(file);

    /// <summary>The pieces that the names of a path name, as far as this file declares them.</summary>
    public IEnumerable<(NameSyntax Name, TreeLine Named)> Follow(TreeLine from, PathSyntax path)
    {
        var (names, at) = (path.Names, (TreeLine?)null);
        if (names.Length > 1 && Top.FirstOrDefault(l => l.Line is FaceLine face && Is(face.Face, names[0])) is { } onFace)
        {
            (names, at) = (names.RemoveAt(0), onFace);
        }

        foreach (var name in names)
        {
            at = at is null ? First(from, name) : Below(at).FirstOrDefault(l => l.Name is { } own && Is(own, name));
            if (at is null)
            {
                yield break;
            }

            yield return (name, at);
        }
    }

    private TreeLine? First(TreeLine from, NameSyntax name)
    {
        for (var line = from; line is not null; line = line.Above)
        {
            var siblings = line.Above is { } above ? Below(above) : Top;
            if (siblings.FirstOrDefault(l => l != line && l.Name is { } own && Is(own, name)) is { } sibling)
            {
                return sibling;
            }
        }

        // A piece in a part, or in a change of another card, may name one of any face.
        var named = _named[name.Text].ToList();
        var onFace = named.Where(l => l.Outermost == from.Outermost).ToList();
        return onFace.Count == 1 ? onFace[0] : named.Count == 1 && from.Outermost.Line is not FaceLine ? named[0] : null;
    }

    /// <summary>What lies on a line: for the use of a part also what lies on that.</summary>
    private IEnumerable<TreeLine> Below(TreeLine line) => line.Line is UseLine use
        && Top.FirstOrDefault(l => l.Line is PartLine part && Is(part.Name.Text, use.Part)) is { } used
        ? _below[line.Line].Concat(_below[used.Line]) : _below[line.Line];

    private static bool Is(string own, NameSyntax name) => own.Equals(name.Text, StringComparison.OrdinalIgnoreCase);

    private IEnumerable<TreeLine> Within(IEnumerable<TreeLine> lines)
    {
        foreach (var line in lines)
        {
            yield return line;
            _below[line.Line] = [.. line.Line.Children.Select(c => new TreeLine(c, line))];
            foreach (var below in Within(_below[line.Line]))
            {
                yield return below;
            }
        }
    }
}
