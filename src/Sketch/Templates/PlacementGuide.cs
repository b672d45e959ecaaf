using System.Collections.Immutable;
using Sketch.Assembly;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>
/// For each face a guide that shows at full size where every piece goes, numbered in the order of assembly, with a list of the numbers.
/// </summary>
internal sealed class PlacementGuide(double width, double height, TemplateLettering lettering)
{
    private const double Gap = 4;

    // Narrower lists break nearly every name.
    private const double NarrowestList = 45;

    private static readonly double[] NarrowLists = [60, 90, 120];

    /// <summary>The guides of a card, face by face; a face that cannot even be tiled is reported and left out.</summary>
    public IEnumerable<Guide> Of(LaidOutCard card, bool withMirror, FindingBag findings)
    {
        var assembly = AssemblyOrder.Of(card);
        foreach (var face in card.Faces)
        {
            var steps = GuideStep.Of(card, assembly, face.Kind);
            if (steps.IsEmpty)
            {
                continue;
            }

            foreach (var isMirrored in withMirror ? new[] { false, true } : [false])
            {
                yield return Of(card, face, steps, isMirrored, findings);
            }
        }
    }

    private Guide Of(LaidOutCard card, Face face, ImmutableArray<GuideStep> steps, bool isMirrored, FindingBag findings)
    {
        var title = $"{card.Title}, {face.Name.Replace('-', ' ')}: where each piece "
            + $"goes{(isMirrored ? ", mirrored to trace from the back" : "")}";
        var drawing = new GuideFace(lettering, steps, EdgeOf(card, face), isMirrored);
        var list = new GuideList(lettering, steps);
        TemplateBlock[] pictures = [drawing.Draw(isTurned: false), drawing.Draw(isTurned: true)];
        foreach (var picture in pictures)
        {
            if (Ways(title, picture, list) is { IsEmpty: false } ways)
            {
                return new(title, ways, []);
            }
        }

        var heading = lettering.Set([.. lettering.Wrap(title, width)]);
        var below = heading.Box.Height + Gap;
        if (Array.Find(pictures, p => p.Width <= width && p.Height <= height - below) is { } whole)
        {
            return new(title, [], [new(title, [new(BlockOf(heading), 0, 0), new(whole, 0, below)]), .. ListPages(title, heading, list)]);
        }

        return new(title, [], Tiled(pictures, title, face, findings) is { } tiles ? [.. tiles, .. ListPages(title, heading, list)] : []);
    }

    // The list is beside the picture or beneath it, narrow or wide, so that the guide fits where pieces leave room.
    private ImmutableArray<TemplateBlock> Ways(string title, TemplateBlock picture, GuideList list)
    {
        var beside = width - picture.Width - Gap;
        double[] narrower = [.. NarrowLists.Where(w => w < beside).Append(beside).Where(w => w >= NarrowestList)];
        var narrowest = Math.Max(picture.Width, NarrowestList);
        double[] beneath = [.. NarrowLists.Append(picture.Width).Where(w => w >= narrowest && w < width), width];
        return
        [
            .. narrower.Select(w => With(title, picture, list, w, isBeside: true))
                .Concat(beneath.Select(w => With(title, picture, list, w, isBeside: false))).OfType<TemplateBlock>()
                .DistinctBy(b => (b.Width, b.Height)),
        ];
    }

    private TemplateBlock? With(string title, TemplateBlock picture, GuideList list, double listWidth, bool isBeside)
    {
        var (left, top) = isBeside ? (picture.Width + Gap, 0.0) : (0.0, picture.Height + Gap);
        if (picture.Width > width || list.Blocks(listWidth, height - top) is not [var steps])
        {
            return null;
        }

        var across = Math.Max(picture.Width, left + steps.Width);
        var heading = lettering.Set([.. lettering.Wrap(title, across)]);
        var below = heading.Box.Height + Gap;
        var down = below + Math.Max(picture.Height, top + steps.Height);
        if (down > height || Math.Max(across, heading.Box.Width) > width)
        {
            return null;
        }

        var (face, words) = (picture.Shift(0, below), steps.Shift(left, top + below));
        return new(Math.Max(across, heading.Box.Width), down, face.Lines, [heading, .. face.Texts, .. words.Texts]);
    }

    private IEnumerable<TemplateSheet>? Tiled(IEnumerable<TemplateBlock> ways, string title, Face face, FindingBag findings)
    {
        var words = 4 * TemplateLettering.LineHeight + Gap;
        if (Tiles.Fewest(ways, width, height - words) is not { } tiles)
        {
            findings.Add(FindingCatalogue.TooLargeForTemplates, face.Location,
                $"The {face.Name.Replace('-', ' ')} is {PieceTitle.Size(face.Size, UnitSystem.Inches)} "
                    + $"({PieceTitle.Size(face.Size, UnitSystem.Millimetres)}): that would be more than ten pages in a row to join.",
                        "Make the card smaller.");
            return null;
        }

        return tiles.Select(tile =>
        {
            var label = lettering.Set([.. lettering.Wrap($"{title}; {tile.Words}. {Tiles.HowToJoin}", width)]);
            return new TemplateSheet(
                title, [new(tile.Block, 0, 0), new(BlockOf(label), 0, tile.Block.Height + Gap)]);
        });
    }

    private IEnumerable<TemplateSheet> ListPages(string title, TemplateText heading, GuideList list)
    {
        var below = heading.Box.Height + Gap;
        return list.Blocks(width, height - below).Select(
            b => new TemplateSheet(title, [new(BlockOf(heading), 0, 0), new(b, 0, below)]));
    }

    private static TemplateBlock BlockOf(TemplateText text) => new(text.Box.Width, text.Box.Height, [], [text]);

    private static Outline EdgeOf(LaidOutCard card, Face face) => face.Kind == FaceKind.Front
        ? card.Base.Outline
        : Outline.Rectangle(new(Length.Zero, Length.Zero, face.Size.Width, face.Size.Height));
}
