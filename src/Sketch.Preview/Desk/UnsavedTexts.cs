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

    /// <summary>How long what the disk refused waits until it is tried again.</summary>
    private static readonly TimeSpan Again = TimeSpan.FromSeconds(1);

    /// <summary>The most drafts of one file that are read.</summary>
    private const int ReadLimit = 500;

    /// <summary>The most bytes of a draft before its text: the window and the longest name, each letter escaped.</summary>
    private const int HeadLength = 4096;

    private readonly OwnFiles _own;
    private readonly Lock _writing = new();
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

    /// <summary>Writes at once all that waits; what the disk refuses goes on waiting.</summary>
    public void Flush()
    {
        // One writes at a time, so that no older text comes after a newer one; meanwhile typing goes on.
        lock (_writing)
        {
            List<KeyValuePair<(string Window, string File), DeskSheet?>> waiting;
            lock (_gate)
            {
                waiting = [.. _waiting];
                _waiting.Clear();
                _isSet = false;
            }

            var refused = waiting.Where(w => !Write(w.Key.Window, w.Key.File, w.Value)).ToList();
            lock (_gate)
            {
                foreach (var (key, sheet) in refused)
                {
                    // What came in since is newer.
                    _waiting.TryAdd(key, sheet);
                }

                if (refused.Count > 0 && !_isSet)
                {
                    _timer.Change(Again, Timeout.InfiniteTimeSpan);
                }
            }
        }
    }

    /// <summary>The drafts of a file, the latest first.</summary>
    public IReadOnlyList<UnsavedText> Of(string file)
    {
        Flush();
        return [.. OnDisk().Where(d => FileIn(d) == file).OrderByDescending(FileContent.WrittenAt).Take(ReadLimit)
            .Select(Read).OfType<UnsavedText>().OrderByDescending(d => d.Written)];
    }

    /// <summary>The names of the files that have drafts.</summary>
    public IReadOnlyList<string> Files()
    {
        Flush();
        return [.. OnDisk().Select(FileIn).OfType<string>().Distinct()];
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Flush();
        _timer.Dispose();
    }

    private IEnumerable<string> OnDisk() =>
        Directory.Exists(_own.Drafts) && _own.IsWithin(_own.Drafts) ? Directory.EnumerateFiles(_own.Drafts, "*.json").Where(_own.IsWithin) : [];

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

    private bool Write(string window, string file, DeskSheet? sheet)
    {
        var path = Path.Combine(_own.Drafts, Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{window}\n{file}")).AsSpan(0, 12)) + ".json");
        if (sheet is null)
        {
            if (_own.IsWithin(path))
            {
                OwnFiles.Remove(path);
            }

            return true;
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
            return true;
        }
        catch (FileWriteException)
        {
            // Saving will tell the person why.
            return false;
        }
    }

    /// <summary>The file that a draft is of, without reading its text; null for what is no draft.</summary>
    private static string? FileIn(string path)
    {
        try
        {
            var json = new Utf8JsonReader(FileContent.ReadStart(path, HeadLength), isFinalBlock: false, default);
            while (json.Read())
            {
                if (json.TokenType == JsonTokenType.PropertyName && json.ValueTextEquals("file"u8))
                {
                    return json.Read() && json.TokenType == JsonTokenType.String ? json.GetString() : null;
                }
            }
        }
        catch (Exception broken) when (broken is JsonException or InvalidOperationException)
        {
        }

        return null;
    }

    private static UnsavedText? Read(string path)
    {
        try
        {
            using var json = JsonDocument.Parse(FileContent.Read(path, int.MaxValue, out _));
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
