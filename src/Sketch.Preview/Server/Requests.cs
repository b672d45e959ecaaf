using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Sketch.Preview.Server;

/// <summary>Reads requests of the page.</summary>
internal static partial class Requests
{
    /// <summary>A query parameter, empty when it is missing.</summary>
    public static string Asked(this HttpContext context, string name) => context.Request.Query[name].ToString();

    /// <summary>Maps a request with a JSON object as its body; any other body is answered with a problem.</summary>
    public static void MapObject(this IEndpointRouteBuilder routes, string path, Func<HttpContext, JsonElement, Task> answer) =>
        routes.MapPost(path, async context =>
    {
        try
        {
            using var document = await JsonDocument.ParseAsync(context.Request.Body, cancellationToken: context.RequestAborted)
                .ConfigureAwait(false);
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
            await Answer.Problem(context, refused.StatusCode,
                "The text is too large or did not arrive completely. Try again, or split the text.").ConfigureAwait(false);
            return;
        }

        await Answer.Problem(context, StatusCodes.Status400BadRequest, "The page sent an invalid request. Reload it.")
            .ConfigureAwait(false);
    });

    /// <summary>
    /// A string property, empty when it is missing. A lone surrogate becomes U+FFFD.
    /// </summary>
    /// <exception cref="JsonException">It is not valid UTF-8.</exception>
    public static string Text(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.String } value ? Whole(value) : "";

    /// <summary>Whether a property is true.</summary>
    public static bool Says(this JsonElement element, string name) => element.Member(name) is { ValueKind: JsonValueKind.True };

    /// <summary>All strings of an array property.</summary>
    public static IEnumerable<string> Texts(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.Array } value
            ? value.EnumerateArray().Where(v => v.ValueKind == JsonValueKind.String).Select(Whole)
            : [];

    /// <summary>An integer property, 0 when it is missing.</summary>
    public static int Number(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.Number } value && value.TryGetInt32(out var number) ? number : 0;

    // Names and values are decoded from UTF-8 only when they are accessed.
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
            using var corrected = JsonDocument.Parse(
                Escape().Replace(Read(value.GetRawText), e => e.Groups["half"].Success ? @"\ufffd" : e.Value));
            return corrected.RootElement.GetString()!;
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

    /// <summary>An escape in JSON: a surrogate pair, a lone surrogate, or any other.</summary>
    [GeneratedRegex(@"\\(u[dD][89abAB]..\\u[dD][c-fC-F]..|(?<half>u[dD][89a-fA-F]..)|.)", RegexOptions.ExplicitCapture)]
    private static partial Regex Escape();
}
