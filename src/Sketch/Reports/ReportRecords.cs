using System.Text.Json.Serialization;

namespace Sketch.Reports;

/// <summary>How the records of this folder are written as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(FindingRecord))]
internal sealed partial class ReportRecords : JsonSerializerContext;
