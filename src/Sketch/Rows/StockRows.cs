using System.Collections.Immutable;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Rows;

/// <summary>The rows of a stash.</summary>
internal static class StockRows
{
    private static readonly RowField Name =
        new("name", "Name", "gulls", new HeadPart(l => ((StockLine)l).Name.Span)) { IsNeeded = true, IsMain = true };

    private static readonly RowField Size =
        new("size", "Size", "12 in x 12 in", new HeadPart(l => ((StockLine)l).Measure?.Span)) { IsNeeded = true, IsMain = true };

    private static readonly RowField Front =
        new("front", "Front", "waves navy cream", RowClauses.After("front", c => c is SideClause { IsBack: false }))
        {
            Offers = FieldOffer.Looks,
        };

    private static readonly RowField Back =
        new("back", "Back", "plain cream", RowClauses.After("back", c => c is SideClause { IsBack: true })) { Offers = FieldOffer.Looks };

    private static readonly RowField Price = new("price", "Price", "0.99", RowClauses.Number("price", c => c is PriceClause));

    /// <summary>What a stash says of itself.</summary>
    public static RowKind Title { get; } = new("stash", "Stash", [RowClauses.Title("Museum shelf")], value => $"stash {value("title")}");

    /// <summary>All that a stash lists.</summary>
    public static ImmutableArray<RowKind> All { get; } =
    [
        Sheets("paper", "Paper", isPatterned: true), Sheets("cardstock", "Cardstock", isPatterned: false), Offcut(),
        .. SupplyKinds.Lines.Select(Supply),
    ];

    private static RowKind Sheets(string word, string title, bool isPatterned) => Of(word, title, Name,
    [
        Size with { Title = "Sheet", Offers = FieldOffer.Sheets, Example = isPatterned ? "12 in x 12 in" : "letter" },
        OnHand("sheets", "3 sheets") with { Offers = FieldOffer.Counts },
        isPatterned ? Front : Front with { IsMain = true, Title = "Colour", Example = "navy" },
        Back,
        new("upright", "Directional print", "upright", RowClauses.Flag("upright")) { Choices = ["upright"] },
        .. Enum.GetValues<Edge>().Select(edge =>
            new RowField($"trim-{edge.Name()}", $"Trim, {edge.Name()}", "1/4 in", RowClauses.Trim(edge))),
        new("collection", "Collection", "Sea air", RowClauses.Collection),
        new("weight", "Weight", "80 lb cover", RowClauses.After("weight", c => c is WeightClause)),
        new("thick", "Thickness", "0.3 mm", RowClauses.Number("thick", c => c is MeasureClause { Word: "thick" })),
        Price with { Title = "Price per sheet" },
    ]);

    private static RowKind Offcut() => Of("offcut", "Offcut", Name with { Title = "Paper", Offers = FieldOffer.Papers },
        [Size with { Example = "6 in x 4 in" }, OnHand("", "2")]);

    private static RowKind Supply(SupplyKind kind)
    {
        var traits = kind.Traits;
        var example = StockExamples.Of(traits.Word)[(traits.Word.Length + 1)..].Split(": ");
        var isEnvelope = traits.Measure == SupplyMeasure.Envelope;
        ImmutableArray<RowField> amount = traits.Count switch
        {
            SupplyCount.Length =>
                [OnHand("rolls", "2 rolls"), new("long", "Length", "40 ft", RowClauses.Long) { IsMain = true }],
            SupplyCount.Pieces => [OnHand(isEnvelope ? "" : "pieces", isEnvelope ? "50" : "60 pieces")],
            _ => [],
        };
        return Of(traits.Word, char.ToUpperInvariant(traits.Word[0]) + traits.Word[1..], Name with { Example = example[0] },
        [
            Size with { Example = example[1].Split(',')[0], Offers = isEnvelope ? FieldOffer.Envelopes : FieldOffer.Nothing },
            .. amount,
            .. traits.HasLook ? ImmutableArray.Create(Front with { Title = "Colour or pattern" }) : [],
            Price with { Title = traits.Count == SupplyCount.Length ? "Price per roll" : "Price each" },
        ]);
    }

    private static RowField OnHand(string noun, string example) =>
        new("stock", "On hand", example, RowClauses.Stock(noun)) { IsMain = true };

    private static RowKind Of(string word, string title, RowField name, ImmutableArray<RowField> fields) =>
        new(word, title, [name, .. fields], value => $"{word} {value("name")}: {value("size")}");
}
