namespace Sketch.Editors.Documents;

/// <summary>Files by their addresses.</summary>
internal static class FileAddress
{
    /// <summary>
    /// The path of a file. A text that is no file yet, such as <c>untitled:Untitled-1</c>, has a name in the current folder with the
    /// extension of its language.
    /// </summary>
    public static string PathOf(string uri, string language = "card")
    {
        if (Uri.TryCreate(uri, UriKind.Absolute, out var address) && address.IsFile)
        {
            // Editors on Windows write file:///c%3A/…, whose path then begins with a slash.
            var path = address.LocalPath;
            return path is ['/' or '\\', _, ':', ..] ? path[1..] : path;
        }

        var name = string.Concat(uri.Where(c => char.IsLetterOrDigit(c) || c is '-' or '.' or '_'));
        return name.EndsWith($".{language}", StringComparison.OrdinalIgnoreCase) ? name : $"{name}.{language}";
    }

    /// <summary>The address of a file.</summary>
    public static string UriOf(string path) => new Uri(Path.GetFullPath(path)).AbsoluteUri;
}
