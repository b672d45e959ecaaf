using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Sketch.Drawing;
using Sketch.Kinds;
using Sketch.Output.Rendering;
using Sketch.Panels;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Drawing;

/// <summary>Rendered pictures, measured in pixels.</summary>
public sealed class RenderedPictureTests
{
    private const int PixelsPerMillimetre = 10;

    [Fact]
    public void Stripes_are_rendered_at_a_spacing_of_half_an_inch()
    {
        using var picture = Panel("stripes white black");

        var edges = Darkenings(picture, 60 * PixelsPerMillimetre);

        Assert.All(edges.Zip(edges.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 126, 128));
    }

    [Fact]
    public void Dots_are_rendered_at_a_spacing_of_three_eighths()
    {
        using var picture = Panel("dots white black");

        // A row of dots runs through the middle of the panel.
        var edges = Darkenings(picture, 62 * PixelsPerMillimetre);

        Assert.All(edges.Zip(edges.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 94, 96.5));
    }

    [Theory]
    [InlineData("dots white red")]
    [InlineData("gingham white red")]
    [InlineData("plaid white red red")]
    [InlineData("chevron white red")]
    [InlineData("waves white red red")]
    [InlineData("stars white red")]
    [InlineData("woodgrain white red")]
    public void No_figure_shows_outside_the_outline(string paper)
    {
        using var print = Star(paper);
        using var whole = Star("red");

        var strays = 0;
        for (var y = 0; y < print.Height; y++)
        {
            for (var x = 0; x < print.Width; x++)
            {
                strays += Redness(print[x, y]) > 40 && Redness(whole[x, y]) < 10 ? 1 : 0;
            }
        }

        Assert.Equal(0, strays);
    }

    [Fact]
    public void A_piece_is_rendered_at_its_size()
    {
        using var picture = Render(new CardFixture(100, 100)
            .Add("front/card", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(20, 30, 50, 40), "black"));

        var row = Enumerable.Range(0, picture.Width).Where(x => picture[x, 500].R < 90).ToList();

        Assert.InRange(row[0], 199, 201);
        Assert.InRange(row[^1] - row[0] + 1, 498, 502);
    }

    [Fact]
    public void The_shadow_falls_to_the_lower_right()
    {
        using var picture = Render(new CardFixture(100, 100)
            .Add("front/card", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(30, 30, 40, 40), "red", foam: 2));

        Assert.True(picture[709, 500].G < picture[290, 500].G - 15);
        Assert.True(picture[500, 709].G < picture[500, 290].G - 15);
    }

    [Fact]
    public void A_piece_that_hangs_over_the_face_is_clipped_at_its_edge()
    {
        using var picture = Render(new CardFixture(50, 50)
            .Add("front/card", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(40, 10, 40, 30), "red"));

        Assert.Equal((500, 500), (picture.Width, picture.Height));
    }

    private static int Redness(Rgba32 pixel) => pixel.R - pixel.G;

    /// <summary>Places in a row where light turns to dark.</summary>
    private static List<int> Darkenings(Image<Rgba32> picture, int y) =>
        [.. Enumerable.Range(30, picture.Width - 60).Where(x => picture[x - 1, y].R >= 140 && picture[x, y].R < 140)];

    private static Image<Rgba32> Panel(string paper) => Render(new CardFixture(104, 124)
        .Add("front/sky", PieceKind.Panel, Shape.Rectangle, CardFixture.Box(2, 2, 100, 120), paper));

    private static Image<Rgba32> Star(string paper) => Render(new CardFixture(44, 44)
        .Add("front/lamp", PieceKind.Star, Shape.Star, CardFixture.Box(4, 4, 34, 32.33), paper, turn: 10));

    private static Image<Rgba32> Render(CardFixture card)
    {
        using var png = new MemoryStream();
        Assert.Null(SvgRenderer.WritePng(CardDrawing.Draw(card.Card(), FaceKind.Front), 25.4 * PixelsPerMillimetre, png));
        png.Position = 0;
        return Image.Load<Rgba32>(png);
    }
}
