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
    public void A_card_takes_at_most_a_page_more_than_its_pieces_and_labels_fill(int seed) => HasFewPages(Printed.Of([RandomCard(seed)]));

    [Fact]
    public void So_does_every_sample() => Assert.All(Printed.Samples(), card => HasFewPages(Printed.Of([card])));

    private static void KeepsApart(CardTemplates templates)
    {
        Assert.All(templates.Sheets, sheet =>
        {
            var boxes = sheet.Blocks.Select(b => b.Box).ToList();
            Assert.All(boxes, b => Assert.True(new Bounds(0, 0, Width, Height).Grow(0.001).Covers(b), $"{b} leaves the page"));
            for (var i = 0; i < boxes.Count; i++)
            {
                Assert.DoesNotContain(boxes.Skip(i + 1), b => b.Grow(-0.001).Overlaps(boxes[i]));
            }
        });
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void Blocks_stay_on_the_page_and_clear_of_each_other(int seed) =>
        KeepsApart(Printed.Of([RandomCard(seed), RandomCard(seed + 1000)]));

    [Fact]
    public void So_do_those_of_every_sample() =>
        Assert.All(Printed.Samples(), card =>
            KeepsApart(Printed.Of([card], Printed.OnLetter with { Hollow = TemplateOptions.UsualGluing })));

    [Fact]
    public void No_label_lies_across_a_line_to_cut_or_fold()
    {
        foreach (var sheet in Printed.Samples()
            .SelectMany(c => Printed.Of([c], Printed.OnLetter with { Hollow = TemplateOptions.UsualGluing }).Sheets))
        {
            foreach (var block in sheet.Blocks.Select(b => b.Block))
            {
                var stretches = block.Lines.Where(l => l.Kind is LineKind.Cut or LineKind.Fold).SelectMany(Stretches).ToList();
                Assert.All(block.Texts, t => Assert.DoesNotContain(stretches, s => Crosses(s.From, s.To, t.Letters.Bounds)));
            }
        }

        static IEnumerable<(Point From, Point To)> Stretches(TemplateLine line) => line.Contours.Select(c => c.Flatten(0.05))
            .SelectMany(p => p.Zip(p.Skip(1).Concat(line.IsClosed ? [p[0]] : [])));

        // A stretch misses a box when all corners of the box lie on one side of it, or it ends before the box on one axis.
        static bool Crosses(Point a, Point b, Bounds box)
        {
            if (Math.Max(a.X, b.X) <= box.Left || Math.Min(a.X, b.X) >= box.Right || Math.Max(a.Y, b.Y) <= box.Top
                || Math.Min(a.Y, b.Y) >= box.Bottom)
            {
                return false;
            }

            var sides = new[] { new Point(box.Left, box.Top), new(box.Right, box.Top), new(box.Left, box.Bottom),
                new(box.Right, box.Bottom) }
                .Select(c => Math.Sign((b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X)));
            return sides.Distinct().Count() > 1;
        }
    }
}
