using Sketch.Papers;
using Sketch.Text;

namespace Sketch.Binding;

/// <summary>Hints that several stages give.</summary>
internal static class Hints
{
    /// <summary>What to write for a word that is no colour.</summary>
    public static string Colour(string word) =>
        Nearest.Find(word, ColourWords.All) is { } near
            ? $"Did you mean {near}?" : "Write a colour word such as navy, or hex digits such as #16324f.";
}
