using System.Text.Json;

namespace Sketch.Editors.Protocol;

// What editors send, as the Language Server Protocol 3.17 names it; members that no answer depends on are left out.

/// <summary>The first request.</summary>
/// <param name="InitializationOptions">What the editor sets for this server alone.</param>
internal sealed record InitializeRequest(JsonElement? InitializationOptions = null)
{
    /// <summary>A string among the options; null where there is none.</summary>
    public string? Option(string name) =>
        InitializationOptions is { ValueKind: JsonValueKind.Object } options && options.TryGetProperty(name, out var value)
            && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
}

/// <summary>The address of a file.</summary>
internal sealed record DocumentName(string Uri);

/// <summary>The address of a file and the number of its text.</summary>
internal sealed record DocumentVersion(string Uri, int Version);

/// <summary>A file with its text.</summary>
internal sealed record DocumentText(string Uri, string LanguageId, int Version, string Text);

/// <summary>A file is opened.</summary>
internal sealed record OpenedDocument(DocumentText TextDocument);

/// <summary>A file is closed.</summary>
internal sealed record ClosedDocument(DocumentName TextDocument);

/// <summary>A text is changed.</summary>
/// <param name="TextDocument">The file.</param>
/// <param name="ContentChanges">The changes; each refers to the text that the one before it left.</param>
internal sealed record ChangedDocument(DocumentVersion TextDocument, TextChange[] ContentChanges);

/// <summary>A change.</summary>
/// <param name="Text">The new text.</param>
/// <param name="Range">What it replaces; null for everything.</param>
internal sealed record TextChange(string Text, EditorRange? Range = null);

/// <summary>A request about a whole file.</summary>
internal sealed record DocumentRequest(DocumentName TextDocument);

/// <summary>A request about a place in a file.</summary>
internal sealed record PlaceRequest(DocumentName TextDocument, EditorPosition Position);

/// <summary>A request about a part of a file.</summary>
internal sealed record PartRequest(DocumentName TextDocument, EditorRange Range);

/// <summary>Where a name is used.</summary>
internal sealed record ReferencesRequest(DocumentName TextDocument, EditorPosition Position, ReferencesOf? Context = null);

/// <summary>Which uses of a name are asked for.</summary>
internal sealed record ReferencesOf(bool IncludeDeclaration);

/// <summary>Another name for what has one.</summary>
internal sealed record RenameRequest(DocumentName TextDocument, EditorPosition Position, string NewName);

/// <summary>Files are about to get other names.</summary>
internal sealed record FilesRenameRequest(RenamedFile[] Files);

/// <summary>A file and its new address.</summary>
internal sealed record RenamedFile(string OldUri, string NewUri);

/// <summary>How a colour can be written.</summary>
internal sealed record ColourWordsRequest(DocumentName TextDocument, EditorColour Color, EditorRange Range);

/// <summary>What a finding means.</summary>
internal sealed record ExplanationRequest(string Code);
