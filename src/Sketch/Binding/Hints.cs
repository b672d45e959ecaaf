using Sketch.Papers;
using Sketch.Text;

namespace Sketch.Binding;

/// <summary>Hints shared by several stages.</summary>
internal static class Hints
{
    /// <summary>What to write in place of a word that is not a colour.</summary>
    public static string Colour(string word) =>
        Nearest.Find(word, ColourWords.All) is { } near
            ? $"Did you mean {near}?" : "Write a colour word such as navy, or hex digits such as #16324f.";
}
