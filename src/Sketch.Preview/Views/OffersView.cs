using Sketch.Offers;
using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>What can be written at the caret.</summary>
/// <param name="Column">The column, from 1, at which what an offer replaces begins: what is typed of it on the line of the caret.</param>
/// <param name="EndColumn">The column at which that ends.</param>
/// <param name="Offers">The offers, the likeliest first.</param>
internal sealed record OffersView(int Column, int EndColumn, IEnumerable<WordOfferView> Offers)
{
    /// <summary>The offers at a place of a text.</summary>
    public static OffersView Of(SourceText text, OfferedWords offered)
    {
        var column = text.PositionOf(offered.Typed.Start).Column;
        return new(column, column + offered.Typed.Length,
            offered.Offers.Select(o => new WordOfferView(o.Text, o.Kind.ToString().ToLowerInvariant())));
    }
}

/// <summary>Something that can be written.</summary>
/// <param name="Text">What is written.</param>
/// <param name="Kind">The name of its kind: a member of <see cref="OfferKind"/> in lower case.</param>
internal sealed record WordOfferView(string Text, string Kind);
