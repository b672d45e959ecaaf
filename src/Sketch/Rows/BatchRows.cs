using System.Collections.Immutable;
using Sketch.Syntax;

namespace Sketch.Rows;

/// <summary>The rows of a batch.</summary>
internal static class BatchRows
{
    private static readonly RowField Count = new("count", "How many", "12", new HeadPart(l => l switch
    {
        MakeLine make => make.Count.Span,
        CutLine cut => cut.Count.Span,
        _ => ((UseOnHandLine)l).Count.Span,
    }))
    {
        IsNeeded = true,
        IsMain = true,
    };

    private static readonly RowField Card = new("card", "Card", "fair-winds.card",
        new HeadPart(l => l is MakeLine make ? make.File.Span : ((UseOnHandLine)l).File.Span, IsQuoted: true))
    {
        IsNeeded = true,
        IsMain = true,
        Offers = FieldOffer.Cards,
    };

    private static readonly RowField MadeBy = new("made-by", "Made by", "Ann, Beth", RowClauses.MadeBy);

    private static readonly RowField Message = new("message", "Message inside", "Keep a good light", RowClauses.Words("message"));

    private static readonly RowField Date = new("date", "Date", "2026-11-25", RowClauses.Words("date"));

    /// <summary>What a batch says of itself.</summary>
    public static RowKind Title { get; } = new("batch", "Batch",
    [
        RowClauses.Title("Lamp day"),
        new("stash", "Stash", "museum.stash", RowClauses.NamedStash) { IsMain = true, Offers = FieldOffer.Stashes },
        Date,
        new("makers", "Makers (number or names)", "2", RowClauses.Makers) { IsMain = true },
        new("spare", "Spare cards per maker", "1", RowClauses.Spare) { IsMain = true },
    ],
        value => $"batch {value("title")}");

    /// <summary>All that a batch lists.</summary>
    public static ImmutableArray<RowKind> All { get; } =
    [
        new("make", "Design", [Card, Count, MadeBy, Message], value => $"make {value("count")} of {value("card")}"),
        new("for", "Recipient",
        [
            new("whom", "For", "Cliff ward", new HeadPart(l => ((ForLine)l).Whom.Span, IsQuoted: true)) { IsNeeded = true, IsMain = true },
            new("cards", "Cards", "24", RowClauses.Count("cards", isUsual: true)) { IsNeeded = true, IsMain = true },
            new("way", "Delivery", "by hand", RowClauses.Flag("by hand", "by post"))
            {
                IsMain = true,
                Choices = ["by hand", "by post"],
            },
            new("spare", "Spare cards", "1", RowClauses.Number("spare", c => c is SpareClause)),
            new("makers", "Number of makers", "1", RowClauses.Count("makers")),
            MadeBy,
            Date,
            Message,
            new("names", "List of names", "names.csv", RowClauses.Words("names")),
            new("note", "Note", "Leave them at the desk.", RowClauses.Words("note")),
        ],
            value => $"for {value("whom")}"),
        new("use", "Finished cards", [Card, Count], value => $"use {value("count")} of {value("card")} on hand"),
        new("cut", "Loose pieces",
        [
            new("size", "Size", "4 in x 5 1/4 in", new HeadPart(l => ((CutLine)l).Size.Span)) { IsNeeded = true, IsMain = true },
            Count,
            new("paper", "Paper", "gulls", new HeadPart(l => ((CutLine)l).Paper.Span))
            {
                IsNeeded = true,
                IsMain = true,
                Offers = FieldOffer.Papers,
            },
            new("side", "Side that shows", "front", RowClauses.Side) { IsMain = true, Choices = ["front", "back"] },
            new("upright", "Keep upright", "upright", RowClauses.Flag("upright")) { Choices = ["upright"] },
        ],
            value => $"cut {value("count")} of {value("size")} from {value("paper")}"),
    ];
}
