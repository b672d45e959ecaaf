namespace Sketch.Output.Files;

/// <summary>Whether names lead out of a folder.</summary>
public static class FolderBounds
{
    /// <summary>Whether a path leads out of a folder by its steps or by way of a link.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="written">A path from it.</param>
    /// <exception cref="IOException">A link leads round in a circle.</exception>
    public static bool Leaves(string folder, string written)
    {
        var root = Path.GetFullPath(Path.Join(folder, "."));
        var at = root;
        foreach (var step in Path.GetRelativePath(root, Path.GetFullPath(written, root)).Split(Path.DirectorySeparatorChar))
        {
            if (step == "..")
            {
                return true;
            }

            at = Path.Join(at, step);
            var target = new FileInfo(at).ResolveLinkTarget(returnFinalTarget: true);
            if (target is not null && Path.GetRelativePath(root, target.FullName).Split(Path.DirectorySeparatorChar)[0] == "..")
            {
                return true;
            }
        }

        return false;
    }
}
