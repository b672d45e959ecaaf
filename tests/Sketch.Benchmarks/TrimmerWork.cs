using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Fuzz.Inputs;
using Sketch.Output.Folders;
using Sketch.Planning;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;

namespace Sketch.Benchmarks;

/// <summary>
/// The work at the trimmer of the sample, of random batches and of sixty kinds of piece, one line of CSV for each: sheets, different
/// layouts, settings of the stop, cuts, and square inches of the largest leftovers. Two versions of the planner are compared by the lines
/// that each prints.
/// </summary>
internal static class TrimmerWork
{
    private const int Large = 5;

    /// <summary>Prints the lines.</summary>
    /// <param name="sample">The path of a batch.</param>
    /// <param name="count">The number of random batches.</param>
    public static int Run(string sample, int count)
    {
        Console.WriteLine("batch,sheets,layouts,settings,cuts,leftover,ms of processor");
        Print("sample", BatchFiles.Read(FolderFiles.ReadFile(sample).Source!, new FolderFiles(), new FindingBag())!);
        for (var number = 1; number <= count; number++)
        {
            Print(string.Create(CultureInfo.InvariantCulture, $"random {number}"), RandomBatches.OfFiveDesigns(number));
        }

        for (var number = 1; number <= Large; number++)
        {
            Print(string.Create(CultureInfo.InvariantCulture, $"sixty {number}"), RandomBatches.OfSixtyKinds(number, 500));
        }

        return 0;
    }

    private static void Print(string name, BatchFiles files)
    {
        BatchPlan? made = null;
        var spent = Clock.Time(() => made = BatchPlanner.Plan(files, BatchPlanner.UsualTime, new FindingBag()));
        var plan = made!;
        var work = PaperWork.Of(plan);
        Console.WriteLine(string.Join(',', new object[]
        {
            name, plan.Papers.Sum(p => p.Plan.Sheets), work.Sum(w => w.Stacks.Length), work.Sum(w => w.Settings), work.Sum(w => w.Cuts),
            Math.Round(plan.Papers.Sum(Largest)), Math.Round(spent.Processor),
        }.Select(value => Convert.ToString(value, CultureInfo.InvariantCulture))));
    }

    // Square inches of the largest leftover of a sheet of the paper.
    private static double Largest(PaperPlan paper) => paper.Plan.Layouts.Where(l => !l.IsOffcut).SelectMany(l => l.Leftovers)
        .Select(r => r.Width.Millimetres * r.Height.Millimetres / 645.16).DefaultIfEmpty().Max();
}
