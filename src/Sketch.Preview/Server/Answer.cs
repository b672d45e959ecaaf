using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Microsoft.AspNetCore.Http;

namespace Sketch.Preview.Server;

/// <summary>Answers requests of the page.</summary>
internal static class Answer
{
    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Answers with a JSON object.</summary>
    public static Task Json(HttpContext context, Action<Utf8JsonWriter> write, int status = StatusCodes.Status200OK)
    {
        var content = Object(write);
        context.Response.StatusCode = status;
        context.Response.ContentType = "application/json; charset=utf-8";
        context.Response.ContentLength = content.Length;
        return context.Response.Body.WriteAsync(content, context.RequestAborted).AsTask();
    }

    /// <summary>A JSON object on one line.</summary>
    public static ReadOnlyMemory<byte> Object(Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>(1 << 14);
        using (var json = new Utf8JsonWriter(buffer, Plain))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return buffer.WrittenMemory;
    }

    /// <summary>
    /// Answers with a problem that the page shows unchanged; a browser that followed a link gets it as a page.
    /// </summary>
    /// <param name="context">The request.</param>
    /// <param name="status">The status.</param>
    /// <param name="sentence">What is wrong and what to do.</param>
    public static Task Problem(HttpContext context, int status, string sentence) => IsFollowedLink(context.Request)
        ? Page(context, status, sentence)
        : Json(context, json => json.WriteString("problem", sentence), status);

    // Scripts that fetch accept anything; only a browser that will show the answer asks for HTML.
    private static bool IsFollowedLink(HttpRequest request) =>
        HttpMethods.IsGet(request.Method) && request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase);

    private static Task Page(HttpContext context, int status, string sentence)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/html; charset=utf-8";
        return context.Response.WriteAsync(
            $"""
            <!DOCTYPE html>
            <html lang="en">
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width">
            <meta name="color-scheme" content="light dark">
            <title>This cannot be shown – Sketch</title>
            <style nonce="{context.Items[Gate.Nonce]}">body {"{"} font: 1.25rem/1.5 system-ui, sans-serif;
                max-width: 40rem; margin: 15vh auto; padding: 0 1rem {"}"}</style>
            <main><h1>This cannot be shown</h1><p>{HtmlEncoder.Default.Encode(sentence)}</p>
                <p>You can close this; the page with your text is still open.</p></main>
            </html>
            """,
            context.RequestAborted);
    }

    /// <summary>Answers with a file to view or download.</summary>
    public static Task File(HttpContext context, byte[] content, string type, string name)
    {
        context.Response.ContentType = type;
        context.Response.ContentLength = content.Length;
        context.Response.Headers.ContentDisposition = $"inline; filename*=UTF-8''{Uri.EscapeDataString(name)}";
        return context.Response.Body.WriteAsync(content, context.RequestAborted).AsTask();
    }
}
