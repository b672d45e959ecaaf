using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Layout;

/// <summary>From a draft to a card with every size and place settled.</summary>
internal sealed class CardLayout
{
    private static readonly Size UsualCard = new(Length.Inch(4, 1, 4), Length.Inch(5, 1, 2));

    private readonly BoundCard _draft;
    private readonly BoundBase _base;
    private readonly FindingBag _findings;
    private readonly Paints _paints;
    private readonly Words _words;
    private readonly Artworks _artworks;
    private readonly NameLookup _names;

    private CardLayout(BoundCard draft, BoundBase baseDraft, Size closed, RoleFilling filling, IWorld world, FindingBag findings)
    {
        _draft = draft;
        _base = baseDraft;
        _findings = findings;
        Closed = closed;
        _paints = new(draft.Roles, filling, findings);
        _words = new(world, draft.Font, findings);
        _artworks = new(world, findings);
        Faces = new NodeBuilder(findings).Build(draft, closed, EnvelopeSize);
        _names = new(Faces, draft.BrokenNames, findings);
        Sizes = new(_names, _words, _artworks, draft.Units, findings);
        Places = new(Sizes, _names, draft.Units, findings);
    }

    public Size Closed { get; }

    public ImmutableArray<FaceScope> Faces { get; }

    public StackSizes Sizes { get; }

    public Places Places { get; }

    /// <summary>Prepares the layout of a draft; null when its base is not known, which is then reported.</summary>
    public static CardLayout? Prepare(BoundCard draft, RoleFilling filling, IWorld world, FindingBag findings)
    {
        if (draft.Base is null)
        {
            findings.Add(FindingCatalogue.HowLarge, draft.Location, "The size of the card is missing.",
                "Add a line such as base A2, fold left, of white.");
            return null;
        }

        return draft.Base.Closed is { } closed ? new(draft, draft.Base, closed, filling, world, findings) : null;
    }

    /// <summary>
    /// Lays out a draft; pieces that cannot be worked out are told and left out. Where the base's size is a mistake, already reported, the
    /// pieces are gone through on a card of a usual size, so that one run tells every mistake, and no card is given.
    /// </summary>
    public static LaidOutCard? Lay(BoundCard draft, RoleFilling filling, IWorld world, FindingBag findings)
    {
        if (Prepare(draft, filling, world, findings) is { } layout)
        {
            return layout.Lay();
        }

        var stand = draft.Base ?? new(null, null, false, null, null, draft.Location);
        _ = new CardLayout(draft, stand, UsualCard, filling, world, findings).Lay();
        return null;
    }

    private LaidOutCard Lay()
    {
        foreach (var face in _draft.Faces.Where(f => f.Kind == (_base.Folds == Fold.Top ? FaceKind.InsideLeft : FaceKind.InsideTop)))
        {
            var (edge, right) = _base.Folds == Fold.Top ? ("at the top", "inside top") : ("on the left", "inside left");
            _findings.Add(FindingCatalogue.Misplaced, face.Location,
                $"This card folds {edge}, so the back of its front is called {right}.", $"Write {right}.", right);
        }

        var basePaint = _paints.Of(_base.Paint, _base.Location.Source);
        var faces = Faces.Select(f => FaceOf(f, _draft.Faces.First(d => d.Kind == f.Kind))).ToImmutableArray();
        var shapes = new PieceShapes(_words, _artworks, Sizes, _names, Places);
        var writer = new PieceWriter(Sizes, Places, _paints, shapes, new(_draft.Units, _findings), _names, _findings);
        var written = writer.Write(Faces, f => faces.First(l => l.Kind == f.Kind).Paint ?? basePaint);
        var (pieces, front) = WindowCutting.Cut(
            written, writer.Windows, Outline.Rectangle(new(Length.Zero, Length.Zero, Closed.Width, Closed.Height)));
        ReportCutAway(written, pieces);
        if (!_findings.HasErrors)
        {
            // A line that could not be read may be the one that uses the role.
            _paints.ReportUnused(_draft.Location.Source);
        }

        return new(
            _draft.Title,
            new(Closed, _base.Folds, _base.SizeName, basePaint, front, _base.Location) { UnsaidUnits = _base.UnsaidUnits },
            faces,
            pieces,
            _paints.Roles,
            _draft.Units,
            _draft.Notes,
            _draft.Location);
    }

    /// <summary>Reports pieces of which windows leave nothing, once for all copies of a line.</summary>
    private void ReportCutAway(ImmutableArray<Piece> written, ImmutableArray<Piece> cut)
    {
        foreach (var piece in written.Zip(cut).Where(p => p.Second.Outline.IsEmpty && !p.First.Outline.IsEmpty).Select(p => p.First)
            .DistinctBy(p => p.Location))
        {
            _findings.Add(FindingCatalogue.NothingLeft, piece.Location, $"A window cuts away all of {piece.Path}.",
                "Make the window smaller than what it cuts.");
        }
    }

    private Face FaceOf(FaceScope scope, BoundFace draft)
    {
        var isEnvelope = scope.Kind is FaceKind.Envelope or FaceKind.EnvelopeBack;
        var paint = isEnvelope ? EnvelopePaint(draft) : null;
        return new(scope.Kind, scope.Size, paint, draft.EnvelopeName, scope.Flap, draft.Location) { ByHand = draft.ByHand };
    }

    private Paint EnvelopePaint(BoundFace draft)
    {
        var paint = draft.Paint ?? _draft.Faces.FirstOrDefault(
            f => f.Kind is FaceKind.Envelope or FaceKind.EnvelopeBack && f.Paint is not null)?.Paint;
        return _paints.Of(paint, draft.Location.Source);
    }

    /// <summary>
    /// The envelope's size: as written on either of its faces, else the usual one for the card, lying landscape.
    /// </summary>
    private Size? EnvelopeSize(BoundFace face)
    {
        var written = face.EnvelopeSize ?? _draft.Faces.FirstOrDefault(f => f.EnvelopeSize is not null)?.EnvelopeSize;
        var size = written ?? NamedSizes.UsualEnvelope(Closed)?.Size;
        if (size is null)
        {
            _findings.Add(FindingCatalogue.HowLarge, face.Location, "No named envelope fits this card, so the envelope needs a size.",
                "Write envelope 7 x 7.");
        }

        return size is { } s && s.Width < s.Height ? s.Turned() : size;
    }
}
