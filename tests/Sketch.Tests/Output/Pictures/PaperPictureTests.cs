using System.Xml.Linq;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats;
using SixLabors.ImageSharp.Formats.Gif;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.Metadata.Profiles.Exif;
using SixLabors.ImageSharp.PixelFormats;
using Sketch.Drawing;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Tests.Cli;
using Xunit;

namespace Sketch.Tests.Output.Pictures;

/// <summary>Scans of papers: pictures made by the tests and read as the tool reads those of its users.</summary>
public sealed class PaperPictureTests : IDisposable
{
    private readonly CommandLineRun _run = new();

    public static TheoryData<string> Formats => ["jpg", "png", "webp"];

    [Theory]
    [MemberData(nameof(Formats))]
    public void A_scan_is_read_in_each_format(string ending)
    {
        var compilation = Shelf(Picture("scan." + ending, 120, 120, Quarters), 12);

        Assert.Empty(compilation.Findings);
        Assert.NotNull(compilation.Stash!.Papers[0].Front.Look.Pictured);
    }

    [Fact]
    public void A_scan_of_twelve_inches_is_twelve_inches_wide_in_the_preview()
    {
        // Stripes of 1 in, light and dark, on a scan of 12 in: on a piece of 4 in at 100 dpi each must be 100 pixels wide.
        Picture("scan.png", 1200, 1200, (x, _) => x / 100 % 2 == 0 ? new(255, 255, 255) : new(0, 0, 0));
        using var part = Part("scan.png", 12, "4 x 2", 100);

        Assert.Equal(400, part.Width);
        var edges = Enumerable.Range(1, part.Width - 1).Where(x => part[x, 50].R > 127 != part[x - 1, 50].R > 127).ToList();
        Assert.All(edges.Zip(edges.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 99, 101));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void The_orientation_in_the_metadata_is_applied(int orientation)
    {
        // Stored so that, turned by its orientation (EXIF 2.32, tag 0x0112), red is upper left, green upper right, blue lower left, white
        // lower right.
        Picture("scan.jpg", 300, 300, (x, y) => Quarters(Upright(orientation, x, y, 300)), (ushort)orientation);
        using var part = Part("scan.jpg", 3, "3 x 3", 100);

        Assert.Equal(
            ["red", "green", "blue", "white"],
            new[] { part[70, 70], part[230, 70], part[70, 230], part[230, 230] }.Select(Name));
    }

    [Fact]
    public void A_sheet_larger_than_its_picture_repeats_it_as_tiles()
    {
        Picture("scan.png", 200, 200, (x, _) => x < 100 ? new(255, 255, 255) : new(0, 0, 0));
        using var part = Part("scan.png", 2, "4 x 1", 100);

        Assert.Equal(["white", "black", "white", "black"], Enumerable.Range(0, 4).Select(i => Name(part[i * 100 + 50, 50])));
    }

    [Fact]
    public void A_drawing_contains_no_more_pixels_than_it_shows()
    {
        Picture("scan.png", 3600, 3600, (x, y) => new((byte)(x * 7 + y), (byte)(x ^ y), (byte)(y * 3)));
        using var part = Part("scan.png", 12, "2 x 1", 150);

        Assert.Equal((300, 150), (part.Width, part.Height));
    }

    [Fact]
    public void The_printed_edge_of_a_whole_sheet_is_not_shown()
    {
        Picture("scan.png", 400, 400, (_, y) => y >= 300 ? new(255, 0, 0) : new(255, 255, 255));
        using var part = Part("scan.png", 4, "4 x 3", 50, "trim 1 bottom");

        Assert.Equal("white", Name(part[part.Width / 2, part.Height - 3]));
    }

    [Theory]
    [InlineData("text", "not a valid JPEG, PNG or WebP picture")]
    [InlineData("truncated", "is incomplete")]
    [InlineData("truncated jpg", "is incomplete")]
    [InlineData("gif", "GIF")]
    [InlineData("empty", "not a valid JPEG, PNG or WebP picture")]
    [InlineData("missing", "no such file")]
    [InlineData("huge", "megapixels")]
    [InlineData("header", "is incomplete")]
    public void A_broken_picture_is_a_finding(string what, string reason)
    {
        var name = what == "truncated jpg" ? "scan.jpg" : "scan.png";
        switch (what)
        {
            case "text":
                _run.File(name, "not a picture");
                break;
            case "empty":
                _run.File(name, "");
                break;
            case "gif":
                Save(name, new GifEncoder(), 20, 20, Quarters);
                break;
            case "huge":
                File.WriteAllBytes(_run.InFolder(name), HeaderOf(10_000, 10_000));
                break;
            case "header":
                File.WriteAllBytes(_run.InFolder(name), HeaderOf(6_000, 6_000));
                break;
            case "truncated" or "truncated jpg":
                Picture(name, 300, 300, Quarters);
                using (var file = new FileStream(_run.InFolder(name), FileMode.Open))
                {
                    file.SetLength(file.Length / 2);
                }

                break;
            default:
                break;
        }

        var finding = Assert.Single(Shelf(name, 12).Findings);
        Assert.Equal(("SK604", true), (finding.Code, finding.Message.Contains(reason, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_path_out_of_the_folder_of_the_stash_is_read_only_where_allowed()
    {
        Picture("scan.png", 20, 20, Quarters);
        var stash = _run.File("shelf/shelf.stash", "stash \"Shelf\"\npaper gulls: 12 x 12, 1 sheet, front \"../scan.png\"\n");

        Assert.Equal((1, 0), (_run.Run("check", stash), _run.Run("check", "--outside", stash)));
    }

    public void Dispose() => _run.Dispose();

    private static Rgb24 Quarters(int x, int y) => Quarters((x < 150, y < 150));

    private static Rgb24 Quarters((bool Left, bool Upper) at) => at switch
    {
        (true, true) => new(255, 0, 0),
        (false, true) => new(0, 255, 0),
        (true, false) => new(0, 0, 255),
        _ => new(255, 255, 255),
    };

    /// <summary>
    /// The quarter of the upright picture that a stored pixel belongs to, by the standard's definition of row 0 and column 0.
    /// </summary>
    private static (bool Left, bool Upper) Upright(int orientation, int x, int y, int side)
    {
        var (start, first) = (x < side / 2, y < side / 2);
        return orientation switch
        {
            1 => (start, first),
            2 => (!start, first),
            3 => (!start, !first),
            4 => (start, !first),
            5 => (first, start),
            6 => (!first, start),
            7 => (!first, !start),
            _ => (first, !start),
        };
    }

    private static string Name(Rgba32 colour) => (colour.R > 127, colour.G > 127, colour.B > 127) switch
    {
        (true, false, false) => "red",
        (false, true, false) => "green",
        (false, false, true) => "blue",
        (true, true, true) => "white",
        (false, false, false) => "black",
        _ => colour.ToHex(),
    };

    /// <summary>A PNG that ends after its header: signature and IHDR as in the PNG specification, with the checksum.</summary>
    private static byte[] HeaderOf(int width, int height)
    {
        using var small = new Image<Rgb24>(1, 1);
        using var png = new MemoryStream();
        small.Save(png, new PngEncoder { ColorType = PngColorType.Rgb, BitDepth = PngBitDepth.Bit8 });
        var content = png.ToArray();
        System.Buffers.Binary.BinaryPrimitives.WriteInt32BigEndian(content.AsSpan(16), width);
        System.Buffers.Binary.BinaryPrimitives.WriteInt32BigEndian(content.AsSpan(20), height);
        System.Buffers.Binary.BinaryPrimitives.WriteUInt32BigEndian(content.AsSpan(29), Crc(content.AsSpan(12, 17)));
        return content;
    }

    private static uint Crc(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var value in bytes)
        {
            crc ^= value;
            for (var bit = 0; bit < 8; bit++)
            {
                crc = (crc & 1) == 0 ? crc >> 1 : 0xEDB88320 ^ (crc >> 1);
            }
        }

        return ~crc;
    }

    private string Picture(string name, int width, int height, Func<int, int, Rgb24> colour, ushort orientation = 1)
    {
        IImageEncoder encoder = Path.GetExtension(name) switch
        {
            ".jpg" => new JpegEncoder { Quality = 95 },
            ".webp" => new WebpEncoder(),
            _ => new PngEncoder(),
        };
        Save(name, encoder, width, height, colour, orientation);
        return name;
    }

    private void Save(string name, IImageEncoder encoder, int width, int height, Func<int, int, Rgb24> colour, ushort orientation = 1)
    {
        using var image = new Image<Rgb24>(width, height);
        for (var y = 0; y < height; y++)
        {
            for (var x = 0; x < width; x++)
            {
                image[x, y] = colour(x, y);
            }
        }

        image.Metadata.ExifProfile = new();
        image.Metadata.ExifProfile.SetValue(ExifTag.Orientation, orientation);
        image.Save(_run.InFolder(name), encoder);
    }

    private Compilation Shelf(string picture, int inches, string more = "upright") => Compiler.Compile(
        new(_run.InFolder("shelf.stash"),
            $"stash \"Shelf\"\npaper scan: {inches} x {inches}, 1 sheet, {more}, front \"{picture}\" {inches} wide\n"), new FolderFiles());

    /// <summary>The picture in the drawing of a panel cut from a scan.</summary>
    private Image<Rgba32> Part(string picture, int inches, string panel, double dotsPerInch, string more = "upright")
    {
        var stash = Shelf(picture, inches, more).Stash!;
        var card = Compiler.Compile(
            new(_run.InFolder("a.card"), $"card \"A\"\nbase 6 x 6, of white\nrole sky: scan\nfront\n  panel {panel}, of sky\n"),
                new FolderFiles(), new(stash, [])).Card!;
        var image = XDocument.Parse(CardDrawing.Draw(card, FaceKind.Front, dotsPerInch)).Descendants()
            .Single(e => e.Name.LocalName == "image");
        var address = image.Attribute(XNamespace.Get("http://www.w3.org/1999/xlink") + "href")!.Value;
        return Image.Load<Rgba32>(Convert.FromBase64String(address[(address.IndexOf(',', StringComparison.Ordinal) + 1)..]));
    }
}
