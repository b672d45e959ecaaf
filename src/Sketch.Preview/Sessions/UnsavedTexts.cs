using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization;
using Sketch.Output.Files;
using Sketch.Preview.Folder;

namespace Sketch.Preview.Sessions;

/// <summary>Edits that are not saved yet.</summary>
/// <param name="Window">The window in which they were typed.</param>
/// <param name="Sheet">The text.</param>
/// <param name="Written">When it was written to disk, or typed if it is not on disk yet, in UTC.</param>
public sealed record UnsavedText(string Window, OpenText Sheet, DateTime Written);

/// <summary>An edit as it is on disk. The text comes last, so that the others can be read without it.</summary>
/// <param name="Window">The window.</param>
/// <param name="File">The file's name.</param>
/// <param name="Base">The stamp of the content of the file when the edits began.</param>
/// <param name="Text">The text.</param>
internal sealed record Draft(string Window, string File, string Base, string Text);

/// <summary>How drafts are written as JSON.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    GenerationMode = JsonSourceGenerationMode.Metadata,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true)]
[JsonSerializable(typeof(Draft))]
internal sealed partial class DraftRecords : JsonSerializerContext;

/// <summary>
/// Writes edits to disk a moment after they pause, and at intervals while they continue, so that a closed window or a killed program
/// loses no more than that. What cannot be written stays in memory: it is offered from there, and listed by <see cref="Refused"/>.
/// </summary>
public sealed class UnsavedTexts : IDisposable
{
    /// <summary>How long edits wait before they are written.</summary>
    public static readonly TimeSpan Delay = TimeSpan.FromMilliseconds(250);

    /// <summary>The time before a failed write is retried.</summary>
    private static readonly TimeSpan Again = TimeSpan.FromSeconds(1);

    /// <summary>The most drafts of one file that are read.</summary>
    private const int ReadLimit = 500;

    /// <summary>The most bytes of a draft before its text: the window and the longest name, with every character escaped.</summary>
    private const int HeadLength = 4096;

    private readonly OwnFiles _own;
    private readonly Lock _writing = new();
    private readonly Lock _gate = new();
    private readonly Dictionary<(string Window, string File), Waiting> _waiting = [];
    private readonly Timer _timer;
    private ImmutableHashSet<(string Window, string File)> _refused = [];
    private bool _isSet;

    /// <summary>Drafts in the folder's hidden part.</summary>
    public UnsavedTexts(OwnFiles own)
    {
        _own = own;
        _timer = new(_ => Flush());
    }

    /// <summary>Schedules a text to be kept.</summary>
    public void Keep(string window, OpenText sheet) => Wait(window, sheet.File, sheet);

    /// <summary>Schedules the draft of a window to be deleted: it is saved, or equals the file.</summary>
    public void Forget(string window, string file) => Wait(window, file, null);

    /// <summary>The files of one window or of all whose edits cannot be written to disk and are lost at exit, in order.</summary>
    public IReadOnlyList<string> Refused(string? window = null) =>
        [.. _refused.Where(r => window is null || r.Window == window).Select(r => r.File).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>Writes everything pending now; what cannot be written stays pending.</summary>
    public void Flush()
    {
        // One write at a time, so that no older text is written after a newer one; edits continue in the meantime.
        lock (_writing)
        {
            List<KeyValuePair<(string Window, string File), Waiting>> waiting;
            lock (_gate)
            {
                waiting = [.. _waiting];
                _isSet = false;
            }

            var refused = waiting.Where(w => w.Value.Sheet is { } sheet && !Write(w.Key.Window, sheet))
                .Select(w => w.Key).ToImmutableHashSet();
            // While any write fails, no draft is deleted: another window may have taken over its text, which is then only in memory.
            var done = refused.IsEmpty ? waiting : [.. waiting.Where(w => w.Value.Sheet is not null && !refused.Contains(w.Key))];
            foreach (var (key, _) in done.Where(w => w.Value.Sheet is null))
            {
                Delete(key.Window, key.File);
            }

            lock (_gate)
            {
                foreach (var (key, written) in done)
                {
                    // An entry that came in since is newer.
                    if (_waiting[key] == written)
                    {
                        _waiting.Remove(key);
                    }
                }

                if (!refused.IsEmpty && !_isSet)
                {
                    _timer.Change(Again, Timeout.InfiniteTimeSpan);
                }
            }

            _refused = refused;
        }
    }

    /// <summary>The drafts of a file, latest first.</summary>
    public IReadOnlyList<UnsavedText> Of(string file)
    {
        Flush();
        var waiting = Held(file);
        var written = OnDisk().Where(d => FileIn(d) == file).OrderByDescending(FileContent.WrittenAt).Take(ReadLimit)
            .Select(Read).OfType<UnsavedText>().Where(d => !waiting.ContainsKey(d.Window));
        var held = waiting.Where(w => w.Value.Sheet is not null).Select(w => new UnsavedText(w.Key, w.Value.Sheet!, w.Value.Since));
        return [.. held.Concat(written).OrderByDescending(d => d.Written)];
    }

    /// <summary>The names of the files that have drafts.</summary>
    public IReadOnlyList<string> Files()
    {
        Flush();
        List<string> held;
        lock (_gate)
        {
            held = [.. _waiting.Where(w => w.Value.Sheet is not null).Select(w => w.Key.File)];
        }

        return [.. OnDisk().Select(FileIn).OfType<string>().Concat(held).Distinct()];
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Flush();
        _timer.Dispose();
    }

    private IEnumerable<string> OnDisk() =>
        Directory.Exists(_own.Drafts) && _own.IsWithin(_own.Drafts)
            ? Directory.EnumerateFiles(_own.Drafts, "*.json").Where(_own.IsWithin) : [];

    /// <summary>The pending texts of a file, by window.</summary>
    private Dictionary<string, Waiting> Held(string file)
    {
        lock (_gate)
        {
            return _waiting.Where(w => w.Key.File == file).ToDictionary(w => w.Key.Window, w => w.Value);
        }
    }

    private void Wait(string window, string file, OpenText? sheet)
    {
        lock (_gate)
        {
            _waiting[(window, file)] = new(sheet, DateTime.UtcNow);
            if (!_isSet)
            {
                _isSet = true;
                _timer.Change(Delay, Timeout.InfiniteTimeSpan);
            }
        }
    }

    private void Delete(string window, string file)
    {
        var path = PathOf(window, file);
        if (_own.IsWithin(path))
        {
            OwnFiles.Remove(path);
        }
    }

    private string PathOf(string window, string file)
    {
        var hash = SHA256.HashData(Encoding.UTF8.GetBytes($"{window}\n{file}"));
        return Path.Combine(_own.Drafts, Convert.ToHexStringLower(hash.AsSpan(0, 12)) + ".json");
    }

    /// <summary>Writes a draft; false when it cannot be written.</summary>
    private bool Write(string window, OpenText sheet)
    {
        try
        {
            _own.Write(PathOf(window, sheet.File), output => JsonSerializer.Serialize(
                output, new(window, sheet.File, sheet.Base, sheet.Text), DraftRecords.Default.Draft));
            return true;
        }
        catch (FileWriteException)
        {
            // A save will report why.
            return false;
        }
    }

    /// <summary>The file of a draft, without reading its text; null for what is not a draft.</summary>
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
            return JsonSerializer.Deserialize(FileContent.Read(path, int.MaxValue).ValueOrDefault, DraftRecords.Default.Draft) is { } draft
                ? new(draft.Window, new(draft.File, draft.Text, draft.Base, null, []), File.GetLastWriteTimeUtc(path))
                : null;
        }
        catch (Exception broken) when (broken is JsonException or IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>The next write for a file: a text, or null to delete the draft. Compared by identity.</summary>
    private sealed class Waiting(OpenText? sheet, DateTime since)
    {
        public OpenText? Sheet => sheet;

        public DateTime Since => since;
    }
}
