using System.Reflection;
using PolyType;
using Sketch.Editors.Answers;
using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using StreamJsonRpc;

namespace Sketch.Editors.Server;

/// <summary>
/// What editors ask of the language, by the Language Server Protocol 3.17. Requests are answered one after the other, in the order in which
/// they come; findings are published beside that.
/// </summary>
[GenerateShape(IncludeMethods = MethodShapeFlags.PublicInstance)]
internal sealed partial class LanguageServer : IDisposable
{
    // Numbers of the protocol.
    private const int NotInitialized = -32002;
    private const int RequestFailed = -32803;

    private readonly OpenDocuments _documents = new();
    private readonly CancellationTokenSource _ended = new();
    private readonly Func<FileFindings, Task> _publish;
    private Findings _findings = new(null);
    private FindingFeed? _feed;

    /// <summary>A server for one editor.</summary>
    /// <param name="publish">Publishes findings.</param>
    public LanguageServer(Func<FileFindings, Task> publish) => _publish = publish;

    /// <summary>Cancelled when the editor exits.</summary>
    public CancellationToken Ended => _ended.Token;

    /// <summary>Whether the editor has requested shutdown, as the protocol asks before it exits.</summary>
    public bool IsShutDown { get; private set; }

    [JsonRpcMethod("initialize", UseSingleObjectParameterDeserialization = true)]
    public Initialized Initialize(InitializeRequest asked)
    {
        _findings = new(asked.Option("explanationScheme"));
        if (_feed is null)
        {
            _feed = new(_documents, _findings, _publish);
            _ = Task.Run(() => _feed.Run(_ended.Token));
        }

        var version = typeof(LanguageServer).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion;
        return new(new(), new("sketch", version?.Split('+')[0] ?? ""));
    }

    [JsonRpcMethod("shutdown")]
    public object? ShutDown()
    {
        IsShutDown = true;
        return null;
    }

    [JsonRpcMethod("exit")]
    public void Exit() => _ended.Cancel();

    [JsonRpcMethod("textDocument/didOpen", UseSingleObjectParameterDeserialization = true)]
    public void Open(OpenedDocument opened)
    {
        _documents.Open(opened.TextDocument);
        _feed?.Changed(opened.TextDocument.Uri);
    }

    [JsonRpcMethod("textDocument/didChange", UseSingleObjectParameterDeserialization = true)]
    public void Change(ChangedDocument changed)
    {
        _documents.Change(changed);
        _feed?.Changed(changed.TextDocument.Uri);
    }

    [JsonRpcMethod("textDocument/didClose", UseSingleObjectParameterDeserialization = true)]
    public void Close(ClosedDocument closed)
    {
        _documents.Close(closed.TextDocument.Uri);
        _feed?.Changed(closed.TextDocument.Uri);
    }

    [JsonRpcMethod("textDocument/codeAction", UseSingleObjectParameterDeserialization = true)]
    public CodeAction[] Fixes(PartRequest asked)
    {
        var document = Asked(asked.TextDocument);
        return _findings.Fixes(document, _documents.Check(document).Findings, asked.Range);
    }

    [JsonRpcMethod("textDocument/formatting", UseSingleObjectParameterDeserialization = true)]
    public EditorEdit[] Format(DocumentRequest asked) => Formatting.Of(Asked(asked.TextDocument));

    [JsonRpcMethod("textDocument/foldingRange", UseSingleObjectParameterDeserialization = true)]
    public FoldingRange[] Folds(DocumentRequest asked) => Folding.Of(Asked(asked.TextDocument));

    [JsonRpcMethod("textDocument/documentSymbol", UseSingleObjectParameterDeserialization = true)]
    public DocumentSymbol[] Symbols(DocumentRequest asked) => LineOutline.Of(Asked(asked.TextDocument));

    [JsonRpcMethod("textDocument/completion", UseSingleObjectParameterDeserialization = true)]
    public CompletionList Complete(PlaceRequest asked)
    {
        var document = Asked(asked.TextDocument);
        return Completing.At(document, asked.Position, _documents.Beside(document));
    }

    [JsonRpcMethod("completionItem/resolve", UseSingleObjectParameterDeserialization = true)]
    public CompletionItem Explain(CompletionItem item) => Begun(Completing.Explained(item));

    [JsonRpcMethod("textDocument/hover", UseSingleObjectParameterDeserialization = true)]
    public Hover? Hover(PlaceRequest asked) => Explaining.At(Asked(asked.TextDocument), asked.Position);

    [JsonRpcMethod("textDocument/definition", UseSingleObjectParameterDeserialization = true)]
    public EditorLocation[] Declared(PlaceRequest asked)
    {
        var document = Asked(asked.TextDocument);
        return NameUses.Declared(document, _documents.InFolderOf(document.Source.Path), asked.Position);
    }

    [JsonRpcMethod("textDocument/references", UseSingleObjectParameterDeserialization = true)]
    public EditorLocation[] Used(ReferencesRequest asked)
    {
        var document = Asked(asked.TextDocument);
        return NameUses.Used(document, _documents.InFolderOf(document.Source.Path), asked.Position,
            asked.Context is { IncludeDeclaration: true });
    }

    [JsonRpcMethod("textDocument/prepareRename", UseSingleObjectParameterDeserialization = true)]
    public RenamedWord? PrepareRename(PlaceRequest asked)
    {
        var document = Asked(asked.TextDocument);
        return NameUses.Renamed(document, _documents.InFolderOf(document.Source.Path), asked.Position);
    }

    [JsonRpcMethod("textDocument/rename", UseSingleObjectParameterDeserialization = true)]
    public EditorChanges Rename(RenameRequest asked)
    {
        var document = Asked(asked.TextDocument);
        var renamed = NameUses.Rename(document, _documents.InFolderOf(document.Source.Path), asked.Position, asked.NewName);
        return renamed.Problem is { } problem ? throw Refused(RequestFailed, problem) : renamed.Value;
    }

    [JsonRpcMethod("workspace/willRenameFiles", UseSingleObjectParameterDeserialization = true)]
    public EditorChanges RenameFiles(FilesRenameRequest asked) => NameUses.RenameFiles(Begun(_documents), asked.Files);

    [JsonRpcMethod("textDocument/documentColor", UseSingleObjectParameterDeserialization = true)]
    public ColourPlace[] Colours(DocumentRequest asked)
    {
        var document = Asked(asked.TextDocument);
        return Colouring.Of(document, _documents.Beside(document).Stashes);
    }

    [JsonRpcMethod("textDocument/colorPresentation", UseSingleObjectParameterDeserialization = true)]
    public ColourWriting[] WriteColour(ColourWordsRequest asked) =>
        Colouring.Written(Asked(asked.TextDocument), asked.Color, asked.Range);

    [JsonRpcMethod("textDocument/inlayHint", UseSingleObjectParameterDeserialization = true)]
    public InlayHint[] Sizes(PartRequest asked)
    {
        var document = Asked(asked.TextDocument);
        return SizeHints.Of(document, _documents.Compile(document), asked.Range);
    }

    /// <summary>Beyond the protocol: the pictures of a card.</summary>
    [JsonRpcMethod("sketch/pictures", UseSingleObjectParameterDeserialization = true)]
    public CardPictures Draw(DocumentRequest asked) => Picturing.Of(_documents.Compile(Asked(asked.TextDocument)));

    /// <summary>Beyond the protocol: what a finding means; null for what is no code.</summary>
    [JsonRpcMethod("sketch/explanation", UseSingleObjectParameterDeserialization = true)]
    public FindingMeaning? Explain(ExplanationRequest asked) => Begun(Explaining.Of(asked.Code));

    /// <inheritdoc/>
    public void Dispose()
    {
        _ended.Cancel();
        _ended.Dispose();
    }

    private OpenDocument Asked(DocumentName name) =>
        Begun(_documents).Find(name.Uri) ?? throw Refused(RequestFailed, $"{name.Uri} is not open.");

    /// <summary>An answer, which is given only after the first request.</summary>
    private T Begun<T>(T answer) =>
        _feed is null ? throw Refused(NotInitialized, "Send the request initialize first.") : answer;

    private static LocalRpcException Refused(int code, string sentence) => new(sentence) { ErrorCode = code };
}
