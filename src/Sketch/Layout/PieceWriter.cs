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
    StackSizes sizes, Places places, Paints paints, PieceShapes shapes, SuitedSizes suited, NameLookup names, FindingBag findings)
{
    private readonly ImmutableArray<Piece>.Builder _pieces = ImmutableArray.CreateBuilder<Piece>();
    private long _corners;
    private int _holes;
    private bool _isFull;
    private bool _hasAllWindows;

    /// <summary>Windows in the order met, with the index of the piece they cut; -1 for the face.</summary>
    public List<WindowCut> Windows { get; } = [];

    /// <summary>A window: what it cuts and where.</summary>
    internal sealed record WindowCut(FaceKind Face, int Parent, int ParentStack, Outline Hole, bool Through);

    /// <summary>What a piece lies on.</summary>
    private readonly record struct Ground(int Index, int Stack, Length Raised, Affine Turning, Paint Paint);

    public ImmutableArray<Piece> Write(IEnumerable<FaceScope> faces, Func<FaceScope, Paint> paperOf)
    {
        foreach (var face in faces)
        {
            WriteUnits(face.Units, new(-1, -1, Length.Zero, Affine.Identity, paperOf(face)), null);
        }

        return _pieces.ToImmutable();
    }

    /// <summary>
    /// Siblings in order; those tucked under a sibling come right before it, those tucked under the parent are already written.
    /// </summary>
    private void WriteUnits(List<CopySet> units, Ground ground, Node? parent)
    {
        var under = new Dictionary<CopySet, List<CopySet>>();
        var first = new List<CopySet>(units.Count);
        HashSet<CopySet>? members = null;
        foreach (var unit in units)
        {
            if (unit.Draft.Rules.Tucked is not { } tucked)
            {
                first.Add(unit);
            }
            else if (tucked.Clause.Under is { } path && !IsParent(parent, path))
            {
                if (under.Count >= Limits.Tucked)
                {
                    findings.Add(FindingCatalogue.TuckedWrong, tucked.Location,
                        $"Pieces are tucked under more than {Limits.Tucked} others; {unit.Called} stays on top.",
                            "Write the pieces that lie beneath further up.");
                    first.Add(unit);
                    continue;
                }

                members ??= [.. units];
                var target = names.Find(unit, path, tucked.Source);
                if (target is null || !members.Contains(target) || LeadsBack(unit, target, under))
                {
                    ReportTucked(unit, target);
                    first.Add(unit);
                    continue;
                }

                if (!under.TryGetValue(target, out var list))
                {
                    under[target] = list = [];
                }

                list.Add(unit);
            }
            else if (parent is null)
            {
                findings.Add(FindingCatalogue.TuckedWrong, tucked.Location,
                    $"{unit.Called} lies directly on the face, so it cannot be tucked under a parent.",
                        "Name the piece beside it that it goes under: tucked under lamp.");
                first.Add(unit);
            }
        }

        foreach (var unit in first)
        {
            WriteWithTucked(unit, ground, under);
        }
    }

    private void WriteWithTucked(CopySet unit, Ground ground, Dictionary<CopySet, List<CopySet>> under)
    {
        foreach (var tucked in under.GetValueOrDefault(unit) ?? [])
        {
            WriteWithTucked(tucked, ground, under);
        }

        foreach (var copy in unit.Copies)
        {
            WriteNode(copy, ground);
        }
    }

    private static bool IsParent(Node? parent, PathSyntax path) =>
        parent is not null && path.Names is [var only] && only.Text.Equals(parent.Unit.Draft.Name, StringComparison.OrdinalIgnoreCase);

    private static bool LeadsBack(CopySet unit, CopySet target, Dictionary<CopySet, List<CopySet>> under) =>
        target == unit || (under.TryGetValue(unit, out var below) && below.Any(b => LeadsBack(b, target, under)));

    private void ReportTucked(CopySet unit, CopySet? target)
    {
        if (target is not null)
        {
            findings.Add(FindingCatalogue.TuckedWrong, unit.Draft.Location,
                $"{unit.Called} cannot be tucked under {target.Called}, which is "
                    + $"{(unit.Siblings.Contains(target) ? "tucked under it in turn" : "no sibling of it")}.",
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

        var draft = node.Draft;
        suited.Check(node, boxes[0].Size);
        var turn = draft.Rules.Turn;
        var style = draft.Rules.Style;
        var about = ShapeProportions.TurningPoint(draft.OutlineKind.Traits.Shape ?? Shape.Rectangle, style, boxes[0]);
        var turning = turn == 0 ? ground.Turning : Affine.Turn(turn, about).Then(ground.Turning);

        // Pieces tucked beneath this one lie on what it lies on, but turn with it.
        var tucked = node.Children.Where(c => IsTuckedUnderParent(c, node)).ToList();
        foreach (var unit in tucked)
        {
            foreach (var copy in unit.Copies)
            {
                WriteNode(copy, ground with { Turning = turning });
            }
        }

        var stackStart = _pieces.Count;
        var raised = ground.Raised;
        var own = shapes.Own(node, boxes[0]);
        if (draft.Kind != PieceKind.Text && !HasRoomFor(draft, own.Corners * (1L + draft.Mats.Length)))
        {
            return;
        }

        var outlines = PieceShapes.WithMats(node, own, boxes);
        var grown = outlines.Skip(1).Sum(o => (long)o.Corners) - own.Corners * (long)draft.Mats.Length;
        if (!HasRoomFor(draft, Math.Max(0, grown)))
        {
            return;
        }

        for (var layer = draft.Mats.Length; layer >= 0; layer--)
        {
            var foam = FoamUnder(node, layer);
            raised += foam;
            var piece = layer == 0 ? OwnPiece(node, boxes[0], own, style, ground) : MatPiece(node, layer, boxes[layer], outlines[layer]);
            _pieces.Add(piece with
            {
                Turn = turn,
                Turning = turning,
                Foam = foam,
                Raised = raised,
                LiesOn = layer == draft.Mats.Length ? ground.Index : _pieces.Count - 1,
                CopiesOfLine = node.Unit.Copies.Length,
            });
        }

        var index = _pieces.Count - 1;
        if (draft.Kind == PieceKind.Window)
        {
            AddWindow(draft, new(node.Unit.Face.Kind, ground.Index, ground.Stack, _pieces[index]
                .TurnedOutline, draft.Rules.IsThrough));
        }

        var children = tucked.Count == 0 ? node.Children : [.. node.Children.Except(tucked)];
        WriteUnits(children, new(
            draft.Kind == PieceKind.Group ? ground.Index : index, draft.Kind == PieceKind.Group
                ? ground.Stack : stackStart, raised, turning, _pieces[index].Paint), node);
    }

    /// <summary>
    /// Whether a line's outlines may still be drawn; where they may not, the rest of the card is left out and that is reported.
    /// </summary>
    private bool HasRoomFor(BoundPiece draft, long corners)
    {
        _corners += corners;
        if (_corners > Limits.Corners && !_isFull)
        {
            _isFull = true;
            findings.Add(FindingCatalogue.TooManyPieces, draft.Location,
                $"Here the outlines of the card have more than {Limits.Corners:N0} corners and curves, with mats and windows; this "
                    + "line and the rest are left out.",
                "Make fewer copies, or take a simpler shape or drawing.");
        }

        return !_isFull;
    }

    /// <summary>Takes down a window, unless it is one too many.</summary>
    private void AddWindow(BoundPiece draft, WindowCut window)
    {
        var layers = WindowCutting.LayersOf(window, _pieces).Count();
        var over = Windows.Count >= Limits.Windows ? $"{Limits.Windows} windows"
            : _holes + layers > Limits.Holes ? $"{Limits.Holes:N0} holes, counted in every layer that a window goes through"
            : null;
        if (over is not null && !_hasAllWindows)
        {
            _hasAllWindows = true;
            findings.Add(FindingCatalogue.TooManyPieces, draft.Location, $"Here the card has more than {over}; the rest are not cut.",
                "Cut fewer windows, or take through away.");
        }
        else if (!_hasAllWindows && HasRoomFor(draft, window.Hole.Corners * (long)layers * Limits.HoleCorner))
        {
            _holes += layers;
            Windows.Add(window);
        }
    }

    private static bool IsTuckedUnderParent(CopySet unit, Node parent) =>
        unit.Draft.Rules.Tucked is { Clause.Under: var under } && (under is null || IsParent(parent, under));

    private static Length FoamUnder(Node node, int layer)
    {
        var draft = layer == 0 ? node.Draft : node.Draft.Mats[layer - 1];
        var outermost = node.Draft.Mats.Length;

        // A piece is lifted with its mats: its foam is beneath the outermost. A mat's own foam lifts it and what lies on it.
        var foam = layer > 0 ? draft.Rules.Foam ?? Length.Zero : Length.Zero;
        return layer == outermost && node.Draft.Rules.Foam is { } stack ? foam + stack : foam;
    }

    /// <summary>The boxes of a piece (0) and its mats outwards, or null when sizes or place could not be worked out.</summary>
    private Rect[]? Boxes(Node node)
    {
        var across = sizes.Of(node, Axis.Across);
        var down = sizes.Of(node, Axis.Down);
        if (across is null || down is null)
        {
            return null;
        }

        var boxes = new Rect[node.Draft.Mats.Length + 1];
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
        var draft = node.Draft;
        var ink = draft.Texts.IsEmpty ? null : paints.NamedInk(node);
        var paint = draft.Kind == PieceKind.Text && ink is not null ? ink : paints.Of(node, 0);
        return new(node.Path, draft.Kind, paint, box, own, draft.Location)
        {
            Wrap = WrapOf(draft, box),
            Written = Proportions.HasProportion(node) && draft.Size is SingleSize single && draft.Rules.Wrap is null
                ? single.Measure == SingleMeasure.High ? WrittenMeasure.Height : WrittenMeasure.Width : null,
            Sizing = SizingOf(draft, Proportions.HasProportion(node)),
            Anchor = !node.Unit.IsRepeat && places.Anchor(node, Axis.Across) is { } x && places.Anchor(node, Axis.Down) is { } y
                ? new(x, y) : null,
            IsShifted = (draft.Rules.IsShifted(Axis.Across), draft.Rules.IsShifted(Axis.Down)),
            Words = draft.Kind.Traits.IsWords
                ? shapes.OwnWords(node, ink, own, box)
                : shapes.InkedWords(node, box, ink),
            Notches = Words.Notches(draft, box.Size),
        };
    }

    private static (Sizing Width, Sizing Height) SizingOf(Binding.BoundPiece draft, bool hasProportion)
    {
        return draft.Size switch
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
        var mat = node.Draft.Mats[layer - 1];
        var across = sizes.Of(node, Axis.Across)!;
        var down = sizes.Of(node, Axis.Down)!;
        var name = layer == 1 ? PieceKind.Mat.Name : $"{PieceKind.Mat.Name}{layer}";
        return new(node.Path.Then(name), PieceKind.Mat, paints.Of(node, layer), box, outline, mat.Location)
        {
            Border = new Insets(across.Low[layer], down.Low[layer], across.High[layer], down.High[layer]),
            Sizing = SizingOf(mat, Proportions.HasProportion(node)),
            UnevenAsWritten = IsUnevenAsWritten(node, layer),
            Wrap = WrapOf(mat, box),
        };
    }

    private static bool IsUnevenAsWritten(Node node, int layer)
    {
        var mat = node.Draft.Mats[layer - 1];
        return (mat.Size is AddedSize added && added.Across != added.Down)
            || mat.Rules.Borders.Any(b => b.Edge is not null)
            || (node.Draft.Size is BoxSize box && (box.Width is FullExtent || box.Height is FullExtent));
    }

    /// <summary>A wrap adds at both ends of the longer direction, or of the one that runs the full way.</summary>
    private static Insets WrapOf(BoundPiece draft, Rect box)
    {
        if (draft.Rules.Wrap is not { } wrap)
        {
            return default;
        }

        var across = draft.Rules.Along is { } along ? along.Clause.Edge.Axis() == Axis.Down
            : draft.Size is BoxSize { Width: FullExtent, Height: not FullExtent } ? true
            : draft.Size is BoxSize { Width: not FullExtent, Height: FullExtent } ? false
            : box.Width >= box.Height;
        return across ? new(wrap, Length.Zero, wrap, Length.Zero) : new(Length.Zero, wrap, Length.Zero, wrap);
    }
}
