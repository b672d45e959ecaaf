using Sketch.Drawing;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Shapes;

namespace Sketch.Assembly;

/// <summary>
/// A face with its layers lifted apart and seen from the front and above: each layer hovers over the one that it lies on, the base lowest.
/// </summary>
public sealed class ExplodedPicture
{
    /// <summary>How far the far edge is shifted to the right, and how flat the face is seen, in parts of its height.</summary>
    private const double Slant = 0.32;

    private const double Flatness = 0.5;

    /// <summary>Between two layers in parts of the height of the face, and in millimetres at least.</summary>
    private const double Apart = 0.17;

    private const double LeastApart = 12;

    private readonly LaidOutCard _card;
    private readonly FaceKind _face;
    private readonly Affine _seen;
    private readonly double _apart;
    private readonly Dictionary<Piece, int> _layers;

    private ExplodedPicture(LaidOutCard card, FaceKind face)
    {
        (_card, _face) = (card, face);
        var size = CardDrawing.SizeOf(card, face);
        _layers = new(ReferenceEqualityComparer.Instance);
        foreach (var piece in card.On(face))
        {
            _layers[piece] = LayerOf(piece);
        }

        var most = _layers.Values.DefaultIfEmpty(0).Max();
        _apart = Math.Max(LeastApart, size.Height.Millimetres * Apart);
        _seen = new(1, 0, -Slant, Flatness, size.Height.Millimetres * Slant, most * _apart);
        Width = size.Width.Millimetres + size.Height.Millimetres * Slant;
        Height = size.Height.Millimetres * Flatness + most * _apart;
    }

    /// <summary>Its width in millimetres, without what reaches past the edges of the face.</summary>
    public double Width { get; }

    /// <summary>Its height in millimetres.</summary>
    public double Height { get; }

    /// <summary>The picture of a face of a card; null if there are no layers to part.</summary>
    public static ExplodedPicture? Of(LaidOutCard card, FaceKind face)
    {
        var picture = new ExplodedPicture(card, face);
        return picture._layers.Values.Any(l => l > 0) ? picture : null;
    }

    /// <summary>The picture in millimetres from its upper left corner.</summary>
    /// <param name="dotsPerInch">The most pixels per inch of pictured papers.</param>
    /// <param name="ids">The ids of the page that it is part of.</param>
    public SvgWriter Draw(double dotsPerInch, SvgIds ids)
    {
        var definitions = new Definitions(ids);
        var body = new SvgWriter(indent: 1);
        var lifted = _card with
        {
            Pieces = [.. _card.On(_face).OrderBy(p => _layers[p]).Select(p => p with { Turning = p.Turning.Then(PlaceOf(p)) })],
        };
        var faces = new FaceDrawing(lifted, body, definitions, ids, dotsPerInch, []);
        body.Open("g").Transform(_seen);
        faces.Ground(_face, CardDrawing.SizeOf(_card, _face));
        body.Close();
        faces.Pieces(_face);
        var picture = new SvgWriter(indent: 1);
        if (definitions.Svg.Length > 0)
        {
            picture.Open("defs").Insert(definitions.Svg).Close();
        }

        return picture.Insert(body);
    }

    /// <summary>
    /// A point on a piece where it is seen: its middle, or its lower corner on the nearer side if its middle is covered or has words.
    /// </summary>
    public Point PointOn(Piece piece)
    {
        var outline = piece.TurnedOutline;
        var isCovered = piece.Words is not null || _card.Pieces.Any(p => p.LiesOn >= 0 && ReferenceEquals(_card.Pieces[p.LiesOn], piece));
        var (box, place) = (outline.Bounds, PlaceOf(piece));
        var isLeft = place.Apply(box.Centre).X < Width / 2;
        return place.Apply(isCovered ? new(isLeft ? box.Left : box.Right, box.Bottom) : box.Centre);
    }

    private Affine PlaceOf(Piece piece) => _seen.Then(Affine.Shift(0, -_layers[piece] * _apart));

    /// <summary>How many layers lie beneath a piece; ink belongs to what it is on.</summary>
    private int LayerOf(Piece piece)
    {
        var layer = piece.Matter == PieceMatter.Ink ? 0 : 1;
        for (var on = piece.LiesOn; on >= 0; on = _card.Pieces[on].LiesOn)
        {
            layer++;
        }

        return layer;
    }
}
