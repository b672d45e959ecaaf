using System.Collections.Frozen;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Sketch.Reports;

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
        [".css"] = "text/css; charset=utf-8",
        [".js"] = "text/javascript; charset=utf-8",
    }.ToFrozenDictionary();

    /// <summary>Maps the page and what it loads.</summary>
    public static void Map(IEndpointRouteBuilder routes)
    {
        var body = Encoding.UTF8.GetString(Files["page.html"]);
        routes.MapGet("/", (HttpContext context) =>
            TypedResults.Content(HtmlPage.Begin("Sketch", HeadOf(context)) + body + HtmlPage.End, "text/html", Encoding.UTF8));
        foreach (var (name, content) in Files.Where(f => f.Key != "page.html"))
        {
            var type = Types[Path.GetExtension(name)];
            routes.MapGet("/" + name, () => TypedResults.Bytes(content, type));
        }
    }

    private static string HeadOf(HttpContext context) =>
        $"""
        <meta name="style-nonce" content="{context.Items[Gate.Nonce]}">
        <link rel="icon" href="data:,">
        <link rel="stylesheet" href="page.css">
        <link rel="stylesheet" href="hand.css">
        <script type="module" src="page.js"></script>

        """;

    private static byte[] Content(string name)
    {
        using var stream = typeof(PageFiles).Assembly.GetManifestResourceStream(name)!;
        var content = new byte[stream.Length];
        stream.ReadExactly(content);
        return content;
    }
}
