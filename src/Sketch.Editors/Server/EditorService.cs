using Microsoft.VisualStudio.Threading;
using StreamJsonRpc;

namespace Sketch.Editors.Server;

/// <summary>Serves a text editor by the Language Server Protocol.</summary>
public static class EditorService
{
    /// <summary>Serves an editor until it exits or closes the input.</summary>
    /// <param name="input">What the editor writes.</param>
    /// <param name="output">What it reads.</param>
    /// <param name="cancellation">Ends the work.</param>
    /// <returns>
    /// Whether the editor ended the session as the protocol asks, and did not just close the input or send what is no message.
    /// </returns>
    public static async Task<bool> Run(Stream input, Stream output, CancellationToken cancellation)
    {
        using var messages = new EditorMessages(output, input);
        using var connection = new EditorConnection(messages);
        using var server = new LanguageServer(connection.Publish);
        // One at a time, in order: an answer is about the text as it is when the request comes.
        connection.SynchronizationContext = new NonConcurrentSynchronizationContext(sticky: false);
        connection.AddLocalRpcTarget(RpcTargetMetadata.FromShape<LanguageServer>(), server, null);
        using var ended = CancellationTokenSource.CreateLinkedTokenSource(server.Ended, cancellation);
        connection.StartListening();
        try
        {
            await connection.Completion.WaitAsync(ended.Token).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            // The editor has exited, or the work was cancelled.
        }
        catch (Exception broken) when (broken is RemoteRpcException or IOException or ArgumentException or OverflowException)
        {
            // What comes is no message: the reader has lost its place.
            return false;
        }

        return server.IsShutDown;
    }
}
