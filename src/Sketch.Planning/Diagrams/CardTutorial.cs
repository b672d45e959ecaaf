using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Panels;
using Sketch.Planning.Demand;
using Sketch.Planning.Summary;
using Sketch.Planning.Supplies;
using Sketch.Stashes;
using Sketch.World;

namespace Sketch.Planning.Diagrams;

/// <summary>How one card is made, for others to make it too. It has nothing of a batch: no message, no recipient, no name.</summary>
/// <param name="Supplies">What it takes besides paper, such as <c>gem red 1/8: 3</c>.</param>
/// <param name="Introduction">What holds for all steps.</param>
/// <param name="Steps">The steps of the assembly as sentences, the first one first.</param>
/// <param name="Picture">The finished card, and its layers parted and numbered by step, as SVG.</param>
public sealed record CardTutorial(ImmutableArray<string> Supplies, string Introduction, ImmutableArray<string> Steps, string Picture)
{
    /// <summary>The tutorial of a card.</summary>
    /// <param name="card">The card.</param>
    /// <param name="stash">Names its supplies, or null.</param>
    /// <param name="world">Shapes the numbers in the picture.</param>
    public static CardTutorial Of(LaidOutCard card, Stash? stash, IWorld world)
    {
        var design = new Design(new(1, new(card.Location.Source.Path, card.Location), [], card.Location), card);
        var batch = new Batch(card.Title, card.Location) { Units = card.Units };
        var files = new BatchFiles(batch, stash, [design], [], []) { World = world };
        var lengths = card.Units.Format();
        var supplies = SupplyList.Of(files, OrderBook.Of(files, new()))
            .Select(s => $"{SupplyText.Named(s, lengths)}: {SupplyText.Amount(s with { Cutting = null }, s.Total, lengths)}");
        var instructions = DesignInstructions.Of(files)[0];
        return new([.. supplies], instructions.Introduction, [.. instructions.Steps.Select(instructions.TextOf)],
            new DesignPages(instructions, new(world), new()).Picture(card.Units == UnitSystem.Inches));
    }
}
