using System.Text;
using Sketch.Output.Artwork;
using Sketch.Shapes;
using Xunit;

namespace Sketch.Tests.Output.Artwork;

public sealed class ArtworkTests
{
    [Theory]
    [InlineData("width='20mm' height='10mm' viewBox='0 0 200 100'", 20, 10)]
    [InlineData("width='2in' viewBox='0 0 200 100'", 50.8, 25.4)]
    [InlineData("width='96' height='48' viewBox='0 0 200 100'", 25.4, 12.7)] // CSS Values and Units: 96 px are an inch
    [InlineData("viewBox='0 0 200 100'", 52.9167, 26.4583)]
    [InlineData("", 52.9167, 26.4583)]
    [InlineData("width='40mm' height='10mm' viewBox='0 0 200 100'", 20, 10)] // the view box is fitted in whole
    public void Lengths_are_physical_or_96_units_an_inch(string size, double width, double height)
    {
        var box = Read($"<svg xmlns='http://www.w3.org/2000/svg' {size}><rect width='200' height='100'/></svg>").Bounds;
        Assert.Equal((width, height), (Math.Round(box.Width, 4), Math.Round(box.Height, 4)));
    }

    [Fact]
    public void The_view_box_starts_at_the_corner()
    {
        var box = Drawn("<circle cx='700' cy='-30' r='20'/>").Bounds;
        Assert.Equal((0, 0), (Math.Round(box.Left, 6), Math.Round(box.Top, 6)));
    }

    [Theory]
    [InlineData("<rect x='5' y='5' width='30' height='20'/>", 600)]
    [InlineData("<circle r='10'/>", 100 * Math.PI)]
    [InlineData("<ellipse rx='10' ry='20'/>", 200 * Math.PI)]
    [InlineData("<polygon points='0,0 30,0 0,40'/>", 600)]
    [InlineData("<path d='M0 0h30v20h-30z'/>", 600)]
    [InlineData("<rect width='30' height='20' rx='10'/>", (10 * 20) + (100 * Math.PI))]
    [InlineData("<g transform='rotate(30) scale(2)'><rect width='30' height='20'/></g>", 2400)]
    [InlineData("<g transform='translate(5) skewX(20)'><rect width='30' height='20'/></g>", 600)]
    [InlineData("<rect width='30' height='20'/><rect x='10' width='30' height='20'/>", 800)]
    [InlineData("<path fill-rule='evenodd' d='M0 0h30v20h-30z M10 5h10v10h-10z'/>", 500)]
    [InlineData("<path d='M0 0h30v20h-30z M10 5v10h10v-10z'/>", 500)]
    [InlineData("<rect width='30' height='20'/><rect x='50' width='30' height='20' fill='none' stroke='red'/>", 600)]
    [InlineData("<style>.line{fill:none} rect{fill:#123}</style><rect width='30' height='20'/><rect class='line' x='50' width='9' "
        + "height='9'/>", 600)]
    [InlineData("<style>rect.a{fill:none} rect{fill:red}</style><rect width='30' height='20'/><rect class='a' width='9' height='90'/>",
        600)]
    [InlineData("<style>rect{fill:none!important}</style><rect style='fill:red' width='9' height='90'/><path d='M0 0h30v20h-30z'/>", 600)]
    [InlineData("<style>@media print{rect{fill:none}} g rect{fill:none} rect {</style><g><rect width='30' height='20'/></g>", 600)]
    [InlineData("<g style='fill:none'><rect width='30' height='20' style='fill:red'/><rect x='50' width='9' height='9'/></g>", 600)]
    [InlineData("<defs><rect id='r' width='30' height='20'/></defs><use href='#r'/><use href='#r' x='50'/>", 1200)]
    [InlineData("<clipPath id='c'><rect width='10' height='20'/></clipPath><rect width='30' height='20' clip-path='url(#c)'/>", 200)]
    [InlineData("<symbol id='s' viewBox='0 0 3 2'><rect width='3' height='2'/></symbol><use href='#s' width='30' height='20'/>", 600)]
    [InlineData("<rect width='30' height='20'/><g display='none'><rect x='50' width='30' height='20'/></g>", 600)]
    public void The_area_is_that_of_all_filled_shapes(string shapes, double squareUnits)
    {
        var scale = 25.4 / 96;
        Assert.Equal(1, Drawn(shapes).Area / (squareUnits * scale * scale), 3);
    }

    [Theory]
    [InlineData("<svg><rect", "is not a valid SVG file: it cannot be read from line 1,")]
    [InlineData("hello", "is not a valid SVG file")]
    [InlineData("<html/>", "is not an SVG file: it starts with <html>.")]
    [InlineData("<svg/>", "has no filled shapes to cut.")]
    [InlineData("<svg><path fill='none' d='M0 0h9v9'/></svg>", "has no filled shapes to cut.")]
    [InlineData("<svg><image href='file:///etc/hosts'/></svg>", "has no filled shapes to cut, only photographs")]
    [InlineData("<svg><path d='M0 0 banana'/></svg>", "has a path whose numbers cannot be read.")]
    [InlineData("<svg><use href='https://example.org/a.svg#b'/></svg>", "uses \"https://example.org/a.svg#b\", which is not in the file.")]
    [InlineData("<svg><g id='a'><use href='#a'/></g></svg>", "is nested too deeply, or uses a part within itself")]
    [InlineData("<svg><text>Ahoy</text></svg>", "holds words as text")]
    [InlineData("<svg><rect width='1e20' height='1e20'/></svg>", "has a shape that is too large.")]
    [InlineData("<svg><rect width='9' height='9' transform='banana(3)'/></svg>", "has a transform \"banana\" that cannot be read.")]
    public void A_file_without_an_outline_is_explained(string svg, string problem)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(svg));
        Assert.StartsWith($"it {problem}", ArtworkReader.Read(stream).Problem, StringComparison.Ordinal);
    }

    [Fact]
    public void Endlessly_nested_uses_are_rejected()
    {
        var parts = string.Concat(
            Enumerable.Range(0, 30).Select(i => $"<g id='p{i}'>{string.Concat(Enumerable.Repeat($"<use href='#p{i + 1}'/>", 10))}</g>"));
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes($"<svg><defs>{parts}<g id='p30'/></defs><use href='#p0'/></svg>"));
        Assert.NotNull(ArtworkReader.Read(stream).Problem);
    }

    [Theory]
    [InlineData("{0}")]
    [InlineData("<clipPath id='c'><circle r='900'/></clipPath><g clip-path='url(#c)'>{0}</g>")]
    [InlineData("<clipPath id='c'>{0}</clipPath><rect clip-path='url(#c)' width='900' height='900'/>")]
    public void A_drawing_that_would_take_minutes_is_rejected_early(string around)
    {
        var corners = string.Concat(Enumerable.Range(0, 3000).Select(i => $"L{i * 617 % 1009} {i * 389 % 997}"));
        using var stream = new MemoryStream(
            Encoding.UTF8.GetBytes("<svg>" + around.Replace("{0}", $"<path d='M0 0{corners}'/>", StringComparison.Ordinal) + "</svg>"));
        var problem = ArtworkReader.Read(stream).Problem;
        Assert.Equal("it has lines that cross more than 20000 times; unite its shapes in a drawing program.", problem);
    }

    [Fact]
    public void A_document_type_is_ignored() =>
        Assert.NotEmpty(Read("<!DOCTYPE svg PUBLIC '-//W3C//DTD SVG 1.1//EN' "
            + "'http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd'><svg><rect width='9' height='9'/></svg>").Contours);

    // The second would grow tenfold with each level, the third would read a file of this machine.
    [Theory]
    [InlineData("<!ENTITY a 'M0 0h9v9z'>", "a")]
    [InlineData("<!ENTITY a '0123456789'><!ENTITY b '&a;&a;&a;&a;&a;&a;&a;&a;&a;&a;'><!ENTITY c '&b;&b;&b;&b;&b;&b;&b;&b;&b;&b;'>", "c")]
    [InlineData("<!ENTITY a SYSTEM 'file:///etc/hosts'>", "a")]
    public void A_document_type_defines_nothing(string entities, string used)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes($"<!DOCTYPE svg [{entities}]>\n<svg><path d='&{used};'/></svg>"));
        Assert.StartsWith("it is not a valid SVG file: it cannot be read from line 2,", ArtworkReader.Read(stream).Problem,
            StringComparison.Ordinal);
    }

    private static Outline Drawn(string shapes) => Read($"<svg xmlns='http://www.w3.org/2000/svg'>{shapes}</svg>");

    private static Outline Read(string svg)
    {
        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(svg));
        return ArtworkReader.Read(stream).Value;
    }
}
