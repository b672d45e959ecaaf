namespace Sketch.Output.Files;

/// <summary>Whether names lead out of a folder.</summary>
public static class FolderBounds
{
    /// <summary>The number of links that Linux follows in a row before it reports a loop.</summary>
    private const int MostLinks = 40;

    /// <summary>Whether a path leads out of a folder by its segments or through links. A missing part leads nowhere.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="written">A path from it.</param>
    /// <exception cref="IOException">Links form a loop.</exception>
    public static bool Leaves(string folder, string written)
    {
        var root = Path.GetFullPath(Path.Join(folder, "."));
        return Leaves(root, Path.GetFullPath(written, root), MostLinks);
    }

    private static bool Leaves(string root, string path, int links)
    {
        var at = root;
        var steps = Path.GetRelativePath(root, path).Split(Path.DirectorySeparatorChar);
        for (var i = 0; i < steps.Length; i++)
        {
            if (steps[i] == ".." || Path.IsPathRooted(steps[i]))
            {
                return true;
            }

            var parent = at;
            at = Path.Join(at, steps[i]);
            if (new FileInfo(at).LinkTarget is { } target)
            {
                // The path continues from the target of the link, which may contain links again.
                return links > 0
                    ? Leaves(root, Path.GetFullPath(Path.Join([Path.GetFullPath(target, parent), .. steps[(i + 1)..]])), links - 1)
                    : throw new IOException($"too many links from {at}");
            }
        }

        return false;
    }
}
