using Sketch.Output.Lettering;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;

namespace Sketch.Preview.Server;

/// <summary>The services that the routes share.</summary>
/// <param name="folder">The opened folder.</param>
/// <param name="windows">The windows of the page.</param>
/// <param name="news">Reports changes in the folder.</param>
/// <param name="stopping">Set when the server ends.</param>
internal sealed class PageServices(OpenedFolder folder, OpenWindows windows, ChangeFeed news, CancellationToken stopping)
{
    /// <summary>The opened folder.</summary>
    public OpenedFolder Folder => folder;

    /// <summary>The windows of the page.</summary>
    public OpenWindows Windows => windows;

    /// <summary>Reports changes in the folder.</summary>
    public ChangeFeed ChangeFeed => news;

    /// <summary>Gives the time of entries in a count.</summary>
    public TimeProvider Clock { get; } = TimeProvider.System;

    /// <summary>The plans that windows have asked for.</summary>
    public BatchPlans Plans { get; } = new();

    /// <summary>Saves texts.</summary>
    public Saving Saving { get; } = new(folder);

    /// <summary>The texts of the windows and the files of the folder, compiled.</summary>
    public Readings Readings { get; } = new(folder, windows, new(new FontLibrary()));

    /// <summary>Set when the server ends.</summary>
    public CancellationToken Stopping => stopping;
}
