using System.Text;
using Sketch.Drawing;
using Sketch.Lettering;
using Sketch.Output.Lettering;
using Sketch.Shapes;
using SkiaSharp;

namespace Sketch.Output.Rendering;

/// <summary>
/// Writes the words of pages as text in the tool's own font, so that a PDF holds the glyphs that it uses once and can be searched.
/// Each glyph stands where its outline would be.
/// </summary>
internal sealed class PrintedText : IDisposable
{
    private const double PointsPerMillimetre = 72 / 25.4;

    private readonly SKTypeface? _typeface;
    private readonly ushort _blank;
    private readonly Dictionary<double, SKFont> _sizes = [];

    /// <summary>The words of a whole document.</summary>
    public PrintedText(IEnumerable<DrawnPage> pages)
    {
        var font = OwnFont.Plain.Open(OwnFont.Regular);
        _blank = font.Set(" ").Glyphs[0].Id;
        var used = pages.SelectMany(p => p.Words).SelectMany(w => w.Words.Lines).SelectMany(l => l.Run.Glyphs).Select(g => g.Id)
            .ToHashSet();
        if (used.Count > 0)
        {
            using var subset = SKData.CreateCopy(font.Subset(used.Append(_blank).Distinct().Order()));
            _typeface = SKTypeface.FromData(subset) ?? throw new InvalidOperationException("The part of the tool's own font is broken.");
        }
    }

    /// <summary>Writes the words of one page on a canvas whose unit is a point.</summary>
    public void Draw(SKCanvas canvas, DrawnPage page)
    {
        foreach (var (words, onPage, _, _) in page.Words)
        {
            using var paint = new SKPaint { Color = SKColor.Parse(words.Colour), IsAntialias = true };
            canvas.Save();
            canvas.Concat(InPoints(onPage));
            var lines = words.Lines.Where(l => l.Run.Width > 0).ToList();
            for (var i = 0; i < lines.Count; i++)
            {
                var line = lines[i];
                using var text = Text(line, isLast: i == lines.Count - 1);
                canvas.DrawText(text, (float)(line.Left * PointsPerMillimetre), (float)(line.Baseline * PointsPerMillimetre), paint);
            }

            canvas.Restore();
        }
    }

    public void Dispose()
    {
        foreach (var font in _sizes.Values)
        {
            font.Dispose();
        }

        _typeface?.Dispose();
    }

    private static SKMatrix InPoints(Affine by) => new(
        (float)by.A, (float)by.C, (float)(by.E * PointsPerMillimetre),
        (float)by.B, (float)by.D, (float)(by.F * PointsPerMillimetre), 0, 0, 1);

    /// <summary>
    /// The glyphs with the words that they show; a reader needs these where letters share a glyph or have a special one. A blank parts
    /// them from more words of the same paragraph, since a program that reads aloud sees no gap (ISO 32000-1, 14.8.2.5).
    /// </summary>
    private SKTextBlob Text(PlacedRun line, bool isLast)
    {
        var (glyphs, words) = (line.Run.Glyphs, line.Run.Words);
        if (!isLast)
        {
            glyphs = glyphs.Add(new(_blank, line.Run.Width, 0, words.Length));
            words += " ";
        }

        var capital = line.CapHeight * PointsPerMillimetre;
        using var builder = new SKTextBlobBuilder();
        var run = builder.AllocatePositionedTextRun(FontOf(capital), glyphs.Length, Encoding.UTF8.GetByteCount(words));
        run.SetGlyphs([.. glyphs.Select(g => g.Id)]);
        run.SetPositions([.. glyphs.Select(g => new SKPoint((float)(g.X * capital), (float)(g.Y * capital)))]);
        run.SetText(Encoding.UTF8.GetBytes(words));
        run.SetClusters([.. glyphs.Select(g => (uint)Encoding.UTF8.GetByteCount(words.AsSpan(0, g.Character)))]);
        return builder.Build() ?? throw new InvalidOperationException("The words could not be set.");
    }

    private SKFont FontOf(double capital)
    {
        if (!_sizes.TryGetValue(capital, out var font))
        {
            font = _sizes[capital] = new SKFont(_typeface, (float)(capital / TextRun.CapitalPerSize))
            {
                Hinting = SKFontHinting.None,
                LinearMetrics = true,
                Subpixel = true,
            };
        }

        return font;
    }
}
