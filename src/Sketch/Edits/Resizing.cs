using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Edits;

/// <summary>Writes another size of a piece, or says what gives its size.</summary>
internal static class Resizing
{
    /// <summary>The offer to give a piece a size of its own in place of what gives it now.</summary>
    public static Offer LetsGo(WrittenPiece piece, Length? width, Length? height) => new(
        width is not null && height is not null ? "Give it a size of its own"
            : width is not null ? "Give it a width of its own" : "Give it a height of its own",
        piece.Piece.Path, new SizeChange(width, height) { LetsGo = true });

    /// <summary>Why its size cannot be changed in a direction as it is written; null when it can.</summary>
    public static Refusal? RefusalOn(WrittenPiece piece, Axis axis)
    {
        var refusals = new List<Refusal>();
        var own = axis == Axis.Across ? piece.Piece.Box.Width : piece.Piece.Box.Height;
        var step = piece.Card.Units.Format().Step;
        var line = new LineEditing(piece.File.Source, piece.Line, piece.Card.Units);
        Write(piece, axis == Axis.Across ? new(own + step, null) : new(null, own + step), line, refusals);
        return refusals.FirstOrDefault();
    }

    /// <summary>Adds the changes that resize a piece to the changes of its line.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="change">Its new size.</param>
    /// <param name="line">Receives the changes.</param>
    /// <param name="refusals">Receives what cannot be done.</param>
    public static void Write(WrittenPiece piece, SizeChange change, LineEditing line, List<Refusal> refusals)
    {
        var own = piece.Piece.Box.Size;
        if (new[] { change.Width, change.Height }.Any(l => l is { } length && length <= Length.Zero))
        {
            refusals.Add(new("A piece cannot be that small.", null));
            return;
        }

        var changes = change with
        {
            Width = change.Width == own.Width && !change.LetsGo ? null : change.Width,
            Height = change.Height == own.Height && !change.LetsGo ? null : change.Height
        };
        if (changes is { Width: null, Height: null })
        {
            return;
        }

        switch (piece.Size)
        {
            case BoxSize box:
                Box(piece, box, changes, line, refusals);
                break;
            case SingleSize single:
                Single(piece, single, changes, line, refusals);
                break;
            case AddedSize:
                refusals.Add(new("Its size follows from its piece and its border.", null));
                return;
            default:
                Unwritten(piece, changes, line, refusals);
                break;
        }

        if (refusals.Count == 0)
        {
            Hold(piece, changes, line, refusals);
        }
    }

    /// <summary>Moves the piece so that the edge opposite to the one that was pulled stays where it is.</summary>
    private static void Hold(WrittenPiece piece, SizeChange change, LineEditing line, List<Refusal> refusals)
    {
        var own = piece.Piece.Box.Size;
        var move = new MoveChange(
            On(Axis.Across, change.Held.Across, (change.Width ?? own.Width) - own.Width),
            On(Axis.Down, change.Held.Down, (change.Height ?? own.Height) - own.Height));
        Moving.Write(piece, move, line, refusals);

        Length On(Axis axis, Edge? held, Length grown) =>
            held is not { } edge || Moving.HeldEdge(piece, axis) is not { } written || written == edge ? Length.Zero
                : written == axis.Edges().Low ? -grown : grown;
    }

    private static void Box(WrittenPiece piece, BoxSize box, SizeChange change, LineEditing line, List<Refusal> refusals)
    {
        if (change.Width is { } width)
        {
            // A unit after the height holds for the width too.
            Extent(piece, box.Width, width, Axis.Across, change.LetsGo, line.UnitIn(box.Height.Span), line, refusals);
        }

        if (change.Height is { } height)
        {
            Extent(piece, box.Height, height, Axis.Down, change.LetsGo, null, line, refusals);
        }
    }

    private static void Extent(
        WrittenPiece piece, ExtentSyntax extent, Length length, Axis axis, bool letsGo, Unit? shared, LineEditing line,
        List<Refusal> refusals)
    {
        if (extent is LengthExtent)
        {
            line.SetNumber(extent.Span, length, "", shared is Unit.Millimetre or Unit.Centimetre ? shared : null);
            return;
        }

        if (letsGo)
        {
            line.Replace(extent.Span, line.Written(length));
            return;
        }

        var (measure, from) = axis == Axis.Across ? ("wide", "width") : ("high", "height");
        refusals.Add(new(extent switch
        {
            FitExtent => $"It is as {measure} as its words need.",
            ShareExtent share => $"It takes {share.Numerator}/{share.Denominator} of the {from} of what it lies on.",
            _ => $"It is as {measure} as what it lies on.",
        }, LetsGo(piece, axis == Axis.Across ? length : null, axis == Axis.Across ? null : length)));
    }

    /// <summary>One number: the width or height of what has proportions, the thickness of what is cut to length.</summary>
    private static void Single(WrittenPiece piece, SingleSize single, SizeChange change, LineEditing line, List<Refusal> refusals)
    {
        var (own, kind) = (piece.Piece.Box.Size, piece.Head!.Kind);
        if (kind.Traits is { IsCutToLength: true, IsSizedByThickness: true } && piece.Rules.Along is { Clause.Edge: var edge })
        {
            var isThick = edge.Axis() == Axis.Across;
            if ((isThick ? change.Width : change.Height) is { } thickness)
            {
                line.SetNumber(single.Span, thickness, "");
            }

            if ((isThick ? change.Height : change.Width) is not null)
            {
                refusals.Add(new("It is as long as the edge along which it lies.", null));
            }

            return;
        }

        if (kind == PieceKind.Frame)
        {
            refusals.Add(new("Its size follows from what it lies around; the number is how thick it is.", null));
            return;
        }

        var isHeight = single.Measure == SingleMeasure.High;
        var written = isHeight
            ? change.Height ?? InProportion(piece, change.Width!.Value, own.Height, own.Width)
            : change.Width ?? InProportion(piece, change.Height!.Value, own.Width, own.Height);
        line.SetNumber(single.Span, written, "");
    }

    /// <summary>A measure scaled as another one is, on a mark of the ruler and at least one step.</summary>
    private static Length InProportion(WrittenPiece piece, Length wanted, Length measure, Length other) =>
        other == Length.Zero ? wanted
            : Length.Max(piece.Card.Units.Format().Step, Moving.OnMark(piece, measure.Scale(wanted.Nanometres, other.Nanometres)));

    private static void Unwritten(WrittenPiece piece, SizeChange change, LineEditing line, List<Refusal> refusals)
    {
        if (piece.Line is UseLine use)
        {
            refusals.Add(new($"Its size is that of the part {use.Part.Text}.", null));
            return;
        }

        if (piece.IsRepeat && !change.LetsGo)
        {
            refusals.Add(new("Its copies share the room equally.", null));
            return;
        }

        if (!change.LetsGo)
        {
            var (reason, offer) = Reason(piece, change);
            refusals.Add(new(reason, offer));
            return;
        }

        GiveSize(piece, change, line);
    }

    /// <summary>What gives the size of a piece without one, and what to do instead.</summary>
    private static (string Reason, Offer? Offer) Reason(WrittenPiece piece, SizeChange change)
    {
        var own = piece.Piece.Box.Size;
        var letGo = LetsGo(piece, change.Width ?? own.Width, change.Height ?? own.Height);
        if (piece.Rules.SameSize is { } same)
        {
            return ($"It has the same size as {same.Clause.As.Text}.", letGo);
        }

        if (piece.Rules.Showing is not null)
        {
            return ("Its size follows from what shows round it.", letGo);
        }

        if (piece.Card.MatsOf(piece.Piece).FirstOrDefault(m => m.Sizing is not (Sizing.Follows, Sizing.Follows)) is { } mat)
        {
            var size = new SizeChange(
                change.Width is { } w ? mat.Box.Width + w - own.Width : null,
                change.Height is { } h ? mat.Box.Height + h - own.Height : null);
            return ("Its size follows from its mat.", new("Change the size of its mat", mat.Path, size));
        }

        if (piece.Rules.Around is not null)
        {
            return ("Its size follows from what it lies around.", null);
        }

        return piece.Head!.Kind.Traits.IsWords ? ("Its size follows from its letters.", letGo)
            : ("Its size follows from other pieces.", letGo);
    }

    /// <summary>Writes a size in place of the clauses that gave it, and the place that they gave.</summary>
    private static void GiveSize(WrittenPiece piece, SizeChange change, LineEditing line)
    {
        var (own, head) = (piece.Piece.Box.Size, piece.Head!);
        var (width, height) = (change.Width ?? own.Width, change.Height ?? own.Height);
        var size = head.Kind.Traits.IsSizedByOneNumber || head.Shape is { Traits.IsSizedByOneNumber: true }
            ? line.Written(width) + (head.Kind.Traits.IsWords || head.Kind.Traits.IsDrawing ? " wide" : "")
            : $"{line.Written(width)} x {line.Written(height)}";
        line.Add(head.Kind.Traits.TakesShape && head.Shape is not null ? ShapeSpan(piece) : head.KindSpan, " " + size);
        foreach (var clause in piece.Line.Clauses.Where(c => c is ShowingClause or SameSizeClause
            || (head.Kind.Traits.IsWords && c is MeasureClause { Word: "letters" })))
        {
            line.Remove(clause);
        }

        if (piece.Rules.Showing is not null && piece.Reference is { } reference)
        {
            KeepPlace(piece, Axis.Across, piece.Box.Left - reference.Left, reference.Right - piece.Box.Right, line);
            KeepPlace(piece, Axis.Down, piece.Box.Top - reference.Top, reference.Bottom - piece.Box.Bottom, line);
        }
    }

    /// <summary>What shows unevenly becomes a distance; what shows evenly is centred without one.</summary>
    private static void KeepPlace(WrittenPiece piece, Axis axis, Length before, Length after, LineEditing line)
    {
        if (piece.Rules.ShowsOn(axis) && (before - after).Abs() > LengthFormat.Crumb
            && piece.Rules.DistanceFrom(axis.Edges().Low) is null && piece.Rules.DistanceFrom(axis.Edges().High) is null)
        {
            line.AddClause(piece.HeadEnd, $"{axis.Edges().Low.Name()} {line.Written(before)}");
        }
    }

    private static TextSpan ShapeSpan(WrittenPiece piece) =>
        piece.Line.Tokens.Tokens.First(t => t.Span.Start >= piece.Head!.KindSpan.End).Span;
}
