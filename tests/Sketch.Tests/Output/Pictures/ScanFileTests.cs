using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats;
using SixLabors.ImageSharp.Formats.Jpeg;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.Formats.Webp;
using SixLabors.ImageSharp.Metadata;
using SixLabors.ImageSharp.PixelFormats;
using Sketch.Output.Pictures;
using Xunit;

namespace Sketch.Tests.Output.Pictures;

/// <summary>The size of a scan, as its file describes it; the files are written by another library.</summary>
public class ScanFileTests
{
    [Theory]
    [InlineData(".png", 300, PixelResolutionUnit.PixelsPerInch, 300)]
    [InlineData(".jpg", 300, PixelResolutionUnit.PixelsPerInch, 300)]
    [InlineData(".jpg", 118, PixelResolutionUnit.PixelsPerCentimeter, 300)]
    [InlineData(".png", 11811, PixelResolutionUnit.PixelsPerMeter, 300)]
    public void The_resolution_of_a_scanner_is_read(string ending, double density, PixelResolutionUnit unit, double expected)
    {
        var scan = ScanFile.Read(Picture(ending, density, unit)).Value;
        Assert.Equal((40, 30, ending), (scan.Width, scan.Height, scan.Ending));
        Assert.Equal(expected, scan.DotsPerInch!.Value, 0.5);
    }

    [Theory]
    [InlineData(".png", 96)]
    [InlineData(".jpg", 72)]
    public void The_resolution_of_a_screen_says_nothing_of_the_paper(string ending, double density) =>
        Assert.Null(ScanFile.Read(Picture(ending, density, PixelResolutionUnit.PixelsPerInch)).Value.DotsPerInch);

    [Theory]
    [InlineData(240, 2, 240)]
    [InlineData(118, 3, 300)]
    public void The_resolution_of_a_camera_is_read_from_its_exif(byte density, byte unit, double expected)
    {
        byte[] exif =
        [
            0xFF, 0xE1, 0, 54, .. "Exif\0\0II*\0"u8, 8, 0, 0, 0, 2, 0,
            0x1A, 0x01, 5, 0, 1, 0, 0, 0, 38, 0, 0, 0,
            0x28, 0x01, 3, 0, 1, 0, 0, 0, unit, 0, 0, 0,
            0, 0, 0, 0, density, 0, 0, 0, 1, 0, 0, 0,
        ];
        var plain = Picture(".jpg", 1, PixelResolutionUnit.AspectRatio);
        Assert.Equal(expected, ScanFile.Read([.. plain[..2], .. exif, .. plain[2..]]).Value.DotsPerInch!.Value, 0.5);
    }

    [Fact]
    public void A_picture_without_a_resolution_has_none() =>
        Assert.Equal(new(40, 30, ".webp", null), ScanFile.Read(Picture(".webp", 1, PixelResolutionUnit.AspectRatio)).Value);

    [Fact]
    public void What_is_no_picture_is_refused() =>
        Assert.Equal("it is not a valid JPEG, PNG or WebP picture.", ScanFile.Read("card \"Lamp\""u8.ToArray()).Problem);

    [Theory]
    [InlineData(".png")]
    [InlineData(".jpg")]
    public void A_file_that_is_cut_off_or_damaged_anywhere_is_read_as_far_as_it_goes(string ending)
    {
        var whole = Picture(ending, 300, PixelResolutionUnit.PixelsPerInch);
        var random = new Random(1);
        for (var i = 0; i < 300; i++)
        {
            var damaged = whole[..random.Next(1, whole.Length)];
            damaged[random.Next(damaged.Length)] = (byte)random.Next(256);
            ScanFile.Read(damaged);
        }
    }

    private static byte[] Picture(string ending, double density, PixelResolutionUnit unit)
    {
        using var picture = new Image<Rgb24>(40, 30);
        picture.Metadata.ResolutionUnits = unit;
        (picture.Metadata.HorizontalResolution, picture.Metadata.VerticalResolution) = (density, density);
        IImageEncoder encoder = ending switch { ".jpg" => new JpegEncoder(), ".webp" => new WebpEncoder(), _ => new PngEncoder() };
        using var file = new MemoryStream();
        picture.Save(file, encoder);
        return file.ToArray();
    }
}
