using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Sketch.Preview.Server;

/// <summary>Ways to read what the page asks and to answer it.</summary>
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

    /// <summary>Answers with a problem that the page shows as it is.</summary>
    /// <param name="context">The request.</param>
    /// <param name="status">The status.</param>
    /// <param name="sentence">What is wrong and what to do.</param>
    public static Task Problem(HttpContext context, int status, string sentence) => Json(context, json => json.WriteString("problem", sentence), status);

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

    /// <summary>A text of an object, empty when it is not there.</summary>
    /// <exception cref="JsonException">It holds half a letter: one of a pair of surrogates alone.</exception>
    public static string Text(this JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? Whole(value) : "";

    /// <summary>Whether an object says yes to something.</summary>
    public static bool Says(this JsonElement element, string name) => element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.True;

    /// <summary>All texts of a list of an object.</summary>
    public static IEnumerable<string> Texts(this JsonElement element, string name) =>
        element.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Array
            ? value.EnumerateArray().Where(v => v.ValueKind == JsonValueKind.String).Select(Whole)
            : [];

    private static string Whole(JsonElement value)
    {
        try
        {
            return value.GetString()!;
        }
        catch (InvalidOperationException half)
        {
            throw new JsonException("half a letter", half);
        }
    }
}
