using System.Collections.Frozen;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Sketch.Preview.Server;

/// <summary>The page itself: its HTML, style and scripts, which are embedded in this assembly.</summary>
internal static class PageFiles
{
    private const string Folder = "page/";

    private static readonly FrozenDictionary<string, byte[]> Files = typeof(PageFiles).Assembly.GetManifestResourceNames()
        .Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
        .ToFrozenDictionary(n => n[Folder.Length..], Content);

    private static readonly FrozenDictionary<string, string> Types = new Dictionary<string, string>
    {
        [".html"] = "text/html; charset=utf-8",
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
    }.ToFrozenDictionary();

    /// <summary>Maps the page and what it loads.</summary>
    public static void Map(IEndpointRouteBuilder routes)
    {
        var page = Encoding.UTF8.GetString(Files["page.html"]);
        routes.MapGet("/", context =>
            Send(context, ".html", Encoding.UTF8.GetBytes(
                page.Replace("{nonce}", (string)context.Items[Gate.Nonce]!, StringComparison.Ordinal))));
        foreach (var (name, content) in Files.Where(f => f.Key != "page.html"))
        {
            routes.MapGet("/" + name, context => Send(context, Path.GetExtension(name), content));
        }
    }

    private static Task Send(HttpContext context, string ending, byte[] content)
    {
        context.Response.ContentType = Types[ending];
        context.Response.ContentLength = content.Length;
        return context.Response.Body.WriteAsync(content, context.RequestAborted).AsTask();
    }

    private static byte[] Content(string name)
    {
        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream(name)!;
        var content = new byte[stream.Length];
        stream.ReadExactly(content);
        return content;
    }
}
