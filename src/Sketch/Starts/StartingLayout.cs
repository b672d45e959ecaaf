using System.Collections.Immutable;
using Sketch.Stationery;
using Sketch.Text;

namespace Sketch.Starts;

/// <summary>A layout to begin a card from: a card like any other, to be written anew in another size.</summary>
/// <param name="Name">The name of its file, without the ending.</param>
/// <param name="Says">What it shows, in a few words.</param>
/// <param name="Sizes">The sizes in which it is offered, first the one that its text has.</param>
/// <param name="Folds">The folds that it can have, first its own.</param>
public sealed record StartingLayout(string Name, string Says, ImmutableArray<CardSize> Sizes, ImmutableArray<Fold> Folds)
{
    /// <summary>The text of its card.</summary>
    public SourceText Text => StartingLayouts.TextOf(Name);
}
