using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;

namespace Sketch.Benchmarks;

/// <summary>A column calculated from the mean of a benchmark.</summary>
internal sealed class Worked(string name, string legend, Func<double, BenchmarkCase, string> work) : IColumn
{
    public string Id => name;

    public string ColumnName => name;

    public bool AlwaysShow => true;

    public ColumnCategory Category => ColumnCategory.Custom;

    public int PriorityInCategory => 0;

    public bool IsNumeric => true;

    public UnitType UnitType => UnitType.Dimensionless;

    public string Legend => legend;

    public bool IsAvailable(Summary summary) => true;

    public bool IsDefault(Summary summary, BenchmarkCase benchmarkCase) => false;

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase) =>
        summary[benchmarkCase]?.ResultStatistics is { Mean: var nanoseconds } ? work(nanoseconds, benchmarkCase) : "-";

    public string GetValue(Summary summary, BenchmarkCase benchmarkCase, SummaryStyle style) => GetValue(summary, benchmarkCase);
}
