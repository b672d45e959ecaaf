namespace Sketch.Editors.Protocol;

// What editors get, as the Language Server Protocol 3.17 names it; its numbers stand where they are used.

/// <summary>The answer to the first request.</summary>
internal sealed record Initialized(Capabilities Capabilities, ServerName ServerInfo);

/// <summary>The name and version of this server.</summary>
internal sealed record ServerName(string Name, string Version);

/// <summary>What this server can do.</summary>
internal sealed record Capabilities
{
    public string PositionEncoding { get; } = "utf-16";

    public TextSync TextDocumentSync { get; } = new();

    public CodeActionOffer CodeActionProvider { get; } = new();

    public CompletionOffer CompletionProvider { get; } = new();

    public RenameOffer RenameProvider { get; } = new();

    public WorkspaceOffer Workspace { get; } = new();

    public bool HoverProvider { get; } = true;

    public bool DefinitionProvider { get; } = true;

    public bool ReferencesProvider { get; } = true;

    public bool DocumentSymbolProvider { get; } = true;

    public bool DocumentFormattingProvider { get; } = true;

    public bool FoldingRangeProvider { get; } = true;

    public bool ColorProvider { get; } = true;

    public bool InlayHintProvider { get; } = true;
}

/// <summary>How texts are followed.</summary>
internal sealed record TextSync
{
    public bool OpenClose { get; } = true;

    /// <summary>2: by their changes.</summary>
    public int Change { get; } = 2;
}

/// <summary>Which actions there are.</summary>
internal sealed record CodeActionOffer
{
    public string[] CodeActionKinds { get; } = [CodeAction.QuickFix];
}

/// <summary>When words are offered unasked, beside letters.</summary>
internal sealed record CompletionOffer
{
    public string[] TriggerCharacters { get; } = ["\"", "/"];

    public bool ResolveProvider { get; } = true;
}

/// <summary>How names are changed.</summary>
internal sealed record RenameOffer
{
    public bool PrepareProvider { get; } = true;
}

/// <summary>What is offered about the files of a folder.</summary>
internal sealed record WorkspaceOffer
{
    public FileOffer FileOperations { get; } = new();
}

/// <summary>What is asked before files are changed.</summary>
internal sealed record FileOffer
{
    public FilesOffer WillRename { get; } = new([new("file", new("**/*.{card,stash,batch}"))]);
}

/// <summary>Which files it is asked about.</summary>
internal sealed record FilesOffer(FileFilter[] Filters);

/// <summary>Files by their names.</summary>
internal sealed record FileFilter(string Scheme, FilePattern Pattern);

/// <summary>A pattern of the names of files.</summary>
internal sealed record FilePattern(string Glob);

/// <summary>All findings of a file.</summary>
internal sealed record FileFindings(string Uri, int? Version, EditorFinding[] Diagnostics);

/// <summary>A finding.</summary>
/// <param name="Range">Where.</param>
/// <param name="Severity">1 for an error, 2 for a warning, 3 for a note.</param>
/// <param name="Code">Its code.</param>
/// <param name="Source">Who found it.</param>
/// <param name="Message">What is wrong and what to type instead.</param>
/// <param name="CodeDescription">Where it is explained, if the editor can show that.</param>
/// <param name="RelatedInformation">Where it is, if that is in another file.</param>
internal sealed record EditorFinding(
    EditorRange Range, int Severity, string Code, string Source, string Message, CodeLink? CodeDescription = null,
    RelatedPlace[]? RelatedInformation = null);

/// <summary>An address that explains a code.</summary>
internal sealed record CodeLink(string Href);

/// <summary>A place that belongs to a finding.</summary>
internal sealed record RelatedPlace(EditorLocation Location, string Message);

/// <summary>Something that can be done about a finding.</summary>
internal sealed record CodeAction(string Title, string Kind, EditorFinding[] Diagnostics, bool IsPreferred, EditorChanges Edit)
{
    /// <summary>The kind of what puts a finding right.</summary>
    public const string QuickFix = "quickfix";
}

/// <summary>Words that can stand at a place.</summary>
internal sealed record CompletionList(bool IsIncomplete, CompletionItem[] Items);

/// <summary>A word that can stand at a place.</summary>
internal sealed record CompletionItem(string Label, int? Kind = null, string? SortText = null, EditorEdit? TextEdit = null,
    string? Detail = null, MarkdownText? Documentation = null);

/// <summary>Text to show, in Markdown.</summary>
internal sealed record MarkdownText(string Value)
{
    public string Kind { get; } = "markdown";
}

/// <summary>What stands at a place.</summary>
internal sealed record Hover(MarkdownText Contents, EditorRange Range);

/// <summary>A name that can be changed.</summary>
internal sealed record RenamedWord(EditorRange Range, string Placeholder);

/// <summary>A line in the outline of a file.</summary>
internal sealed record DocumentSymbol(
    string Name, int Kind, EditorRange Range, EditorRange SelectionRange, string? Detail = null, DocumentSymbol[]? Children = null);

/// <summary>Lines that can be folded away.</summary>
internal sealed record FoldingRange(int StartLine, int EndLine, string? Kind = null);

/// <summary>A colour, each part from 0 to 1.</summary>
internal sealed record EditorColour(double Red, double Green, double Blue, double Alpha);

/// <summary>A colour in a text.</summary>
internal sealed record ColourPlace(EditorRange Range, EditorColour Color);

/// <summary>How a colour can be written.</summary>
internal sealed record ColourWriting(string Label);

/// <summary>A few words that an editor shows within a text.</summary>
internal sealed record InlayHint(EditorPosition Position, string Label, bool PaddingLeft, string? Tooltip = null);

/// <summary>The pictures of a card.</summary>
/// <param name="Title">Its title.</param>
/// <param name="Pictures">The pictures, front first; none for what has none.</param>
/// <param name="Problem">Why there is no picture; null where there is one.</param>
internal sealed record CardPictures(string Title, FacePicture[] Pictures, string? Problem = null);

/// <summary>The picture of a face.</summary>
internal sealed record FacePicture(string Face, string Svg);

/// <summary>What a finding means.</summary>
internal sealed record FindingMeaning(string Markdown);
