using System.Collections.Immutable;
using SkiaSharp;

namespace Sketch.Output.Lettering;

/// <summary>An installed font, as described by its file.</summary>
/// <param name="Path">The file.</param>
/// <param name="Index">Which font of a collection, from 0.</param>
/// <param name="Family">The family's name.</param>
/// <param name="Weight">usWeightClass, 1 to 1000.</param>
/// <param name="Width">usWidthClass, 1 to 9; 5 is neither condensed nor expanded.</param>
/// <param name="Italic">Whether its letters are slanted.</param>
internal sealed record InstalledFont(string Path, int Index, string Family, int Weight, int Width, bool Italic)
{
    /// <summary>The style in words, such as "bold italic".</summary>
    public string Style => new FontName(Family, (FontWeight)(Math.Clamp((Weight + 50) / 100, 1, 9) * 100), Italic).Style;
}

/// <summary>
/// The fonts installed on this machine, found by reading the files in the usual folders. No font service is used, so that
/// the same files give the same answer on Linux, macOS and Windows.
/// </summary>
internal sealed class InstalledFonts
{
    private const int CollectionLimit = 64;

    private readonly Lazy<ImmutableArray<InstalledFont>> _all;

    /// <summary>The fonts in some folders and their subfolders; read when first needed.</summary>
    public InstalledFonts(IEnumerable<string> folders) => _all = new(() => ReadAll(folders));

    /// <summary>Where the operating systems keep fonts: those for all users and those of the current user.</summary>
    public static ImmutableArray<string> UsualFolders()
    {
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        var local = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData);
        if (OperatingSystem.IsWindows())
        {
            return [Environment.GetFolderPath(Environment.SpecialFolder.Fonts),
                System.IO.Path.Combine(local, "Microsoft", "Windows", "Fonts")];
        }

        return OperatingSystem.IsMacOS()
            ? ["/System/Library/Fonts", "/Library/Fonts", System.IO.Path.Combine(home, "Library", "Fonts")]
            : ["/usr/share/fonts", "/usr/local/share/fonts", System.IO.Path.Combine(local, "fonts"),
                System.IO.Path.Combine(home, ".fonts")];
    }

    /// <summary>All fonts of a family, in a fixed order.</summary>
    public ImmutableArray<InstalledFont> OfFamily(string family) =>
        [.. _all.Value.Where(f => f.Family.Equals(family, StringComparison.OrdinalIgnoreCase))];

    /// <summary>All families, each once, in alphabetical order.</summary>
    public IEnumerable<string> Families() =>
        _all.Value.Select(f => f.Family).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase);

    private static ImmutableArray<InstalledFont> ReadAll(IEnumerable<string> folders)
    {
        var options = new EnumerationOptions { RecurseSubdirectories = true, MaxRecursionDepth = 8, IgnoreInaccessible = true };
        var files = folders.Where(Directory.Exists)
            .SelectMany(folder => Directory.EnumerateFiles(folder, "*", options))
            .Where(FontLibrary.IsFontFile)
            .Distinct(StringComparer.Ordinal)
            .Order(StringComparer.Ordinal);
        return [.. files.SelectMany(Read)];
    }

    private static IEnumerable<InstalledFont> Read(string path)
    {
        var isCollection = path.EndsWith(".ttc", StringComparison.OrdinalIgnoreCase)
            || path.EndsWith(".otc", StringComparison.OrdinalIgnoreCase);
        for (var index = 0; index < (isCollection ? CollectionLimit : 1); index++)
        {
            using var typeface = SKTypeface.FromFile(path, index);
            if (typeface is null)
            {
                yield break;
            }

            yield return new(path, index, typeface.FamilyName, typeface.FontWeight, typeface.FontWidth,
                typeface.FontSlant != SKFontStyleSlant.Upright);
        }
    }
}
