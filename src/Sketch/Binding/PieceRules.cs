using System.Collections.Immutable;
using Sketch.Lettering;
using Sketch.Shapes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Binding;

/// <summary>A clause that specifies something, with the file that it is written in.</summary>
internal readonly record struct Rule<T>(T Clause, SourceText Source) where T : Clause
{
    /// <summary>The place of the clause.</summary>
    public Location Location => new(Source, Clause.Span);
}

/// <summary>
/// What the clauses of a piece specify: its shape, size, place, copies and papers. Layout reads these and never searches clauses. Where
/// two clauses specify the same, which is reported, the first counts.
/// </summary>
internal sealed class PieceRules
{
    /// <summary>The usual height of foam (common practice, no source).</summary>
    public static readonly Length UsualFoam = Length.Millimetre(2);

    /// <summary>The usual distance between writing lines (common practice, no source).</summary>
    private static readonly Length UsualLinesApart = Length.Millimetre(8);

    private readonly Length?[] _distances = new Length?[4];
    private readonly Length?[] _showing = new Length?[4];
    private readonly Length[] _shifts = new Length[2];
    private readonly bool[] _isShifted = new bool[2];
    private readonly Rule<BesideClause>?[] _beside = new Rule<BesideClause>?[2];
    private readonly Rule<OverClause>?[] _over = new Rule<OverClause>?[2];
    private readonly List<Rule<WithClause>> _replacements = [];
    private readonly Length?[] _wraps = new Length?[4];
    private Length? _wrapAtBothEnds;
    private Length? _showingEverywhere;
    private GapClause? _gap;
    private readonly EdgeCut?[] _edgeCuts = new EdgeCut?[4];
    private readonly List<Rule<EdgeCutClause>> _writtenEdgeCuts = [];
    private readonly List<Rule<ScoredClause>> _scores = [];
    private EdgeCut? _cutAllRound;
    private StepClause? _step;
    private SwallowtailClause? _swallowtail;
    private double? _turn;
    private Length? _linesApart;

    public PieceRules(ImmutableArray<BoundClause> clauses)
    {
        var borders = ImmutableArray.CreateBuilder<BorderClause>();
        var papers = ImmutableArray.CreateBuilder<Rule<OfClause>>();
        foreach (var bound in clauses)
        {
            if (!AddPlace(bound) && !AddCopies(bound.Clause, bound.Source) && !AddShape(bound.Clause, bound.Source)
                && !AddLettering(bound.Clause, bound.Source))
            {
                AddMaterial(bound.Clause, bound.Source, papers, borders);
            }
        }

        Papers = papers.ToImmutable();
        Borders = [.. borders.OrderBy(b => b.Edge is not null)];
        Style = new()
        {
            Points = Points?.Clause.Count ?? ShapeStyle.Plain.Points,
            Corner = Corners?.Clause.Amount,
            Notch = Notch?.Clause.Amount,
            Swallowtail = _swallowtail switch
            {
                { Left: true, Right: true } => Swallowtail.Both,
                { Left: true } => Swallowtail.Left,
                { Right: true } => Swallowtail.Right,
                _ => Swallowtail.None,
            },
            Edges = _writtenEdgeCuts.Count == 0 ? EdgeCuts.None
                : new(CutAt(Edge.Left), CutAt(Edge.Right), CutAt(Edge.Top), CutAt(Edge.Bottom)),
        };
    }

    private EdgeCut? CutAt(Edge edge) => _edgeCuts[(int)edge] ?? _cutAllRound;

    /// <summary>The rules of a line without clauses.</summary>
    public static PieceRules None { get; } = new([]);

    /// <summary>What is written about the shape besides its size.</summary>
    public ShapeStyle Style { get; }

    public Rule<QuantityClause>? Points { get; private set; }

    public Rule<MeasureClause>? Corners { get; private set; }

    public Rule<MeasureClause>? Notch { get; private set; }

    public Rule<MeasureClause>? Letters { get; private set; }

    /// <summary>The forms of sides, as written.</summary>
    public IReadOnlyList<Rule<EdgeCutClause>> EdgeForms => _writtenEdgeCuts;

    /// <summary>The dashed line inside the edge.</summary>
    public Rule<StitchedClause>? Stitched { get; private set; }

    /// <summary>The lines to fold along.</summary>
    public IReadOnlyList<Rule<ScoredClause>> Scores => _scores;

    /// <summary>The first <c>showing</c>; <see cref="ShownAt"/> gives what it leaves at each side.</summary>
    public Rule<ShowingClause>? Showing { get; private set; }

    public Rule<SameSizeClause>? SameSize { get; private set; }

    public Rule<AlongClause>? Along { get; private set; }

    public Rule<AroundClause>? Around { get; private set; }

    public Rule<MeasuredFromClause>? MeasuredFrom { get; private set; }

    /// <summary>The first <c>above</c>, <c>below</c>, <c>left of</c> or <c>right of</c>.</summary>
    public Rule<BesideClause>? Beside { get; private set; }

    public Rule<TuckedClause>? Tucked { get; private set; }

    /// <summary>Degrees clockwise.</summary>
    public double Turn => _turn ?? 0;

    /// <summary>Whether a window goes through all layers.</summary>
    public bool IsThrough { get; private set; }

    /// <summary>The height of the foam beneath; null for none.</summary>
    public Length? Foam { get; private set; }

    /// <summary>Whether any end is wrapped round the edge.</summary>
    public bool Wraps => _wrapAtBothEnds is not null || _wraps.Any(w => w is not null);

    /// <summary>Length of each of two ends that hang loose.</summary>
    public Length Tails { get; private set; }

    /// <summary>The die or rubber stamp that makes it.</summary>
    public Rule<UsingClause>? Using { get; private set; }

    public Rule<ArrangeClause>? Arrange { get; private set; }

    public Rule<SpreadClause>? Spread { get; private set; }

    public Edge? LinedUp { get; private set; }

    /// <summary>Whether each copy begins further up or down than the one before.</summary>
    public bool StepsUpOrDown => _step?.Direction is Direction.Up or Direction.Down;

    /// <summary>Whether neighbouring copies take different papers; null where the order of papers is not specified.</summary>
    public bool? Alternates { get; private set; }

    /// <summary>The borders of a mat: those for all sides first, then those for one side.</summary>
    public ImmutableArray<BorderClause> Borders { get; }

    /// <summary>The papers after each <c>of</c>.</summary>
    public ImmutableArray<Rule<OfClause>> Papers { get; }

    public Rule<InkClause>? Ink { get; private set; }

    /// <summary>The copy of the outline that lies beneath, set off to the right and down.</summary>
    public Rule<ShadowClause>? Shadow { get; private set; }

    public Rule<FontClause>? Font { get; private set; }

    public Rule<FileClause>? File { get; private set; }

    /// <summary>The degrees of a circle that the words cover.</summary>
    public Rule<ArchedClause>? Arc { get; private set; }

    /// <summary>The circle round which the words run.</summary>
    public Rule<OnCircleClause>? Circle { get; private set; }

    /// <summary>What bends the line of words; null where it is straight.</summary>
    public Rule<Clause>? Bend =>
        Arc is { } arc ? new(arc.Clause, arc.Source) : Circle is { } circle ? new(circle.Clause, circle.Source) : null;

    /// <summary>Room added between letters, in cap heights.</summary>
    public double Spacing { get; private set; }

    /// <summary>Where shorter lines of words stand.</summary>
    public LineRange Range { get; private set; }

    /// <summary>Whether all letters are capitals.</summary>
    public bool IsCapitals { get; private set; }

    /// <summary>The distance between writing lines.</summary>
    public Length LinesApart => _linesApart ?? UsualLinesApart;

    /// <summary>The distance written for a side (<c>left 1/4</c>, <c>lower right 3/8</c>), or null.</summary>
    public Length? DistanceFrom(Edge edge) => _distances[(int)edge];

    /// <summary>
    /// How much is to show at a side, or null where the piece has no <c>showing</c>: as written for the side, else for all sides; where
    /// only other sides are named, nothing shows.
    /// </summary>
    public Length? ShownAt(Edge edge) =>
        Showing is null ? null : _showing[(int)edge] ?? _showingEverywhere ?? Length.Zero;

    /// <summary>Whether a <c>showing</c> applies to this axis: on all sides, or on one that bounds it.</summary>
    public bool ShowsOn(Axis axis) =>
        _showingEverywhere is not null
        || axis.Edges() is var (low, high) && (_showing[(int)low] is not null || _showing[(int)high] is not null);

    /// <summary>The distance of the piece from a side: as written, or what shows, or zero.</summary>
    public Length Off(Edge edge) => DistanceFrom(edge) ?? ShownAt(edge) ?? Length.Zero;

    /// <summary>How far the piece is shifted to the right or down; negative to the left or up.</summary>
    public Length Shift(Axis axis) => _shifts[(int)axis];

    public bool IsShifted(Axis axis) => _isShifted[(int)axis];

    /// <summary>The piece beside which this one is placed along an axis.</summary>
    public Rule<BesideClause>? BesideOn(Axis axis) => _beside[(int)axis];

    /// <summary>The edge on which the piece is centred along an axis.</summary>
    public Rule<OverClause>? OverOn(Axis axis) => _over[(int)axis];

    /// <summary>How much is wrapped round the edge at a side of a piece that runs across or down.</summary>
    public Length WrapAt(Edge edge, bool runsAcross) => _wraps[(int)edge]
        ?? (_wrapAtBothEnds is { } both && runsAcross == (edge is Edge.Left or Edge.Right) ? both : Length.Zero);

    /// <summary>The gap between two copies.</summary>
    public Length Gap(Axis axis) => _gap is not { } gap ? Length.Zero : axis == Axis.Across ? gap.Across : gap.Down;

    /// <summary>How much further to the right or down each copy begins than the one before; negative to the left or up.</summary>
    public Length Step(Axis axis) =>
        _step is { } step && step.Direction.Axis() == axis ? step.Distance * step.Direction.Sign() : Length.Zero;

    /// <summary>What the use of a part gives in place of a role, or null.</summary>
    public Rule<WithClause>? ReplacementOf(string role)
    {
        foreach (var with in _replacements)
        {
            if (with.Clause.Role.Text.Equals(role, StringComparison.OrdinalIgnoreCase))
            {
                return with;
            }
        }

        return null;
    }

    private bool AddPlace(BoundClause bound)
    {
        var source = bound.Source;
        switch (bound.Clause)
        {
            case EdgeClause edge:
                _distances[(int)edge.Edge] ??= edge.Distance;
                return true;
            case CornerClause corner:
                _distances[(int)corner.Horizontal] ??= corner.Distance;
                _distances[(int)corner.Vertical] ??= corner.Distance;
                return true;
            case ShowingClause showing:
                AddShowing(showing, source);
                return true;
            case ShiftClause shift:
                var axis = (int)shift.Direction.Axis();
                _shifts[axis] += shift.Distance * shift.Direction.Sign();
                _isShifted[axis] = true;
                return true;
            case BesideClause beside:
                Beside ??= new(beside, source);
                _beside[(int)beside.Side.Axis()] ??= new(beside, source);
                return true;
            case OverClause over:
                _over[(int)over.Edge.Axis()] ??= new(over, source);
                return true;
            case MeasuredFromClause from:
                MeasuredFrom ??= new(from, source);
                return true;
            case AlongClause along:
                Along ??= new(along, source);
                return true;
            case AroundClause around:
                Around ??= new(around, source);
                return true;
            case SameSizeClause same:
                SameSize ??= new(same, source);
                return true;
            case TuckedClause tucked:
                Tucked ??= new(tucked, source);
                return true;
            default:
                return false;
        }
    }

    private void AddShowing(ShowingClause showing, SourceText source)
    {
        Showing ??= new(showing, source);
        if (showing.Edge is { } edge)
        {
            _showing[(int)edge] ??= showing.Amount;
        }
        else
        {
            _showingEverywhere ??= showing.Amount;
        }
    }

    private bool AddCopies(Clause clause, SourceText source)
    {
        switch (clause)
        {
            case ArrangeClause arrange:
                Arrange ??= new(arrange, source);
                return true;
            case GapClause gap:
                _gap ??= gap;
                return true;
            case SpreadClause spread:
                Spread ??= new(spread, source);
                return true;
            case StepClause step:
                _step ??= step;
                return true;
            case LinedUpClause lined:
                LinedUp ??= lined.Edge;
                return true;
            case TakeTurnsClause turns:
                Alternates ??= turns.Alternating;
                return true;
            default:
                return false;
        }
    }

    private bool AddShape(Clause clause, SourceText source)
    {
        switch (clause)
        {
            case QuantityClause { Noun: "points" } points:
                Points ??= new(points, source);
                return true;
            case MeasureClause { Word: "corners" } corners:
                Corners ??= new(corners, source);
                return true;
            case MeasureClause { Word: "notch" } notch:
                Notch ??= new(notch, source);
                return true;
            case MeasureClause { Word: "tails" } tails:
                Tails = tails.Amount;
                return true;
            case MeasureClause { Word: "letters" } letters:
                Letters ??= new(letters, source);
                return true;
            case SwallowtailClause swallowtail:
                _swallowtail ??= swallowtail;
                return true;
            case EdgeCutClause cut:
                AddEdgeCut(cut, source);
                return true;
            case StitchedClause stitched:
                Stitched ??= new(stitched, source);
                return true;
            case ScoredClause scored:
                _scores.Add(new(scored, source));
                return true;
            case TurnClause turn:
                _turn ??= turn.Degrees;
                return true;
            case ThroughClause:
                IsThrough = true;
                return true;
            case FileClause file:
                File ??= new(file, source);
                return true;
            case LinesApartClause lines:
                _linesApart ??= lines.Distance;
                return true;
            default:
                return false;
        }
    }

    private void AddEdgeCut(EdgeCutClause cut, SourceText source)
    {
        _writtenEdgeCuts.Add(new(cut, source));
        var form = new EdgeCut(cut.Form, cut.Depth);
        if (cut.Edge is { } edge)
        {
            _edgeCuts[(int)edge] ??= form;
        }
        else
        {
            _cutAllRound ??= form;
        }
    }

    private bool AddLettering(Clause clause, SourceText source)
    {
        switch (clause)
        {
            case FontClause font:
                Font ??= new(font, source);
                return true;
            case ArchedClause arched:
                Arc ??= new(arched, source);
                return true;
            case OnCircleClause circle:
                Circle ??= new(circle, source);
                return true;
            case SpacedClause spaced:
                Spacing = spaced.Share;
                return true;
            case RangedClause ranged:
                Range = ranged.Range;
                return true;
            case CapitalsClause:
                IsCapitals = true;
                return true;
            default:
                return false;
        }
    }

    private void AddMaterial(
        Clause clause, SourceText source, ImmutableArray<Rule<OfClause>>.Builder papers, ImmutableArray<BorderClause>.Builder borders)
    {
        switch (clause)
        {
            case OfClause of:
                papers.Add(new(of, source));
                break;
            case InkClause ink:
                Ink ??= new(ink, source);
                break;
            case ShadowClause shadow:
                Shadow ??= new(shadow, source);
                break;
            case WithClause with:
                _replacements.Add(new(with, source));
                break;
            case BorderClause border:
                borders.Add(border);
                break;
            case RaisedClause raised:
                Foam ??= raised.Height ?? UsualFoam;
                break;
            case WrapClause { Edge: null } wrap:
                _wrapAtBothEnds ??= wrap.Amount;
                break;
            case WrapClause { Edge: { } end } wrap:
                _wraps[(int)end] ??= wrap.Amount;
                break;
            case UsingClause tool:
                Using ??= new(tool, source);
                break;
            default:
                break;
        }
    }
}
