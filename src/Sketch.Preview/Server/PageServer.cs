using System.Net;
using System.Threading.RateLimiting;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.AspNetCore.Server.Kestrel.Core;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Sketch.Output.Files;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;

namespace Sketch.Preview.Server;

/// <summary>The server of the page: on the loopback address only, for one folder, until it is disposed.</summary>
public sealed class PageServer : IAsyncDisposable
{
    /// <summary>The most bytes of a request, and of a message on a socket.</summary>
    internal const long MostBytes = TextContent.Limit * 2L;

    private const int MostConnections = 200;

    private const int RequestsAtOnce = 300;
    private const int RequestsASecond = 150;

    // A text that takes long to compile occupies a thread; with few of them, edits would wait for one before they are kept.
    private const int ThreadsAtOnce = 32;

    private readonly WebApplication _app;
    private readonly FolderWatch _watch;
    private readonly UnsavedTexts _drafts;

    private PageServer(WebApplication app, FolderWatch watch, UnsavedTexts drafts, Uri address, Uri onceAddress)
    {
        (_app, _watch, _drafts) = (app, watch, drafts);
        (Address, OnceAddress) = (address, onceAddress);
    }

    /// <summary>The address to open: it contains the random word without which nothing is served.</summary>
    public Uri Address { get; }

    /// <summary>An address that redirects there once, for the command line of a browser, which others on the machine can read.</summary>
    public Uri OnceAddress { get; }

    /// <summary>Waits until the operating system asks the program to stop.</summary>
    public Task WaitForEnd() => _app.WaitForShutdownAsync();

    /// <summary>The files with edits that cannot be written to disk. They are lost when the server ends.</summary>
    public IReadOnlyList<string> InMemoryOnly => _drafts.Refused();

    /// <summary>Starts a server.</summary>
    /// <param name="folder">A folder that exists.</param>
    /// <param name="file">The name of the file to begin with, or null for the list of files.</param>
    /// <param name="port">The port, or 0 for any that is free.</param>
    /// <exception cref="IOException">The port is in use, or not permitted.</exception>
    public static Task<PageServer> Start(string folder, string? file, int port) => Start(folder, file, port, Gate.NewWord());

    /// <summary>Starts a server.</summary>
    /// <param name="folder">A folder that exists.</param>
    /// <param name="file">The name of the file to begin with, or null for the list of files.</param>
    /// <param name="port">The port, or 0 for any that is free.</param>
    /// <param name="word">The word that its address begins with, such as that of an earlier server.</param>
    /// <param name="headersWithin">The time in which a request must send its headers; 10 seconds if null.</param>
    internal static async Task<PageServer> Start(string folder, string? file, int port, string word, TimeSpan? headersWithin = null)
    {
        ThreadPool.GetMinThreads(out var threads, out var ports);
        ThreadPool.SetMinThreads(Math.Max(threads, ThreadsAtOnce), ports);
        var opened = new OpenedFolder(folder);
        opened.DeleteOrphans();
        var drafts = new UnsavedTexts(opened.Own);
        var news = new ChangeFeed();
        var watch = new FolderWatch(opened, news.Report);
        var strangers = new Strangers();
        var builder = WebApplication.CreateEmptyBuilder(new());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(options =>
        {
            options.AddServerHeader = false;
            options.Listen(IPAddress.Loopback, port, listen =>
            {
                listen.Protocols = HttpProtocols.Http1;
                listen.Use(strangers.Around);
            });
            options.Limits.MaxRequestBodySize = MostBytes;
            options.Limits.MaxConcurrentConnections = MostConnections + Strangers.Most;
            options.Limits.MaxConcurrentUpgradedConnections = MostConnections;
            options.Limits.MaxRequestHeadersTotalSize = 16 * 1024;
            options.Limits.RequestHeadersTimeout = headersWithin ?? TimeSpan.FromSeconds(10);
        });
        builder.Services.AddRoutingCore();
        builder.Services.AddRateLimiter(Limit);
        builder.Services.ConfigureHttpJsonOptions(json => PageJson.Set(json.SerializerOptions));
        // A fault of the tool is logged to the terminal that started it; everything else is private.
        builder.Logging.AddConsole(console => console.LogToStandardErrorThreshold = LogLevel.Trace).SetMinimumLevel(LogLevel.Error);
        var app = builder.Build();
        var room = new PageServices(opened, new(drafts), news, app.Lifetime.ApplicationStopping);
        var ticket = Gate.NewWord();
        Gate? gate = null;
        app.Use((context, next) =>
        {
            Gate.Protect(context);
            // Until the port is known, nobody can know the address.
            if (gate is null)
            {
                context.Response.StatusCode = StatusCodes.Status503ServiceUnavailable;
                return Task.CompletedTask;
            }

            return gate.Pass(context, () =>
            {
                Strangers.Know(context);
                return next(context);
            });
        });
        app.UseStatusCodePages(pages => Problem.OfRefused(pages.HttpContext.Response.StatusCode).ExecuteAsync(pages.HttpContext));
        // Behind the gate, so that refused requests do not count towards the limit of the page.
        app.UseRateLimiter();
        app.UseWebSockets();
        app.UseRouting();
        PageFiles.Map(app);
        new FileRoutes(room).Map(app);
        new StartRoutes(room).Map(app);
        new PutRoutes(room).Map(app);
        new RowRoutes(room).Map(app);
        new ScanRoutes(room).Map(app);
        new ChangeRoutes(room).Map(app);
        new ViewRoutes(room).Map(app);
        new HandRoutes(room).Map(app);
        new PaperRoutes(room).Map(app);
        new PrintRoutes(room).Map(app);
        new PlanRoutes(room).Map(app);
        new CountRoutes(room).Map(app);
        new HandbookRoutes(room).Map(app);
        try
        {
            await app.StartAsync().ConfigureAwait(false);
        }
        catch
        {
            await watch.DisposeAsync().ConfigureAwait(false);
            drafts.Dispose();
            await app.DisposeAsync().ConfigureAwait(false);
            throw;
        }

        var bound = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First());
        gate = new(word, ticket, bound.Port);
        var start = file is null ? "" : $"#{Uri.EscapeDataString(file)}";
        return new(app, watch, drafts, new($"http://127.0.0.1:{bound.Port}/{word}/{start}"),
            new($"http://127.0.0.1:{bound.Port}/{ticket}/{start}"));
    }

    /// <summary>Limits the number of requests of all windows together.</summary>
    private static void Limit(RateLimiterOptions options)
    {
        options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, string>(
            _ => RateLimitPartition.GetTokenBucketLimiter("page", _ => new()
            {
                TokenLimit = RequestsAtOnce,
                TokensPerPeriod = RequestsASecond,
                ReplenishmentPeriod = TimeSpan.FromSeconds(1),
                QueueLimit = 0,
                AutoReplenishment = true,
            }));
        options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
    }

    /// <summary>Stops it; unsaved edits are kept for the next run, except those of <see cref="InMemoryOnly"/>.</summary>
    public async ValueTask DisposeAsync()
    {
        await _watch.DisposeAsync().ConfigureAwait(false);
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        await _app.StopAsync(patience.Token).ConfigureAwait(false);
        await _app.DisposeAsync().ConfigureAwait(false);
        _drafts.Dispose();
    }
}
