using System.Collections.Immutable;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Output.Handbook;
using Sketch.Planning;
using Sketch.Preview.Samples;

namespace Sketch.Preview.Server;

/// <summary>The guide and the reference, which come with the tool, as pages of their own.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class HandbookRoutes(PageServices room)
{
    private const string Folder = "handbook/";

    private readonly Lazy<ImmutableArray<HandbookPage>> _pages = new(() => HandbookPage.ReadAll("guide/index.md", Text));

    /// <summary>Maps the requests for pages.</summary>
    public void Map(IEndpointRouteBuilder routes) => routes.MapGet("/handbook/{**name}", Page);

    private IResult Page(HttpContext context, string name)
    {
        if (_pages.Value.FirstOrDefault(p => p.HtmlName == name) is not { } page)
        {
            return new Problem(StatusCodes.Status404NotFound, "There is no such page. Go back, and choose another.");
        }

        // The examples stand beside the samples, and may name them.
        var html = new HandbookHtml(_pages.Value, "", new SampleFiles(room.Readings.Files), (example, files, ids) => PlanFigures
            .Of(example.Source(""), files, ids).Select(figure => new ExampleFigure(figure.Caption, figure.Svg)));
        return TypedResults.Content(html.Of(page, nonce: (string?)context.Items[Gate.Nonce]), "text/html", Encoding.UTF8);
    }

    private static string? Text(string name)
    {
        using var stream = typeof(HandbookRoutes).Assembly.GetManifestResourceStream(Folder + name);
        if (stream is null)
        {
            return null;
        }

        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
