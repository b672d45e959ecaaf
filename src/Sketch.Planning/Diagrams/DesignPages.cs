using System.Globalization;
using Sketch.Assembly;
using Sketch.Counts;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Planning.Summary;
using Sketch.Units;

namespace Sketch.Planning.Diagrams;

/// <summary>The pages of one design: the finished card, its layers parted and numbered, the steps, and boxes to tick.</summary>
internal sealed class DesignPages(DesignInstructions design, Lettering lettering, SvgIds ids)
{
    private const double FrontWidth = 66;
    private const double PicturesHeight = 88;
    private const double PictureWidth = 178;
    private const double SmallHeight = 48;
    private const double Gap = 6;
    private const double CaptionHeight = 6;

    // A heading, the sentence beneath it and the gaps around them, in lines.
    private const int HeadingLines = 5;

    /// <summary>Writes them; they begin on a new page.</summary>
    public void Write(PageFlow flow)
    {
        var card = design.Design.Card;
        flow.EndPage();
        flow.Heading(design.Title);
        flow.Paragraph(design.Introduction);
        flow.Gap();
        flow.Drawing(PicturesHeight, svg => Pictures(svg, flow.Width));
        flow.Gap();
        foreach (var step in design.Steps)
        {
            flow.Item(step.Number.ToString(CultureInfo.InvariantCulture), design.TextOf(step));
        }

        var others = card.Faces.Select(f => f.Kind).Where(f => f != FaceKind.Front).ToList();
        if (others.Count > 0)
        {
            flow.Gap();
            flow.Drawing(SmallHeight + CaptionHeight, svg => Others(svg, others, flow.Width));
        }

        foreach (var section in design.After)
        {
            flow.Section(section);
        }

        Boxes(flow);
    }

    /// <summary>The pictures alone, as SVG.</summary>
    public string Picture(bool inInches)
    {
        var size = new Size(Length.NearestMillimetres(PictureWidth + 1), Length.NearestMillimetres(PicturesHeight));
        var svg = SvgWriter.Sheet(size, inInches, $"{design.Design.Card.Title}: the finished card and its layers, numbered by step");
        Pictures(svg, PictureWidth);
        return svg.Close().ToString();
    }

    private void Pictures(SvgWriter svg, double width)
    {
        var card = design.Design.Card;
        Face(svg, FaceKind.Front, FrontWidth, PicturesHeight);
        if (ExplodedPicture.Of(card, FaceKind.Front) is { } exploded)
        {
            svg.Open("g").Transform(Shapes.Affine.Shift(FrontWidth + Gap, 0));
            new ExplodedFigure(exploded, FaceKind.Front, design.Steps, lettering)
                .Draw(svg, ids, width - FrontWidth - Gap, PicturesHeight);
            svg.Close();
        }
    }

    private void Others(SvgWriter svg, List<FaceKind> faces, double width)
    {
        var column = (width + Gap) / Math.Max(2, faces.Count);
        for (var i = 0; i < faces.Count; i++)
        {
            svg.Open("g").Transform(Shapes.Affine.Shift(i * column, 0));
            Face(svg, faces[i], column - Gap, SmallHeight);
            svg.Close();
            lettering.Write(svg, Panels.Face.NameOf(faces[i]).Replace('-', ' '), i * column, SmallHeight + CaptionHeight - 1,
                PageFlow.Points, colour: PageFlow.Ink);
        }
    }

    private void Face(SvgWriter svg, FaceKind face, double width, double height)
    {
        var size = CardDrawing.SizeOf(design.Design.Card, face);
        var scale = Math.Min(width / size.Width.Millimetres, height / size.Height.Millimetres);
        svg.Open("g").Transform(Shapes.Affine.Scale(scale, scale))
            .Insert(CardDrawing.Part(design.Design.Card, face, CardDrawing.UsualDotsPerInch, ids)).Close();
    }

    private void Boxes(PageFlow flow)
    {
        var boxes = new TickBoxes([.. CountStages.OfWork.Select(s => s.Title())], design.Design.ToEnclose, lettering);
        flow.Together(PageFlow.HeightOf(HeadingLines) + boxes.HeightFor(flow.Width));
        flow.Section(new("Tick what is done", [boxes.CardsOfBox == 1 ? "One box for each card." : "One box for every 10 cards."]));
        flow.Gap();
        flow.Drawing(boxes.HeightFor(flow.Width), svg => boxes.Draw(svg, flow.Width));
    }
}
