using System.Security.Cryptography;
using System.Text;
using Microsoft.AspNetCore.Http;

namespace Sketch.Preview.Server;

/// <summary>
/// Lets in only the page itself. Every address begins with a random word that only the opened browser knows; the request must be sent to
/// this machine by a loopback name, so that no foreign name that resolves to it is served (DNS rebinding); and a request that another page
/// makes is refused, even with the right address.
/// </summary>
/// <param name="word">The random word.</param>
/// <param name="ticket">A word that redirects to it once: for the command line that starts a browser, which others on the machine can
/// read.</param>
/// <param name="port">The port of the server.</param>
public sealed class Gate(string word, string ticket, int port)
{
    /// <summary>The content security policy of every answer: the page can load from and send to this server only.</summary>
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self' 'nonce-{0}'; img-src 'self' data:; connect-src 'self'; "
        + "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private readonly byte[] _word = Encoding.ASCII.GetBytes(word);
    private readonly byte[] _ticket = Encoding.ASCII.GetBytes(ticket);
    private int _ticketsLeft = 1;

    /// <summary>The key of the style nonce in the items of the request.</summary>
    public static readonly object Nonce = new();

    /// <summary>A new random word of 128 bits.</summary>
    public static string NewWord() => Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(16));

    /// <summary>Adds to every answer, also to a refusal, the headers that restrict what the browser may do with it.</summary>
    public static void Protect(HttpContext context)
    {
        var nonce = NewWord();
        context.Items[Nonce] = nonce;
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy.Replace("{0}", nonce, StringComparison.Ordinal);
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers.CacheControl = "no-store";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
    }

    /// <summary>Answers a request that is not let in, or removes the word from its address and continues.</summary>
    public Task Pass(HttpContext context, Func<Task> next)
    {
        if (!IsOurHost(context.Request.Host))
        {
            return Refuse(context, StatusCodes.Status421MisdirectedRequest, "This address is not served here.");
        }

        if (IsTicket(context.Request) && Interlocked.Decrement(ref _ticketsLeft) == 0)
        {
            // The browser keeps what follows # in the address, the file.
            context.Response.Redirect($"/{word}/");
            return Task.CompletedTask;
        }

        if (!TakeWord(context.Request))
        {
            return Refuse(context, StatusCodes.Status404NotFound, "Nothing is here. Use the address that sketch open printed.");
        }

        return IsFromOurPage(context.Request)
            ? next() : Refuse(context, StatusCodes.Status403Forbidden, "Only the page itself may ask this.");
    }

    private bool IsOurHost(HostString host) => host.Host is "127.0.0.1" or "localhost" && host.Port == port;

    private bool IsTicket(HttpRequest request) =>
        CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes((request.Path.Value ?? "").Trim('/')), _ticket);

    private bool TakeWord(HttpRequest request)
    {
        var path = request.Path.Value ?? "";
        var end = path.IndexOf('/', Math.Min(1, path.Length));
        var given = Encoding.UTF8.GetBytes(end < 0 ? "" : path[1..end]);
        if (!CryptographicOperations.FixedTimeEquals(given, _word))
        {
            return false;
        }

        request.PathBase = path[..end];
        request.Path = path[end..];
        return true;
    }

    private static bool IsFromOurPage(HttpRequest request)
    {
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        var origin = request.Headers.Origin.ToString();
        var own = $"http://{request.Host.Value}";
        var isReading = HttpMethods.IsGet(request.Method);
        return site is "" or "same-origin" || (site == "none" && isReading)
            ? origin == own || (origin.Length == 0 && isReading)
            : false;
    }

    private static Task Refuse(HttpContext context, int status, string sentence)
    {
        context.Response.StatusCode = status;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(sentence, context.RequestAborted);
    }
}
