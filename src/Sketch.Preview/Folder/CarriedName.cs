using System.Collections.Frozen;

namespace Sketch.Preview.Folder;

/// <summary>
/// Whether a file can be carried to any system under its name: some take names that others do not (Microsoft Learn, "Naming files, paths, and
/// namespaces").
/// </summary>
public static class CarriedName
{
    private static readonly FrozenSet<string> Reserved =
        new[] { "CON", "PRN", "AUX", "NUL" }.Concat(from device in new[] { "COM", "LPT" } from digit in "123456789¹²³" select $"{device}{digit}")
            .ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Why a file of this name cannot be carried, and what to call it instead; empty when it can.</summary>
    /// <param name="name">The name with its folders, parted by slashes.</param>
    public static string Problem(string name)
    {
        var steps = name.Split('/');
        return name.IndexOfAny(['<', '>', '"', '|', '?', '*']) >= 0 ? $"Not every computer takes the name \"{name}\". Leave out < > \" | ? and *."
            : steps.FirstOrDefault(s => s.EndsWith(' ') || s.EndsWith('.')) is { } open ? $"Not every computer takes the name \"{name}\". Leave out the blank or point at the end of \"{open}\"."
            : steps.FirstOrDefault(IsReserved) is { } device ? $"Not every computer takes the name \"{name}\", since some keep \"{Stem(device)}\" for a device. Give it another, such as \"my-{device}\"."
            : "";
    }

    // With any ending: "aux.card" means the device too.
    private static bool IsReserved(string step) => Reserved.Contains(Stem(step));

    private static string Stem(string step) => step.Split('.')[0].TrimEnd(' ');
}
