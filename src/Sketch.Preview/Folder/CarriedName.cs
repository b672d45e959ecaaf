using System.Collections.Frozen;

namespace Sketch.Preview.Folder;

/// <summary>
/// Whether a file name is valid on every system: some allow names that others do not (Microsoft Learn, "Naming files, paths,
/// and namespaces").
/// </summary>
public static class CarriedName
{
    private const int MostLetters = 60;
    private const string Forbidden = "/\\:?*\"<>|";

    private static readonly FrozenSet<string> Reserved =
        new[] { "CON", "PRN", "AUX", "NUL" }.Concat(
            from device in new[] { "COM", "LPT" } from digit in "123456789¹²³" select $"{device}{digit}")
            .ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Why a file cannot have this name, and which to use instead; empty when it can.</summary>
    /// <param name="name">The name with its extension, without folders.</param>
    public static string Problem(string name)
    {
        var ending = Path.GetExtension(name);
        var stem = name[..^ending.Length];
        var instead = $"Type \"{Instead(stem)}{ending}\" instead.";
        return name.FirstOrDefault(IsForbidden) is var forbidden and not '\0' ? $"A file name cannot contain {Named(forbidden)}. {instead}"
            : name.StartsWith('.') ? $"A file name cannot begin with a period, which hides the file. {instead}"
            : IsReserved(stem) ? $"Some computers keep the name \"{stem}\" for a device. Type \"my-{stem}{ending}\" instead."
            : "";
    }

    /// <summary>A name like another that a file can have on every system.</summary>
    /// <param name="stem">The name without its extension and folders.</param>
    /// <param name="ending">The extension.</param>
    internal static string Like(string stem, string ending)
    {
        var instead = Instead(stem);
        instead = instead.Length > MostLetters ? instead[..MostLetters].TrimEnd(' ', '.', '-') : instead;
        return (IsReserved(instead) ? "my-" : "") + instead + ending;
    }

    // With any extension: "aux.card" names the device too.
    private static bool IsReserved(string stem) => Reserved.Contains(stem.Split('.')[0].TrimEnd(' '));

    private static bool IsForbidden(char c) => Forbidden.Contains(c) || char.IsControl(c);

    private static string Named(char forbidden) =>
        char.IsControl(forbidden) ? "an invisible control character" : $"the character {forbidden}";

    /// <summary>A stem with hyphens in place of whatever it cannot contain, and none at its ends.</summary>
    private static string Instead(string stem)
    {
        var parts = new string([.. stem.Select(c => IsForbidden(c) ? '/' : c)])
            .Split('/', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var joined = string.Join('-', parts).Trim(' ', '.', '-');
        return joined.Length > 0 ? joined : "new";
    }
}
