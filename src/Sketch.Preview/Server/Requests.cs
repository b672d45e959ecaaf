using System.Text.Json;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Sketch.Preview.Server;

/// <summary>Ways to read what the page asks.</summary>
internal static partial class Requests
{
    /// <summary>A value of the address, empty when it is not there.</summary>
    public static string Asked(this HttpContext context, string name) => context.Request.Query[name].ToString();

    /// <summary>Maps a request with a JSON object as its body; a body that is none is answered with a problem.</summary>
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
    /// A text of an object, empty when it is not there. Half a letter, one of a pair of surrogates alone, comes as U+FFFD.
    /// </summary>
    /// <exception cref="JsonException">It is not written in UTF-8.</exception>
    public static string Text(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.String } value ? Whole(value) : "";

    /// <summary>Whether an object says yes to something.</summary>
    public static bool Says(this JsonElement element, string name) => element.Member(name) is { ValueKind: JsonValueKind.True };

    /// <summary>All texts of a list of an object.</summary>
    public static IEnumerable<string> Texts(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.Array } value
            ? value.EnumerateArray().Where(v => v.ValueKind == JsonValueKind.String).Select(Whole)
            : [];

    /// <summary>A whole number of an object, 0 when it is not there.</summary>
    public static int Number(this JsonElement element, string name) =>
        element.Member(name) is { ValueKind: JsonValueKind.Number } value && value.TryGetInt32(out var number) ? number : 0;

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

    /// <summary>An escape in JSON: a letter in two halves, half a letter, or any other.</summary>
    [GeneratedRegex(@"\\(u[dD][89abAB]..\\u[dD][c-fC-F]..|(?<half>u[dD][89a-fA-F]..)|.)", RegexOptions.ExplicitCapture)]
    private static partial Regex Escape();
}
