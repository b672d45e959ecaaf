using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Editors.Server;

namespace Sketch.Cli.Verbs;

/// <summary>Serves a text editor.</summary>
internal static class LanguageServerVerb
{
    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        // Many editors pass it to every server.
        var stdio = new Option<bool>("--stdio") { Description = "Has no effect; standard input and output are always used." };
        var verb = new VerbCommand(
            "language-server",
            "Serves text editors by the Language Server Protocol on standard input and output: findings with their fixes, completion, "
                + "explanations, cut sizes, colours and pictures. Editors start it; see README.md.",
            "sketch language-server")
        {
            stdio,
        };
        verb.SetAction((_, _) => Run(session));
        return verb;
    }

    private static async Task<int> Run(Session session)
    {
        var input = session.OpenInput();
        await using (input.ConfigureAwait(false))
        {
            var isGoodbye = await EditorService.Run(input, session.Bytes, session.Cancellation).ConfigureAwait(false);
            session.Cancellation.ThrowIfCancellationRequested();
            return isGoodbye ? ExitStatus.Done : ExitStatus.Errors;
        }
    }
}
