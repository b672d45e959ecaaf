namespace Sketch.Editors.Protocol;

/// <summary>A place in a text as editors count: both from 0, characters in UTF-16 units.</summary>
internal readonly record struct EditorPosition(int Line, int Character);

/// <summary>A part of a text; its end is exclusive.</summary>
internal readonly record struct EditorRange(EditorPosition Start, EditorPosition End);

/// <summary>A part of a file.</summary>
internal sealed record EditorLocation(string Uri, EditorRange Range);

/// <summary>A change to a text.</summary>
internal sealed record EditorEdit(EditorRange Range, string NewText);

/// <summary>Changes to texts.</summary>
/// <param name="Changes">The changes by the address of the file.</param>
internal sealed record EditorChanges(Dictionary<string, EditorEdit[]> Changes);
