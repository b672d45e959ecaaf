using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Binding;

/// <summary>Binds piece lines with their mats, items and children.</summary>
internal sealed class PieceBinder(SourceText source, FindingBag findings)
{
    /// <summary>Names given in lines that could not be read; references to them are not reported.</summary>
    public HashSet<string> BrokenNames { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The pieces of a block of lines. Parts must be defined above their use, so their expansion is finite.</summary>
    public ImmutableArray<BoundPiece> ReadAll(ImmutableArray<LineSyntax> lines, ImmutableDictionary<string, BoundPart> parts)
    {
        var pieces = ImmutableArray.CreateBuilder<BoundPiece>();
        foreach (var line in lines)
        {
            var piece = line switch
            {
                PieceLine { Head.Kind: PieceKind.Mat } =>
                    Misplaced(line, "A mat needs a piece to lie under.", "Indent it under its piece."),
                PieceLine { Head.Count: { IsCorrected: true } } p => ReadUncounted(p, parts),
                PieceLine p => ReadPiece(p, parts),
                UseLine use => ReadUse(use, parts),
                BadLine bad => Damaged(bad),
                ItemLine => Misplaced(line, "An item line changes a copy, but there are no copies above it.",
                    "Indent it under a line with a count, such as 3 gem 1/8."),
                FontLine => Misplaced(line, "This line cannot lie on a face or piece.",
                    "Write it on the line of the piece, after a comma, or below the title for the whole card."),
                _ => Misplaced(line, "This line cannot lie on a face or piece.", "Only pieces go here: panel, strip, star, text …"),
            };
            var broken = line switch
            {
                BadLine bad => bad.Name,
                PieceLine { Head.Count: { IsCorrected: true } } uncounted => uncounted.Name,
                _ => null,
            };
            if (broken is not null)
            {
                BrokenNames.Add(broken.Text);
            }

            if (piece is not null)
            {
                pieces.Add(piece);
            }
        }

        return pieces.ToImmutable();
    }

    private BoundPiece ReadPiece(PieceLine line, ImmutableDictionary<string, BoundPart> parts)
    {
        var bound = FromHead(line.Head, line) with { Name = line.Name?.Text };
        return WithBlock(WithoutIdle(line, bound, UnusedClauses.Repeats(bound)), line.Children, parts);
    }

    /// <summary>A piece from a head and clauses, without its name and block.</summary>
    private BoundPiece FromHead(PieceHead head, LineSyntax line) => new()
    {
        Count = head.Count?.Value,
        Kind = head.Kind,
        Shape = head.Shape,
        Size = head.Size,
        Texts = head.Texts,
        Clauses = ReadClauses(line),
        IsDamaged = line.IsDamaged,
        Location = At(line.Span),
    };

    /// <summary>A piece whose line is damaged beyond its name, kept so that references to it are not reported needlessly.</summary>
    private BoundPiece? Damaged(LineSyntax line) => line.Tokens.Tokens is [{ Kind: TokenKind.Word } name, { Kind: TokenKind.Colon }, ..]
        ? new() { Name = name.Text, Kind = PieceKind.Group, IsDamaged = true, Location = At(line.Span) }
        : null;

    /// <summary>A line with a count out of range is read for its other mistakes, but no copy of it is laid out.</summary>
    private BoundPiece? ReadUncounted(PieceLine line, ImmutableDictionary<string, BoundPart> parts)
    {
        ReadPiece(line, parts);
        return Damaged(line);
    }

    public ImmutableArray<BoundClause> ReadClauses(LineSyntax line)
    {
        var seen = new Dictionary<string, Clause>();
        foreach (var clause in line.Clauses)
        {
            foreach (var family in ClauseFamilies.Of(clause))
            {
                if (!seen.TryAdd(family, clause))
                {
                    var text = source.Content[seen[family].Span.Start..seen[family].Span.End];
                    findings.Add(FindingCatalogue.GivenTwice, At(clause.Span),
                        $"This line already gives '{text}'.", "Keep one of the two.");
                }
            }
        }

        return [.. line.Clauses.Select(c => new BoundClause(c, source))];
    }

    /// <summary>Reports a clause that has no effect on something other than a piece.</summary>
    public void ReportUnused(Clause clause, string what, string hint) =>
        findings.Add(FindingCatalogue.IdleClause, At(clause.Span), $"This clause has no effect on {what}.", hint);

    public void RejectChildren(LineSyntax line)
    {
        foreach (var child in line.Children.Where(c => c is not BadLine))
        {
            findings.Add(FindingCatalogue.Misplaced, At(child.Span), "Nothing can lie on the line above.", "Remove the indentation.");
        }
    }

    public void RejectClauses(LineSyntax line)
    {
        foreach (var clause in line.Clauses)
        {
            findings.Add(FindingCatalogue.IdleClause, At(clause.Span), "This clause has no effect on this line.", "Remove it.");
        }
    }

    private BoundPiece? ReadUse(UseLine line, ImmutableDictionary<string, BoundPart> parts)
    {
        if (!parts.TryGetValue(line.Part.Text, out var part))
        {
            var near = Nearest.Find(line.Part.Text, parts.Keys.Order(StringComparer.Ordinal));
            findings.Add(FindingCatalogue.UnknownPart, At(line.Part.Span), $"There is no part called {line.Part.Text} above this line.",
                near is null ? $"Define it above the faces: part {line.Part.Text} 1 x 2, with its pieces indented below."
                    : $"Did you mean {near}?", near);
            return null;
        }

        var bound = new BoundPiece
        {
            Name = line.Name?.Text,
            Kind = PieceKind.Group,
            Size = part.Size,
            IsUse = true,
            IsDamaged = line.IsDamaged,
            Clauses = ReadClauses(line),
            Children = part.Pieces,
            Location = At(line.Span),
        };
        return WithBlock(WithoutIdle(line, bound, repeats: false), line.Children, parts);
    }

    /// <summary>
    /// Reports the clauses of a line that have no effect on its piece, and removes them, so that they cause no other findings.
    /// </summary>
    public BoundPiece WithoutIdle(LineSyntax line, BoundPiece piece, bool repeats) => piece with
    {
        Clauses = WithoutIdle(line, piece.Clauses, clause => UnusedClauses.HintFor(clause, piece, repeats), piece.IsUse
            ? "part" : piece.Kind.Name),
    };

    private ImmutableArray<BoundClause> WithoutIdle(
        LineSyntax line, ImmutableArray<BoundClause> clauses, Func<Clause, string?> hintFor, string what)
    {
        var idle = new HashSet<Clause>(ReferenceEqualityComparer.Instance);
        foreach (var clause in line.Clauses)
        {
            if (hintFor(clause) is { } hint)
            {
                idle.Add(clause);
                findings.Add(FindingCatalogue.IdleClause, At(clause.Span),
                    $"'{source.Content[clause.Span.Start..clause.Span.End]}' has no effect on {Article(what)} {what}.", hint);
            }
        }

        return idle.Count == 0 ? clauses : clauses.RemoveAll(c => idle.Contains(c.Clause));
    }

    private static string Article(string word) => word[0] is 'a' or 'e' or 'i' or 'o' or 'u' ? "an" : "a";

    public BoundPiece WithBlock(BoundPiece bound, ImmutableArray<LineSyntax> lines, ImmutableDictionary<string, BoundPart> parts)
    {
        var mats = ImmutableArray.CreateBuilder<BoundPiece>();
        var items = ImmutableArray.CreateBuilder<BoundItem>();
        var rest = ImmutableArray.CreateBuilder<LineSyntax>();
        foreach (var line in lines)
        {
            switch (line)
            {
                case PieceLine { Head.Kind: PieceKind.Mat } mat when !bound.Kind.Traits.TakesMats:
                    findings.Add(FindingCatalogue.Misplaced, At(mat.Span),
                        $"A mat lies under paper, and {Article(bound.Kind.Name)} {bound.Kind.Name} is not paper.",
                        bound.Kind == PieceKind.Window ? "For a border around a window write frame 1/8, around it."
                            : "Put it on a panel, and the mat under the panel.");
                    break;
                case PieceLine { Head.Kind: PieceKind.Mat } mat when bound.Mats.Length + mats.Count >= Limits.Mats:
                    findings.Add(FindingCatalogue.TooManyPieces, At(mat.Span),
                        $"This piece has more than {Limits.Mats} mats; this one is left out.",
                        "Take mats away, or put the piece and some of its mats on a panel.");
                    break;
                case PieceLine { Head.Kind: PieceKind.Mat } mat:
                    mats.Add(ReadMat(mat, UnusedClauses.Repeats(bound)));
                    break;
                case ItemLine item when bound.Count is not null:
                    items.Add(ReadItem(item, bound, parts));
                    break;
                case PieceLine or UseLine when bound.Kind.Traits.IsInkOrHole:
                    findings.Add(FindingCatalogue.Misplaced, At(line.Span), $"Nothing can lie on a {bound.Kind.Name}.",
                        bound.Kind == PieceKind.Window
                            ? "Put it beside the window and place it by the window's name: measured from porthole."
                            : "Put it beside this piece, or both on a panel.");
                    break;
                default:
                    rest.Add(line);
                    break;
            }
        }

        return bound with
        {
            Mats = bound.Mats.AddRange(mats),
            Items = bound.Items.AddRange(items),
            Children = bound.Children.AddRange(ReadAll(rest.ToImmutable(), parts)),
        };
    }

    private BoundPiece ReadMat(PieceLine mat, bool repeats)
    {
        foreach (var child in mat.Children.Where(c => c is not BadLine))
        {
            findings.Add(FindingCatalogue.Misplaced, At(child.Span), "Only its piece lies on a mat.",
                "Put this line under the piece, level with the mat.");
        }

        if (mat.Head.Count is { Value: > 1 } count)
        {
            findings.Add(FindingCatalogue.BadCount, At(count.Span), "Write one mat per line, innermost first.",
                "Write a line for each mat.");
        }

        var bound = FromHead(mat.Head, mat) with { Name = mat.Name?.Text };
        bound = WithoutIdle(mat, bound, repeats);
        if (!bound.Texts.IsEmpty)
        {
            findings.Add(FindingCatalogue.Misplaced, At(bound.Texts[0].Span),
                "A mat is covered by its piece, so its words would be hidden.", "Write the words on the piece.");
        }

        return bound;
    }

    private BoundItem ReadItem(ItemLine item, BoundPiece bound, ImmutableDictionary<string, BoundPart> parts)
    {
        foreach (var index in item.Items.Where(i => i.Value > bound.Count))
        {
            findings.Add(FindingCatalogue.BadCount, At(index.Span), $"There is no item {index.Value}: the line above makes {bound.Count}.",
                $"Write a number from 1 to {bound.Count}.");
        }

        var clauses = WithoutIdle(item, ReadClauses(item), clause => UnusedClauses.HintForCopy(clause, bound), "copy");
        return new(item.Items, item.Size, item.Texts, clauses, ReadAll(item.Children, parts), At(item.Span));
    }

    private BoundPiece? Misplaced(LineSyntax line, string message, string hint)
    {
        findings.Add(FindingCatalogue.Misplaced, At(line.Span), message, hint);
        return null;
    }

    private Location At(TextSpan span) => new(source, span);
}
