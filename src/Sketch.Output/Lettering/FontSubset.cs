using System.Runtime.InteropServices;
using HarfBuzzSharp;

namespace Sketch.Output.Lettering;

/// <summary>
/// Cuts a font down to some glyphs by HarfBuzz's own subsetter, which the library brings along without a managed face. The glyphs keep
/// their numbers, so what was shaped with the whole font can be drawn with the part.
/// </summary>
internal static class FontSubset
{
    // Of hb-subset.h: hints are for screens, glyph numbers stay, the missing-glyph sign keeps its outline, and no glyph is added for
    // ligatures, since the words are shaped already.
    private const uint NoHinting = 0x1;
    private const uint KeepGlyphNumbers = 0x2;
    private const uint KeepMissingGlyph = 0x40;
    private const uint NoLayoutClosure = 0x200;

    /// <summary>The font file with these glyphs.</summary>
    /// <exception cref="InvalidOperationException">The font is broken.</exception>
    public static byte[] Of(Face face, IEnumerable<ushort> glyphs)
    {
        var input = Native.CreateInput();
        try
        {
            Native.SetFlags(input, NoHinting | KeepGlyphNumbers | KeepMissingGlyph | NoLayoutClosure);
            var set = Native.GlyphSet(input);
            foreach (var glyph in glyphs)
            {
                Native.Add(set, glyph);
            }

            return Read(Native.Subset(face.Handle, input));
        }
        finally
        {
            Native.DestroyInput(input);
        }
    }

    private static byte[] Read(nint subset)
    {
        if (subset == 0)
        {
            throw new InvalidOperationException("The font cannot be cut down to some of its glyphs.");
        }

        var blob = Native.BlobOf(subset);
        try
        {
            var content = new byte[Native.LengthOf(blob)];
            Marshal.Copy(Native.DataOf(blob, out _), content, 0, content.Length);
            return content;
        }
        finally
        {
            Native.DestroyBlob(blob);
            Native.DestroyFace(subset);
        }
    }

    /// <summary>HarfBuzz's functions for subsets.</summary>
    private static class Native
    {
        private const string Library = "libHarfBuzzSharp";

        private const DllImportSearchPath Beside = DllImportSearchPath.SafeDirectories | DllImportSearchPath.AssemblyDirectory;

        [DllImport(Library, EntryPoint = "hb_subset_input_create_or_fail")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern nint CreateInput();

        [DllImport(Library, EntryPoint = "hb_subset_input_destroy")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern void DestroyInput(nint input);

        [DllImport(Library, EntryPoint = "hb_subset_input_set_flags")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern void SetFlags(nint input, uint flags);

        [DllImport(Library, EntryPoint = "hb_subset_input_glyph_set")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern nint GlyphSet(nint input);

        [DllImport(Library, EntryPoint = "hb_set_add")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern void Add(nint set, uint glyph);

        [DllImport(Library, EntryPoint = "hb_subset_or_fail")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern nint Subset(nint face, nint input);

        [DllImport(Library, EntryPoint = "hb_face_reference_blob")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern nint BlobOf(nint face);

        [DllImport(Library, EntryPoint = "hb_face_destroy")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern void DestroyFace(nint face);

        [DllImport(Library, EntryPoint = "hb_blob_get_length")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern uint LengthOf(nint blob);

        [DllImport(Library, EntryPoint = "hb_blob_get_data")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern nint DataOf(nint blob, out uint length);

        [DllImport(Library, EntryPoint = "hb_blob_destroy")]
        [DefaultDllImportSearchPaths(Beside)]
        public static extern void DestroyBlob(nint blob);
    }
}
