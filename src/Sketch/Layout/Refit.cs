using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Layout;

/// <summary>
/// Fits a card that is like another to its own base: written sizes scale by the smaller of the two ratios of the bases, distances by that
/// of what they are measured from, to the nearest sixteenth of an inch (millimetre in metric files). Borders, gaps and the thickness of
/// lines are kept, unless all is refitted.
/// </summary>
internal sealed class Refit
{
    private readonly RefitWhat _what;
    private readonly CardLayout _old;
    private readonly Size _newBase;
    private readonly long _step;
    private readonly UnitSystem _units;
    private readonly Location _location;
    private readonly FindingBag _findings;

    private Refit(CardLayout old, Size newBase, RefitLine line, BoundCard card, FindingBag findings)
    {
        _old = old;
        _newBase = newBase;
        _what = line.What;
        _units = card.Units;
        _step = _units.Format().Step.Nanometres;
        _location = new(card.Location.Source, line.Span);
        _findings = findings;
    }

    /// <summary>The card with the pieces of the other refitted to its own base; unchanged where a base is not known.</summary>
    /// <param name="card">The card, bound but not yet changed.</param>
    /// <param name="other">The card that it is like.</param>
    /// <param name="line">The line that asks for it.</param>
    /// <param name="world">The files and fonts around the card.</param>
    /// <param name="findings">Receives a note for each value that is changed.</param>
    public static BoundCard Apply(BoundCard card, BoundCard other, RefitLine line, IWorld world, FindingBag findings)
    {
        // The mistakes of the other card are reported when that card is checked.
        var quiet = new FindingBag();
        var prepared = CardLayout.Prepare(other, RoleFilling.None, world, quiet);
        var isWhole = quiet.ToImmutable().All(f => f.Kind != FindingCatalogue.TooManyPieces);
        return prepared is { } old && isWhole && card.Base?.Closed is { } newBase
            ? new Refit(old, newBase, line, card, findings).Apply(card, other, world)
            : card;
    }

    private BoundCard Apply(BoundCard card, BoundCard other, IWorld world)
    {
        // A distance follows the new size of what it is measured from, so the outer pieces are refitted before those that lie on them.
        for (var depth = 0; depth <= Limits.Depth; depth++)
        {
            var layout = CardLayout.Prepare(card, RoleFilling.None, world, new FindingBag());
            if (layout is null)
            {
                return card;
            }

            var reached = false;
            card = card with
            {
                Faces =
                [
                    .. card.Faces.Select(face =>
                    {
                        // Only pieces from the other card are refitted; those that this card adds come after them.
                        var count = other.Faces.FirstOrDefault(f => f.Kind == face.Kind)?.Pieces.Length ?? 0;
                        var oldUnits = _old.Faces.FirstOrDefault(f => f.Kind == face.Kind)?.Units ?? [];
                        var newUnits = layout.Faces.FirstOrDefault(f => f.Kind == face.Kind)?.Units ?? [];
                        return face with
                        {
                            Pieces = [.. face.Pieces.Select((p, i) => i < count && i < oldUnits.Count && i < newUnits.Count
                                ? Rewrite(p, oldUnits[i], newUnits[i], layout, depth, ref reached) : p)],
                        };
                    }),
                ],
            };
            if (!reached)
            {
                break;
            }
        }

        return card;
    }

    private BoundPiece Rewrite(BoundPiece bound, CopySet old, CopySet now, CardLayout layout, int depth, ref bool reached)
    {
        if (depth == 0)
        {
            reached = true;
            return RewriteOne(bound, old, now, layout);
        }

        if (old.Copies is not [var oldNode, ..] || now.Copies is not [var nowNode, ..])
        {
            return bound;
        }

        var children = ImmutableArray.CreateBuilder<BoundPiece>(bound.Children.Length);
        for (var i = 0; i < bound.Children.Length; i++)
        {
            children.Add(i < oldNode.Children.Count && i < nowNode.Children.Count
                ? Rewrite(bound.Children[i], oldNode.Children[i], nowNode.Children[i], layout, depth - 1, ref reached)
                : bound.Children[i]);
        }

        return bound with { Children = children.ToImmutable() };
    }

    private BoundPiece RewriteOne(BoundPiece bound, CopySet old, CopySet now, CardLayout layout)
    {
        var clauses = bound.Clauses.SelectMany(c => RewriteClause(c, old, now, layout)).ToImmutableArray();
        var size = _what == RefitWhat.Margins ? bound.Size : Scaled(bound, bound.Size);
        var mats = bound.Mats.Select((m, i) => RewriteMat(bound, m, i, old)).ToImmutableArray();
        var rewritten = bound with { Size = size, Clauses = clauses, Mats = mats };
        Report(bound, rewritten);
        return rewritten;
    }

    /// <summary>In a stack only the innermost written size is refitted; the other layers keep their borders.</summary>
    private BoundPiece RewriteMat(BoundPiece piece, BoundPiece mat, int index, CopySet old)
    {
        if (_what == RefitWhat.Margins)
        {
            return mat;
        }

        var innerWritten = piece.Size is not null || piece.Mats.Take(index).Any(m => m.Size is BoxSize or SingleSize);
        if (mat.Size is BoxSize or SingleSize && !innerWritten)
        {
            return mat with { Size = Scaled(mat, mat.Size) };
        }

        if (mat.Size is BoxSize or SingleSize && old.Copies is [var node, ..]
            && _old.Sizes.Of(node, Axis.Across) is { } across && _old.Sizes.Of(node, Axis.Down) is { } down)
        {
            var span = mat.Size.Span;
            return mat with
            {
                Size = new AddedSize(across.Low[index + 1] + across.High[index + 1], down.Low[index + 1] + down.High[index + 1], span),
            };
        }

        return _what != RefitWhat.All ? mat : mat with
        {
            Size = mat.Size is AddedSize added ? new AddedSize(BySmaller(added.Across), BySmaller(added.Down), added.Span) : mat.Size,
            Clauses = [.. mat.Clauses.Select(c => c with { Clause = WithBorders(c.Clause) })],
        };
    }

    /// <summary>
    /// What <c>refit all</c> changes besides sizes and distances: the border of a mat or sentiment, and the fall of a shadow.
    /// </summary>
    private Clause WithBorders(Clause clause) => clause switch
    {
        BorderClause border => border with { Amount = BySmaller(border.Amount) },
        ShadowClause shadow => shadow with { Fall = BySmaller(shadow.Fall) },
        StitchedClause stitched => stitched with { Distance = BySmaller(stitched.Distance) },
        EdgeCutClause { Depth: { } depth } cut => cut with { Depth = BySmaller(depth) },
        _ => clause,
    };

    private SizeSyntax? Scaled(BoundPiece bound, SizeSyntax? size) => size switch
    {
        BoxSize box => new BoxSize(Scaled(box.Width), Scaled(box.Height), box.Span),
        SingleSize single when !bound.Kind.Traits.IsSizedByThickness => single with { Value = BySmaller(single.Value) },
        _ => size,
    };

    private ExtentSyntax Scaled(ExtentSyntax extent) =>
        extent is LengthExtent length ? length with { Value = BySmaller(length.Value) } : extent;

    private IEnumerable<BoundClause> RewriteClause(BoundClause clause, CopySet old, CopySet now, CardLayout layout)
    {
        switch (clause.Clause)
        {
            case EdgeClause edge:
                yield return clause with { Clause = edge with { Distance = ByParent(edge.Distance, old, now, layout, edge.Edge.Axis()) } };
                break;
            case CornerClause corner:
                yield return clause with
                {
                    Clause = new EdgeClause(
                    corner.Horizontal, ByParent(corner.Distance, old, now, layout, Axis.Across), corner.Span)
                };
                yield return clause with
                {
                    Clause = new EdgeClause(
                    corner.Vertical, ByParent(corner.Distance, old, now, layout, Axis.Down), corner.Span)
                };
                break;
            case ShowingClause { Edge: { } side } showing:
                yield return clause with { Clause = showing with { Amount = ByParent(showing.Amount, old, now, layout, side.Axis()) } };
                break;
            case ShowingClause showing:
                // What shows equally on all sides stays equal, so the smaller ratio counts.
                yield return clause with
                {
                    Clause = showing with
                    {
                        Amount = Length.Min(ByParent(showing.Amount, old, now, layout, Axis.Across),
                            ByParent(showing.Amount, old, now, layout, Axis.Down)),
                    },
                };
                break;
            case BesideClause beside:
                yield return clause with
                {
                    Clause = beside with
                    {
                        Distance = ByParent(
                    beside.Distance, old, now, layout, beside.Side.Axis())
                    }
                };
                break;
            case ShiftClause shift:
                yield return clause with
                {
                    Clause = shift with
                    {
                        Distance = ByParent(
                    shift.Distance, old, now, layout, shift.Direction.Axis())
                    }
                };
                break;
            case MeasureClause { Word: "letters" } letters when _what != RefitWhat.Margins:
                yield return clause with { Clause = letters with { Amount = BySmaller(letters.Amount) } };
                break;
            case OnCircleClause circle when _what != RefitWhat.Margins:
                yield return clause with { Clause = circle with { Diameter = BySmaller(circle.Diameter) } };
                break;
            case ScoredClause scored when _what != RefitWhat.Margins:
                yield return clause with { Clause = scored with { Distance = BySmaller(scored.Distance) } };
                break;
            case BorderClause or ShadowClause or StitchedClause or EdgeCutClause { Depth: not null } when _what == RefitWhat.All:
                yield return clause with { Clause = WithBorders(clause.Clause) };
                break;
            default:
                yield return clause;
                break;
        }
    }

    private Length BySmaller(Length length)
    {
        var old = _old.Closed;
        // a/b < c/d without fractions
        var acrossIsSmaller = (Int128)_newBase.Width.Nanometres * old.Height.Nanometres
            <= (Int128)_newBase.Height.Nanometres * old.Width.Nanometres;
        var scaled = acrossIsSmaller
            ? length.Scale(_newBase.Width.Nanometres, old.Width.Nanometres)
            : length.Scale(_newBase.Height.Nanometres, old.Height.Nanometres);
        return length == Length.Zero ? length : Length.Max(new(_step), ToStep(scaled));
    }

    private Length ByParent(Length distance, CopySet old, CopySet now, CardLayout layout, Axis axis) =>
        _old.Sizes.ReferenceSize(old, axis) is { } before && layout.Sizes.ReferenceSize(now, axis) is { } after && before != Length.Zero
            ? ToStep(distance.Scale(after.Nanometres, before.Nanometres))
            : distance;

    /// <summary>To the nearest mark, halves away from zero.</summary>
    private Length ToStep(Length length)
    {
        var half = length.Nanometres < 0 ? -_step / 2 : _step / 2;
        return new((length.Nanometres + half) / _step * _step);
    }

    private void Report(BoundPiece before, BoundPiece after)
    {
        var changes = new List<string>();
        if (!Equals(before.Size, after.Size))
        {
            changes.Add($"size {Spell(before.Size)} to {Spell(after.Size)}");
        }

        var old = before.Clauses.SelectMany(c => Distances(c.Clause)).DistinctBy(d => d.What).ToDictionary(d => d.What, d => d.Value);
        changes.AddRange(after.Clauses.SelectMany(c => Distances(c.Clause))
            .Where(d => old.TryGetValue(d.What, out var was) && was != d.Value)
            .Select(d => $"{d.What} {Text(old[d.What])} to {Text(d.Value)}"));
        if (changes.Count > 0)
        {
            var called = before.Name ?? $"{before.Kind.Name} (line {before.Location.Start.Line} of {before.Location.Source.Path})";
            _findings.Add(FindingCatalogue.Refitted, _location, $"{called}: {string.Join(", ", changes)}.",
                "To use another value, add a change line.");
        }
    }

    private static IEnumerable<(string What, Length Value)> Distances(Clause clause) => clause switch
    {
        EdgeClause e => [(e.Edge.Name(), e.Distance)],
        CornerClause c => [(c.Horizontal.Name(), c.Distance), (c.Vertical.Name(), c.Distance)],
        ShowingClause s => [(s.Edge is { } side ? "showing " + side.Name() : "showing", s.Amount)],
        BesideClause b => [("by", b.Distance)],
        ShiftClause s => [("shift " + s.Direction.ToString().ToLowerInvariant(), s.Distance)],
        MeasureClause { Word: "letters" } m => [("letters", m.Amount)],
        OnCircleClause c => [("on circle", c.Diameter)],
        BorderClause b => [("border", b.Amount)],
        ShadowClause s => [("shadow", s.Fall)],
        StitchedClause s => [("stitched", s.Distance)],
        ScoredClause s => [("scored " + s.Edge.Name(), s.Distance)],
        EdgeCutClause { Depth: { } depth } c => [(c.Form.ToString().ToLowerInvariant() + (c.Edge is { } e ? " " + e.Name() : ""), depth)],
        _ => [],
    };

    private string Spell(SizeSyntax? size) => size switch
    {
        BoxSize box => $"{Spell(box.Width)} x {Spell(box.Height)}",
        SingleSize single => Text(single.Value),
        _ => "as it follows",
    };

    private string Spell(ExtentSyntax extent) => extent switch
    {
        LengthExtent length => Text(length.Value),
        FullExtent => "full",
        FitExtent => "fit",
        ShareExtent share => $"share {share.Numerator}/{share.Denominator}",
        _ => "",
    };

    private string Text(Length length) =>
        _units == UnitSystem.Inches ? LengthFormat.Ruler(length, LengthFormat.FinestMarks) : LengthFormat.Millimetres(length);
}
