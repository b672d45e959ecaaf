using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Sketch.Counts;
using Sketch.Diagnostics;

namespace Sketch.Reports;

/// <summary>A count as written in JSON.</summary>
/// <param name="Batch">The title; null if the file is not a batch.</param>
/// <param name="Designs">Each card.</param>
/// <param name="Recipients">Each recipient.</param>
/// <param name="Pace">The pace, or null.</param>
/// <param name="Findings">What is wrong in the batch or its log.</param>
public sealed record CountRecord(
    string? Batch, IEnumerable<DesignCountRecord> Designs, IEnumerable<RecipientCountRecord> Recipients, PaceRecord? Pace,
    IEnumerable<FindingRecord> Findings)
{
    /// <summary>A count as a record.</summary>
    /// <param name="count">The count; null if the file is not a batch or the log cannot be read.</param>
    /// <param name="today">The present day.</param>
    /// <param name="findings">The findings.</param>
    public static CountRecord Of(BatchCount? count, DateOnly today, ImmutableArray<Finding> findings) => new(
        count?.Batch.Title,
        count is null ? [] : count.Designs.Select(DesignCountRecord.Of),
        count is null ? [] : count.Recipients.Select(r => new RecipientCountRecord(r.Name, r.Cards, r.Given, r.Left)),
        count?.PaceOn(today) is { } pace ? new(pace.Made, pace.Days, CountSummary.Day(pace.By)) : null,
        findings.Select(f => FindingRecord.Of(f, f.Location.Source.Path)));
}

/// <summary>How many cards of one title are at which stage.</summary>
public sealed record DesignCountRecord
{
    /// <summary>The title.</summary>
    public required string Card { get; init; }

    /// <summary>How many the batch makes.</summary>
    public required int Make { get; init; }

    /// <summary>How many are cut, without those spoilt.</summary>
    public required long Cut { get; init; }

    /// <summary>How many are glued.</summary>
    public required long Glued { get; init; }

    /// <summary>How many have their inside done.</summary>
    public required long Inside { get; init; }

    /// <summary>How many are in their envelopes.</summary>
    public required long Enveloped { get; init; }

    /// <summary>How many are given away.</summary>
    public required long Given { get; init; }

    /// <summary>How many are still to make: neither in their envelopes nor given away.</summary>
    public required long Left { get; init; }

    /// <summary>How many were spoilt.</summary>
    public required long Spoilt { get; init; }

    /// <summary>A design's count as a record.</summary>
    public static DesignCountRecord Of(DesignCount count) => new()
    {
        Card = count.Card,
        Make = count.Make,
        Cut = count.Of(CountStage.Cut),
        Glued = count.Of(CountStage.Glued),
        Inside = count.Of(CountStage.Inside),
        Enveloped = count.Of(CountStage.Enveloped),
        Given = count.Of(CountStage.Given),
        Left = count.Left,
        Spoilt = count.Spoilt,
    };
}

/// <summary>What one recipient was given.</summary>
public sealed record RecipientCountRecord(string Name, int Cards, long Given, long Left);

/// <summary>How fast cards are finished, and the day by which the rest is.</summary>
public sealed record PaceRecord(long Made, int Days, string By);

/// <summary>How counts are written as JSON.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, GenerationMode = JsonSourceGenerationMode.Metadata)]
[JsonSerializable(typeof(CountRecord))]
public sealed partial class CountRecords : JsonSerializerContext;
