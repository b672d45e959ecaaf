using System.Text;
using CsCheck;
using Sketch.Lettering;
using Sketch.Output.Folders;
using Sketch.Output.Lettering;
using Sketch.Shapes;
using Sketch.Tests.Output.Files;
using SkiaSharp;
using Xunit;

namespace Sketch.Tests.Output.Lettering;

public sealed class LetteringTests
{
    private static readonly FontLibrary Fonts = new([]);

    [Theory]
    [InlineData("Inter")]
    [InlineData("Inter bold")]
    [InlineData("inter THIN")]
    public void A_capital_H_is_one_millimetre_tall_and_stands_on_the_baseline(string font)
    {
        var box = Shape("H", font).Outline.Bounds;
        Assert.Equal((-1, 0), (Math.Round(box.Top, 4), Math.Round(box.Bottom, 4)));
    }

    [Fact]
    public void Words_start_at_their_leftmost_ink() => Assert.Equal(0, Shape("  jib").Outline.Bounds.Left, 9);

    [Fact]
    public void Letters_advance_by_the_widths_that_Skia_reads_from_the_font()
    {
        using var typeface = OwnTypeface();
        using var font = new SKFont(typeface, typeface.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
        var first = Shape("HH").Outline.Contours.Select(c => c.Bounds.Left).Order().ToList();
        var advance = font.MeasureText("H") / font.Metrics.CapHeight;
        Assert.Equal(advance, first[1] - first[0], 4);
    }

    [Fact]
    public void Skia_reads_the_same_cap_height_from_the_font()
    {
        using var typeface = OwnTypeface();
        using var font = new SKFont(typeface, typeface.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
        using var path = font.GetGlyphPath(font.GetGlyph('E'));
        Assert.Equal(path!.TightBounds.Width / font.Metrics.CapHeight, Shape("E").Outline.Bounds.Width, 4);
    }

    [Theory]
    [InlineData("AV")]
    [InlineData("To")]
    public void Kerned_pairs_are_narrower_than_their_letters_side_by_side(string pair)
    {
        using var typeface = OwnTypeface();
        using var font = new SKFont(typeface, typeface.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
        using var unkerned = font.GetTextPath(pair);
        var apart = unkerned.TightBounds.Width / font.Metrics.CapHeight;
        Assert.True(Shape(pair).Outline.Bounds.Width < apart);
    }

    [Fact]
    public void Letters_that_do_not_touch_keep_their_curves()
    {
        var av = Shape("oo").Outline;
        Assert.Equal(4, av.Contours.Length);
        Assert.All(av.Contours, c => Assert.Contains(c.Segments, s => !s.IsLine));
    }

    [Theory]
    [InlineData("o\u0338")] // a stroke laid over a letter
    [InlineData("A\u0336V\u0336A\u0336")]
    [InlineData("Thinking of you & Łódź Ø ½ @ 8")]
    [InlineData("QŒÆß%")]
    public void Outlines_do_not_overlap(string words)
    {
        var outline = Shape(words).Outline;
        Assert.Equal(1, Outline.Union([outline]).Area / outline.Area, 3);
    }

    [Fact]
    public void Strokes_over_letters_are_united_with_them() =>
        Assert.True(Shape("H\u0336").Outline.Area < Shape("H").Outline.Area + Shape("\u0336").Outline.Area - 0.001);

    [Theory]
    [InlineData("e")] // Inter draws the bar of an e as a contour of its own that runs into the bowl
    [InlineData("R")]
    [InlineData("Øfte")]
    public void Overlapping_strokes_are_united_as_curves(string letters) =>
        Assert.All(Shape(letters).Outline.Contours.Where(c => c.Segments.Length > 12), c => Assert.Contains(c.Segments, s => !s.IsLine));

    [Fact]
    public void A_letter_keeps_its_hole() =>
        Assert.True(Shape("O").Outline.Area < 0.6 * Shape("O").Outline.WithoutHoles().Area);

    [Fact]
    public void A_character_missing_from_the_font_is_reported_once() => Assert.Equal("日👍", Shape("日 a 日👍").MissingCharacters);

    [Fact]
    public void Nothing_is_missing_from_everyday_words() =>
        Assert.Equal("", Shape("Fair winds & calm seas – “voilà”, größer, 1½ Łódź").MissingCharacters);

    [Fact]
    public void Spaces_have_no_outline() => Assert.Empty(Shape(" \t ").Outline.Contours);

    [Fact]
    public void Any_words_can_be_shaped() => Gen.String[0, 40].Sample(words => Shape(words) is not null, iter: 200);

    [Fact]
    public void Bold_letters_have_more_ink() =>
        Assert.True(Shape("Harbour", "Inter bold").Outline.Area > 1.3 * Shape("Harbour").Outline.Area);

    [Fact]
    public void A_missing_style_is_reported_with_the_styles_of_the_font()
    {
        var problem = Fonts.Shape("Harbour", "Inter bold italic").Problem;
        Assert.Equal("Inter has no bold italic; it has thin, light, regular, medium, semibold, bold.", problem);
    }

    [Fact]
    public void A_font_that_is_not_installed_is_reported()
    {
        var problem = Fonts.Shape("Harbour", "Nosuchhand").Problem;
        Assert.StartsWith("no font of that name is installed; write lettering and one of its kinds", problem, StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelt_font_is_reported_with_the_nearest_name()
    {
        var problem = Fonts.Shape("Harbour", "Intr bold").Problem;
        Assert.Equal("no font of that name is installed; did you mean \"Inter\"?", problem);
    }

    [Fact]
    public void An_installed_font_is_found_by_its_family_and_style()
    {
        using var folder = new TemporaryFolder();
        folder.Write("more/letters.ttf", Renamed(OwnFontFile("Inter-SemiBold.ttf"), "Inter", "Relay"));
        var fonts = new FontLibrary([folder.Path]);
        var installed = fonts.Shape("Harbour", "relay semibold").Value;
        Assert.Equal(Shape("Harbour", "Inter semibold").Outline.Area, installed.Outline.Area, 9);
    }

    [Fact]
    public void A_font_file_beside_the_card_is_used()
    {
        using var folder = new TemporaryFolder();
        folder.Write("fonts/bold.ttf", OwnFontFile("Inter-Bold.ttf"));
        var words = new FolderFiles(fonts: Fonts).ShapeWords("Harbour", "fonts/bold.ttf", folder.At("a.card")).Value;
        Assert.Equal(Shape("Harbour", "Inter bold").Outline.Area, words.Outline.Area, 9);
    }

    [Fact]
    public void A_broken_font_file_is_explained()
    {
        using var folder = new TemporaryFolder();
        folder.Write("quill.ttf", OwnFontFile("Inter-Bold.ttf")[..5000]);
        var problem = new FolderFiles(fonts: Fonts).ShapeWords("Harbour", "quill.ttf", folder.At("a.card")).Problem;
        Assert.Equal("it is not a valid font.", problem);
    }

    private static ShapedWords Shape(string words, string? font = null) => Fonts.Shape(words, font).Value;

    private static byte[] OwnFontFile(string name)
    {
        using var resource = typeof(FontLibrary).Assembly.GetManifestResourceStream(name)!;
        using var content = new MemoryStream();
        resource.CopyTo(content);
        return content.ToArray();
    }

    private static byte[] Renamed(byte[] font, string from, string to)
    {
        var (old, now) = (Encoding.BigEndianUnicode.GetBytes(from), Encoding.BigEndianUnicode.GetBytes(to));
        for (var at = font.AsSpan().IndexOf(old); at >= 0; at = font.AsSpan().IndexOf(old))
        {
            now.CopyTo(font.AsSpan(at));
        }

        return font;
    }

    private static SKTypeface OwnTypeface()
    {
        using var data = SKData.CreateCopy(OwnFontFile("Inter-Regular.ttf"));
        return SKTypeface.FromData(data)!;
    }
}
