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

/// <summary>Computes every size and place of a bound card.</summary>
internal sealed class CardLayout
{
    private static readonly Size UsualCard = new(Length.Inch(4, 1, 4), Length.Inch(5, 1, 2));

    private readonly BoundCard _bound;
    private readonly BoundBase _base;
    private readonly FindingBag _findings;
    private readonly Paints _paints;
    private readonly Words _words;
    private readonly Artworks _artworks;
    private readonly NameLookup _names;

    private CardLayout(BoundCard bound, BoundBase boundBase, Size closed, RoleFilling filling, IWorld world, FindingBag findings)
    {
        _bound = bound;
        _base = boundBase;
        _findings = findings;
        Closed = closed;
        _paints = new(bound.Roles, filling, findings);
        _words = new(world, bound.Font, bound.Units, findings);
        _artworks = new(world, findings);
        Faces = new NodeBuilder(findings).Build(bound, closed, EnvelopeSize);
        _names = new(Faces, bound.BrokenNames, findings);
        Sizes = new(_names, _words, _artworks, bound.Units, findings);
        Places = new(Sizes, _names, bound.Units, findings);
    }

    public Size Closed { get; }

    public ImmutableArray<FaceScope> Faces { get; }

    public StackSizes Sizes { get; }

    public Places Places { get; }

    /// <summary>Prepares the layout of a bound card; null when its base is not known, which is reported.</summary>
    public static CardLayout? Prepare(BoundCard bound, RoleFilling filling, IWorld world, FindingBag findings)
    {
        if (bound.Base is null)
        {
            findings.Add(FindingCatalogue.HowLarge, bound.Location, "The size of the card is missing.",
                "Add a line such as base A2, fold left, of white.");
            return null;
        }

        return bound.Base.Closed is { } closed ? new(bound, bound.Base, closed, filling, world, findings) : null;
    }

    /// <summary>
    /// Lays out a bound card; pieces that cannot be laid out are reported and left out. Where the size of the base is a reported mistake,
    /// the pieces are checked on a card of a usual size, so that one run reports every mistake, and no card is returned.
    /// </summary>
    public static LaidOutCard? Lay(BoundCard bound, RoleFilling filling, IWorld world, FindingBag findings)
    {
        if (Prepare(bound, filling, world, findings) is { } layout)
        {
            return layout.Lay();
        }

        var stand = bound.Base ?? new(null, null, false, null, null, bound.Location);
        _ = new CardLayout(bound, stand, UsualCard, filling, world, findings).Lay();
        return null;
    }

    /// <summary>Reports a face behind the front that a card with this fold does not have.</summary>
    private void ReportMissingFaces()
    {
        foreach (var face in _bound.Faces.Where(f => f.Kind is FaceKind.InsideLeft or FaceKind.InsideTop))
        {
            var (folds, right) = _base.Folds switch
            {
                Fold.Top => ("folds at the top", "inside top"),
                Fold.Gate => ("opens like a gate", "inside"),
                Fold.Z => ("folds like a z", "inside left"),
                _ => ("folds on the left", "inside left"),
            };
            if (right != Face.NameOf(face.Kind).Replace('-', ' '))
            {
                _findings.Add(FindingCatalogue.Misplaced, face.Location,
                    right == "inside" ? $"This card {folds}, so only its middle panel is laid out inside."
                        : $"This card {folds}, so the back of its front is called {right}.",
                    $"Write {right}.", right);
            }
        }
    }

    private LaidOutCard Lay()
    {
        ReportMissingFaces();

        var basePaint = _paints.Of(_base.Paint, _base.Location.Source);
        var faces = Faces.Select(f => FaceOf(f, _bound.Faces.First(d => d.Kind == f.Kind))).ToImmutableArray();
        var shapes = new PieceShapes(_words, _artworks, Sizes, _names, Places);
        var writer = new PieceWriter(Sizes, Places, _paints, shapes, _names, _findings);
        var written = writer.Write(Faces, f => faces.First(l => l.Kind == f.Kind).Paint ?? basePaint);
        var (pieces, front) = WindowCutting.Cut(
            written, writer.Windows, Outline.Rectangle(new(Length.Zero, Length.Zero, Closed.Width, Closed.Height)));
        ReportCutAway(written, pieces);
        _paints.ReportUnused(_bound.Location.Source);

        return new(
            _bound.Title,
            new(Closed, _base.Folds, _base.SizeName, basePaint, front, _base.Location) { UndeclaredUnits = _base.UndeclaredUnits },
            faces,
            pieces,
            _bound.Units,
            _bound.Location)
        {
            Roles = _paints.Roles,
            Notes = _bound.Notes,
            Message = _bound.Message,
            Font = _bound.Font is { } font ? new(font.Name, font.Location.Source.Path) : null,
        };
    }

    /// <summary>Reports pieces that windows cut away entirely, once for all copies of a line.</summary>
    private void ReportCutAway(ImmutableArray<Piece> written, ImmutableArray<Piece> cut)
    {
        foreach (var piece in written.Zip(cut).Where(p => p.Second.Outline.IsEmpty && !p.First.Outline.IsEmpty).Select(p => p.First)
            .DistinctBy(p => p.Location))
        {
            _findings.Add(FindingCatalogue.NothingLeft, piece.Location, $"A window cuts away all of {piece.Path}.",
                "Make the window smaller than what it cuts.");
        }
    }

    private Face FaceOf(FaceScope scope, BoundFace bound)
    {
        var isEnvelope = scope.Kind is FaceKind.Envelope or FaceKind.EnvelopeBack;
        var paint = isEnvelope ? EnvelopePaint(bound) : null;
        return new(scope.Kind, scope.Size, paint, bound.EnvelopeName, scope.Flap, bound.Location) { ByHand = bound.ByHand };
    }

    private Paint EnvelopePaint(BoundFace bound)
    {
        var paint = bound.Paint ?? _bound.Faces.FirstOrDefault(
            f => f.Kind is FaceKind.Envelope or FaceKind.EnvelopeBack && f.Paint is not null)?.Paint;
        return _paints.Of(paint, bound.Location.Source);
    }

    /// <summary>
    /// The size of the envelope: as written on either of its faces, else the usual one for the card, in landscape.
    /// </summary>
    private Size? EnvelopeSize(BoundFace face)
    {
        var written = face.EnvelopeSize ?? _bound.Faces.FirstOrDefault(f => f.EnvelopeSize is not null)?.EnvelopeSize;
        var size = written ?? NamedSizes.UsualEnvelope(Closed)?.Size;
        if (size is null)
        {
            _findings.Add(FindingCatalogue.HowLarge, face.Location, "No named envelope fits this card, so the envelope needs a size.",
                "Write envelope 7 x 7.");
        }

        return size is { } s && s.Width < s.Height ? s.Turned() : size;
    }
}
