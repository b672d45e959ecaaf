using System.Collections.Immutable;
using Sketch.Units;

namespace Sketch.Stationery;

/// <summary>
/// The sizes themselves. US cards and envelopes: the size tables of US card and envelope makers, which agree except for the A6 card
/// (4 1/2 x 6 1/4 in most of them). Metric sheets: ISO 216 (an A size is half of the one before, rounded down to the millimetre).
/// Metric envelopes: ISO 269 and DIN 678. Slimline, the DL card and the square envelopes: common practice, no source; C8: from memory.
/// </summary>
internal static class SizeTable
{
    private const string Us = "US";
    private const string Iso = "ISO";

    /// <summary>Closed cards, upright. A second spelling of a name follows a slash.</summary>
    public static readonly ImmutableArray<NamedSizeRow> Cards =
    [
        Card(Us, "A1|4bar", "A1", Inch(3, 1, 2), Inch(4, 7, 8), "US A1"),
        Card(Us, "A2", "A2", Inch(4, 1, 4), Inch(5, 1, 2), "US A2"),
        Card(Us, "A6", "US A6", Inch(4, 1, 2), Inch(6, 1, 4), "US A6"),
        Card(Us, "A7", "US A7", Inch(5), Inch(7), "US A7"),
        Card(Us, "A8", "US A8", Inch(5, 1, 4), Inch(7, 7, 8), "US A8"),
        Card(Us, "A9", "A9", Inch(5, 1, 2), Inch(8, 1, 2), "US A9"),
        Card(Us, "no10|number10|#10", "no10", Inch(3, 7, 8), Inch(9, 1, 4), "no10"),
        Card(Us, "slimline", "slimline", Inch(3, 1, 2), Inch(8, 1, 2), "no10"),
        Card(Iso, "A1", "ISO A1", Mm(594), Mm(841), null),
        Card(Iso, "A2", "ISO A2", Mm(420), Mm(594), null),
        Card(Iso, "A3", "A3", Mm(297), Mm(420), null),
        Card(Iso, "A4", "A4", Mm(210), Mm(297), "C4"),
        Card(Iso, "A5", "A5", Mm(148), Mm(210), "C5"),
        Card(Iso, "A6", "ISO A6", Mm(105), Mm(148), "C6"),
        Card(Iso, "A7", "ISO A7", Mm(74), Mm(105), "C7"),
        Card(Iso, "A8", "ISO A8", Mm(52), Mm(74), "C8"),
        Card(Iso, "A9", "ISO A9", Mm(37), Mm(52), null),
        Card(Iso, "DL", "DL", Mm(99), Mm(210), "DL"),
    ];

    /// <summary>Envelopes, lying landscape.</summary>
    public static readonly ImmutableArray<NamedSizeRow> Envelopes =
    [
        Row(Us, "A1|4bar", "US A1", Inch(5, 1, 8), Inch(3, 5, 8)),
        Row(Us, "A2", "US A2", Inch(5, 3, 4), Inch(4, 3, 8)),
        Row(Us, "5bar", "5bar", Inch(5, 1, 2), Inch(4, 1, 8)),
        Row(Us, "A6", "US A6", Inch(6, 1, 2), Inch(4, 3, 4)),
        Row(Us, "A7", "US A7", Inch(7, 1, 4), Inch(5, 1, 4)),
        Row(Us, "A8", "US A8", Inch(8, 1, 8), Inch(5, 1, 2)),
        Row(Us, "A9", "US A9", Inch(8, 3, 4), Inch(5, 3, 4)),
        Row(Us, "no10|number10|#10", "no10", Inch(9, 1, 2), Inch(4, 1, 8)),
        Row(Us, "5 1/4 x 5 1/4", "5 1/4 in x 5 1/4 in", Inch(5, 1, 4), Inch(5, 1, 4)),
        Row(Us, "6 1/4 x 6 1/4", "6 1/4 in x 6 1/4 in", Inch(6, 1, 4), Inch(6, 1, 4)),
        Row(Us, "6 1/2 x 6 1/2", "6 1/2 in x 6 1/2 in", Inch(6, 1, 2), Inch(6, 1, 2)),
        Row(Iso, "C4", "C4", Mm(324), Mm(229)),
        Row(Iso, "C5", "C5", Mm(229), Mm(162)),
        Row(Iso, "C6", "C6", Mm(162), Mm(114)),
        Row(Iso, "C7", "C7", Mm(114), Mm(81)),
        Row(Iso, "C8", "C8", Mm(81), Mm(57)),
        Row(Iso, "B6", "B6", Mm(176), Mm(125)),
        Row(Iso, "DL", "DL", Mm(220), Mm(110)),
        Row(Iso, "C6C5|C6/C5", "C6C5", Mm(229), Mm(114)),
        Row(Iso, "C7C6|C7/C6", "C7C6", Mm(162), Mm(81)),
        Row(Iso, "155 x 155", "155 mm x 155 mm", Mm(155), Mm(155)),
    ];

    /// <summary>Sheets as sold, upright.</summary>
    public static readonly ImmutableArray<NamedSizeRow> Sheets =
    [
        Row(Us, "letter", "letter", Inch(8, 1, 2), Inch(11)),
        Row(Us, "legal", "legal", Inch(8, 1, 2), Inch(14)),
        Row(Us, "tabloid|ledger", "tabloid", Inch(11), Inch(17)),
        Row(Us, "12x12", "12 in x 12 in", Inch(12), Inch(12)),
        Row(Iso, "A2", "A2", Mm(420), Mm(594)),
        Row(Iso, "A3", "A3", Mm(297), Mm(420)),
        Row(Iso, "A4", "A4", Mm(210), Mm(297)),
        Row(Iso, "A5", "A5", Mm(148), Mm(210)),
        Row(Iso, "A6", "A6", Mm(105), Mm(148)),
        Row(Iso, "A7", "A7", Mm(74), Mm(105)),
    ];

    private static NamedSizeRow Card(string system, string spellings, string name, Length width, Length height, string? envelope) =>
        new(system, spellings.Split('|'), new(name, new(width, height)) { Envelope = envelope });

    private static NamedSizeRow Row(string system, string spellings, string name, Length width, Length height) =>
        new(system, spellings.Split('|'), new(name, new(width, height)));

    private static Length Inch(long whole, long numerator = 0, long denominator = 1) => Length.Inch(whole, numerator, denominator);

    private static Length Mm(int millimetres) => Length.Millimetre(millimetres);
}

/// <summary>One size with the system it belongs to and all its spellings.</summary>
/// <param name="System"><c>US</c> or <c>ISO</c>.</param>
/// <param name="Spellings">What may be written after the system, the usual spelling first.</param>
/// <param name="Size">The size.</param>
internal sealed record NamedSizeRow(string System, string[] Spellings, NamedSize Size);
