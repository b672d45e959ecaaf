using System.Collections.Immutable;
using System.Globalization;
using Sketch.Drawing;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>
/// The picture of a placement guide: the face's edge, the outline of every piece, and the numbers, each inside its piece if enough of that
/// shows, else at the side with a line to it.
/// </summary>
internal sealed class GuideFace(TemplateLettering lettering, ImmutableArray<GuideStep> steps, Outline edge, bool isMirrored)
{
    private const double FromEdge = 2;
    private const double Room = 0.6;
    private const double Square = 0.5;

    // A thin digit in a narrow border would be lost among the lines.
    private const double NarrowestNumber = 4;

    private sealed record Callout(TemplateText Number, Point Target);

    /// <summary>The picture, upright or given a quarter turn to fit the page; the numbers are always upright.</summary>
    public TemplateBlock Draw(bool isTurned)
    {
        var placement = Placement(isTurned);
        var outlines = steps.Select(s => (Step: s, Outlines: s.Outlines.Select(o => o.Transform(placement)).ToImmutableArray()))
            .ToImmutableArray();
        var face = edge.Transform(placement);
        var box = outlines.SelectMany(o => o.Outlines).Aggregate(face.Bounds, (all, one) => all.With(one.Bounds));
        var written = steps.Select(s => (s.Number, Boxes: s.Written.Select(o => o.Transform(placement)).ToImmutableArray()))
            .ToImmutableArray();
        var map = new RoomMap([.. outlines.SelectMany(o => o.Outlines)], [face, .. written.SelectMany(w => w.Boxes)], Square);
        var lines = ImmutableArray.CreateBuilder<TemplateLine>();
        var texts = ImmutableArray.CreateBuilder<TemplateText>();
        var callouts = new List<Callout>();
        lines.Add(TemplateLine.Around(LineKind.Edge, "edge", face));
        var index = 0;
        foreach (var (step, copies) in outlines)
        {
            var number = lettering.Set(step.Number.ToString(CultureInfo.InvariantCulture));
            Point? target = null;
            var isNumbered = false;
            foreach (var copy in copies)
            {
                lines.Add(TemplateLine.Around(LineKind.Place, $"{step.Number} {step.Words}", copy));
                if (map.RoomFor(index, Math.Max(number.Box.Width, NarrowestNumber) + 2 * Room, number.Box.Height - 1
                    + 2 * Room) is { } centre)
                {
                    texts.Add(number.CentredAt(centre));
                    isNumbered = true;
                }

                target ??= map.Seen(index) ?? copy.Bounds.Centre;
                index++;
            }

            if (!isNumbered)
            {
                callouts.Add(new(number, target!.Value));
            }
        }

        lines.AddRange(written.SelectMany(w => w.Boxes.Select(b => TemplateLine.Around(LineKind.Place, $"words on {w.Number}", b))));
        AddCallouts(callouts, box, lines, texts);
        return Boxed(box, lines.ToImmutable(), texts.ToImmutable());
    }

    private Affine Placement(bool isTurned)
    {
        var box = edge.Bounds;
        var mirror = isMirrored ? new Affine(-1, 0, 0, 1, box.Width, 0) : Affine.Identity;
        return mirror.Then(isTurned ? new Affine(0, 1, -1, 0, box.Height, 0) : Affine.Identity);
    }

    /// <summary>Numbers go into the nearer column, in the order of what they point to, pushed apart where they would touch.</summary>
    private static void AddCallouts(
        List<Callout> callouts, Bounds box, ImmutableArray<TemplateLine>.Builder lines, ImmutableArray<TemplateText>.Builder texts)
    {
        foreach (var side in callouts.GroupBy(c => c.Target.X < box.Centre.X).OrderBy(g => !g.Key))
        {
            var isLeft = side.Key;
            var sorted = side.OrderBy(c => c.Target.Y).ToList();
            var tops = CalloutColumn.Tops(
                [.. sorted.Select(c => c.Target.Y)], TemplateLettering.LineHeight, double.NegativeInfinity, box.Top, box.Bottom);
            for (var i = 0; i < sorted.Count; i++)
            {
                var (number, target) = sorted[i];
                var inner = isLeft ? box.Left - FromEdge : box.Right + FromEdge;
                var text = number.Shift(isLeft ? inner - number.Box.Width : inner, tops[i]);
                texts.Add(text);
                lines.Add(TemplateLine.Through(
                    LineKind.Mark, $"leader {number.Words}", new(inner + (isLeft ? 0.7 : -0.7), text.Box.Centre.Y), target));
            }
        }
    }

    private static TemplateBlock Boxed(Bounds box, ImmutableArray<TemplateLine> lines, ImmutableArray<TemplateText> texts)
    {
        var all = texts.Aggregate(box, (whole, text) => whole.With(text.Box));
        return new TemplateBlock(all.Width, all.Height, lines, texts).Shift(-all.Left, -all.Top);
    }
}
