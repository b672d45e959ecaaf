using System.Text;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Http;
using Sketch.Reports;

namespace Sketch.Preview.Server;

/// <summary>A problem that the page shows unchanged; a browser that followed a link gets it as a page.</summary>
/// <param name="Status">The status.</param>
/// <param name="Sentence">What is wrong and what to do.</param>
internal sealed record Problem(int Status, string Sentence) : IResult
{
    private const string Style = """
        :root { color-scheme: light dark; }
        body { font: 1.25rem/1.5 system-ui, sans-serif; max-width: 40rem; margin: 15vh auto; padding: 0 1rem; }
        """;

    /// <summary>The problem of a request that no handler answered.</summary>
    /// <param name="status">The status with which it was refused.</param>
    public static Problem OfRefused(int status) => new(status, status switch
    {
        StatusCodes.Status404NotFound => "There is nothing at this address.",
        StatusCodes.Status408RequestTimeout or StatusCodes.Status413PayloadTooLarge =>
            "The text is too large or did not arrive completely. Try again, or split the text.",
        StatusCodes.Status429TooManyRequests => "The page sends too many requests. Wait a moment.",
        _ => "The page sent an invalid request. Reload it.",
    });

    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        IResult answer = IsFollowedLink(httpContext.Request)
            ? TypedResults.Content(Page((string)httpContext.Items[Gate.Nonce]!), "text/html", Encoding.UTF8, Status)
            : TypedResults.Json(new ProblemAnswer(Sentence), PageJson.Of<ProblemAnswer>(), statusCode: Status);
        return answer.ExecuteAsync(httpContext);
    }

    // Scripts that fetch accept anything; only a browser that will show the answer asks for HTML.
    private static bool IsFollowedLink(HttpRequest request) =>
        HttpMethods.IsGet(request.Method) && request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase);

    private string Page(string nonce) =>
        $"""
        {HtmlPage.Begin("This cannot be shown – Sketch", HtmlPage.Style(Style, nonce))}
        <main><h1>This cannot be shown</h1><p>{HtmlEncoder.Default.Encode(Sentence)}</p>
            <p>You can close this; the page with your text is still open.</p></main>
        {HtmlPage.End}
        """;
}

/// <summary>A problem as the page gets it.</summary>
internal sealed record ProblemAnswer(string Problem);
