using Microsoft.AspNetCore.Http;

namespace Sketch.Preview.Server;

/// <summary>A file for the browser to show, or to save under its name.</summary>
/// <param name="Content">Its content.</param>
/// <param name="Type">Its media type.</param>
/// <param name="Name">Its name.</param>
internal sealed record InlineFile(byte[] Content, string Type, string Name) : IResult
{
    /// <inheritdoc/>
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.Headers.ContentDisposition = $"inline; filename*=UTF-8''{Uri.EscapeDataString(Name)}";
        return TypedResults.Bytes(Content, Type).ExecuteAsync(httpContext);
    }
}
