using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Sketch.Diagnostics;
using Sketch.Preview.Folder;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>
/// A finding for the page: with the name of its file relative to the opened folder, and a replacement where the hint is one, else null.
/// </summary>
internal sealed record PageFinding : FindingRecord
{
    private PageFinding(Finding finding, string file)
        : base(finding, file)
    {
    }

    /// <summary>Whether it is in the text that the window shows.</summary>
    public bool Here { get; private init; }

    /// <inheritdoc/>
    [JsonIgnore(Condition = JsonIgnoreCondition.Never)]
    public override string? Replacement => base.Replacement;

    /// <summary>
    /// Findings for the page: errors first, then warnings, then notes, each in line order, with those of the text itself first.
    /// </summary>
    /// <param name="findings">The findings.</param>
    /// <param name="source">The text that the window shows.</param>
    /// <param name="folder">The opened folder.</param>
    public static IEnumerable<PageFinding> Of(ImmutableArray<Finding> findings, SourceText source, OpenedFolder folder) => findings
        .OrderByDescending(f => f.Severity)
        .ThenBy(f => f.Location.Source == source ? 0 : 1)
        .ThenBy(f => f.Location.Source.Path, StringComparer.Ordinal)
        .ThenBy(f => f.Location.Start.Line)
        .ThenBy(f => f.Location.Start.Column)
        .Select(f => new PageFinding(f, folder.NameOf(f.Location.Source.Path) ?? Path.GetFileName(f.Location.Source.Path))
        {
            Here = f.Location.Source == source,
        });
}
