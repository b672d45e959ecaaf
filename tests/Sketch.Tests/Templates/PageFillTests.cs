using System.Globalization;
using System.Text;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Templates;
using Sketch.Tests.Layout;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Templates;

public sealed class PageFillTests
{
    private const double Foot = 1 + 2 * TemplateLettering.LineHeight;

    private static readonly double Width = (PageFormat.Letter.Size.Width - PageFormat.Margin * 2).Millimetres;
    private static readonly double Height = (PageFormat.Letter.Size.Height - PageFormat.Margin * 2).Millimetres - Foot;

    public static TheoryData<int> Seeds() => new(Enumerable.Range(1, 200));

    private static IEnumerable<TemplateSheet> PieceSheets(CardTemplates templates) =>
        templates.Sheets.Where(s => s.Title.StartsWith("Templates for", StringComparison.Ordinal));

    /// <summary>A card of up to a dozen pieces of all shapes, some larger than a quarter of a page.</summary>
    private static LaidOutCard RandomCard(int seed)
    {
        var random = new Random(seed);
        string[] shapes = ["panel", "strip", "star", "heart", "hexagon", "tag", "banner", "oval", "scallop", "arch"];
        string[] sizes = ["A2", "US A7", "5 x 5", "slimline", "ISO A6", "3 x 3"];
        var text = new StringBuilder($"card \"Test\"\nbase {sizes[random.Next(sizes.Length)]}, of white\nfront\n");
        for (var i = random.Next(1, 13); i > 0; i--)
        {
            var (width, height) = (random.Next(4, 49), random.Next(4, 73));
            text.Append(CultureInfo.InvariantCulture,
                $"  {shapes[random.Next(shapes.Length)]} {Sixteenths(width)} x {Sixteenths(height)}, of navy\n");
        }

        return Laid.Out(text.ToString());

        static string Sixteenths(int count) => LengthFormat.Ruler(Length.Inch(0, count, 16));
    }

    private static void HasFewPages(CardTemplates templates)
    {
        var sheets = PieceSheets(templates).ToList();
        var area = sheets.SelectMany(s => s.Blocks).Sum(b => b.Block.Area);
        Assert.InRange(sheets.Count, 1, (int)Math.Ceiling(area / (Width * Height)) + 1);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_card_takes_at_most_one_page_more_than_the_area_of_its_pieces_and_labels(int seed) =>
        HasFewPages(Printed.Of([RandomCard(seed)]));

    [Fact]
    public void Every_sample_takes_at_most_one_page_more_than_the_area_of_its_pieces_and_labels() =>
        Assert.All(Printed.SampleTemplates(), HasFewPages);

    private static void KeepsApart(CardTemplates templates)
    {
        Assert.All(templates.Sheets, sheet =>
        {
            var boxes = sheet.Blocks.Select(b => b.Box).ToList();
            Assert.All(boxes, b => Assert.True(new Bounds(0, 0, Width, Height).Grow(0.001).Covers(b), $"{b} is not entirely on the page"));
            for (var i = 0; i < boxes.Count; i++)
            {
                Assert.DoesNotContain(boxes.Skip(i + 1), b => b.Grow(-0.001).Overlaps(boxes[i]));
            }
        });
    }

    [Theory]
    [InlineData("")]
    [InlineData("front\n  text \"ahoy\"\n")]
    public void A_piece_that_leaves_no_room_for_the_notes_goes_on_the_next_page(string pieces) =>
        Assert.Equal(2, Printed.Of($"card \"Test\"\nbase US A6, fold left, of white\n{pieces}").Pages.Length);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Blocks_are_on_the_page_and_do_not_overlap(int seed) =>
        KeepsApart(Printed.Of([RandomCard(seed), RandomCard(seed + 1000)]));

    [Fact]
    public void Blocks_of_every_sample_are_on_the_page_and_do_not_overlap() =>
        Assert.All(Printed.HollowSampleTemplates(), KeepsApart);

    [Fact]
    public void No_label_crosses_a_line_to_cut_or_fold()
    {
        foreach (var sheet in Printed.HollowSampleTemplates().SelectMany(t => t.Sheets))
        {
            foreach (var block in sheet.Blocks.Select(b => b.Block))
            {
                var stretches = block.Lines.Where(l => l.Kind is LineKind.Cut or LineKind.Fold).SelectMany(Stretch.Of).ToList();
                Assert.All(block.Texts.Select(t => t.Letters.Bounds), box => Assert.DoesNotContain(stretches, s => s.Crosses(box)));
            }
        }
    }
}
