using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Sketch.Batches;
using Sketch.Diagnostics;
using Sketch.Planning.Plans;
using Sketch.Reports;

namespace Sketch.Planning.Reports;

/// <summary>A plan as JSON.</summary>
/// <remarks>
/// <para>The <c>steps</c> of a layout are its cuts in the order of work. A step says which <c>part</c> is in hand (its corners, measured on
/// the whole sheet), whether the blade runs <c>across</c> or <c>down</c> it, where the first cut comes <c>at</c> (from the upper or left
/// edge of the sheet), and how many cuts there are: <c>repeat</c> is at least 1, and each further cut takes a strip as wide as the first
/// one off what is left, so that cut number k+1 is at <c>at + k * (at - start of the part + kerf)</c>. The part beyond a cut begins one
/// kerf after it.</para>
/// <para>A <c>cut</c> is one stroke of the blade from edge to edge of the part in hand. A <c>setting</c> is one move of the stop: the first
/// step of a paper, and each step whose distance from stop to blade is not that of the step before it. <c>cuts</c> and <c>settings</c> of
/// a paper are summed over its sheets. Sheets with the same cuts are stacked and count once, whatever their pieces are for.</para>
/// </remarks>
public static class PlanJson
{
    /// <summary>
    /// Writes the plan's object. If the text is not a batch, the batch and its numbers are null; without a plan there are no papers.
    /// </summary>
    /// <param name="json">Where to.</param>
    /// <param name="batch">The batch, or null.</param>
    /// <param name="plan">Its plan, or null.</param>
    /// <param name="findings">All findings.</param>
    public static void Write(Utf8JsonWriter json, Batch? batch, BatchPlan? plan, ImmutableArray<Finding> findings) =>
        JsonSerializer.Serialize(json, PlanRecord.Of(batch, plan, findings), PlanRecords.Default.PlanRecord);
}

/// <summary>How the records of a plan are written as JSON.</summary>
[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    GenerationMode = JsonSourceGenerationMode.Metadata,
    Converters = [typeof(LengthConverter)])]
[JsonSerializable(typeof(PlanRecord))]
internal sealed partial class PlanRecords : JsonSerializerContext;
