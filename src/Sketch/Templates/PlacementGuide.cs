using System.Collections.Immutable;
using Sketch.Assembly;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>
/// For each face a page that shows at full size where every piece goes, numbered in the order of assembly, with a list of the numbers.
/// </summary>
internal sealed class PlacementGuide(double width, double height, TemplateLettering lettering)
{
    private const double Gap = 4;

    // Narrower lists break nearly every name.
    private const double NarrowestList = 45;

    /// <summary>The pages of a card, face by face; a face that cannot even be tiled is reported and left out.</summary>
    public IEnumerable<TemplateSheet> Of(LaidOutCard card, bool withMirror, FindingBag findings)
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
                foreach (var sheet in Of(card, face, steps, isMirrored, findings))
                {
                    yield return sheet;
                }
            }
        }
    }

    private IEnumerable<TemplateSheet> Of(
        LaidOutCard card, Face face, ImmutableArray<GuideStep> steps, bool isMirrored, FindingBag findings)
    {
        var title = $"{card.Title}, {face.Name.Replace('-', ' ')}: where each piece "
            + $"goes{(isMirrored ? ", mirrored to trace from the back" : "")}";
        var heading = lettering.Set([.. lettering.Wrap(title, width)]);
        var below = heading.Box.Height + Gap;
        var room = height - below;
        var drawing = new GuideFace(lettering, steps, EdgeOf(card, face), isMirrored);
        var picture = drawing.Draw(isTurned: false);
        if (!IsWithin(picture, room) && drawing.Draw(isTurned: true) is var turned && IsWithin(turned, room))
        {
            picture = turned;
        }

        if (!IsWithin(picture, room))
        {
            return Tiled([drawing.Draw(isTurned: false), drawing.Draw(isTurned: true)], title, face, findings) is { } pages
                ? [.. pages, .. ListPages(title, heading, new(lettering, steps))] : [];
        }

        PlacedBlock[] shown = [new(new(heading.Box.Width, heading.Box.Height, [], [heading]), 0, 0), new(picture, 0, below)];
        var list = new GuideList(lettering, steps);
        if (width - picture.Width - Gap is >= NarrowestList and var narrow && list.Blocks(narrow, room) is [var beside])
        {
            return [new(title, [.. shown, new(beside, picture.Width + Gap, below)])];
        }

        return list.Blocks(width, room - picture.Height - Gap) is [var beneath]
            ? [new(title, [.. shown, new(beneath, 0, below + picture.Height + Gap)])]
            : [new(title, [.. shown]), .. ListPages(title, heading, list)];
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
                title, [new(tile.Block, 0, 0), new(new(label.Box.Width, label.Box.Height, [], [label]), 0, tile.Block.Height + Gap)]);
        });
    }

    private IEnumerable<TemplateSheet> ListPages(string title, TemplateText heading, GuideList list)
    {
        var below = heading.Box.Height + Gap;
        return list.Blocks(width, height - below).Select(
            b => new TemplateSheet(title, [new(new(heading.Box.Width, heading.Box.Height, [], [heading]), 0, 0), new(b, 0, below)]));
    }

    private bool IsWithin(TemplateBlock block, double room) => block.Width <= width && block.Height <= room;

    private static Outline EdgeOf(LaidOutCard card, Face face) => face.Kind == FaceKind.Front
        ? card.Base.Outline
        : Outline.Rectangle(new(Length.Zero, Length.Zero, face.Size.Width, face.Size.Height));
}
