using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>
/// The base unfolded, with everything on one of its sides: one sheet, on which the back of a card folded at the top lies upside down.
/// Windows are empty holes.
/// </summary>
internal sealed class FlatBaseDrawing
{
    private readonly LaidOutCard _card;
    private readonly ImmutableArray<SheetPanel> _parts;
    private readonly SvgIds _ids = new();
    private readonly List<DrawnPiece> _drawn = [];
    private readonly SvgWriter _body = new(indent: 1);
    private readonly BaseSheet _sheet;
    private readonly bool _isOutside;

    private FlatBaseDrawing(LaidOutCard card, bool outside)
    {
        (_card, _sheet, _isOutside) = (card, card.Base.Sheet, outside);
        _parts = outside ? _sheet.Outside : _sheet.Inside;
    }

    private string Side => _isOutside ? "outside" : "inside";

    internal static CardPicture Draw(LaidOutCard card, bool outside, double dotsPerInch) =>
        new FlatBaseDrawing(card, outside).Draw(dotsPerInch);

    private CardPicture Draw(double dotsPerInch)
    {
        var definitions = new Definitions(_ids);
        Sheet(new(definitions, _ids, dotsPerInch));
        var pieces = new FaceDrawing(Unfolded(), _body, definitions, _ids, dotsPerInch, _drawn);
        foreach (var face in _parts.Select(p => p.Face).Distinct())
        {
            pieces.Pieces(face);
        }

        Score();
        var svg = SvgWriter.Sheet(_card.Base.Flat, _card.Units == UnitSystem.Inches, $"{_card.Title}: {Side}, unfolded");
        svg.Insert(new SvgWriter(indent: 1).Open("defs").Insert(definitions.Svg).Close());
        return new(svg.Insert(_body).Close().ToString(), [.. _drawn]);
    }

    /// <summary>
    /// The card with the pieces of this side at their places on the sheet, so that light falls on all of them from the same side.
    /// </summary>
    private LaidOutCard Unfolded() => _card with
    {
        Pieces = [.. _card.Pieces.Select((p, i) => PartOf(i) is { } part ? p with { Turning = p.Turning.Then(part.Place) } : p)],
    };

    /// <summary>
    /// The part of the sheet on which a piece lies: where a face lies in two parts, the one that holds the middle of what lies lowest
    /// beneath the piece.
    /// </summary>
    private SheetPanel? PartOf(int index)
    {
        var parts = _parts.Where(p => p.Face == _card.Pieces[index].Face).ToList();
        if (parts.Count <= 1)
        {
            return parts is [var only] ? only : null;
        }

        while (_card.Pieces[index].LiesOn >= 0)
        {
            index = _card.Pieces[index].LiesOn;
        }

        var middle = _card.Pieces[index].TurnedOutline.IsEmpty
            ? Bounds.Of(_card.Pieces[index].Box).Centre : _card.Pieces[index].TurnedOutline.Bounds.Centre;
        return parts.MinBy(p => Math.Abs(Bounds.Of(p.Part).Centre.X - middle.X));
    }

    private void Sheet(PieceDrawing drawing)
    {
        var flat = _sheet.Size;
        var whole = _isOutside ? _card.Base.CutSheet : _card.Base.CutSheet.Transform(_sheet.TurnedOver);
        var id = Open("base", $"base, {PieceTitle.Size(flat, _card.Units)} unfolded, {PieceTitle.Paint(_card.Base.Paint)}");
        drawing.Draw(_body, FaceDrawing.Sheet(whole, _card.Base.Paint, flat, 0), id);
        _body.Close();
    }

    private void Score()
    {
        foreach (var (at, line) in _sheet.Scores.Zip(_sheet.Lines))
        {
            Open("score", $"score {_card.Units.Format().About(at)} from the {(_sheet.HasUprightScores ? "left" : "top")}");
            _body.Open("line")
                .Attribute("x1", line.From.X).Attribute("y1", line.From.Y).Attribute("x2", line.To.X).Attribute("y2", line.To.Y)
                .Attribute("stroke", ScoreLine.On(_card.Base.Paint.Look.Ground).Hex)
                .Attribute("stroke-opacity", ScoreLine.Opacity).Attribute("stroke-width", ScoreLine.Width)
                .Attribute("stroke-dasharray", ScoreLine.Dashes).Close();
            _body.Close();
        }
    }

    private string Open(string name, string title)
    {
        var id = _ids.Claim($"{Side}-{name}");
        _drawn.Add(new(id, title, _card.Base.Location));
        _body.Open("g").Attribute("id", id).Title(title);
        return id;
    }
}
