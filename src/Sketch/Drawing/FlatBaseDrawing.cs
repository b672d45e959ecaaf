using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Drawing;

/// <summary>
/// The base unfolded, with everything on one of its sides: one sheet, on which the back of a card folded at the top lies upside down.
/// Windows are empty holes.
/// </summary>
internal sealed class FlatBaseDrawing
{
    private readonly LaidOutCard _card;
    private readonly FaceKind[] _faces;
    private readonly Affine[] _places;
    private readonly SvgIds _ids = new();
    private readonly List<DrawnPiece> _drawn = [];
    private readonly SvgWriter _body = new(indent: 1);
    private readonly string _side;

    private FlatBaseDrawing(LaidOutCard card, bool outside)
    {
        _card = card;
        _side = outside ? "outside" : "inside";
        var (width, height) = (card.Base.Closed.Width.Millimetres, card.Base.Closed.Height.Millimetres);
        var isBook = card.Base.Fold == Fold.Left;
        _faces = outside ? [FaceKind.Back, FaceKind.Front] : [isBook ? FaceKind.InsideLeft : FaceKind.InsideTop, FaceKind.Inside];
        _places = [outside && !isBook
            ? new(-1, 0, 0, -1, width, height) : Affine.Identity, isBook ? Affine.Shift(width, 0) : Affine.Shift(0, height)];
    }

    internal static CardPicture Draw(LaidOutCard card, bool outside, double dotsPerInch) =>
        new FlatBaseDrawing(card, outside).Draw(dotsPerInch);

    private CardPicture Draw(double dotsPerInch)
    {
        var definitions = new Definitions(_ids);
        Sheet(new(definitions, _ids, dotsPerInch));
        var pieces = new FaceDrawing(Unfolded(), _body, definitions, _ids, dotsPerInch, _drawn);
        foreach (var face in _faces)
        {
            pieces.Pieces(face);
        }

        Score();
        var svg = SvgWriter.Sheet(_card.Base.Flat, _card.Units == UnitSystem.Inches, $"{_card.Title}: {_side}, unfolded");
        svg.Insert(new SvgWriter(indent: 1).Open("defs").Insert(definitions.Svg).Close());
        return new(svg.Insert(_body).Close().ToString(), [.. _drawn]);
    }

    /// <summary>
    /// The card with the pieces of this side at their places on the sheet, so that light falls on all of them from the same side.
    /// </summary>
    private LaidOutCard Unfolded() => _card with
    {
        Pieces = [.. _card.Pieces.Select(
            p => Array.IndexOf(_faces, p.Face) is var half and >= 0 ? p with { Turning = p.Turning.Then(_places[half]) } : p)],
    };

    private void Sheet(PieceDrawing drawing)
    {
        var flat = _card.Base.Flat;
        var whole = Outline.Rectangle(new(Length.Zero, Length.Zero, flat.Width, flat.Height)).Subtract(Windows());
        var id = Open("base", $"base, {PieceTitle.Size(flat, _card.Units)} unfolded, {PieceTitle.Paint(_card.Base.Paint)}");
        drawing.Draw(_body, FaceDrawing.Sheet(whole, _card.Base.Paint, flat, 0), id);
        _body.Close();
    }

    /// <summary>The cut-outs of the front, at their place on the sheet seen from this side.</summary>
    private Outline Windows()
    {
        var (closed, front) = (_card.Base.Closed, _card.Base.Outline);
        var whole = Outline.Rectangle(new(Length.Zero, Length.Zero, closed.Width, closed.Height));
        // Windows that do not touch the edge are contours of their own and keep their curves.
        var isFramed = new Outline([front.Contours[0]]) is var outer && outer.AsRectangle() is not null && outer.Bounds == whole.Bounds;
        var windows = isFramed ? new Outline(front.Contours[1..]) : whole.Subtract(front);
        var (width, height) = (closed.Width.Millimetres, closed.Height.Millimetres);
        return windows.Transform(_faces[0] switch
        {
            FaceKind.InsideLeft => new(-1, 0, 0, 1, width, 0),
            FaceKind.InsideTop => new(1, 0, 0, -1, 0, height),
            _ => _places[1],
        });
    }

    private void Score()
    {
        var (flat, fold) = (_card.Base.Flat, _card.Base.Fold);
        var at = fold == Fold.Left ? _card.Base.Closed.Width : _card.Base.Closed.Height;
        Open("score", $"score {_card.Units.Format().About(at)} from the {(fold == Fold.Left ? "left" : "top")}");
        _body.Open("line")
            .Attribute("x1", fold == Fold.Left ? at.Millimetres : 0).Attribute("y1", fold == Fold.Left ? 0 : at.Millimetres)
            .Attribute("x2", fold == Fold.Left ? at.Millimetres : flat.Width.Millimetres)
            .Attribute("y2", fold == Fold.Left ? flat.Height.Millimetres : at.Millimetres)
            .Attribute("stroke", ScoreLine.On(_card.Base.Paint.Look.Ground).Hex)
            .Attribute("stroke-opacity", ScoreLine.Opacity).Attribute("stroke-width", ScoreLine.Width)
            .Attribute("stroke-dasharray", ScoreLine.Dashes).Close();
        _body.Close();
    }

    private string Open(string name, string title)
    {
        var id = _ids.Claim($"{_side}-{name}");
        _drawn.Add(new(id, title, _card.Base.Location));
        _body.Open("g").Attribute("id", id).Title(title);
        return id;
    }
}
