using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>
/// Writes the nodes of a face as pieces in drawing order: a stack from its outermost mat to the piece, then what lies on it as written,
/// then the next sibling; what is tucked under a piece comes before its stack.
/// </summary>
internal sealed class PieceWriter(
    StackSizes sizes, Places places, Paints paints, PieceShapes shapes, NameLookup names, FindingBag findings)
{
    private readonly SuitedSizes _suited = new(sizes.Units, findings);
    private readonly ImmutableArray<Piece>.Builder _pieces = ImmutableArray.CreateBuilder<Piece>();
    private long _corners;
    private int _holes;
    private bool _isFull;
    private bool _hasAllWindows;

    /// <summary>Windows in drawing order, with the index of the piece that they cut; -1 for the face.</summary>
    public List<WindowCut> Windows { get; } = [];

    /// <summary>A window: what it cuts and where.</summary>
    internal sealed record WindowCut(FaceKind Face, int Parent, int ParentStack, Outline Hole, bool Through);

    /// <summary>What a piece lies on.</summary>
    private readonly record struct Ground(int Index, int Stack, Length Raised, Affine Turning, Paint Paint);

    public ImmutableArray<Piece> Write(IEnumerable<FaceScope> faces, Func<FaceScope, Paint> paperOf)
    {
        foreach (var face in faces)
        {
            WriteSets(face.Units, new(-1, -1, Length.Zero, Affine.Identity, paperOf(face)), null);
        }

        return _pieces.ToImmutable();
    }

    /// <summary>
    /// Siblings in order; those tucked under a sibling come right before it, those tucked under the parent are already written.
    /// </summary>
    private void WriteSets(List<CopySet> sets, Ground ground, Node? parent)
    {
        var under = new Dictionary<CopySet, List<CopySet>>();
        var first = new List<CopySet>(sets.Count);
        HashSet<CopySet>? members = null;
        foreach (var set in sets)
        {
            if (set.Bound.Rules.Tucked is not { } tucked)
            {
                first.Add(set);
            }
            else if (tucked.Clause.Under is { } path && !IsParent(parent, path))
            {
                if (under.Count >= Limits.Tucked)
                {
                    findings.Add(FindingCatalogue.TuckedWrong, tucked.Location,
                        $"Pieces are tucked under more than {Limits.Tucked} others; {set.Called} stays on top.",
                            "Write the pieces that lie beneath further up.");
                    first.Add(set);
                    continue;
                }

                members ??= [.. sets];
                var target = names.Find(set, path, tucked.Source);
                if (target is null || !members.Contains(target) || LeadsBack(set, target, under))
                {
                    ReportTucked(set, target);
                    first.Add(set);
                    continue;
                }

                if (!under.TryGetValue(target, out var list))
                {
                    under[target] = list = [];
                }

                list.Add(set);
            }
            else if (parent is null)
            {
                findings.Add(FindingCatalogue.TuckedWrong, tucked.Location,
                    $"{set.Called} lies directly on the face, so it cannot be tucked under a parent.",
                        "Name the piece beside it that it goes under: tucked under lamp.");
                first.Add(set);
            }
        }

        foreach (var set in first)
        {
            WriteWithTucked(set, ground, under);
        }
    }

    private void WriteWithTucked(CopySet set, Ground ground, Dictionary<CopySet, List<CopySet>> under)
    {
        foreach (var tucked in under.GetValueOrDefault(set) ?? [])
        {
            WriteWithTucked(tucked, ground, under);
        }

        foreach (var copy in set.Copies)
        {
            WriteNode(copy, ground);
        }
    }

    private static bool IsParent(Node? parent, PathSyntax path) =>
        parent is not null && path.Names is [var only] && only.Text.Equals(parent.Set.Bound.Name, StringComparison.OrdinalIgnoreCase);

    private static bool LeadsBack(CopySet set, CopySet target, Dictionary<CopySet, List<CopySet>> under) =>
        target == set || (under.TryGetValue(set, out var below) && below.Any(b => LeadsBack(b, target, under)));

    private void ReportTucked(CopySet set, CopySet? target)
    {
        if (target is not null)
        {
            findings.Add(FindingCatalogue.TuckedWrong, set.Bound.Location,
                $"{set.Called} cannot be tucked under {target.Called}, which is "
                    + $"{(set.Siblings.Contains(target) ? "tucked under it in turn" : "no sibling of it")}.",
                        "Tuck it under its parent (tucked under) or under a sibling.");
        }
    }

    private void WriteNode(Node node, Ground ground)
    {
        if (Boxes(node) is not { } boxes || _isFull)
        {
            paints.ReportUnknown(node);
            return;
        }

        var bound = node.Bound;
        _suited.Check(node, boxes[0].Size);
        var turn = bound.Rules.Turn;
        var style = bound.Rules.Style;
        var about = ShapeProportions.TurningPoint(bound.OutlineKind.Traits.Shape ?? Shape.Rectangle, style, boxes[0]);
        var turning = turn == 0 ? ground.Turning : Affine.Turn(turn, about).Then(ground.Turning);

        // Pieces tucked beneath this one lie on what it lies on, but turn with it.
        foreach (var set in node.Children.Where(c => IsTuckedUnderParent(c, node)))
        {
            foreach (var copy in set.Copies)
            {
                WriteNode(copy, ground with { Turning = turning });
            }
        }

        var stackStart = _pieces.Count;
        var raised = ground.Raised;
        var own = shapes.Own(node, boxes[0]);
        if (bound.Kind != PieceKind.Text && !HasRoomFor(bound, own.Corners * (1L + bound.Mats.Length)))
        {
            return;
        }

        var outlines = PieceShapes.WithMats(node, own, boxes);
        var grown = outlines.Skip(1).Sum(o => (long)o.Corners) - own.Corners * (long)bound.Mats.Length;
        if (!HasRoomFor(bound, Math.Max(0, grown)))
        {
            return;
        }

        for (var layer = bound.Mats.Length; layer >= 0; layer--)
        {
            var foam = FoamUnder(node, layer);
            raised += foam;
            var liesOn = layer == bound.Mats.Length ? ground.Index : _pieces.Count - 1;
            var written = layer == 0 ? bound : bound.Mats[layer - 1];
            if (written.Rules.Shadow is { } shadow && HasRoomFor(bound, outlines[layer].Corners))
            {
                // The foam is beneath the shadow, on which the layer is glued flat.
                _pieces.Add(ShadowPiece(node, layer, shadow, boxes[layer], outlines[layer], turning) with
                {
                    Turn = turn,
                    Turning = turning,
                    Foam = foam,
                    Raised = raised,
                    LiesOn = liesOn,
                    CopiesOfLine = node.Set.Copies.Length,
                });
                (foam, liesOn) = (Length.Zero, _pieces.Count - 1);
            }

            var piece = layer == 0 ? OwnPiece(node, boxes[0], own, style, ground) : MatPiece(node, layer, boxes[layer], outlines[layer]);
            _pieces.Add(piece with
            {
                Turn = turn,
                Turning = turning,
                Foam = foam,
                Raised = raised,
                LiesOn = liesOn,
                CopiesOfLine = node.Set.Copies.Length,
            });
        }

        var index = _pieces.Count - 1;
        if (bound.Kind == PieceKind.Window)
        {
            AddWindow(bound, new(node.Set.Face.Kind, ground.Index, ground.Stack, _pieces[index]
                .TurnedOutline, bound.Rules.IsThrough));
        }

        WriteSets(node.Children, new(
            bound.Kind == PieceKind.Group ? ground.Index : index, bound.Kind == PieceKind.Group
                ? ground.Stack : stackStart, raised, turning, _pieces[index].Paint), node);
    }

    /// <summary>
    /// Whether the outlines of a line are still within the limit; if not, the rest of the card is left out, which is reported.
    /// </summary>
    private bool HasRoomFor(BoundPiece bound, long corners)
    {
        _corners += corners;
        if (_corners > Limits.Corners && !_isFull)
        {
            _isFull = true;
            findings.Add(FindingCatalogue.TooManyPieces, bound.Location,
                $"Here the outlines of the card have more than {Limits.Corners:N0} corners and curves, with mats and windows; this "
                    + "line and the rest are left out.",
                "Make fewer copies, or take a simpler shape or drawing.");
        }

        return !_isFull;
    }

    /// <summary>Adds a window, unless that exceeds a limit.</summary>
    private void AddWindow(BoundPiece bound, WindowCut window)
    {
        var layers = WindowCutting.LayersOf(window, _pieces).Count();
        var over = Windows.Count >= Limits.Windows ? $"{Limits.Windows} windows"
            : _holes + layers > Limits.Holes ? $"{Limits.Holes:N0} holes, counted in every layer that a window goes through"
            : null;
        if (over is not null && !_hasAllWindows)
        {
            _hasAllWindows = true;
            findings.Add(FindingCatalogue.TooManyPieces, bound.Location, $"Here the card has more than {over}; the rest are not cut.",
                "Cut fewer windows, or take through away.");
        }
        else if (!_hasAllWindows && HasRoomFor(bound, window.Hole.Corners * (long)layers * Limits.HoleCorner))
        {
            _holes += layers;
            Windows.Add(window);
        }
    }

    private static bool IsTuckedUnderParent(CopySet set, Node parent) =>
        set.Bound.Rules.Tucked is { Clause.Under: var under } && (under is null || IsParent(parent, under));

    private static Length FoamUnder(Node node, int layer)
    {
        var bound = layer == 0 ? node.Bound : node.Bound.Mats[layer - 1];
        var outermost = node.Bound.Mats.Length;

        // A piece is raised with its mats: its foam is beneath the outermost. A mat's own foam raises the mat and what lies on it.
        var foam = layer > 0 ? bound.Rules.Foam ?? Length.Zero : Length.Zero;
        return layer == outermost && node.Bound.Rules.Foam is { } stack ? foam + stack : foam;
    }

    /// <summary>The boxes of a piece (0) and its mats outwards, or null when sizes or place could not be computed.</summary>
    private Rect[]? Boxes(Node node)
    {
        var across = sizes.Of(node, Axis.Across);
        var down = sizes.Of(node, Axis.Down);
        if (across is null || down is null)
        {
            return null;
        }

        var boxes = new Rect[node.Bound.Mats.Length + 1];
        for (var layer = 0; layer < boxes.Length; layer++)
        {
            if (places.Of(node, layer, Axis.Across) is not { } left || places.Of(node, layer, Axis.Down) is not { } top)
            {
                return null;
            }

            boxes[layer] = new(left, top, across.Sizes[layer], down.Sizes[layer]);
        }

        return boxes;
    }

    private Piece OwnPiece(Node node, Rect box, Outline own, ShapeStyle style, Ground ground)
    {
        var bound = node.Bound;
        var ink = bound.Texts.IsEmpty ? null : paints.NamedInk(node);
        var paint = bound.Kind == PieceKind.Text && ink is not null ? ink : paints.Of(node, 0);
        return new(node.Path, bound.Kind, paint, box, own, bound.Location)
        {
            Wrap = WrapOf(bound, box),
            Written = Proportions.HasProportion(node) && bound.Size is SingleSize single && !bound.Rules.Wraps
                ? single.Measure == SingleMeasure.High ? WrittenMeasure.Height : WrittenMeasure.Width : null,
            Sizing = SizingOf(bound, Proportions.HasProportion(node)),
            Anchor = !node.Set.IsRepeat && places.Anchor(node, Axis.Across) is { } x && places.Anchor(node, Axis.Down) is { } y
                ? new(x, y) : null,
            IsShifted = (bound.Rules.IsShifted(Axis.Across), bound.Rules.IsShifted(Axis.Down)),
            Words = bound.Kind.Traits.IsWords
                ? shapes.OwnWords(node, ink, own, box)
                : shapes.InkedWords(node, box, ink),
            Notches = Words.Notches(bound, box.Size),
            Stitched = bound.Rules.Stitched?.Clause.Distance,
            Scored = [.. bound.Rules.Scores.Select(s => (s.Clause.Edge, s.Clause.Distance))],
            Finished = bound.IsArcFrame && !own.IsEmpty ? own.Bounds.ToRect() : box,
            Shape = bound.OutlineKind,
            Tails = bound.Rules.Tails,
            LinesApart = bound.Kind == PieceKind.Ruled ? bound.Rules.LinesApart : null,
            Tool = bound.Rules.Using?.Clause.Tool.Text,
        };
    }

    private static (Sizing Width, Sizing Height) SizingOf(Binding.BoundPiece bound, bool hasProportion)
    {
        return bound.Size switch
        {
            BoxSize box => (Of(box.Width), Of(box.Height)),
            SingleSize single when hasProportion =>
                single.Measure == SingleMeasure.High ? (Sizing.Follows, Sizing.Written) : (Sizing.Written, Sizing.Follows),
            _ => default,
        };

        static Sizing Of(ExtentSyntax extent) => extent switch
        {
            LengthExtent => Sizing.Written,
            FitExtent => Sizing.Words,
            _ => Sizing.Follows,
        };
    }

    private Piece MatPiece(Node node, int layer, Rect box, Outline outline)
    {
        var mat = node.Bound.Mats[layer - 1];
        var across = sizes.Of(node, Axis.Across)!;
        var down = sizes.Of(node, Axis.Down)!;
        return new(node.Path.Then(MatName(layer)), PieceKind.Mat, paints.Of(node, layer), box, outline, mat.Location)
        {
            Border = new Insets(across.Low[layer], down.Low[layer], across.High[layer], down.High[layer]),
            Sizing = SizingOf(mat, Proportions.HasProportion(node)),
            UnevenAsWritten = IsUnevenAsWritten(node, layer),
            Stitched = mat.Rules.Stitched?.Clause.Distance,
            Wrap = WrapOf(mat, box),
        };
    }

    /// <summary>A copy of a layer set off to the right and down on the face, whichever way the piece is turned.</summary>
    private Piece ShadowPiece(Node node, int layer, Rule<ShadowClause> shadow, Rect box, Outline outline, Affine turning)
    {
        var fall = shadow.Clause.Fall;
        var (right, down) = turning.IsIdentity ? (fall, fall)
            : (Length.NearestMillimetres(fall.Millimetres * (turning.A + turning.B)),
                Length.NearestMillimetres(fall.Millimetres * (turning.C + turning.D)));
        var path = layer == 0 ? node.Path : node.Path.Then(MatName(layer));
        return new(path.Then(PieceKind.Shadow.Name), PieceKind.Shadow, paints.OfShadow(node, shadow),
            new(box.Left + right, box.Top + down, box.Width, box.Height),
            outline.Transform(Affine.Shift(right.Millimetres, down.Millimetres)), shadow.Location);
    }

    private static string MatName(int layer) => layer == 1 ? PieceKind.Mat.Name : $"{PieceKind.Mat.Name}{layer}";

    private static bool IsUnevenAsWritten(Node node, int layer)
    {
        var mat = node.Bound.Mats[layer - 1];
        return (mat.Size is AddedSize added && added.Across != added.Down)
            || mat.Rules.Borders.Any(b => b.Edge is not null)
            || (node.Bound.Size is BoxSize box && (box.Width is FullExtent || box.Height is FullExtent));
    }

    /// <summary>A wrap without an edge adds to both ends of the longer direction, or of the one that is full.</summary>
    private static Insets WrapOf(BoundPiece bound, Rect box)
    {
        if (!bound.Rules.Wraps)
        {
            return default;
        }

        var across = bound.Rules.Along is { } along ? along.Clause.Edge.Axis() == Axis.Down
            : bound.Size is BoxSize { Width: FullExtent, Height: not FullExtent } ? true
            : bound.Size is BoxSize { Width: not FullExtent, Height: FullExtent } ? false
            : box.Width >= box.Height;
        return new(At(Edge.Left), At(Edge.Top), At(Edge.Right), At(Edge.Bottom));

        Length At(Edge edge) => bound.Rules.WrapAt(edge, across);
    }
}
