using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Tests.Project;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Diagnostics;

/// <summary>A hint that says what to type fixes its finding and causes no new error.</summary>
public class HintTests
{
    /// <summary>
    /// So many slips of each sample, spread over all that can be made; each is laid out once and again for each proposal.
    /// </summary>
    private const int SlipsPerSample = 40;

    private static readonly FolderFiles World = new();

    public static TheoryData<string> Samples => [.. Directory.EnumerateFiles(Repository.PathTo("sketches"))
        .Where(f => Path.GetExtension(f) is ".card" or ".stash" or ".batch").Select(f => Path.GetFileName(f))
        .Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Typing_the_proposal_of_a_hint_removes_its_finding_and_adds_no_error(string sample)
    {
        var path = Repository.PathTo("sketches", sample);
        var slips = Slips.In(File.ReadAllText(path)).ToList();
        for (var i = 0; i < slips.Count; i += Math.Max(1, slips.Count / SlipsPerSample))
        {
            var found = Compile(path, slips[i]);
            foreach (var finding in found.Where(f => f.Location.Source.Content == slips[i] && !IsMisspelt(f, found)))
            {
                foreach (var cured in Cures.Of(slips[i], finding))
                {
                    AssertCured(found, finding, slips[i], Compile(path, cured), cured);
                }
            }
        }
    }

    private static void AssertCured(
        ImmutableArray<Finding> found, Finding finding, string slip, ImmutableArray<Finding> after, string cured)
    {
        var line = finding.Location.Start.Line;
        var shifted = line + cured.Count(c => c == '\n') - slip.Count(c => c == '\n');
        var reported = $"{finding.Code} {finding.Message} "
            + $"{finding.Hint}\n{slip.Split('\n')[line - 1]}\nbecomes\n{cured.Split('\n')[line - 1]}";
        // What is put beneath or before the line may move it.
        Assert.True(Count(after, line, shifted) < Count(found, line, line), $"Not fixed: {reported}");
        var harm = after.FirstOrDefault(a => a.Severity == Severity.Error && !found.Any(f => f.Code == a.Code && f.Message == a.Message));
        Assert.True(harm is null, $"New error {harm?.Code} {harm?.Message}: {reported}");

        int Count(ImmutableArray<Finding> all, int at, int orAt) =>
            all.Count(f => f.Code == finding.Code && (f.Location.Start.Line == at || f.Location.Start.Line == orAt));
    }

    /// <summary>Whether a line holds an error too, so that what else is found of it speaks of half a line.</summary>
    private static bool IsMisspelt(Finding finding, ImmutableArray<Finding> found) =>
        finding.Severity < Severity.Error
        && found.Any(f => f.Severity == Severity.Error && f.Location.Start.Line == finding.Location.Start.Line);

    private static ImmutableArray<Finding> Compile(string path, string text) =>
        Compiler.Compile(new SourceText(path, text), World).Findings;
}
