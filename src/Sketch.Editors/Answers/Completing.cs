using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Guide;
using Sketch.Offers;

namespace Sketch.Editors.Answers;

/// <summary>The words that can be written at a place.</summary>
internal static class Completing
{
    /// <summary>What can be written at a place.</summary>
    public static CompletionList At(OpenDocument document, EditorPosition place, FilesBeside beside)
    {
        var offered = WordOffers.At(document.Syntax, document.Lines.OffsetOf(place), beside);
        var typed = document.Lines.RangeOf(offered.Typed);
        return new(false, [.. offered.Offers.Select((o, i) =>
            new CompletionItem(o.Text, KindOf(o.Kind), $"{i:D4}", new(typed, o.Text), DetailOf(o.Kind)))]);
    }

    /// <summary>The word with what the reference says of it.</summary>
    public static CompletionItem Explained(CompletionItem item) =>
        WordGuide.Find(item.Label) is { } entry ? item with { Documentation = Explaining.Of(entry) } : item;

    /// <summary>Numbers of CompletionItemKind in the protocol.</summary>
    private static int KindOf(OfferKind kind) => kind switch
    {
        OfferKind.Piece => 7,
        OfferKind.Line => 14,
        OfferKind.Clause => 10,
        OfferKind.Role => 21,
        OfferKind.Colour => 16,
        OfferKind.Paper or OfferKind.Pattern => 20,
        OfferKind.Lettering or OfferKind.Word => 12,
        OfferKind.Name => 6,
        OfferKind.Size => 11,
        OfferKind.Supply => 15,
        _ => 17,
    };

    private static string? DetailOf(OfferKind kind) => kind switch
    {
        OfferKind.Role => "role",
        OfferKind.Paper => "paper of the stash",
        OfferKind.Supply => "from the stash",
        _ => null,
    };
}
