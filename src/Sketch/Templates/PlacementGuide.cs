using System.Collections.Immutable;
using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Templates;

/// <summary>For each face a page that shows in full size where every piece goes, numbered in the order of assembly, with a list of the numbers.</summary>
internal sealed class PlacementGuide(double width, double height, TemplateLettering lettering)
{
    private const double Gap = 4;

    // Narrower lists break nearly every name.
    private const double NarrowestList = 45;

    /// <summary>The pages of a card, face by face; a face that cannot even be tiled is a finding and left out.</summary>
    public IEnumerable<TemplateSheet> Of(LaidOutCard card, bool withMirror, FindingBag findings)
    {
        foreach (var face in card.Faces)
        {
            var steps = GuideStep.Of(card, face.Kind);
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

    private IEnumerable<TemplateSheet> Of(LaidOutCard card, Face face, ImmutableArray<GuideStep> steps, bool isMirrored, FindingBag findings)
    {
        var title = $"{card.Title}, {face.Name.Replace('-', ' ')}: where each piece goes{(isMirrored ? ", mirrored to trace from the back" : "")}";
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
            return Tiled(picture, title, face, steps, findings);
        }

        PlacedBlock[] shown = [new(new(heading.Box.Width, heading.Box.Height, [], [heading]), 0, 0), new(picture, 0, below)];
        var beside = List(steps, width - picture.Width - Gap);
        if (width - picture.Width - Gap >= NarrowestList && beside.Length * TemplateLettering.LineHeight <= room)
        {
            return [new(title, [.. shown, new(Block(beside), picture.Width + Gap, below)])];
        }

        var lines = List(steps, width);
        return lines.Length * TemplateLettering.LineHeight <= room - picture.Height - Gap
            ? [new(title, [.. shown, new(Block(lines), 0, below + picture.Height + Gap)])]
            : [new(title, [.. shown]), .. ListPages(title, steps)];
    }

    private IEnumerable<TemplateSheet> Tiled(Block picture, string title, Face face, ImmutableArray<GuideStep> steps, FindingBag findings)
    {
        var words = 2 * TemplateLettering.LineHeight + Gap;
        if (Tiles.Of(picture, width, height - words) is not { } tiles)
        {
            findings.Add(FindingCatalogue.TooLargeForTemplates, face.Location, $"The {face.Name.Replace('-', ' ')} is {RulerText.Inches(face.Size.Width)} x {RulerText.Inches(face.Size.Height)} in ({RulerText.Millimetres(face.Size.Width)} wide): that would be more than ten pages in a row to join.", "Make the card smaller.");
            return [];
        }

        return [.. tiles.Select(Page), .. ListPages(title, steps)];

        TemplateSheet Page(Tiles.Tile tile)
        {
            var label = lettering.Set([.. lettering.Wrap($"{title}; {tile.Words}", width)]);
            return new(title, [new(tile.Block, 0, 0), new(new(label.Box.Width, label.Box.Height, [], [label]), 0, tile.Block.Height + Gap)]);
        }
    }

    private IEnumerable<TemplateSheet> ListPages(string title, ImmutableArray<GuideStep> steps)
    {
        var perPage = (int)(height / TemplateLettering.LineHeight);
        return List(steps, width).Prepend($"{title}, the numbers").Chunk(perPage).Select(lines => new TemplateSheet(title, [new(Block([.. lines]), 0, 0)]));
    }

    private bool IsWithin(Block block, double room) => block.Width <= width && block.Height <= room;

    private Block Block(ImmutableArray<string> lines)
    {
        var text = lettering.Set(lines);
        return new(text.Box.Width, text.Box.Height, [], [text]);
    }

    private ImmutableArray<string> List(ImmutableArray<GuideStep> steps, double wide) =>
        [.. steps.SelectMany(s => lettering.Wrap(string.Create(CultureInfo.InvariantCulture, $"{s.Number}  {s.Words}"), wide))];

    private static Outline EdgeOf(LaidOutCard card, Face face) => face.Kind == FaceKind.Front
        ? card.Base.Outline
        : Outline.Rectangle(new(Length.Zero, Length.Zero, face.Size.Width, face.Size.Height));
}
