using Sketch.Output.Lettering;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;

namespace Sketch.Preview.Server;

/// <summary>What all answers draw upon.</summary>
/// <param name="folder">The opened folder.</param>
/// <param name="windows">The windows of the page.</param>
/// <param name="news">What changes in the folder.</param>
/// <param name="stopping">Set when the server ends.</param>
internal sealed class PageServices(OpenedFolder folder, OpenWindows windows, ChangeFeed news, CancellationToken stopping)
{
    /// <summary>The opened folder.</summary>
    public OpenedFolder Folder => folder;

    /// <summary>The windows of the page.</summary>
    public OpenWindows Windows => windows;

    /// <summary>What changes in the folder.</summary>
    public ChangeFeed ChangeFeed => news;

    /// <summary>The plans that windows have worked out.</summary>
    public BatchPlans Plans { get; } = new();

    /// <summary>Saves texts.</summary>
    public Saving Saving { get; } = new(folder);

    /// <summary>What the engine reads files and fonts through.</summary>
    public CachedFiles Files { get; } = new(new FontShelf());

    /// <summary>Set when the server ends.</summary>
    public CancellationToken Stopping => stopping;

    /// <summary>What a window shows of a file, else what is on the disk, understood; null when there is no such file.</summary>
    public Reading? Read(string window, string file)
    {
        if (folder.PathOf(file) is not { } path)
        {
            return null;
        }

        var sheet = windows.Find(window, file);
        if (sheet is null && OpenedFolder.Read(path, out _) is { } text)
        {
            sheet = new(file, text.Text, text.Stamp, null, []);
        }

        return sheet is null ? null : Reading.Of(folder, path, sheet, Files);
    }
}
