using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Counts;

public sealed class CountLogTests
{
    private const string Line = "2026-11-25 14:30 given 12 \"Fair winds\" to \"Cliff ward\" note \"by hand\" #0f1e2d3c4b5a6978";

    private static (CountLog Log, List<Finding> Findings) Read(string text)
    {
        var findings = new FindingBag();
        return (CountLog.Read(new SourceText("day.count", text), findings), [.. findings.ToImmutable()]);
    }

    [Fact]
    public void An_entry_reads_as_it_is_written()
    {
        var entry = Assert.Single(Read(Line + "\n").Log.Entries).Entry;

        Assert.Equal(
            new CountEntry(new(2026, 11, 25, 14, 30, 0), CountStage.Given, 12, "Fair winds")
            {
                Id = "0f1e2d3c4b5a6978",
                Recipient = "Cliff ward",
                Note = "by hand",
            }, entry);
        Assert.Equal(Line, entry.Line());
    }

    [Fact]
    public void Comments_and_empty_lines_are_not_entries() => Assert.Equal((0, 0),
        Read("# Counted in the reading room.\n\n") is var (log, findings) ? (log.Entries.Length, findings.Count) : default);

    [Theory]
    [InlineData("yesterday cut 12 \"Fair winds\" #0f1e2d3c4b5a6978", 1, "a date and time")]
    [InlineData("2026-11-25 14:30 cutt 12 \"Fair winds\" #0f1e2d3c4b5a6978", 18, "'cutt'")]
    [InlineData("2026-11-25 14:30 cut dozen \"Fair winds\" #0f1e2d3c4b5a6978", 22, "'dozen'")]
    [InlineData("2026-11-25 14:30 cut 0 \"Fair winds\" #0f1e2d3c4b5a6978", 22, "'0'")]
    [InlineData("2026-11-25 14:30 cut 12 Fair winds #0f1e2d3c4b5a6978", 25, "the card in quotes")]
    [InlineData("2026-11-25 14:30 cut 12 \"Fair winds\" to \"Cliff ward\" #0f1e2d3c4b5a6978", 38, "'to'")]
    [InlineData("2026-11-25 14:30 cut 12 \"Fair winds\" #0f1e2d3c", 38, "16 digits")]
    [InlineData("2026-11-25 14:30 cut 12 \"Fair winds\"", 37, "the end of the line")]
    public void A_line_that_is_no_entry_is_one_error_at_its_place(string line, int column, string words)
    {
        var (log, findings) = Read(line + "\n");

        Assert.Empty(log.Entries);
        var finding = Assert.Single(findings);
        Assert.Equal((FindingCatalogue.BadEntry, 1, column), (finding.Kind, finding.Location.Start.Line, finding.Location.Start.Column));
        Assert.Contains(words, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_entry_cut_off_anywhere_is_never_counted()
    {
        for (var length = 1; length <= Line.Length; length++)
        {
            var (log, findings) = Read($"{Line.Replace("0f", "00", StringComparison.Ordinal)}\n{Line[..length]}");

            Assert.Single(log.Entries);
            Assert.Equal((FindingCatalogue.TornEntry, 2), (Assert.Single(findings).Kind, findings[0].Location.Start.Line));
        }
    }

    [Fact]
    public void A_line_marked_as_cut_off_is_not_counted_even_if_it_looks_whole()
    {
        var (log, findings) = Read($"{Line}{CountLog.TornMark}\n");

        Assert.Empty(log.Entries);
        Assert.Equal(FindingCatalogue.TornEntry, Assert.Single(findings).Kind);
    }

    [Fact]
    public void An_entry_that_is_there_twice_counts_once()
    {
        var (log, findings) = Read($"{Line}\n{Line}\n");

        Assert.Single(log.Entries);
        Assert.Equal((FindingCatalogue.EntryTwice, 2), (Assert.Single(findings).Kind, findings[0].Location.Start.Line));
    }
}
