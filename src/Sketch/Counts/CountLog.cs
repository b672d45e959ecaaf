using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Counts;

/// <summary>An entry with its line.</summary>
/// <param name="Entry">The entry.</param>
/// <param name="Location">Its line.</param>
public sealed record LoggedEntry(CountEntry Entry, Location Location);

/// <summary>
/// The log of what is made: plain text beside its batch, one entry per line, only ever appended to. Lines that begin with # are comments.
/// </summary>
/// <param name="Entries">The entries in the order of the log, each once.</param>
public sealed record CountLog(ImmutableArray<LoggedEntry> Entries)
{
    /// <summary>What the next writer puts at the end of a line that was cut off; no entry ends like this.</summary>
    public const string TornMark = " # cut off, not counted";

    /// <summary>The name of the log of a batch: the same name with another extension.</summary>
    public static string PathOf(string batch) => System.IO.Path.ChangeExtension(batch, ".count");

    /// <summary>
    /// Reads a log. A line that is not an entry is an error; a line that was cut off is a warning, whatever can be read in it; an entry
    /// that is there twice counts once.
    /// </summary>
    public static CountLog Read(SourceText source, FindingBag findings)
    {
        var entries = ImmutableArray.CreateBuilder<LoggedEntry>();
        var ids = new Dictionary<string, LoggedEntry>(StringComparer.Ordinal);
        for (var line = 0; line < source.LineCount; line++)
        {
            var text = source.Line(line);
            var place = new Location(source, new(source.LineStart(line), source.LineStart(line) + text.Length));
            if (string.IsNullOrWhiteSpace(text) || text.StartsWith('#'))
            {
                continue;
            }

            if (line == source.LineCount - 1 || text.EndsWith(TornMark, StringComparison.Ordinal))
            {
                findings.Add(FindingCatalogue.TornEntry, place, "This entry was cut off while it was written, so it is not counted.",
                    "Count these cards again if they are missing, then delete this line.");
            }
            else if (new CountLineReader(source, line, findings).Read() is { } entry)
            {
                var logged = new LoggedEntry(entry, place);
                if (ids.TryAdd(entry.Id, logged))
                {
                    entries.Add(logged);
                }
                else
                {
                    findings.Add(FindingCatalogue.EntryTwice, place,
                        $"This entry is already in line {ids[entry.Id].Location.Start.Line}, so it is counted once.", "Delete this line.");
                }
            }
        }

        return new(entries.ToImmutable());
    }
}
