using System.Globalization;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Engines;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Sketch.Benchmarks;

/// <summary>Measures in the running process: nothing is rebuilt, so a benchmark starts at once, even on a busy machine.</summary>
public abstract class InProcess : ManualConfig
{
    protected InProcess(Job job)
    {
        AddJob(job.WithToolchain(new InProcessEmitToolchain(TimeSpan.FromMinutes(20), logOutput: true)));
        AddColumn(StatisticColumn.Median, StatisticColumn.Min);
    }
}

/// <summary>Compares each time with one frame of a screen.</summary>
public sealed class BesideFrame : InProcess
{
    private const double FrameNanoseconds = 16e6;

    public BesideFrame()
        : base(Job.Default.WithWarmupCount(5).WithIterationCount(15)) => AddColumn(new Worked(
            "Of a frame", "Share of 16 ms", (nanoseconds, _) =>
                (nanoseconds / FrameNanoseconds).ToString("P1", CultureInfo.InvariantCulture)));
}

/// <summary>For benchmarks that take a large part of a second.</summary>
public sealed class Pictures : InProcess
{
    public Pictures()
        : base(Job.Default.WithStrategy(RunStrategy.Monitoring).WithWarmupCount(3).WithIterationCount(15))
    {
    }
}

/// <summary>Divides each time by the number of pieces: constant within a column if the work grows linearly.</summary>
public sealed class ForEachPiece : InProcess
{
    public ForEachPiece()
        : base(Job.Default.WithStrategy(RunStrategy.Monitoring).WithWarmupCount(3).WithIterationCount(7)) => AddColumn(new Worked(
            "Each piece", "Mean divided by the number of pieces", (nanoseconds, benchmark) =>
                (nanoseconds / 1000 / (int)benchmark.Parameters[nameof(Growth.Pieces)]).ToString("0.00 us", CultureInfo.InvariantCulture)));
}
