using System.Text;
using System.Text.Json;
using System.Threading.Channels;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Diagnostics;
using Sketch.Output.Rendering;
using Sketch.Planning;
using Sketch.Planning.Diagrams;
using Sketch.Planning.Plans;
using Sketch.Planning.Remainder;
using Sketch.Planning.Reports;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;

namespace Sketch.Preview.Server;

/// <summary>Plans the batch that a window shows, reports the progress, and serves the plan for printing.</summary>
internal static class PlanRoutes
{
    private static readonly TimeSpan TimeLimit = TimeSpan.FromSeconds(10);

    private const string HintForTime = "You can use the plan as it is. With fewer different sizes, the search ends sooner.";

    /// <summary>Maps the requests about plans.</summary>
    public static void Map(IEndpointRouteBuilder routes, PageServices room)
    {
        routes.MapObject("/plan", (context, asked) => Plan(context, room, asked));
        routes.MapObject("/enough", (context, asked) =>
        {
            room.Plans.Enough(asked.Text("window"), asked.Text("file"));
            return Answer.Json(context, _ => { });
        });
        routes.MapGet("/booklet.pdf", context => WithPlan(context, room, (plan, stem) => Booklet(context, room, plan, stem)));
        routes.MapGet("/cuts.csv", context => WithPlan(context, room, (plan, stem) =>
            Answer.File(context, Encoding.UTF8.GetBytes(CutListCsv.Write(plan, new(plan, room.Readings.Files))), "text/csv; charset=utf-8",
                $"{stem}-cuts.csv")));
        routes.MapGet("/left.stash", context => WithPlan(context, room, (plan, _) =>
            Answer.File(context, Encoding.UTF8.GetBytes(StashAfter.Write(plan)), "text/plain; charset=utf-8", "left.stash")));
    }

    // One JSON object per line: progress reports first, the plan last.
    private static async Task Plan(HttpContext context, PageServices room, JsonElement asked)
    {
        var (window, file) = (asked.Text("window"), asked.Text("file"));
        if (room.Readings.Find(window, file) is not { } reading)
        {
            await FileRoutes.NoName(context, file).ConfigureAwait(false);
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
                return room.Readings.Batch(reading, findings) is { } files
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
                await Line(context, json =>
                {
                    json.WriteString("paper", progress.Paper);
                    json.WriteNumber("sheets", progress.Sheets);
                    json.WriteNumber("bound", progress.LowerBound);
                }).ConfigureAwait(false);
            }

            var plan = await planning.ConfigureAwait(false);
            room.Plans.Put(window, file, plan);
            await Line(context, json => Write(json, room, reading, plan, findings)).ConfigureAwait(false);
        }
        finally
        {
            // A closed window has cancelled its search. Wait for it, because it still uses the token.
            await ((Task)planning).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            room.Plans.End(window, file, search);
        }
    }

    private static void Write(Utf8JsonWriter json, PageServices room, Reading reading, BatchPlan? plan, FindingBag findings)
    {
        json.WriteBoolean("done", true);
        json.WriteString("html", plan is null ? null : PlanHtml.Body(plan, new(plan, room.Readings.Files)));
        FindingsView.Write(json, BatchCheck.Shown(findings, reading.Source), reading.Source, room.Folder);
    }

    private static async Task Line(HttpContext context, Action<Utf8JsonWriter> write)
    {
        await context.Response.Body.WriteAsync(Answer.Object(write), context.RequestAborted).ConfigureAwait(false);
        await context.Response.Body.WriteAsync("\n"u8.ToArray(), context.RequestAborted).ConfigureAwait(false);
        await context.Response.Body.FlushAsync(context.RequestAborted).ConfigureAwait(false);
    }

    private static Task Booklet(HttpContext context, PageServices room, BatchPlan plan, string stem)
    {
        var pages = new PlanPages(plan, room.Readings.Files);
        using var pdf = new MemoryStream();
        return SvgRenderer.WritePdf([.. pages.Summary(), .. pages.Work.SelectMany(pages.Sheet)], plan.Files.Batch.Title, pdf)
            is { Problem: var problem }
            ? Answer.Problem(context, StatusCodes.Status422UnprocessableEntity, problem)
            : Answer.File(context, pdf.ToArray(), "application/pdf", $"{stem}.pdf");
    }

    private static Task WithPlan(HttpContext context, PageServices room, Func<BatchPlan, string, Task> answer)
    {
        var file = context.Asked("file");
        return room.Plans.Find(context.Asked("window"), file) is { } plan
            ? answer(plan, Path.GetFileNameWithoutExtension(plan.Files.Files[0].Path))
            : Answer.Problem(context, StatusCodes.Status404NotFound, "There is no plan yet. Choose “Plan the sheets” first.");
    }

    private sealed class Reporter(ChannelWriter<BatchProgress> reported) : IProgress<BatchProgress>
    {
        public void Report(BatchProgress value) => reported.TryWrite(value);
    }
}
