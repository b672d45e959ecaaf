using System.Text.Json;
using System.Text.Json.Serialization;

namespace Sketch.Editors.Protocol;

/// <summary>All messages as JSON, read and written by code that the build generates.</summary>
[JsonSerializable(typeof(JsonElement))]
[JsonSerializable(typeof(InitializeRequest))]
[JsonSerializable(typeof(OpenedDocument))]
[JsonSerializable(typeof(ClosedDocument))]
[JsonSerializable(typeof(ChangedDocument))]
[JsonSerializable(typeof(DocumentRequest))]
[JsonSerializable(typeof(PlaceRequest))]
[JsonSerializable(typeof(PartRequest))]
[JsonSerializable(typeof(ReferencesRequest))]
[JsonSerializable(typeof(RenameRequest))]
[JsonSerializable(typeof(FilesRenameRequest))]
[JsonSerializable(typeof(ColourWordsRequest))]
[JsonSerializable(typeof(ExplanationRequest))]
[JsonSerializable(typeof(CompletionItem))]
[JsonSerializable(typeof(Initialized))]
[JsonSerializable(typeof(FileFindings))]
[JsonSerializable(typeof(CodeAction[]))]
[JsonSerializable(typeof(CompletionList))]
[JsonSerializable(typeof(Hover))]
[JsonSerializable(typeof(EditorLocation[]))]
[JsonSerializable(typeof(RenamedWord))]
[JsonSerializable(typeof(EditorChanges))]
[JsonSerializable(typeof(DocumentSymbol[]))]
[JsonSerializable(typeof(EditorEdit[]))]
[JsonSerializable(typeof(FoldingRange[]))]
[JsonSerializable(typeof(ColourPlace[]))]
[JsonSerializable(typeof(ColourWriting[]))]
[JsonSerializable(typeof(InlayHint[]))]
[JsonSerializable(typeof(CardPictures))]
[JsonSerializable(typeof(FindingMeaning))]
internal sealed partial class ProtocolJson : JsonSerializerContext;
