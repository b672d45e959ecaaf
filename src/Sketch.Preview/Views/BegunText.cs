using Sketch.Edits;
using Sketch.Starts;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Variants;
using Sketch.World;

namespace Sketch.Preview.Views;

/// <summary>The text of a new card, in papers of a stash if there is one.</summary>
internal static class BegunText
{
    /// <summary>The text.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="title">The title of the card.</param>
    /// <param name="size">One of the sizes of the layout.</param>
    /// <param name="fold">One of the folds of the layout.</param>
    /// <param name="stash">The stash; null for the colours of the layout.</param>
    /// <param name="files">The fonts.</param>
    public static string Of(StartingLayout layout, string title, CardSize size, Fold fold, Stash? stash, IWorld files)
    {
        var text = BegunCard.Write(layout, title, size, fold);
        var source = new SourceText(layout.Text.Path, text);
        return stash is not null && Compiler.Compile(source, files) is { Card: { } card }
            && VariantSearch.Find(card, stash, new([], [], 1)).Best is [var best, ..]
            ? TextEdit.Apply(text, KeptPapers.InCard(source, best.Choices, stash))
            : text;
    }
}
