using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Output.Folders;
using Sketch.Planning;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Planning.Reports;
using Sketch.Planning.Summary;
using Sketch.Reports;
using Sketch.Tests.Planning.Reports;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Planning;

/// <summary>Plans a batch that uses a few files in memory.</summary>
internal sealed class PlanRun
{
    public const string Card =
        "card \"Gull\"\nbase A2, fold left, of white\nrole sky: gulls\nrole deep: navy\nfront\n  sky: panel, showing 1/8, of sky\n    "
            + "mat +1/8, of deep\n";
    public const string Shelf =
        "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets\ncardstock navy: letter, 25 sheets\ncardstock white: letter, any sheets\n";

    private PlanRun(BatchFiles? files, BatchPlan? plan, ImmutableArray<Finding> findings) =>
        (Files, Plan, Findings) = (files, plan, findings);

    public BatchFiles? Files { get; }

    public BatchPlan? Plan { get; }

    public ImmutableArray<Finding> Findings { get; }

    /// <summary>The summary of the plan.</summary>
    public PlanSummary Summary => PlanSummary.Of(Plan!, PaperWork.Of(Plan!), new(false));

    /// <summary>The plan as the tool writes it.</summary>
    public JsonElement Json
    {
        get
        {
            using var text = new StringWriter();
            ReportJson.WriteDocument(text, json => PlanJson.Write(json, Files?.Batch, Plan, Findings));
            return JsonDocument.Parse(text.ToString()).RootElement;
        }
    }

    /// <summary>Plans a batch beside the card "gull.card" and the stash "shelf.stash", and further files.</summary>
    public static PlanRun Of(string batch, params (string Name, string Text)[] files)
    {
        var world = new TestWorld().WithText("gull.card", Card).WithText("shelf.stash", Shelf).WithText("day.batch", batch);
        foreach (var (name, text) in files)
        {
            world.WithText(name, text);
        }

        var findings = new FindingBag();
        var read = BatchFiles.Read(new SourceText("day.batch", batch), world, findings);
        var plan = read is null ? null
            : BatchPlanner.Plan(read, TimeSpan.FromSeconds(60), findings, cancellation: TestContext.Current.CancellationToken);
        return new(read, plan, findings.ToImmutable());
    }

    /// <summary>Plans a batch with the choice to spend a sheet more where that saves much work.</summary>
    public static PlanRun EasyOf(string batch, string shelf)
    {
        var world = new TestWorld().WithText("shelf.stash", shelf).WithText("day.batch", batch);
        var findings = new FindingBag();
        var read = BatchFiles.Read(new SourceText("day.batch", batch), world, findings)! with { IsEasy = true };
        var plan = BatchPlanner.Plan(read, TimeSpan.FromSeconds(60), findings, cancellation: TestContext.Current.CancellationToken);
        return new(read, plan, findings.ToImmutable());
    }

    /// <summary>Plans a batch of the disk.</summary>
    public static PlanRun OfFile(string path)
    {
        var findings = new FindingBag();
        var read = BatchFiles.Read(FolderFiles.ReadFile(path).Source!, new FolderFiles(), findings);
        var plan = BatchPlanner.Plan(read!, TimeSpan.FromSeconds(60), findings, cancellation: TestContext.Current.CancellationToken);
        return new(read, plan, findings.ToImmutable());
    }

    public PaperPlan Paper(string name) => Assert.Single(Plan!.Papers, p => p.Order.Paper == name);

    public Finding Single(string code) => Assert.Single(Findings, f => f.Code == code);

    /// <summary>The pieces to cut, computed from the laid-out cards and the batch, not from the plan.</summary>
    public Dictionary<string, long> Wanted()
    {
        var wanted = new Dictionary<string, long>();
        foreach (var design in Plan!.Files.Designs)
        {
            var flat = design.Card.Base.Flat;
            Add(design.Card.Title, "base", flat.Width.Nanometres, flat.Height.Nanometres, design.Order.Count);
            foreach (var piece in design.Card.Pieces.Where(p => p.Matter == PieceMatter.Paper && p.Kind != PieceKind.Line))
            {
                var cut = Blank.IsFor(piece, Plan.Files.Batch) ? Blank.Of(piece.Cut!.Value, Plan.Files.Batch) : piece.Cut!.Value;
                Add(design.Card.Title, piece.Path.ToString(), cut.Width.Nanometres, cut.Height.Nanometres, design.Order.Count);
            }
        }

        foreach (var cut in Plan.Files.Batch.Cuts)
        {
            Add(null, $"line {cut.Location.Start.Line}", cut.Size.Width.Nanometres, cut.Size.Height.Nanometres, cut.Count);
        }

        return wanted;

        void Add(string? card, string what, long width, long height, int count)
        {
            var key = PlanJsonChecker.Key(card, what, width, height);
            wanted[key] = wanted.GetValueOrDefault(key) + count;
        }
    }
}
