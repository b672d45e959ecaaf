using System.Collections.Immutable;
using Sketch.Drawing;
using Sketch.Messages;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Diagrams;

/// <summary>
/// The messages at full size: strips with lines to cut along, and guides to lay beneath the paper for those that are written by hand.
/// </summary>
internal sealed class MessagePages(BatchFiles files, LengthFormat lengths)
{
    private const string CutColour = "#777777";
    private const string GuideColour = "#8a8a8a";
    private const double BarTop = 2;
    private const double BarMark = 2;
    private const double BarHeight = 9;
    private const int HeadingLines = 3;

    /// <summary>Writes the pages; nothing where no message can be set.</summary>
    public void Write(PageFlow flow)
    {
        var set = MessageList.Of(files).Select(w => (Written: w, Place: MessagePlace.Of(w.Design.Card)))
            .Where(w => w.Place is not null)
            .Select(w => new Ready(w.Written, w.Place!, SetMessage.In(w.Place!, w.Written.Message, w.Written.Design.Card, files.World)))
            .Where(r => r.Set is not null).ToList();
        if (set.Count == 0)
        {
            return;
        }

        flow.Heading("Messages", isTitle: true);
        flow.Paragraph("Print at 100 %, no fit to page. The line below is "
            + (lengths.Metric ? "100 mm long, with a mark at each centimetre." : "4 in long, with a mark at each inch."));
        flow.Drawing(BarHeight, DrawBar);
        foreach (var group in set.Where(r => !r.Written.Message.IsByHand).GroupBy(r => (r.Written.Design, r.Written.For)))
        {
            Strips(flow, [.. group]);
        }

        foreach (var group in set.Where(r => r.Written.Message.IsByHand).GroupBy(r => (r.Written.Design, r.Written.Message.ToString())))
        {
            Guide(flow, group.First(), group.Sum(r => r.Written.Cards));
        }
    }

    private void DrawBar(SvgWriter svg)
    {
        var (step, count) = lengths.Metric ? (10.0, 10) : (25.4, 4);
        Line(svg, 0, BarTop, step * count, BarTop, PageFlow.Ink);
        for (var i = 0; i <= count; i++)
        {
            Line(svg, i * step, BarTop, i * step, BarTop + BarMark, PageFlow.Ink);
        }
    }

    private void Strips(PageFlow flow, ImmutableArray<Ready> strips)
    {
        var first = strips[0];
        var cards = strips.Sum(s => s.Written.Cards);
        var (width, height) = (first.Place.Box.Width.Millimetres, first.Place.Box.Height.Millimetres);
        var isTurned = width > flow.Width && height <= flow.Width;
        var (across, down) = isTurned ? (height, width) : (width, height);
        var title = $"{first.Written.Design.Card.Title}, {first.Written.For?.Whom ?? "spare cards"}: "
            + $"{Counted.Of(cards, "strip")} of {lengths.Text(first.Place.Box.Size)}";
        flow.Together(PageFlow.HeightOf(HeadingLines) + Math.Min(down, flow.Height));
        flow.Gap();
        flow.Heading(title);
        if (across > flow.Width || down > flow.Height)
        {
            flow.Paragraph("These strips are larger than the page: write the message by hand.");
            return;
        }

        if (strips.Any(s => s.Written.Person is { } name && !s.Set!.Lines.Any(l => l.Contains(name, StringComparison.Ordinal))))
        {
            flow.Paragraph($"In rows from the left: {string.Join(", ", strips.Select(s => s.Written.Person))}.");
        }

        var all = strips.SelectMany(s => Enumerable.Repeat(s.Set!, s.Written.Cards)).ToList();
        foreach (var row in all.Chunk(Math.Max(1, (int)((flow.Width + 1e-6) / across))))
        {
            // A row on a new page says again whose it is, if there is room for both.
            if (down > flow.Left && down + PageFlow.HeightOf(HeadingLines) <= flow.Height)
            {
                flow.EndPage();
                flow.Heading($"{title}, continued");
            }

            flow.Drawing(down, svg => Row(svg, row, across, down, isTurned));
        }
    }

    private static void Row(SvgWriter svg, SetMessage[] row, double across, double down, bool isTurned)
    {
        for (var i = 0; i < row.Length; i++)
        {
            svg.Open("rect").Attribute("x", i * across).Attribute("y", 0).Attribute("width", across).Attribute("height", down)
                .Attribute("fill", "none").Attribute("stroke", CutColour).Attribute("stroke-width", 0.2).Close();
            var place = isTurned ? Affine.Turn(90, default).Then(Affine.Shift((i + 1) * across, 0)) : Affine.Shift(i * across, 0);
            Ink(svg, row[i], place, PageFlow.Ink);
        }
    }

    private static void Guide(PageFlow flow, Ready guide, int cards)
    {
        var (card, face) = (guide.Written.Design.Card, guide.Place.Face);
        var size = card.SizeOf(face);
        flow.Together(PageFlow.HeightOf(HeadingLines * 2) + size.Height.Millimetres);
        flow.Gap();
        flow.Heading($"{card.Title}, guide for {Counted.Of(cards, "card")}{(guide.Written.Person is { } name ? $": {name}" : "")}");
        flow.Paragraph($"Lay the guide under the {Face.NameOf(face).Replace('-', ' ')} of the card, edges aligned, over a light box or "
            + "against a window, and trace the letters.");
        if (size.Width.Millimetres > flow.Width || size.Height.Millimetres > flow.Height)
        {
            flow.Paragraph("The card is larger than the page, so there is no guide for it.");
            return;
        }

        flow.Gap();
        flow.Drawing(size.Height.Millimetres, svg =>
        {
            svg.Open("rect").Attribute("width", size.Width.Millimetres).Attribute("height", size.Height.Millimetres)
                .Attribute("fill", "none").Attribute("stroke", CutColour).Attribute("stroke-width", 0.2)
                .Attribute("stroke-dasharray", "2 1").Close();
            var (left, top) = (guide.Place.Box.Left.Millimetres, guide.Place.Box.Top.Millimetres);
            if (guide.Place.Lines is { } apart)
            {
                for (var y = apart.Millimetres; y <= guide.Place.Box.Height.Millimetres + 1e-6; y += apart.Millimetres)
                {
                    Line(svg, left, top + y, left + guide.Place.Box.Width.Millimetres, top + y, CutColour);
                }
            }

            Ink(svg, guide.Set!, Affine.Shift(left, top), GuideColour);
        });
    }

    private static void Ink(SvgWriter svg, SetMessage set, Affine place, string colour)
    {
        if (!set.Ink.IsEmpty)
        {
            svg.Open("path").Attribute("fill", colour).Attribute("d", set.Ink.Transform(place).ToSvgPath())
                .Title(string.Join(" / ", set.Lines)).Close();
        }
    }

    private static void Line(SvgWriter svg, double x1, double y1, double x2, double y2, string colour) => svg.Open("line")
        .Attribute("x1", x1).Attribute("y1", y1).Attribute("x2", x2).Attribute("y2", y2)
        .Attribute("stroke", colour).Attribute("stroke-width", 0.2).Close();

    private readonly record struct Ready(WrittenMessage Written, MessagePlace Place, SetMessage? Set);
}
