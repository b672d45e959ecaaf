using System.Buffers.Binary;
using System.Text;
using HarfBuzzSharp;
using Sketch.Shapes;
using Sketch.Lettering;
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

    private readonly Lock _gate = new();
    private readonly SKTypeface _typeface;
    private readonly SKFont _drawn;
    private readonly Font _shaper;
    private readonly double _scale;
    private readonly Dictionary<ushort, Outline> _glyphs = [];

    private LetterFont(SKTypeface typeface, SKFont drawn, Font shaper)
    {
        _typeface = typeface;
        _drawn = drawn;
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
        using var face = new Face(blob, index) { UnitsPerEm = typeface.UnitsPerEm };
        var shaper = new Font(face);
        shaper.SetScale(typeface.UnitsPerEm, typeface.UnitsPerEm);
        shaper.SetFunctionsOpenType();
        var font = new LetterFont(typeface, drawn, shaper);
        return double.IsFinite(font._scale) ? font : null;
    }

    /// <summary>
    /// Shapes one line of words. Control characters count as blanks; characters that the font lacks are drawn as its missing-glyph sign.
    /// </summary>
    public ShapedWords Shape(string words)
    {
        var text = string.Concat(words.EnumerateRunes().Select(r => Rune.IsControl(r) ? new Rune(' ') : r));
        lock (_gate)
        {
            using var buffer = new Buffer { ClusterLevel = ClusterLevel.Characters };
            buffer.AddUtf16(text);
            buffer.GuessSegmentProperties();
            _shaper.Shape(buffer);
            return Draw(buffer, Missing(buffer, text));
        }
    }

    private ShapedWords Draw(Buffer buffer, string missing)
    {
        var infos = buffer.GetGlyphInfoSpan();
        var positions = buffer.GetGlyphPositionSpan();
        var ink = new List<ShapedGlyph>();
        double penX = 0, penY = 0;
        for (var i = 0; i < infos.Length; i++)
        {
            if (GlyphOf((ushort)infos[i].Codepoint) is { IsEmpty: false } glyph)
            {
                ink.Add(new(
                    glyph.Transform(Affine.Shift((penX + positions[i].XOffset) * _scale, -(penY + positions[i].YOffset) * _scale)),
                    (penX + positions[i].XAdvance / 2.0) * _scale));
            }

            penX += positions[i].XAdvance;
            penY += positions[i].YAdvance;
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

    private Outline GlyphOf(ushort id)
    {
        if (!_glyphs.TryGetValue(id, out var glyph))
        {
            using var path = _drawn.GetGlyphPath(id);
            glyph = path is null ? Outline.Empty : InkOverlap.Read(path, Affine.Scale(_scale, _scale));
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
