using System.Diagnostics;
using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Tests.Cutting;

namespace Sketch.Benchmarks;

/// <summary>
/// Plans of seeded problems of the ten classical classes, beside their bounds, a plain shelf first-fit, and what a search finds that may
/// do twenty times as much.
/// </summary>
internal static class ClassicalPlans
{
    private const int Patience = 20;

    public static int Run(int seeds)
    {
        Console.WriteLine("| class | problems | sheets | bound | shelves | proved | one over | more | worse than shelves "
            + "| better with patience | s |");
        Console.WriteLine("| ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
        var all = Enumerable.Range(1, ClassicalClasses.Count).Select(number => Class(number, seeds)).ToList();
        Console.WriteLine(all.Aggregate((a, b) => a.Plus(b)).Row("all"));
        return 0;
    }

    private static Sums Class(int number, int seeds)
    {
        var sums = new Sums();
        foreach (var pieces in (int[])[20, 40, 60, 80, 100])
        {
            for (var seed = 0; seed < seeds; seed++)
            {
                var problem = ClassicalClasses.Problem(number, pieces, seed);
                var watch = Stopwatch.StartNew();
                var plan = SheetPlanner.Plan(problem, new(WorkBudget.Usual));
                var seconds = watch.Elapsed.TotalSeconds;
                var shelves = ShelfFirstFit.Sheets(problem);
                var over = plan.Sheets - plan.LowerBound;
                var better = over > 0 && SheetPlanner.Sheets(problem, new(Patience * WorkBudget.Usual)) < plan.Sheets;
                sums = sums.Plus(new(1, plan.Sheets, plan.LowerBound, shelves, over == 0 ? 1 : 0, over == 1 ? 1 : 0, over > 1 ? 1 : 0,
                    plan.Sheets > shelves ? 1 : 0, better ? 1 : 0, seconds));
            }
        }

        Console.WriteLine(sums.Row(Invariant($"{number}")));
        return sums;
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    private readonly record struct Sums(
        int Problems, int Sheets, int Bound, int Shelves, int Proved, int OneOver, int More, int Worse, int Better,
        double Seconds)
    {
        public Sums Plus(Sums o) => new(Problems + o.Problems, Sheets + o.Sheets, Bound + o.Bound, Shelves + o.Shelves, Proved + o.Proved,
            OneOver + o.OneOver, More + o.More, Worse + o.Worse, Better + o.Better,
            Seconds + o.Seconds);

        public string Row(string name) => Invariant(
            $"| {name} | {Problems} | {Sheets} | {Bound} | {Shelves} | {Proved} | {OneOver} | {More} | {Worse} | {Better} | {Seconds:0} |");
    }
}
