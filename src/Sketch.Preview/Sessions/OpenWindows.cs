using System.Collections.Concurrent;
using System.Text;
using Sketch.Output.Files;
using Sketch.Preview.Folder;

namespace Sketch.Preview.Sessions;

/// <summary>All windows of the page and what each shows.</summary>
/// <param name="drafts">Where unsaved edits are kept.</param>
public sealed class OpenWindows(UnsavedTexts drafts)
{
    /// <summary>The most texts that are held in memory; edits of those that are dropped are still kept as drafts.</summary>
    private const int SheetLimit = 200;

    private readonly ConcurrentDictionary<(string Window, string File), Shown> _sheets = new();
    private readonly Lock _one = new();
    private readonly ConcurrentDictionary<string, int> _open = new(StringComparer.Ordinal);

    /// <summary>Whether a name is valid for a window: 8 to 40 lower-case letters and digits.</summary>
    public static bool IsName(string? window) =>
        window is { Length: >= 8 and <= 40 } && window.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c));

    /// <summary>Stores what a window shows now.</summary>
    /// <param name="window">The window.</param>
    /// <param name="sheet">Its text and papers.</param>
    /// <param name="isSaved">Whether the file holds that text.</param>
    public void Put(string window, OpenText sheet, bool isSaved)
    {
        // The text shown last is also the one kept last.
        lock (_one)
        {
            if (!Hold(window, sheet, isSaved))
            {
                return;
            }

            if (isSaved)
            {
                drafts.Forget(window, sheet.File);
            }
            else
            {
                drafts.Keep(window, sheet);
            }
        }
    }

    /// <summary>
    /// Records that the text of a window is in the file. What was typed during the save stays unsaved, now as an edit of that text.
    /// </summary>
    /// <param name="window">The window.</param>
    /// <param name="file">The file.</param>
    /// <param name="text">The text that was saved.</param>
    /// <param name="stamp">The stamp of the current content of the file.</param>
    public void Saved(string window, string file, string text, string stamp)
    {
        lock (_one)
        {
            var sheet = Find(window, file) ?? Draft(window, file)?.Sheet ?? new(file, text, stamp, null, []);
            sheet = sheet with { Base = stamp };
            Hold(window, sheet, sheet.Text == text);
            if (sheet.Text == text)
            {
                drafts.Forget(window, file);
            }
            else
            {
                drafts.Keep(window, sheet);
            }
        }
    }

    /// <summary>Holds what a window shows; false when that does not change its draft.</summary>
    private bool Hold(string window, OpenText sheet, bool isSaved)
    {
        if (_sheets.Count >= SheetLimit)
        {
            _sheets.Clear();
        }

        var key = (window, sheet.File);
        var isSame = _sheets.TryGetValue(key, out var before)
            && (before.IsSaved, before.Sheet.Text, before.Sheet.Base) == (isSaved, sheet.Text, sheet.Base);
        _sheets[key] = new(sheet, isSaved);
        return !isSame;
    }

    private UnsavedText? Draft(string window, string file) => drafts.Of(file).FirstOrDefault(d => d.Window == window);

    /// <summary>What a window shows of a file, or null when it has not sent anything.</summary>
    public OpenText? Find(string window, string file) => _sheets.GetValueOrDefault((window, file))?.Sheet;

    /// <summary>
    /// The unsaved edits of a file: the window's own, else the latest of a window that is no longer open. Null when there are none.
    /// </summary>
    public UnsavedText? Unsaved(string window, string file)
    {
        var all = drafts.Of(file);
        return all.FirstOrDefault(d => d.Window == window) ?? all.FirstOrDefault(d => !_open.ContainsKey(d.Window));
    }

    /// <summary>The files of a window whose edits are in memory only, since they cannot be written to disk.</summary>
    public IReadOnlyList<string> InMemoryOnly(string window) => drafts.Refused(window);

    /// <summary>The names of the files with unsaved edits, including files that no longer exist.</summary>
    public IReadOnlyList<string> UnsavedFiles() => drafts.Files();

    /// <summary>Discards the unsaved edits of a window that is no longer open.</summary>
    /// <param name="window">That window.</param>
    /// <param name="file">The file.</param>
    /// <param name="keep">Where the text is kept among the earlier ones, or null when another window has taken it over.</param>
    /// <returns>Why it could not be kept and so is not discarded; empty when it is.</returns>
    public string Forget(string window, string file, OwnFiles? keep)
    {
        try
        {
            if (keep is not null && Draft(window, file) is { } draft)
            {
                keep.KeepEarlier(file, Encoding.UTF8.GetBytes(draft.Sheet.Text));
            }
        }
        catch (FileWriteException refused)
        {
            return refused.Message;
        }

        _sheets.TryRemove((window, file), out _);
        drafts.Forget(window, file);
        return "";
    }

    /// <summary>How many windows are open.</summary>
    public int Count => _open.Count;

    /// <summary>Records that a window is open, until the result is disposed.</summary>
    public IDisposable Open(string window)
    {
        _open.AddOrUpdate(window, 1, (_, count) => count + 1);
        return new Opened(this, window);
    }

    /// <summary>What a window shows, and whether the file holds that text.</summary>
    private sealed record Shown(OpenText Sheet, bool IsSaved);

    private sealed class Opened(OpenWindows windows, string window) : IDisposable
    {
        public void Dispose()
        {
            if (windows._open.AddOrUpdate(window, 0, (_, count) => count - 1) == 0)
            {
                windows._open.TryRemove(new(window, 0));
            }
        }
    }
}
