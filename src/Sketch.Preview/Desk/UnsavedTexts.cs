using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Sketch.Output.Files;
using Sketch.Preview.Folder;

namespace Sketch.Preview.Desk;

/// <summary>Typing that is not saved yet, as found on the disk.</summary>
/// <param name="Window">The window that it was typed in.</param>
/// <param name="Sheet">The text.</param>
/// <param name="Written">When it was kept, in universal time.</param>
public sealed record UnsavedText(string Window, DeskSheet Sheet, DateTime Written);

/// <summary>
/// Keeps typing on the disk a moment after it comes to rest or goes on for a moment, so that neither a closed window nor a killed program loses
/// more than that.
/// </summary>
public sealed class UnsavedTexts : IDisposable
{
    /// <summary>How long typing waits before it is written.</summary>
    public static readonly TimeSpan Delay = TimeSpan.FromMilliseconds(250);

    private const int ReadLimit = 500;

    private readonly OwnFiles _own;
    private readonly Lock _gate = new();
    private readonly Dictionary<(string Window, string File), DeskSheet?> _waiting = [];
    private readonly Timer _timer;
    private bool _isSet;

    /// <summary>Drafts in the folder's hidden part.</summary>
    public UnsavedTexts(OwnFiles own)
    {
        _own = own;
        _timer = new(_ => Flush());
    }

    /// <summary>Keeps a sheet, soon.</summary>
    public void Keep(string window, DeskSheet sheet) => Wait(window, sheet.File, sheet);

    /// <summary>Forgets the draft of a window, soon: it is saved, or the same as the file.</summary>
    public void Forget(string window, string file) => Wait(window, file, null);

    /// <summary>Writes at once all that waits.</summary>
    public void Flush()
    {
        lock (_gate)
        {
            foreach (var ((window, file), sheet) in _waiting)
            {
                Write(window, file, sheet);
            }

            _waiting.Clear();
            _isSet = false;
        }
    }

    /// <summary>The drafts of a file, the latest first.</summary>
    public IReadOnlyList<UnsavedText> Of(string file)
    {
        Flush();
        return Directory.Exists(_own.Drafts) && _own.IsWithin(_own.Drafts)
            ? [.. Directory.EnumerateFiles(_own.Drafts, "*.json").Where(_own.IsWithin).Take(ReadLimit).Select(Read).OfType<UnsavedText>().Where(d => d.Sheet.File == file).OrderByDescending(d => d.Written)]
            : [];
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        _timer.Dispose();
        Flush();
    }

    private void Wait(string window, string file, DeskSheet? sheet)
    {
        lock (_gate)
        {
            _waiting[(window, file)] = sheet;
            if (!_isSet)
            {
                _isSet = true;
                _timer.Change(Delay, Timeout.InfiniteTimeSpan);
            }
        }
    }

    private void Write(string window, string file, DeskSheet? sheet)
    {
        var path = Path.Combine(_own.Drafts, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{window}\n{file}")).AsSpan(0, 12)) + ".json");
        if (sheet is null)
        {
            if (_own.IsWithin(path))
            {
                OwnFiles.Remove(path);
            }

            return;
        }

        try
        {
            _own.Write(path, output =>
            {
                using var json = new Utf8JsonWriter(output);
                json.WriteStartObject();
                json.WriteString("window", window);
                json.WriteString("file", file);
                json.WriteString("base", sheet.Base);
                json.WriteString("text", sheet.Text);
                json.WriteEndObject();
            });
        }
        catch (FileWriteException)
        {
            // A folder that cannot be written has no drafts; saving will tell the person why.
        }
    }

    private static UnsavedText? Read(string path)
    {
        try
        {
            using var json = JsonDocument.Parse(File.ReadAllBytes(path));
            var root = json.RootElement;
            return (root.GetProperty("window").GetString(), root.GetProperty("file").GetString(), root.GetProperty("text").GetString(), root.GetProperty("base").GetString())
                is ({ } window, { } file, { } text, { } before)
                ? new(window, new(file, text, before, null, []), File.GetLastWriteTimeUtc(path))
                : null;
        }
        catch (Exception broken) when (broken is JsonException or KeyNotFoundException or InvalidOperationException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
