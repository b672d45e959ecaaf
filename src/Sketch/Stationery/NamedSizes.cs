using System.Collections.Immutable;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Stationery;

/// <summary>
/// Cards, envelopes and sheets by name. Case, blanks and hyphens do not matter. A name means the same in all units.
/// <para>
/// <c>A1</c>, <c>A2</c> and <c>A9</c> alone are the US cards, for the ISO sizes of these names are posters and labels; <c>A6</c>,
/// <c>A7</c> and <c>A8</c> are cards in both systems and need <c>US</c> or <c>ISO</c> in front. As sheets the A names are ISO only.
/// The number ten envelope is <c>no10</c> (or <c>number 10</c>), since <c>#</c> begins a colour or a comment in a file.
/// </para>
/// </summary>
public static class NamedSizes
{
    /// <summary>All named cards.</summary>
    public static ImmutableArray<NamedSize> Cards { get; } = [.. SizeTable.Cards.Select(r => r.Size)];

    /// <summary>All named envelopes.</summary>
    public static ImmutableArray<NamedSize> Envelopes { get; } = [.. SizeTable.Envelopes.Select(r => r.Size)];

    /// <summary>All named sheets.</summary>
    public static ImmutableArray<NamedSize> Sheets { get; } = [.. SizeTable.Sheets.Select(r => r.Size)];

    /// <summary>A closed card, upright.</summary>
    /// <param name="system"><c>US</c> or <c>ISO</c> as written in front of the name, or null.</param>
    /// <param name="name">The name as written.</param>
    public static SizeLookup FindCard(string? system, string name)
    {
        var matches = Matches(SizeTable.Cards, system, name);
        return matches.Length switch
        {
            0 => Unknown(SizeTable.Cards, name),
            1 => SizeLookup.Of(matches[0]),
            _ when matches.FirstOrDefault(m => Plain(m.Name) == Plain(name)) is { } alone => SizeLookup.Of(alone),
            _ => SizeLookup.Between(matches.Select(m => m.Name)),
        };
    }

    /// <summary>
    /// An envelope, lying landscape, by its own name or by that of the card it usually holds: <c>A5</c> is a C5, <c>ISO A6</c> a C6,
    /// <c>slimline</c> a no10. A card name that is ambiguous is ambiguous here too.
    /// </summary>
    /// <param name="system"><c>US</c> or <c>ISO</c> as written in front of the name, or null.</param>
    /// <param name="name">The name as written.</param>
    public static SizeLookup FindEnvelope(string? system, string name)
    {
        var card = FindCard(system, name);
        if (card.Outcome == LookupOutcome.Ambiguous)
        {
            return card;
        }

        return Matches(SizeTable.Envelopes, system, name) is [var envelope]
            ? SizeLookup.Of(envelope)
            : card.Found is { } held && EnvelopeOf(held) is { } usual
                ? SizeLookup.Of(usual)
                : Unknown(SizeTable.Envelopes, name);
    }

    /// <summary>A sheet as sold, upright.</summary>
    /// <param name="system"><c>US</c> or <c>ISO</c> as written in front of the name, or null.</param>
    /// <param name="name">The name as written.</param>
    public static SizeLookup FindSheet(string? system, string name) =>
        Matches(SizeTable.Sheets, system, name) is [var sheet] ? SizeLookup.Of(sheet) : Unknown(SizeTable.Sheets, name);

    /// <summary>
    /// The envelope for a card of any size: the usual one where the size has a name, else the smallest named one that leaves
    /// <see cref="EnvelopeFit.TightBelow"/> in both directions. Null when the card is larger than all.
    /// </summary>
    /// <param name="closed">The closed card, either way up.</param>
    public static NamedSize? UsualEnvelope(Size closed)
    {
        var named = Cards.FirstOrDefault(c => c.Envelope is not null && (c.Size == closed || c.Size.Turned() == closed));
        return named is not null
            ? EnvelopeOf(named)
            : Envelopes
                .Where(e => EnvelopeFit.Of(closed, e.Size).Verdict >= EnvelopeVerdict.Close)
                .MinBy(e => (Int128)e.Size.Width.Nanometres * e.Size.Height.Nanometres);
    }

    private static NamedSize? EnvelopeOf(NamedSize card) => Envelopes.FirstOrDefault(e => e.Name == card.Envelope);

    private static NamedSize[] Matches(ImmutableArray<NamedSizeRow> rows, string? system, string name)
    {
        var plain = Plain(name);
        return [.. rows.Where(r => (system is null || Plain(system) == Plain(r.System)) && r.Spellings.Any(s => Plain(s) == plain))
            .Select(r => r.Size)];
    }

    private static SizeLookup Unknown(ImmutableArray<NamedSizeRow> rows, string name)
    {
        var names = rows.SelectMany(r => r.Spellings, (row, spelling) => (Plain: Plain(spelling), row.Size.Name))
            .ToLookup(p => p.Plain, p => p.Name);
        return SizeLookup.Unknown(Nearest.Find(Plain(name), names.Select(n => n.Key)) is { } nearest ? names[nearest] : []);
    }

    private static string Plain(string name) =>
        string.Concat(name.Where(c => !char.IsWhiteSpace(c) && c != '-')).ToLowerInvariant();
}
