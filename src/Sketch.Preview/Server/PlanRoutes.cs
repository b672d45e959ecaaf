using System.Text;
using System.Text.Json;
using System.Threading.Channels;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Sketch.Diagnostics;
using Sketch.Output.Folders;
using Sketch.Planning;
using Sketch.Planning.Demand;
using Sketch.Planning.Diagrams;
using Sketch.Planning.Plans;
using Sketch.Planning.Remainder;
using Sketch.Planning.Reports;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Reports;

namespace Sketch.Preview.Server;

/// <summary>How far the search for a plan is.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Sheets">The sheets that its best plan so far needs.</param>
/// <param name="Bound">The fewest sheets that a plan could need.</param>
internal sealed record ProgressView(string Paper, int Sheets, int Bound);

/// <summary>The end of a search.</summary>
/// <param name="Done">Always true.</param>
/// <param name="Html">The plan as an HTML fragment; null without a plan.</param>
/// <param name="Pages">How many pages the workbook has.</param>
/// <param name="MessagePages">How many pages the messages to print have; 0 without messages.</param>
/// <param name="Findings">The findings.</param>
/// <param name="Summary">The findings in a sentence.</param>
internal sealed record PlanView(bool Done, string? Html, int Pages, int MessagePages, IEnumerable<PageFinding> Findings, string Summary);

/// <summary>Plans the batch that a window shows, reports the progress, and serves the plan for printing.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class PlanRoutes(PageServices room)
{
    private static readonly TimeSpan TimeLimit = TimeSpan.FromSeconds(10);

    private const string HintForTime = "You can use the plan as it is. With fewer different sizes, the search ends sooner.";

    /// <summary>Maps the requests about plans.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/plan", Plan);
        routes.MapPost("/enough", Enough);
        routes.MapGet("/workbook.pdf", Workbook);
        routes.MapGet("/messages.pdf", Messages);
        routes.MapGet("/cuts.csv", Cuts);
        routes.MapGet("/left.stash", Left);
    }

    // One JSON object per line, sent as soon as it is known: progress reports first, the plan last.
    private async Task Plan(HttpContext context, PlanRequest asked)
    {
        var (window, file) = (asked.Window, asked.File);
        if (room.Readings.Find(window, file) is not { } reading)
        {
            await FileRoutes.NoName(file).ExecuteAsync(context).ConfigureAwait(false);
            return;
        }

        context.Response.ContentType = "application/x-ndjson; charset=utf-8";
        var reported = Channel.CreateBounded<BatchProgress>(new BoundedChannelOptions(64) { FullMode = BoundedChannelFullMode.DropOldest });
        var findings = new FindingBag();
        var search = room.Plans.Begin(window, file, context.RequestAborted, room.Stopping);
        var planning = Task.Run(() =>
        {
            try
            {
                return FilesOf(asked, reading, findings) is { } files
                    ? BatchPlanner.Plan(files, TimeLimit, findings, new Reporter(reported.Writer), HintForTime, search.Token)
                    : null;
            }
            finally
            {
                reported.Writer.Complete();
            }
        }, CancellationToken.None);
        try
        {
            await foreach (var progress in reported.Reader.ReadAllAsync(context.RequestAborted).ConfigureAwait(false))
            {
                await Line(context, new ProgressView(progress.Paper, progress.Sheets, progress.LowerBound)).ConfigureAwait(false);
            }

            var plan = await planning.ConfigureAwait(false);
            room.Plans.Put(window, file, plan);
            await Line(context, View(reading, plan, findings)).ConfigureAwait(false);
        }
        finally
        {
            // A closed window has cancelled its search. Wait for it, because it still uses the token.
            await ((Task)planning).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            room.Plans.End(window, file, search);
        }
    }

    // A count that cannot be read is a problem of its tab; the plan then leaves nothing out.
    private BatchFiles? FilesOf(PlanRequest asked, Reading reading, FindingBag findings) =>
        room.Readings.Batch(reading, findings) is not { } files ? null
        : asked.Left && new CountFile(files.Batch, reading.Source.Path, room.Readings.Files).Read(findings).ValueOrDefault is { } count
            ? LeftToMake.Of(files, count) with { IsEasy = asked.Easy } : files with { IsEasy = asked.Easy };

    private PlanView View(Reading reading, BatchPlan? plan, FindingBag findings)
    {
        var shown = BatchCheck.Shown(findings, reading.Source);
        var pages = plan is null ? null : new PlanPages(plan, room.Readings.Files);
        return new(
            true,
            plan is null ? null : PlanHtml.Body(plan, new(plan, room.Readings.Files)),
            pages?.Workbook().Count ?? 0,
            pages?.Messages().Count ?? 0,
            PageFinding.Of(shown, reading.Source, room.Folder),
            FindingsText.Summary(shown));
    }

    private static async Task Line<T>(HttpContext context, T said)
    {
        await JsonSerializer.SerializeAsync(context.Response.Body, said, PageJson.Of<T>(), context.RequestAborted).ConfigureAwait(false);
        await context.Response.Body.WriteAsync("\n"u8.ToArray(), context.RequestAborted).ConfigureAwait(false);
        await context.Response.Body.FlushAsync(context.RequestAborted).ConfigureAwait(false);
    }

    private Ok<Done> Enough(PlanRequest asked)
    {
        room.Plans.Enough(asked.Window, asked.File);
        return TypedResults.Ok(new Done());
    }

    private IResult Workbook(string file = "", string window = "") => WithPlan(window, file, (plan, stem) =>
        PrintRoutes.Pdf([.. new PlanPages(plan, room.Readings.Files).Workbook()], plan.Files.Batch.Title, $"{stem}.pdf"));

    private IResult Messages(string file = "", string window = "") => WithPlan(window, file, (plan, stem) =>
        new PlanPages(plan, room.Readings.Files).Messages() is { Count: > 0 } pages
            ? PrintRoutes.Pdf([.. pages], $"{plan.Files.Batch.Title}, messages", $"{stem}-messages.pdf")
            : new Problem(
                StatusCodes.Status404NotFound, "No card of this batch has a message with a place. Write message \"…\" in a card."));

    private IResult Cuts(string file = "", string window = "") => WithPlan(window, file, (plan, stem) => new InlineFile(
        Encoding.UTF8.GetBytes(CutListCsv.Write(plan, new(plan, room.Readings.Files))), "text/csv; charset=utf-8", $"{stem}-cuts.csv"));

    private IResult Left(string file = "", string window = "") => WithPlan(window, file, (plan, _) => new InlineFile(
        Encoding.UTF8.GetBytes(StashAfter.Write(plan)), "text/plain; charset=utf-8", "left.stash"));

    private IResult WithPlan(string window, string file, Func<BatchPlan, string, IResult> answer) =>
        room.Plans.Find(window, file) is { } plan
            ? answer(plan, Path.GetFileNameWithoutExtension(plan.Files.Files[0].Path))
            : new Problem(StatusCodes.Status404NotFound, "There is no plan yet. Choose “Plan the sheets” first.");

    private sealed class Reporter(ChannelWriter<BatchProgress> reported) : IProgress<BatchProgress>
    {
        public void Report(BatchProgress value) => reported.TryWrite(value);
    }
}
