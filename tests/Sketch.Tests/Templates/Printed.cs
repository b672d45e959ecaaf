using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Output.Rendering;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Templates;
using Sketch.Tests.Layout;
using Sketch.Units;
using Sketch.World;
using Xunit;

namespace Sketch.Tests.Templates;

/// <summary>Templates of cards in the built-in font, as printed.</summary>
internal static class Printed
{
    private static readonly IWorld World = new FolderFiles(fonts: new FontLibrary([]));

    public static readonly TemplateOptions OnLetter = new(PageFormat.Letter, PrinterScale.True);

    /// <summary>A rectangle, a circle and a strip with a wrap, on a card whose base fits on the same page.</summary>
    public const string Shapes =
        "card \"Test\"\nbase 3 x 4, fold left, of white\nfront\n  field: panel 2 x 3, of blue\n    disc: circle 1 1/2, of red\n  band: "
            + "strip 2 1/2 x 1/4, bottom 0, of cream, wrap 1/4\n";

    /// <summary>A card whose words are set in the built-in font.</summary>
    public static LaidOutCard Lay(string text) => Laid.Out(text, World);

    public static CardTemplates Of(string text, TemplateOptions? options = null) => Of([Lay(text)], options);

    public static CardTemplates Of(IReadOnlyList<LaidOutCard> cards, TemplateOptions? options = null)
    {
        var findings = new FindingBag();
        var templates = CardTemplates.Make(cards, options ?? OnLetter, World, findings);
        Assert.DoesNotContain(findings.ToImmutable(), f => f.Severity == Severity.Error);
        return templates!;
    }

    private static readonly Lazy<ImmutableArray<LaidOutCard>> AllSamples = new(() =>
        [.. Directory.GetFiles(Project.Repository.PathTo("sketches"), "*.card").Order(StringComparer.Ordinal)
        .Select(f => Compiler.Compile(FolderFiles.ReadFile(f).Source!, World).Card!)]);

    private static readonly Lazy<ImmutableArray<CardTemplates>> AllWhole = new(() => [.. AllSamples.Value.Select(c => Of([c]))]);

    private static readonly Lazy<ImmutableArray<CardTemplates>> AllHollow = new(() =>
        [.. AllSamples.Value.Select(c => Of([c], OnLetter with { Hollow = GlueMargin.Usual }))]);

    /// <summary>The cards in the folder of sketches, laid out once for all tests.</summary>
    public static ImmutableArray<LaidOutCard> Samples() => AllSamples.Value;

    /// <summary>The templates of each of them, made once for all tests.</summary>
    public static ImmutableArray<CardTemplates> SampleTemplates() => AllWhole.Value;

    /// <summary>The same templates with hidden parts cut out.</summary>
    public static ImmutableArray<CardTemplates> HollowSampleTemplates() => AllHollow.Value;

    public static byte[] Pdf(CardTemplates templates)
    {
        using var stream = new MemoryStream();
        Assert.Null(SvgRenderer.WritePdf(templates.Pages, "Test", stream));
        return stream.ToArray();
    }

    public static Size Inches(int width, int height) => new(Length.Inch(width), Length.Inch(height));

    /// <summary>The box of a line on its page, in millimetres from the upper left corner of the paper.</summary>
    public static Bounds OnPaper(PlacedBlock block, TemplateLine line, PrinterScale scale)
    {
        var box = line.Bounds;
        var margin = PageFormat.Margin.Millimetres;
        return new(
            (box.Left + block.Left) / scale.Value + margin, (box.Top + block.Top) / scale.Value + margin,
            (box.Right + block.Left) / scale.Value + margin, (box.Bottom + block.Top) / scale.Value + margin);
    }

    /// <summary>The line with this name, its page (from 0) and its block.</summary>
    public static (int Page, PlacedBlock Block, TemplateLine Line) Line(this CardTemplates templates, string name) =>
        templates.Sheets.SelectMany((s, page) => s.Blocks.SelectMany(b => b.Block.Lines.Select(l => (page, b, l))))
            .First(l => l.l.Name == name);
}
