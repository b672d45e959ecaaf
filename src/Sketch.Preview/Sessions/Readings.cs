using Sketch.Diagnostics;
using Sketch.Offers;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Preview.Folder;
using Sketch.Stashes;
using Sketch.World;

namespace Sketch.Preview.Sessions;

/// <summary>
/// The compiled texts of the windows and of the opened folder. All views use this, so that each keystroke causes one compilation.
/// </summary>
/// <param name="folder">The opened folder.</param>
/// <param name="windows">The windows of the page.</param>
/// <param name="files">The files and fonts for compilation.</param>
public sealed class Readings(OpenedFolder folder, OpenWindows windows, CachedFiles files)
{
    private readonly Compilations _compilations = new(files);

    /// <summary>The files and fonts for compilation.</summary>
    public IWorld Files => files;

    /// <summary>What a window shows of a file, else the file on disk; null when there is no such file.</summary>
    public Reading? Find(string window, string file)
    {
        if (folder.PathOf(file) is not { } path)
        {
            return null;
        }

        var shown = windows.Find(window, file);
        if (shown is null && OpenedFolder.Read(path).ValueOrDefault is { } text)
        {
            shown = new(file, text.Text, text.Stamp, null, []);
        }

        return shown is null ? null : Of(path, shown);
    }

    /// <summary>Compiles the text of a window.</summary>
    /// <param name="path">The file's path.</param>
    /// <param name="shown">Its text and papers.</param>
    public Reading Of(string path, OpenText shown)
    {
        var filling = new RoleFilling(SavedStash(shown.Stash), shown.Choices);
        // A choice that is no longer in the stash is dropped.
        filling = filling with { Choices = [.. filling.Choices.Where(filling.Has)] };
        return new(_compilations.Of(new(path, shown.Text), filling), filling);
    }

    /// <summary>What is beside a file on disk.</summary>
    public FilesBeside Beside(string path) => _compilations.Beside(path);

    /// <summary>The stash in a file on disk; null when there is none or it has errors.</summary>
    public Stash? SavedStash(string? name) => Saved(name) is { Stash: { } stash, HasErrors: false } ? stash : null;

    /// <summary>A file as it is on disk; null where it cannot be read.</summary>
    public Compilation? Saved(string? name) =>
        name is not null && folder.PathOf(name) is { } path && OpenedFolder.Read(path).ValueOrDefault is { } text
            ? _compilations.Of(new(path, text.Text)) : null;

    /// <summary>A compilation with all findings for its kind of file: those of a batch include the files that it names.</summary>
    public Compilation Check(Reading reading) => BatchCheck.Of(reading.Compilation, files, _compilations.Of);

    /// <summary>A batch with the files that it names, or null when the text is not a batch.</summary>
    /// <param name="reading">The batch.</param>
    /// <param name="findings">Receives every mistake.</param>
    public BatchFiles? Batch(Reading reading, FindingBag findings) =>
        BatchFiles.Read(reading.Compilation, files, findings, _compilations.Of);
}
