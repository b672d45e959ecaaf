using System.Collections.Immutable;

namespace Sketch.Lettering;

/// <summary>
/// The table of all kinds of lettering. The words are those of the trade; the families are under the SIL Open Font License.
/// </summary>
public static class LetteringKinds
{
    /// <summary>All kinds, the plain one first.</summary>
    public static ImmutableArray<LetteringKind> All { get; } =
    [
        new("plain", "Inter", "even letters without serifs"),
        new("formal", "Great Vibes", "a formal joined script with flourishes"),
        new("script", "Dancing Script", "a casual joined script"),
        new("handwriting", "Caveat", "quick handwriting"),
        new("print", "Patrick Hand", "letters printed neatly by hand"),
        new("narrow", "Amatic SC", "narrow capitals drawn by hand"),
        new("typewriter", "Courier Prime", "letters of equal width, as typed"),
        new("slab", "Zilla Slab", "sturdy letters with square serifs"),
        new("serif", "Playfair Display", "a bookish face with serifs and italics"),
        new("rounded", "Nunito", "letters with rounded ends"),
        new("stencil", "Saira Stencil One", "heavy letters whose middles are held by bridges when they are cut out"),
    ];

    /// <summary>The kind with a word, ignoring case; null when no kind has that word.</summary>
    public static LetteringKind? Find(string word) => All.FirstOrDefault(k => k.Word.Equals(word, StringComparison.OrdinalIgnoreCase));
}
