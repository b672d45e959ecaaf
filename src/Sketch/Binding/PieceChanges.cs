using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Binding;

/// <summary>Applies <c>change</c>, <c>leave out</c> and <c>add to</c> to a bound card.</summary>
internal sealed class PieceChanges(PieceBinder pieces, FindingBag findings, SourceText source)
{
    public BoundCard Apply(BoundCard card, LineSyntax line)
    {
        switch (line)
        {
            case ChangeLine change:
                return Edit(card, change.Path, piece => [Change(piece, change, card)]);
            case LeaveOutLine leave:
                pieces.RejectClauses(leave);
                pieces.RejectChildren(leave);
                return Edit(card, leave.Path, _ => []);
            case AddToLine add when add.Path.Names is [var only] && FaceNamed(only.Text) is { } face:
                pieces.RejectClauses(add);
                var more = pieces.ReadAll(add.Children, card.Parts);
                return card.Faces.Any(f => f.Kind == face)
                    ? card with { Faces = [.. card.Faces.Select(f => f.Kind == face ? f with { Pieces = f.Pieces.AddRange(more) } : f)] }
                    : card with { Faces = card.Faces.Add(new(face, more, new(source, add.Span))) };
            case AddToLine add:
                pieces.RejectClauses(add);
                return Edit(card, add.Path, piece => [pieces.WithBlock(piece, add.Children, card.Parts)]);
            default:
                return card;
        }
    }

    private BoundPiece Change(BoundPiece piece, ChangeLine line, BoundCard card)
    {
        var clauses = pieces.ReadClauses(line);
        var changed = line.Head is { } head
            ? piece with
            {
                Kind = head.Kind,
                Shape = head.Shape,
                Count = head.Count?.Value ?? piece.Count,
                Size = head.Size ?? piece.Size,
                Texts = head.Texts.IsEmpty ? piece.Texts : head.Texts,
            }
            : piece with { Size = line.Size ?? piece.Size, Texts = line.Texts.IsEmpty ? piece.Texts : line.Texts };
        var written = line.Head?.Size ?? line.Size;
        changed = changed with
        {
            // A size specified in another way is replaced by the one in the change.
            Size = written is null && clauses.Any(c => c.Clause is ShowingClause { Edge: null }) && IsInNumbers(piece.Size, changed.Kind)
                ? null : changed.Size,
            Clauses = ClauseFamilies.Replace(
                IsInNumbers(written, changed.Kind)
                    ? [.. piece.Clauses.Where(c => c.Clause is not (ShowingClause or SameSizeClause))] : piece.Clauses, clauses),
            IsDamaged = piece.IsDamaged || line.IsDamaged,
            Location = new(source, line.Span),
        };
        changed = pieces.WithoutIdle(line, changed, UnusedClauses.Repeats(changed));
        if (!changed.Mats.IsEmpty && changed.Kind.Traits.IsInkOrHole)
        {
            findings.Add(FindingCatalogue.Misplaced, new(source, line.Span),
                $"A {changed.Kind.Name} cannot keep the mats of the piece it replaces.",
                    $"Leave them out first: leave out {line.Path.Text}/mat.");
        }

        return pieces.WithBlock(changed, line.Children, card.Parts);
    }

    private static bool IsInNumbers(SizeSyntax? size, PieceKind kind) =>
        size is BoxSize { Width: LengthExtent, Height: LengthExtent } || (size is SingleSize && !kind.Traits.IsSizedByThickness);

    private BoundCard Edit(BoundCard card, PathSyntax path, Func<BoundPiece, ImmutableArray<BoundPiece>> edit)
    {
        var names = path.Names;
        var face = names.Length > 1 ? FaceNamed(names[0].Text) : null;
        if (face is not null)
        {
            names = names.RemoveAt(0);
        }

        var faces = card.Faces.Where(f => face is null || f.Kind == face).ToArray();
        var holders = faces.Where(f => f.Pieces.Any(p => IsNamed(p, names[0].Text))).ToArray();
        if (holders.Length == 0 && new PieceSearch(faces).PathTo(names[0].Text) is { } deeper)
        {
            findings.Add(FindingCatalogue.UnknownPiece, new(source, names[0].Span),
                $"No piece directly on a face is called {names[0].Text}.", $"Did you mean {deeper}?", deeper);
            return card;
        }

        if (holders.Length != 1)
        {
            var known = faces.SelectMany(f => f.Pieces).Select(p => p.Name).OfType<string>();
            Fail(holders.Length == 0 ? FindingCatalogue.UnknownPiece : FindingCatalogue.AmbiguousName, names[0],
                holders.Length == 0 ? $"No piece directly on a face is called {names[0].Text}."
                    : $"{names[0].Text} is on {holders.Length} faces.",
                holders.Length == 0 ? HintForUnnamed(faces, names[0].Text)
                    : $"Write the face before it: {Face.NameOf(holders[0].Kind)}/{path.Text}.", known);
            return card;
        }

        var edited = Edit(holders[0].Pieces, names, edit);
        return card with { Faces = [.. card.Faces.Select(f => f.Kind == holders[0].Kind ? f with { Pieces = edited } : f)] };
    }

    private ImmutableArray<BoundPiece> Edit(
        ImmutableArray<BoundPiece> among, ImmutableArray<NameSyntax> names, Func<BoundPiece, ImmutableArray<BoundPiece>> edit)
    {
        var name = names[0];
        var index = 0;
        while (index < among.Length && !IsNamed(among[index], name.Text))
        {
            index++;
        }

        if (index == among.Length)
        {
            Fail(FindingCatalogue.UnknownPiece, name, $"No piece here is called {name.Text}.", null, among.Select(p => p.Name)
                .OfType<string>());
            return among;
        }

        if (names.Length == 1)
        {
            return among.RemoveAt(index).InsertRange(index, edit(among[index]));
        }

        var piece = among[index];
        return names.Length == 2 && MatIndex(piece, names[1].Text) is { } mat
            ? among.SetItem(index, piece with { Mats = piece.Mats.RemoveAt(mat).InsertRange(mat, edit(piece.Mats[mat])) })
            : among.SetItem(index, piece with { Children = Edit(piece.Children, names.RemoveAt(0), edit) });
    }

    /// <summary>What to do where a change names a piece by its kind: only pieces with names can be changed.</summary>
    private static string? HintForUnnamed(IEnumerable<BoundFace> faces, string word) =>
        PieceKinds.Find(word) is { } kind && new PieceSearch(faces).HasUnnamed(kind)
            ? $"Give the {kind.Name} a name in its own file, as in words: {kind.Name}, and write that name here." : null;

    /// <summary><c>mat</c> is the innermost mat, <c>mat2</c> the next, and so on; a mat may also have a name.</summary>
    private static int? MatIndex(BoundPiece piece, string name)
    {
        for (var i = 0; i < piece.Mats.Length; i++)
        {
            if (IsNamed(piece.Mats[i], name) || name.Equals(i == 0 ? "mat" : $"mat{i + 1}", StringComparison.OrdinalIgnoreCase))
            {
                return i;
            }
        }

        return null;
    }

    private void Fail(FindingKind kind, NameSyntax name, string message, string? hint, IEnumerable<string> known)
    {
        var names = known.Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.Ordinal).ToArray();
        var near = hint is null ? Nearest.Find(name.Text, names) : null;
        findings.Add(kind, new(source, name.Span), message,
            hint ?? (near is not null
                ? $"Did you mean {near}?" : names.Length > 0
                ? $"Names here are {string.Join(", ", names.Take(12))}." : "Give the piece a name first, as in sky: panel."), near);
    }

    private static bool IsNamed(BoundPiece piece, string name) => name.Equals(piece.Name, StringComparison.OrdinalIgnoreCase);

    private static FaceKind? FaceNamed(string name)
    {
        foreach (var kind in Enum.GetValues<FaceKind>())
        {
            if (name.Equals(Face.NameOf(kind), StringComparison.OrdinalIgnoreCase))
            {
                return kind;
            }
        }

        return null;
    }
}
