using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using Sketch.Cli.Commands;
using Sketch.Preview.Server;

namespace Sketch.Cli.Verbs;

/// <summary>Opens a card, or all files of a folder, as a page in the browser.</summary>
internal static class OpenVerb
{
    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var target = new Argument<string>("FILE|FOLDER") { Description = "A card, stash or batch file, or the folder that holds them." };
        var port = Options.Number(
            "--port", "The port to listen on, on this machine only. [default: any free port]", "N", 0, n =>
                n is >= 1 and <= 65535, "a whole number from 1 to 65535");
        // The help would otherwise print a second default, 0, besides the one in the description.
        port.DefaultValueFactory = null;
        var noBrowser = new Option<bool>("--no-browser") { Description = "Only print the address; open it yourself." };
        var verb = new VerbCommand(
            "open",
            "Opens a page in your browser, on this machine only, to type a layout, see it at once, try papers and print. Ctrl-C ends it.",
            "sketch open fair-winds.card",
            "sketch open cards",
            "sketch open cards --no-browser --port 8080")
        {
            target, noBrowser, port,
        };
        verb.SetAction((parsed, _) => Run(session, parsed.GetRequiredValue(target), parsed.GetValue(port), !parsed.GetValue(noBrowser)));
        return verb;
    }

    private static async Task<int> Run(Session session, string target, int port, bool withBrowser)
    {
        string full;
        try
        {
            full = Path.GetFullPath(target);
        }
        catch (ArgumentException)
        {
            session.Report($"\"{target}\" cannot be opened: a file cannot have that name.");
            return ExitStatus.Usage;
        }

        var isFolder = Directory.Exists(full);
        if (!isFolder && !File.Exists(full))
        {
            session.Report($"\"{target}\" cannot be opened: there is no such file or folder.");
            return ExitStatus.Usage;
        }

        var (folder, file) = isFolder ? (full, null) : (Path.GetDirectoryName(full)!, Path.GetFileName(full));
        if (file is not null && new Preview.Folder.OpenedFolder(folder).PathOf(file) is null)
        {
            session.Report($"\"{target}\" is not a card, stash or batch: the name must end in .card, .stash or .batch.");
            return ExitStatus.Usage;
        }

        PageServer server;
        try
        {
            server = await PageServer.Start(folder, file, port).ConfigureAwait(false);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException or System.Net.Sockets.SocketException)
        {
            session.Report(port == 0
                ? $"The page cannot be served: {refused.Message}"
                : $"The page cannot be served on port {port}: it is in use, or not allowed. Leave out --port to use any free port.");
            return ExitStatus.Usage;
        }

        await using (server.ConfigureAwait(false))
        {
            session.Output.Write($"The page is at {server.Address}\nKeep this running while you work; Ctrl-C ends it.\n");
            await session.Output.FlushAsync(CancellationToken.None).ConfigureAwait(false);
            if (withBrowser)
            {
                Browse(session, server.OnceAddress);
            }

            await Task.WhenAny(server.WaitForEnd(), Stopped(session.Cancellation)).ConfigureAwait(false);
        }

        if (server.InMemoryOnly is { Count: > 0 } lost)
        {
            session.Report($"Unsaved text of {string.Join(", ", lost)} could not be written to the disk. "
                + "If a window of the page still shows it, copy it from there.");
        }

        return ExitStatus.Stopped;
    }

    private static Task Stopped(CancellationToken cancellation)
    {
        var stopped = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        cancellation.Register(stopped.SetResult);
        return stopped.Task;
    }

    private static void Browse(Session session, Uri address)
    {
        try
        {
            using var opened = Process.Start(new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true });
        }
        catch (Exception refused) when (refused is Win32Exception or InvalidOperationException or FileNotFoundException)
        {
            session.Report("No browser could be started. Open the address above yourself.");
        }
    }
}
