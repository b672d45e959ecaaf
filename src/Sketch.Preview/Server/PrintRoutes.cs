using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Output.Rendering;
using Sketch.Panels;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Templates;

namespace Sketch.Preview.Server;

/// <summary>How many pages a printed document has.</summary>
/// <param name="Pages">The pages.</param>
internal sealed record PageCount(int Pages);

/// <summary>Requests for sizes and full-size templates of the card that a window shows.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class PrintRoutes(PageServices room)
{
    /// <summary>Maps the requests for sizes and templates.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/sizes", Sizes);
        routes.MapGet("/templates", Count);
        routes.MapGet("/templates.pdf", Templates);
    }

    private IResult Sizes(string file = "", string window = "", string units = "") => WithCard(room, window, file, (_, card) =>
        TypedResults.Ok(SizesView.Of(card, units is "mm" or "in" ? units == "mm" : card.Units != UnitSystem.Inches)));

    private IResult Count(string file = "", string window = "", string page = "", string mirror = "", string hollow = "") =>
        WithTemplates(file, window, page, mirror, hollow, (_, _, templates) => TypedResults.Ok(new PageCount(templates.Pages.Length)));

    private IResult Templates(string file = "", string window = "", string page = "", string mirror = "", string hollow = "") =>
        WithTemplates(file, window, page, mirror, hollow, (reading, card, templates) => Pdf(
            templates.Pages, $"Templates for {card.Title}", $"{Path.GetFileNameWithoutExtension(reading.Source.Path)}-templates.pdf"));

    private IResult WithTemplates(
        string file, string window, string page, string mirror, string hollow, Func<Reading, LaidOutCard, CardTemplates, IResult> answer) =>
        WithCard(room, window, file, (reading, card) =>
        {
            var options = new TemplateOptions(
                PageFormat.All.FirstOrDefault(p => p.Name == page) ?? PageFormat.Letter,
                PrinterScale.True,
                mirror == "yes",
                hollow == "yes" ? GlueMargin.Usual : null);
            var findings = new FindingBag();
            if (CardTemplates.Make([card], options, room.Readings.Files, findings) is not { Pages.IsEmpty: false } templates)
            {
                var reason = findings.ToImmutable().FirstOrDefault();
                return new Problem(StatusCodes.Status422UnprocessableEntity, reason is null
                    ? "There is nothing to cut on this card." : $"{reason.Message} {reason.Hint}");
            }

            return answer(reading, card, templates);
        });

    /// <summary>A PDF of pages, or why there is none.</summary>
    /// <param name="pages">The pages.</param>
    /// <param name="title">The title of the document.</param>
    /// <param name="name">The name of the file.</param>
    internal static IResult Pdf(IReadOnlyList<DrawnPage> pages, string title, string name)
    {
        using var pdf = new MemoryStream();
        return SvgRenderer.WritePdf(pages, title, pdf) is { Problem: var problem }
            ? new Problem(StatusCodes.Status422UnprocessableEntity, problem)
            : new InlineFile(pdf.ToArray(), "application/pdf", name);
    }

    /// <summary>Answers with the card that a window shows, or with why there is none.</summary>
    internal static IResult WithCard(PageServices room, string window, string file, Func<Reading, LaidOutCard, IResult> answer) =>
        room.Readings.Find(window, file) switch
        {
            null => FileRoutes.NoName(file),
            { Card: { } card, Compilation.HasErrors: false } reading => answer(reading, card),
            _ => new Problem(StatusCodes.Status422UnprocessableEntity,
                "The text has errors. Fix the problems listed below the text first."),
        };
}
