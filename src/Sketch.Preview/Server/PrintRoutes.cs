using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Diagnostics;
using Sketch.Output.Rendering;
using Sketch.Panels;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Templates;

namespace Sketch.Preview.Server;

/// <summary>Requests for sizes and full-size templates of the card that a window shows.</summary>
internal static class PrintRoutes
{
    /// <summary>Maps the requests for sizes and templates.</summary>
    public static void Map(IEndpointRouteBuilder routes, PageServices room)
    {
        routes.MapGet("/sizes", context => WithCard(context, room, (_, card) => Answer.Json(context, json =>
        {
            json.WriteString("units", IsMetric(context, card) ? "mm" : "in");
            json.WriteString("html", SizesView.Html(card, IsMetric(context, card)));
        })));
        routes.MapGet("/templates.pdf", context => WithCard(context, room, (reading, card) => Templates(context, room, reading, card)));
    }

    private static bool IsMetric(HttpContext context, LaidOutCard card) => context.Asked("units") switch
    {
        "mm" => true,
        "in" => false,
        _ => card.Units != UnitSystem.Inches,
    };

    private static Task Templates(HttpContext context, PageServices room, Reading reading, LaidOutCard card)
    {
        var page = PageFormat.All.FirstOrDefault(p => p.Name == context.Asked("page")) ?? PageFormat.Letter;
        var options = new TemplateOptions(
            page, PrinterScale.True, context.Asked("mirror") == "yes", context.Asked("hollow") == "yes"
                ? TemplateOptions.UsualGluing : null);
        var findings = new FindingBag();
        if (CardTemplates.Make([card], options, room.Readings.Files, findings) is not { Pages.IsEmpty: false } templates)
        {
            var reason = findings.ToImmutable().FirstOrDefault();
            return Answer.Problem(context, StatusCodes.Status422UnprocessableEntity, reason is null
                ? "There is nothing to cut on this card." : $"{reason.Message} {reason.Hint}");
        }

        using var pdf = new MemoryStream();
        return SvgRenderer.WritePdf(templates.Pages, $"Templates for {card.Title}", pdf) is { Problem: var problem }
            ? Answer.Problem(context, StatusCodes.Status422UnprocessableEntity, problem)
            : Answer.File(context, pdf.ToArray(), "application/pdf",
                $"{Path.GetFileNameWithoutExtension(reading.Source.Path)}-templates.pdf");
    }

    /// <summary>Answers with the card that a window shows, or with why there is none.</summary>
    internal static Task WithCard(HttpContext context, PageServices room, Func<Reading, LaidOutCard, Task> answer)
    {
        var file = context.Asked("file");
        return room.Readings.Find(context.Asked("window"), file) switch
        {
            null => FileRoutes.NoName(context, file),
            { Card: { } card, Compilation.HasErrors: false } reading => answer(reading, card),
            _ => Answer.Problem(context, StatusCodes.Status422UnprocessableEntity,
                "The text has errors. Fix the problems listed below the text first."),
        };
    }
}
