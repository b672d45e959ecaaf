using System.Collections.Immutable;
using Sketch.Output.Rendering;

namespace Sketch.Fuzz.Inputs;

/// <summary>Pictures and drawings as people have them, and broken ones.</summary>
internal static class Pictures
{
    private const string Drawing = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"40mm\" height=\"40mm\" viewBox=\"0 0 40 40\">"
        + "<rect width=\"40\" height=\"40\" fill=\"#2d5d73\"/><circle cx=\"20\" cy=\"20\" r=\"9\" fill=\"#fff\"/></svg>";

    // The smallest pictures of the other two forms: one white pixel each.
    private static readonly byte[] Jpeg = Convert.FromBase64String("/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAP" + new string('/', 86)
        + "wgALCAABAAEBAREA/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/aAAgBAQABPxA=");

    private static readonly byte[] WebP = Convert.FromBase64String("UklGRiIAAABXRUJQVlA4IBYAAAAwAQCdASoBAAEADsD+JaQAA3AAAAAA");

    private static readonly Lazy<ImmutableArray<byte[]>> All = new(() => [Png(20), Png(96), Jpeg, WebP]);

    private static readonly string[] Drawings = ["boat.svg", "gull.svg"];

    private static readonly string[] Elements =
    [
        "<path d=\"M0 0 L1e9 1e-9 Z\"/>", "<path d=\"M0,0 a5,5 0 1 1 9,9 z m1 1\"/>", "<path d=\"M1 1 C NaN 1 2 2 3 3\"/>",
        "<use href=\"#a\"/>", "<g id=\"a\"><use href=\"#a\"/></g>", "<rect width=\"50%\" height=\"3in\" rx=\"99\"/>",
        "<polygon points=\"1,2 3\"/>", "<style>path{fill:none}</style>", "<image href=\"file:///etc/passwd\"/>",
        "<script>alert(1)</script>", "<text>lamp</text>", "<g transform=\"rotate(45) scale(0)\">", "<circle r=\"-1\"/>",
        "<line x1=\"0\" y1=\"0\" x2=\"9\" y2=\"9\" stroke=\"#000\"/>", "<!DOCTYPE svg [<!ENTITY a \"b\">]>", "&a;",
        "<clipPath id=\"c\"><path d=\"M0 0h9v9z\"/></clipPath>",
        "<g transform=\"matrix(1 0 0 1e30 0 0)\"><rect width=\"9\" height=\"9\"/></g>",
    ];

    /// <summary>A picture that can be read.</summary>
    public static byte[] Any(Draws draws) => draws.Any(All.Value);

    /// <summary>A picture with some bytes changed.</summary>
    public static byte[] Damaged(Draws draws) => Damage.OfBytes(Any(draws), draws);

    /// <summary>A drawing with elements put in and bytes changed.</summary>
    public static byte[] DamagedDrawing(Draws draws)
    {
        var text = System.Text.Encoding.UTF8.GetString(Corpus.Read("sketches", draws.Any(Drawings)));
        for (var elements = draws.Below(4); elements > 0; elements--)
        {
            var at = text.IndexOf('<', draws.Below(text.Length));
            text = text.Insert(at < 0 ? text.Length : at, draws.Any(Elements));
        }

        var bytes = System.Text.Encoding.UTF8.GetBytes(text);
        return draws.OnceIn(2) ? Damage.OfBytes(bytes, draws) : bytes;
    }

    private static byte[] Png(int dpi)
    {
        using var png = new MemoryStream();
        SvgRenderer.WritePng(Drawing, dpi, png);
        return png.ToArray();
    }
}
