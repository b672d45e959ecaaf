using System.Text.Json;
using System.Text.Json.Serialization;
using Sketch.Editors.Protocol;
using StreamJsonRpc;
using StreamJsonRpc.Protocol;

namespace Sketch.Editors.Server;

/// <summary>
/// Messages of an editor. One that is no JSON gets an answer, and the next is read. A request in which something is missing is refused.
/// </summary>
internal sealed class EditorMessages(Stream output, Stream input) : HeaderDelimitedMessageHandler(output, input, new PolyTypeJsonFormatter
{
    TypeShapeProvider = PolyType.SourceGenerator.TypeShapeProvider_Sketch_Editors.Default,
    JsonSerializerOptions =
    {
        TypeInfoResolver = ProtocolJson.Default,
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
    },
})
{
    /// <inheritdoc/>
    protected override async ValueTask<JsonRpcMessage?> ReadCoreAsync(CancellationToken cancellationToken)
    {
        while (true)
        {
            try
            {
                return await base.ReadCoreAsync(cancellationToken).ConfigureAwait(false);
            }
            catch (Exception unread) when (unread is JsonException or InvalidOperationException or FormatException)
            {
                await WriteAsync(
                    new JsonRpcError
                    {
                        RequestId = RequestId.Null,
                        Error = new() { Code = JsonRpcErrorCode.ParseError, Message = $"The message cannot be read: {unread.Message}" },
                    },
                    cancellationToken).ConfigureAwait(false);
            }
        }
    }
}

/// <summary>Requests and answers. What fails is reported in a sentence, without internals of the program.</summary>
internal sealed class EditorConnection(EditorMessages messages) : JsonRpc(messages)
{
    /// <summary>The members of a message have their types, for there is no code made at run time that would find them.</summary>
    private static readonly Dictionary<string, Type> FindingTypes = new()
    {
        ["uri"] = typeof(string),
        ["version"] = typeof(int?),
        ["diagnostics"] = typeof(EditorFinding[]),
    };

    /// <summary>Publishes the findings of a file.</summary>
    public Task Publish(FileFindings findings) => NotifyWithParameterObjectAsync(
        "textDocument/publishDiagnostics",
        new Dictionary<string, object?>
        {
            ["uri"] = findings.Uri,
            ["version"] = findings.Version,
            ["diagnostics"] = findings.Diagnostics,
        },
        FindingTypes);

    /// <inheritdoc/>
    protected override JsonRpcError.ErrorDetail CreateErrorDetails(JsonRpcRequest request, Exception exception) => exception switch
    {
        LocalRpcException refused => new() { Code = (JsonRpcErrorCode)refused.ErrorCode, Message = refused.Message },
        JsonException unread => new()
        {
            Code = JsonRpcErrorCode.InvalidParams,
            Message = $"{request.Method} cannot be read at {unread.Path ?? "$"}.",
        },
        _ => new() { Code = JsonRpcErrorCode.InternalError, Message = $"{request.Method} failed: {exception.Message}" },
    };
}
