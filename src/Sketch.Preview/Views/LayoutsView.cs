using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Starts;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Preview.Views;

/// <summary>One of several values, with what people read for it.</summary>
internal sealed record ChoiceView(string Value, string Title);

/// <summary>A layout to begin a card from.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Says">What it shows, in a few words.</param>
/// <param name="Sizes">The sizes in which it is offered, first that of the picture.</param>
/// <param name="Folds">The folds that it can have, the usual one first.</param>
/// <param name="Svg">The picture of its front.</param>
internal sealed record LayoutView(
    string Name, string Says, IEnumerable<ChoiceView> Sizes, IEnumerable<ChoiceView> Folds, string Svg);

/// <summary>The layouts to begin a card from.</summary>
/// <param name="Layouts">The layouts.</param>
internal sealed record LayoutsView(IEnumerable<LayoutView> Layouts)
{
    private const double DotsPerInch = 48;

    /// <summary>The layouts, drawn in the papers of a stash.</summary>
    /// <param name="stash">The stash; null for the colours of each layout.</param>
    /// <param name="files">The fonts.</param>
    public static LayoutsView Of(Stash? stash, IWorld files) => new([.. StartingLayouts.All.AsParallel().AsOrdered().Select(layout =>
        new LayoutView(
            layout.Name,
            layout.Says,
            layout.Sizes.Select(s => new ChoiceView(s.Written, TitleOf(s))),
            layout.Folds.Select(f => new ChoiceView(f.ToString().ToLowerInvariant(), TitleOf(f))),
            Draw(layout, stash, files)))]);

    /// <summary>What people read for a fold.</summary>
    private static string TitleOf(Fold fold) => fold switch
    {
        Fold.Left => "On the left, like a book",
        Fold.Top => "At the top, like a tent",
        Fold.Gate => "Two doors that meet in the middle",
        _ => "In three panels",
    };

    private static string TitleOf(CardSize size)
    {
        var format = new LengthFormat(size.IsMetric);
        var measures = $"{format.Text(size.Closed)} {format.Unit}";
        return char.IsAsciiDigit(size.Written[0]) ? measures : $"{size.Written}: {measures}";
    }

    private static string Draw(StartingLayout layout, Stash? stash, IWorld files)
    {
        var text = BegunText.Of(layout, layout.Says, layout.Sizes[0], layout.Folds[0], stash, files);
        var card = Compiler.Compile(new SourceText(layout.Text.Path, text), files, new RoleFilling(stash, [])).Card!;
        return CardDrawing.Draw(card, FaceKind.Front, DotsPerInch);
    }
}
