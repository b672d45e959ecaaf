using Sketch.Drawing;
using Sketch.Output.Lettering;
using Sketch.Shapes;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Drawing;

public sealed class DrawnPageTests
{
    private static readonly FontLibrary Fonts = new([]);

    private static SvgWriter Sheet() => SvgWriter.Sheet(new(Length.Inch(4), Length.Inch(3)), true, "Page");

    private static PageWords Words(string words) => new(words, "#123456", [new(Fonts.Set(words), 1, 5, 3)]);

    [Fact]
    public void Shapes_alone_hold_no_words() =>
        Assert.DoesNotContain("lamp", Sheet().Words(Words("lamp")).Close().ToPage().Shapes, StringComparison.Ordinal);

    [Fact]
    public void The_SVG_holds_the_outlines_of_the_words_where_they_were_written()
    {
        var svg = Sheet();
        svg.Open("rect").Close();
        svg.Words(Words("lamp"));
        svg.Open("circle").Close();
        var lines = svg.Close().ToString().Split('\n').Select(l => l.Trim()).ToList();
        Assert.StartsWith("<path fill=\"#123456\" d=\"M", lines[lines.IndexOf("<rect/>") + 1], StringComparison.Ordinal);
        Assert.Equal("<title>lamp</title>", lines[lines.IndexOf("<rect/>") + 2]);
        Assert.Equal("<circle/>", lines[lines.IndexOf("<rect/>") + 4]);
    }

    [Fact]
    public void Words_in_a_group_know_their_place_on_the_page()
    {
        var svg = Sheet();
        svg.Open("g").Transform(Affine.Shift(10, 20));
        svg.Open("g").Transform(Affine.Scale(2, 2)).Words(Words("lamp")).Close();
        svg.Words(Words("gull")).Close();
        var words = svg.Words(Words("keeper")).Close().ToPage().Words;
        Assert.Equal(
            [Affine.Scale(2, 2).Then(Affine.Shift(10, 20)), Affine.Shift(10, 20), Affine.Identity], words.Select(w => w.OnPage));
    }

    [Fact]
    public void Words_of_an_inserted_drawing_keep_their_place_in_it()
    {
        var part = new SvgWriter(2);
        part.Open("g").Words(Words("lamp"));
        part.Open("rect").Close().Close();
        var (inserted, whole) = (Sheet(), Sheet());
        inserted.Open("g").Transform(Affine.Shift(5, 5)).Insert(part).Close();
        whole.Open("g").Transform(Affine.Shift(5, 5)).Open("g").Words(Words("lamp"));
        whole.Open("rect").Close().Close().Close();
        Assert.Equal(whole.Close().ToString(), inserted.Close().ToString());
        Assert.Equal(Affine.Shift(5, 5), Assert.Single(inserted.ToPage().Words).OnPage);
    }
}
