using System.Collections.Immutable;
using System.Globalization;

namespace Sketch.Templates;

/// <summary>The list beside a placement guide: the numbers in a column, and what to attach at each.</summary>
internal sealed class GuideList(TemplateLettering lettering, ImmutableArray<GuideStep> steps)
{
    private const double AfterNumber = 2.5;

    /// <summary>The list in as many blocks as the height requires; a step that takes several lines is not split.</summary>
    public ImmutableArray<TemplateBlock> Blocks(double width, double height)
    {
        var most = Math.Max(1, (int)(height / TemplateLettering.LineHeight));
        var column = lettering.Width(steps.Max(s => s.Number).ToString(CultureInfo.InvariantCulture));
        var blocks = ImmutableArray.CreateBuilder<TemplateBlock>();
        var texts = ImmutableArray.CreateBuilder<TemplateText>();
        var lines = 0;
        foreach (var step in steps.OrderBy(s => s.Number))
        {
            var words = lettering.Wrap($"{step.Words}, {step.Place}", width - column - AfterNumber);
            if (lines > 0 && lines + words.Length > most)
            {
                End();
            }

            var top = lines * TemplateLettering.LineHeight;
            var number = lettering.Set(step.Number.ToString(CultureInfo.InvariantCulture));
            texts.Add(number.Shift(column - number.Box.Width, top));
            texts.Add(lettering.Set(words).Shift(column + AfterNumber, top));
            lines += words.Length;
        }

        End();
        return blocks.ToImmutable();

        void End()
        {
            blocks.Add(new(texts.Max(t => t.Box.Right), lines * TemplateLettering.LineHeight, [], texts.ToImmutable()));
            texts.Clear();
            lines = 0;
        }
    }
}
