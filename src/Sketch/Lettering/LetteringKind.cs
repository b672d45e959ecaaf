namespace Sketch.Lettering;

/// <summary>A kind of lettering that comes with the tool, so that it looks the same on every machine.</summary>
/// <param name="Word">Its word in the language, as in <c>lettering script</c>.</param>
/// <param name="Family">The family of fonts that has it.</param>
/// <param name="Meaning">What it looks like, in a few words.</param>
public sealed record LetteringKind(string Word, string Family, string Meaning);
