using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text;
using HarfBuzzSharp;
using Sketch.Lettering;
using Sketch.Shapes;
using SkiaSharp;
using Buffer = HarfBuzzSharp.Buffer;

namespace Sketch.Output.Lettering;

/// <summary>
/// A font opened for shaping. HarfBuzz chooses and places the glyphs (ligatures, kerning), Skia gives their outlines.
/// Words are shaped in one direction, that of their first letter with a direction.
/// </summary>
internal sealed class LetterFont
{
    private const uint Os2Table = 0x4F532F32;

    // Overlapping letters are united while a capital is this many millimetres tall: curves that become chords then deviate by
    // no more than a ten-thousandth of a capital.
    private const double WorkingCapHeight = 20;

    /// <summary>A glyph and where it is drawn, in the units of the font, y growing downwards.</summary>
    /// <param name="Glyph">Its number.</param>
    /// <param name="X">Its origin.</param>
    /// <param name="Y">Its origin.</param>
    /// <param name="Middle">The middle of its advance.</param>
    /// <param name="Character">The index in the words of the first UTF-16 unit that it shows.</param>
    private readonly record struct Pen(ushort Glyph, int X, int Y, double Middle, int Character);

    private readonly Lock _gate = new();
    private readonly SKTypeface _typeface;
    private readonly SKFont _drawn;
    private readonly Font _shaper;
    private readonly double _scale;
    private readonly Face _face;
    private readonly Dictionary<ushort, (Outline Outline, double Left, double Right)> _glyphs = [];

    private LetterFont(SKTypeface typeface, SKFont drawn, Face face, Font shaper)
    {
        _typeface = typeface;
        _drawn = drawn;
        _face = face;
        _shaper = shaper;
        _scale = WorkingCapHeight / CapHeight();
    }

    /// <summary>Opens a font file's content; null if it is not a font, or a font without outlines.</summary>
    /// <param name="content">A TrueType or OpenType file, or a collection of them.</param>
    /// <param name="index">Which font of a collection, from 0.</param>
    public static LetterFont? Open(byte[] content, int index)
    {
        using var data = SKData.CreateCopy(content);
        var typeface = SKTypeface.FromData(data, index);
        if (typeface is null || typeface.UnitsPerEm <= 0 || typeface.GlyphCount == 0)
        {
            return null;
        }

        var drawn = new SKFont(typeface, typeface.UnitsPerEm)
        {
            Hinting = SKFontHinting.None,
            LinearMetrics = true,
            Subpixel = true,
        };
        // Blob.FromStream would keep the address of an array that the garbage collector may free.
        using var blob = new Blob(data.Data, content.Length, MemoryMode.Duplicate);
        var face = new Face(blob, index) { UnitsPerEm = typeface.UnitsPerEm };
        var shaper = new Font(face);
        shaper.SetScale(typeface.UnitsPerEm, typeface.UnitsPerEm);
        shaper.SetFunctionsOpenType();
        var font = new LetterFont(typeface, drawn, face, shaper);
        return double.IsFinite(font._scale) ? font : null;
    }

    /// <summary>
    /// Shapes one line of words. Control characters count as blanks; characters that the font lacks are drawn as its missing-glyph sign.
    /// </summary>
    public ShapedWords Shape(string words)
    {
        var text = Plain(words);
        lock (_gate)
        {
            using var buffer = ShapedBuffer(text);
            return Draw(Pens(buffer), Missing(buffer, text));
        }
    }

    /// <summary>Sets one line of words as <see cref="Shape"/> does, without drawing it.</summary>
    public TextRun Set(string words)
    {
        var text = Plain(words);
        lock (_gate)
        {
            using var buffer = ShapedBuffer(text);
            var pens = Pens(buffer);
            var (left, right) = (double.PositiveInfinity, double.NegativeInfinity);
            foreach (var pen in pens)
            {
                if (GlyphOf(pen.Glyph) is { Outline.IsEmpty: false } glyph)
                {
                    (left, right) = (Math.Min(left, pen.X * _scale + glyph.Left), Math.Max(right, pen.X * _scale + glyph.Right));
                }
            }

            var isBlank = left > right;
            (left, right) = isBlank ? (0, 0) : (left, right);
            var glyphs = pens.Select(p => new PlacedGlyph(
                p.Glyph, (p.X * _scale - left) / WorkingCapHeight, p.Y * _scale / WorkingCapHeight, p.Character));
            return new(text, [.. glyphs], (right - left) / WorkingCapHeight, () =>
            {
                lock (_gate)
                {
                    return Draw(pens, "").Outline;
                }
            });
        }
    }

    /// <summary>The font as a file with the outlines of some of its glyphs only, under their numbers.</summary>
    public byte[] Subset(IEnumerable<ushort> glyphs)
    {
        lock (_gate)
        {
            return FontSubset.Of(_face, glyphs);
        }
    }

    private static string Plain(string words) =>
        string.Concat(words.EnumerateRunes().Select(r => Rune.IsControl(r) ? new Rune(' ') : r));

    private Buffer ShapedBuffer(string text)
    {
        var buffer = new Buffer { ClusterLevel = ClusterLevel.Characters };
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        _shaper.Shape(buffer);
        return buffer;
    }

    private static ImmutableArray<Pen> Pens(Buffer buffer)
    {
        var infos = buffer.GetGlyphInfoSpan();
        var positions = buffer.GetGlyphPositionSpan();
        var pens = ImmutableArray.CreateBuilder<Pen>(infos.Length);
        int x = 0, y = 0;
        for (var i = 0; i < infos.Length; i++)
        {
            pens.Add(new(
                (ushort)infos[i].Codepoint, x + positions[i].XOffset, -(y + positions[i].YOffset), x + positions[i].XAdvance / 2.0,
                (int)infos[i].Cluster));
            x += positions[i].XAdvance;
            y += positions[i].YAdvance;
        }

        return pens.DrainToImmutable();
    }

    private ShapedWords Draw(ImmutableArray<Pen> pens, string missing)
    {
        var ink = new List<ShapedGlyph>();
        foreach (var pen in pens)
        {
            if (GlyphOf(pen.Glyph).Outline is { IsEmpty: false } glyph)
            {
                ink.Add(new(glyph.Transform(Affine.Shift(pen.X * _scale, pen.Y * _scale)), pen.Middle * _scale));
            }
        }

        if (ink.Count == 0)
        {
            return new(Outline.Empty, missing);
        }

        var united = InkOverlap.Unite(ink.ConvertAll(g => g.Outline));
        var left = united.Bounds.Left;
        var place = Affine.Shift(-left, 0).Then(Affine.Scale(1 / WorkingCapHeight, 1 / WorkingCapHeight));
        return new(united.Transform(place), missing)
        {
            Glyphs = [.. ink.Select(g => new ShapedGlyph(g.Outline.Transform(place), (g.Middle - left) / WorkingCapHeight))],
        };
    }

    private static string Missing(Buffer buffer, string text)
    {
        var missing = new List<Rune>();
        foreach (var info in buffer.GetGlyphInfoSpan())
        {
            if (info.Codepoint == 0 && Rune.GetRuneAt(text, (int)info.Cluster) is var rune && !missing.Contains(rune))
            {
                missing.Add(rune);
            }
        }

        return string.Concat(missing);
    }

    private (Outline Outline, double Left, double Right) GlyphOf(ushort id)
    {
        if (!_glyphs.TryGetValue(id, out var glyph))
        {
            using var path = _drawn.GetGlyphPath(id);
            var outline = path is null ? Outline.Empty : InkOverlap.Read(path, Affine.Scale(_scale, _scale));
            glyph = outline.IsEmpty ? (outline, 0, 0) : (outline, outline.Bounds.Left, outline.Bounds.Right);
            _glyphs.Add(id, glyph);
        }

        return glyph;
    }

    /// <summary>
    /// The cap height that the font declares (sCapHeight of OS/2 from version 2 on, at byte 88), else the height of its H.
    /// </summary>
    private double CapHeight()
    {
        if (_typeface.TryGetTableData(Os2Table, out var table) && table.Length >= 90
            && BinaryPrimitives.ReadUInt16BigEndian(table) >= 2
            && BinaryPrimitives.ReadInt16BigEndian(table.AsSpan(88)) is var stated and > 0)
        {
            return stated;
        }

        return _shaper.TryGetNominalGlyph('H', out var h) && _drawn.GetGlyphPath((ushort)h) is { } path ? -path.TightBounds.Top : 0;
    }
}
