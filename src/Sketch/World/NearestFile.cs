using Sketch.Text;

namespace Sketch.World;

/// <summary>The file that a misspelt name probably means.</summary>
public static class NearestFile
{
    /// <summary>
    /// The nearest name in the folder of the file that names it, or null; never one that cannot be written in quotes, and null if the named
    /// file exists, as then its name is not what is wrong.
    /// </summary>
    /// <param name="world">Lists the files of the folder.</param>
    /// <param name="written">The name as written, with or without its extension.</param>
    /// <param name="namedIn">The path of the file that names it.</param>
    /// <param name="endings">Extensions that such a file may have, each with its dot.</param>
    public static string? Find(IWorld world, string written, string namedIn, params string[] endings)
    {
        var names = world.NamesBeside(namedIn).Where(n => Ends(n) && !n.Contains('"', StringComparison.Ordinal))
            .Order(StringComparer.Ordinal).ToList();

        if (names.Contains(written))
        {
            return null;
        }

        // Compared without extensions, since with them short names of other files would seem near.
        var near = Nearest.Find(Stem(written), names.Select(Stem));
        return near is null ? null : names.First(n => Stem(n) == near);

        bool Ends(string name) => endings.Any(e => name.EndsWith(e, StringComparison.OrdinalIgnoreCase));

        string Stem(string name) =>
            endings.FirstOrDefault(e => name.EndsWith(e, StringComparison.OrdinalIgnoreCase)) is { } ending ? name[..^ending.Length] : name;
    }

    /// <summary>The hint for a file that cannot be read, and the name in quotes that replaces the misspelt one.</summary>
    /// <param name="near">The nearest name, or null.</param>
    /// <param name="otherwise">What to do if there is none.</param>
    public static (string Hint, string? Replacement) Hint(string? near, string otherwise) =>
        near is null ? (otherwise, null) : ($"Did you mean \"{near}\"?", $"\"{near}\"");
}
