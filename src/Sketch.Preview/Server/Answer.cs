using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Sketch.Preview.Server;

/// <summary>Ways to read what the page asks and to answer it.</summary>
internal static partial class Answer
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

    /// <summary>Answers with a problem that the page shows as it is; a browser that was led here by a link gets a page that says it.</summary>
    /// <param name="context">The request.</param>
    /// <param name="status">The status.</param>
    /// <param name="sentence">What is wrong and what to do.</param>
    public static Task Problem(HttpContext context, int status, string sentence) => IsFollowedLink(context.Request)
        ? Page(context, status, sentence)
        : Json(context, json => json.WriteString("problem", sentence), status);

    // Scripts that fetch take anything; only a browser that will show the answer asks for HTML.
    private static bool IsFollowedLink(HttpRequest request) => HttpMethods.IsGet(request.Method) && request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase);

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
            <title>Not yet – Sketch</title>
            <style nonce="{context.Items[Gate.Nonce]}">body {"{"} font: 1.25rem/1.5 system-ui, sans-serif; max-width: 40rem; margin: 15vh auto; padding: 0 1rem {"}"}</style>
            <main><h1>Not yet</h1><p>{HtmlEncoder.Default.Encode(sentence)}</p><p>You can close this; the page with your text is still open.</p></main>
            </html>
            """,
            context.RequestAborted);
    }

    /// <summary>Answers with a file to look at or keep.</summary>
    public static Task File(HttpContext context, byte[] content, string type, string name)
    {
        context.Response.ContentType = type;
        context.Response.ContentLength = content.Length;
        context.Response.Headers.ContentDisposition = $"inline; filename*=UTF-8''{Uri.EscapeDataString(name)}";
        return context.Response.Body.WriteAsync(content, context.RequestAborted).AsTask();
    }

    /// <summary>A value of the address, empty when it is not there.</summary>
    public static string Asked(this HttpContext context, string name) => context.Request.Query[name].ToString();

    /// <summary>Maps a request with a JSON object as its body; a body that is none is answered with a problem.</summary>
    public static void MapObject(this IEndpointRouteBuilder routes, string path, Func<HttpContext, JsonElement, Task> answer) => routes.MapPost(path, async context =>
    {
        try
        {
            using var document = await JsonDocument.ParseAsync(context.Request.Body, cancellationToken: context.RequestAborted).ConfigureAwait(false);
            if (document.RootElement.ValueKind == JsonValueKind.Object)
            {
                await answer(context, document.RootElement).ConfigureAwait(false);
                return;
            }
        }
        catch (JsonException)
        {
        }
        catch (BadHttpRequestException refused)
        {
            await Problem(context, refused.StatusCode, "That is too much for one text, or it did not come as a whole. Try it once more, or share the text out.").ConfigureAwait(false);
            return;
        }

        await Problem(context, StatusCodes.Status400BadRequest, "The page sent something that cannot be read. Load it again.").ConfigureAwait(false);
    });

    /// <summary>A text of an object, empty when it is not there. Half a letter, one of a pair of surrogates alone, comes as U+FFFD.</summary>
    /// <exception cref="JsonException">It is not written in UTF-8.</exception>
    public static string Text(this JsonElement element, string name) => element.Member(name) is { ValueKind: JsonValueKind.String } value ? Whole(value) : "";

    /// <summary>Whether an object says yes to something.</summary>
    public static bool Says(this JsonElement element, string name) => element.Member(name) is { ValueKind: JsonValueKind.True };

    /// <summary>All texts of a list of an object.</summary>
    public static IEnumerable<string> Texts(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.Array } value
            ? value.EnumerateArray().Where(v => v.ValueKind == JsonValueKind.String).Select(Whole)
            : [];

    // Names and values are read from UTF-8 only when they are asked for.
    private static JsonElement? Member(this JsonElement element, string name) =>
        Read(() => element.TryGetProperty(name, out var value) ? value : (JsonElement?)null);

    private static string Whole(JsonElement value)
    {
        try
        {
            return value.GetString()!;
        }
        catch (InvalidOperationException)
        {
            using var mended = JsonDocument.Parse(Escape().Replace(Read(value.GetRawText), e => e.Groups["half"].Success ? @"\ufffd" : e.Value));
            return mended.RootElement.GetString()!;
        }
    }

    private static T Read<T>(Func<T> read)
    {
        try
        {
            return read();
        }
        catch (InvalidOperationException broken)
        {
            throw new JsonException("no text in UTF-8", broken);
        }
    }

    /// <summary>An escape in JSON: a letter in two halves, half a letter, or any other.</summary>
    [GeneratedRegex(@"\\(u[dD][89abAB]..\\u[dD][c-fC-F]..|(?<half>u[dD][89a-fA-F]..)|.)", RegexOptions.ExplicitCapture)]
    private static partial Regex Escape();
}
