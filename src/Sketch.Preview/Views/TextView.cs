using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Sketch.Diagnostics;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Reports;

namespace Sketch.Preview.Views;

/// <summary>What the page shows of a text: its findings, and of a card also its pictures and roles.</summary>
/// <param name="Kind">card, stash or batch.</param>
/// <param name="Title">Its title; null where it cannot be read.</param>
/// <param name="Pictures">The pictures of a card; null where none can be laid out.</param>
/// <param name="Roles">The roles of a card.</param>
/// <param name="Findings">The findings.</param>
/// <param name="Summary">The findings in a sentence.</param>
// Pictures are drawn one at a time while the answer is written, so that those of all faces are not in memory at once.
internal sealed record TextView(
    string Kind,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Title,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IEnumerable<PictureView>? Pictures,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IEnumerable<RoleView>? Roles,
    IEnumerable<PageFinding> Findings,
    string Summary)
{
    /// <summary>What the page shows of a text.</summary>
    /// <param name="reading">The text.</param>
    /// <param name="findings">All its findings.</param>
    /// <param name="folder">The opened folder.</param>
    /// <param name="isUnfolded">Whether the base is shown unfolded in place of its faces.</param>
    /// <param name="known">Stamps of the pictures that the page has.</param>
    public static TextView Of(
        Reading reading, ImmutableArray<Finding> findings, OpenedFolder folder, bool isUnfolded, IReadOnlySet<string> known) => new(
            reading.Kind,
            reading.Title,
            reading.Card is { } card ? CardView.Pictures(card, reading.Source, isUnfolded, known) : null,
            reading.Card is { } shown ? CardView.Roles(shown) : null,
            PageFinding.Of(findings, reading.Source, folder),
            FindingsText.Summary(findings));
}
