using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Layout;

/// <summary>
/// Finds the piece that a name means: among siblings, then outwards, then on the face if it occurs there once; else by a path.
/// </summary>
internal sealed class NameLookup(ImmutableArray<FaceScope> faces, IReadOnlySet<string> brokenNames, FindingBag findings)
{
    private readonly HashSet<(SourceText, TextSpan)> _reported = [];
    private readonly Dictionary<List<CopySet>, Dictionary<string, CopySet>> _named = [];

    /// <summary>The set of copies that a path means for a piece, or null, which is reported once.</summary>
    public CopySet? Find(CopySet from, PathSyntax path, SourceText source)
    {
        var first = path.Names[0];
        List<CopySet>? among = null;
        if (path.Names.Length > 1
            && faces.FirstOrDefault(f => Face.NameOf(f.Kind).Equals(first.Text, StringComparison.OrdinalIgnoreCase)) is { } face)
        {
            among = face.Units;
        }

        var set = among is null ? FindFirst(from, first, source) : null;
        foreach (var name in path.Names.Skip(1))
        {
            among ??= set?.Copies.FirstOrDefault()?.Children;
            if (among is null)
            {
                return null;
            }

            set = Named(among).GetValueOrDefault(name.Text);
            if (set is null)
            {
                Report(FindingCatalogue.UnknownPiece, source, name, $"There is no {name.Text} in {path.Text}.", among);
                return null;
            }

            among = null;
        }

        return set;
    }

    private CopySet? FindFirst(CopySet from, NameSyntax name, SourceText source)
    {
        for (var set = from; set is not null; set = set.Parent?.Set)
        {
            if (Named(set.Siblings).TryGetValue(name.Text, out var sibling) && sibling != from)
            {
                return sibling;
            }
        }

        var found = from.Face.ByName.GetValueOrDefault(name.Text) ?? [];
        if (found.Count == 1 && found[0] != from)
        {
            return found[0];
        }

        if (found.Count > 1)
        {
            Report(FindingCatalogue.AmbiguousName, source, name, $"{found.Count} pieces of this face are called {name.Text}.", [],
                $"Write a path, such as {PathOf(found[0])}.");
            return null;
        }

        var elsewhere = faces.SelectMany(f => f.ByName.GetValueOrDefault(name.Text) ?? []).FirstOrDefault(u => u != from);
        Report(FindingCatalogue.UnknownPiece, source, name, $"There is no piece called {name.Text} on this face.",
            [.. from.Face.ByName.Values.Select(v => v[0])],
            elsewhere is null ? null : $"Write {PathOf(elsewhere)}.", elsewhere is not null && CanBeWritten(elsewhere)
                ? PathOf(elsewhere) : null);
        return null;
    }

    /// <summary>Whether the path of a piece can be written: every piece that it lies on has a name and occurs once.</summary>
    private static bool CanBeWritten(CopySet set)
    {
        for (var on = set.Parent?.Set; on is not null; on = on.Parent?.Set)
        {
            if (on.Bound.Name is null || on.IsRepeat)
            {
                return false;
            }
        }

        return !set.IsRepeat;
    }

    private static string PathOf(CopySet set) => set.Copies is [var first, ..] ? first.Path.ToString()
        : Face.NameOf(set.Face.Kind) + "/" + set.Key;

    /// <summary>The named siblings of a list; each list is searched once.</summary>
    private Dictionary<string, CopySet> Named(List<CopySet> siblings)
    {
        if (!_named.TryGetValue(siblings, out var named))
        {
            _named[siblings] = named = new(StringComparer.OrdinalIgnoreCase);
            foreach (var set in siblings)
            {
                if (set.Bound.Name is { } name)
                {
                    named.TryAdd(name, set);
                }
            }
        }

        return named;
    }

    private void Report(FindingKind kind, SourceText source, NameSyntax name, string message, IReadOnlyCollection<CopySet> among,
        string? hint = null, string? replacement = null)
    {
        if (brokenNames.Contains(name.Text) || !_reported.Add((source, name.Span)))
        {
            return;
        }

        var names = among.Select(u => u.Bound.Name).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase)
            .Order(StringComparer.Ordinal).ToArray();
        var near = hint is null ? Nearest.Find(name.Text, names) : null;
        findings.Add(kind, new(source, name.Span), message,
            hint ?? (near is not null
                ? $"Did you mean {near}?" : names.Length > 0
                ? $"Names here are {string.Join(", ", names.Take(12))}." : "Name a piece first, as in sky: panel."),
            replacement ?? near);
    }
}
