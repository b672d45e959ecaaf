using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Sketch.Batches;
using Sketch.Diagnostics;
using Sketch.Planning.Plans;
using Sketch.Reports;

namespace Sketch.Planning.Reports;

/// <summary>A plan as JSON.</summary>
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
