using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>A piece of a laid-out card together with the line that describes it.</summary>
internal sealed class WrittenPiece
{
    private WrittenPiece(LaidOutCard card, Piece piece, FileSyntax file, LineSyntax line)
    {
        (Card, Piece, File, Line) = (card, piece, file, line);
        Rules = new([.. line.Clauses.Select(c => new BoundClause(c, file.Source))]);
        Copies = [.. card.Pieces.Where(p => p.Location == piece.Location && p.Path.Parent == piece.Path.Parent && p.Kind == piece.Kind)];
        Box = Copies.Select(card.WithMats).Aggregate(Rect.Cover);
    }

    public LaidOutCard Card { get; }

    public Piece Piece { get; }

    public FileSyntax File { get; }

    public LineSyntax Line { get; }

    public PieceRules Rules { get; }

    /// <summary>All copies of its line that lie on the same piece; the piece itself if there is one only.</summary>
    public ImmutableArray<Piece> Copies { get; }

    /// <summary>The box of all copies with their mats, which is what a place refers to.</summary>
    public Rect Box { get; }

    public bool IsRepeat => Head?.Count is not null || Rules.Arrange is { Clause.Down: not null };

    public PieceHead? Head => (Line as PieceLine)?.Head;

    public SizeSyntax? Size => Head?.Size;

    /// <summary>The end of what stands before the clauses.</summary>
    public TextSpan HeadEnd
    {
        get
        {
            var clauses = Line.Clauses;
            var tokens = Line.Tokens.Tokens;
            var last = tokens.TakeWhile(t => t.Kind is not (TokenKind.Comma or TokenKind.End)
                && (clauses.IsEmpty || t.Span.Start < clauses[0].Span.Start)).Last();
            return last.Span;
        }
    }

    /// <summary>The piece that a layer belongs to: a mat or shadow lies beneath it.</summary>
    public static Piece Owner(LaidOutCard card, Piece piece)
    {
        var owner = piece;
        while (owner.Kind.Traits.IsLayer && card.Pieces.FirstOrDefault(p => p.Path == owner.Path.Parent) is { } above)
        {
            owner = above;
        }

        return owner;
    }

    /// <summary>The piece with the line that describes it; a problem says why it cannot be changed here.</summary>
    public static Result<WrittenPiece> Find(LaidOutCard card, SourceText source, Piece piece)
    {
        if (piece.Location.Source != source)
        {
            return new Failure($"This piece comes from {Path.GetFileName(piece.Location.Source.Path)}. Open that file to change it.");
        }

        var file = Parser.Parse(source, new FindingBag());
        return CardOutline.Within(file.Lines).FirstOrDefault(l => l.Span == piece.Location.Span && l is PieceLine or UseLine) is { } line
            ? Result.Of(new WrittenPiece(card, piece, file, line))
            : new Failure("This piece has no line of its own in the text.");
    }

    /// <summary>What its distances are measured from: the piece below, the face, or the piece that it names.</summary>
    public Rect? Reference
    {
        get
        {
            if (Rules.MeasuredFrom is { } from)
            {
                return Named(from.Clause.From)?.Box;
            }

            var size = Card.SizeOf(Piece.Face);
            return Piece.Path.Parent is not { } parent ? new Rect(Length.Zero, Length.Zero, size.Width, size.Height)
                : Card.Pieces.FirstOrDefault(p => p.Path == parent)?.Box;
        }
    }

    /// <summary>The piece that a path names: the nearest of that name, going outwards.</summary>
    private Piece? Named(PathSyntax path)
    {
        var names = path.Names.Select(n => n.Text).ToArray();
        var found = Card.Pieces.Where(p => p.Path.Names.Length >= names.Length
            && p.Path.Names[^names.Length..].SequenceEqual(names, StringComparer.OrdinalIgnoreCase)).ToArray();
        for (var at = Piece.Path.Parent; ; at = at.Parent)
        {
            if (found.FirstOrDefault(p => p.Face == Piece.Face && p.Path.Parent == at) is { } near)
            {
                return near;
            }

            if (at is null)
            {
                return found is [var only] ? only : null;
            }
        }
    }
}
