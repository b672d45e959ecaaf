using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;

namespace Sketch.Planning.Rules;

/// <summary>What of a card breaks a rule.</summary>
/// <param name="What">The thing, as the end of "it has".</param>
/// <param name="Piece">The piece; null for the whole card or its message.</param>
internal readonly record struct Breach(string What, Piece? Piece);

/// <summary>
/// The rules of recipients that a computer can check. They are those that charities publish for cards that they collect, such as
/// sendingsunshine.ca, cityservecares.org, brighten-a-day.org and cardsforhospitalizedkids.com (seen): no loose glitter or small parts, no
/// date, no address, a largest size. None is universal. Whatever else a batch writes is a rule to tick.
/// </summary>
internal static partial class RecipientRule
{
    private const string Avoid = "avoid ";

    private static readonly ImmutableDictionary<string, Func<LaidOutCard, IEnumerable<Breach>>> OfPieces =
        new Dictionary<string, Func<LaidOutCard, IEnumerable<Breach>>>(StringComparer.OrdinalIgnoreCase)
        {
            ["no glitter"] = card => Papers(card, p => IsCalled(p, "glitter")),
            ["no foil"] = card => Papers(card, p => p.Look.Pattern == PaperPattern.Foil || IsCalled(p, "foil"))
                .Concat(card.Pieces.Where(p => p.Kind == PieceKind.Line).Select(p => new Breach("a foil line", p))),
            ["no pins"] = card => Named(card, Pins()).Concat(OfKind(card, PieceKind.Brad)),
            ["no staples"] = card => Named(card, Pins()),
            ["no pins or staples"] = card => Named(card, Pins()).Concat(OfKind(card, PieceKind.Brad)),
            ["no scent"] = card => Named(card, Scents()),
            ["no small parts"] = card => card.Pieces.Where(p => p.Kind.Traits.IsSmallPart).Select(p => new Breach($"a {p.Kind.Name}", p)),
        }.ToImmutableDictionary(StringComparer.OrdinalIgnoreCase);

    private static readonly ImmutableDictionary<string, Regex> OfWords = new Dictionary<string, Regex>(StringComparer.OrdinalIgnoreCase)
    {
        ["no date"] = Dates(),
        ["no address"] = Addresses(),
        ["no web address"] = WebAddresses(),
        ["no telephone number"] = Telephones(),
    }.ToImmutableDictionary(StringComparer.OrdinalIgnoreCase);

    // Who is named is known, but not who else a text means, so these are ticked as well.
    private static readonly ImmutableHashSet<string> OfNames =
        ImmutableHashSet.Create(StringComparer.OrdinalIgnoreCase, "first names only", "no surname", "no surnames");

    /// <summary>The rules with fixed words, to suggest one for a misspelt one.</summary>
    public static IEnumerable<string> Known => OfPieces.Keys.Concat(OfWords.Keys).Concat(OfNames);

    /// <summary>Whether a rule allows no surnames, so that the names of the batch are checked.</summary>
    public static bool IsAboutNames(string rule) => OfNames.Contains(rule);

    /// <summary>Whether a name has more than a first name.</summary>
    public static bool HasSurname(string name) => name.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length > 1;

    /// <summary>Whether a rule is checked, so that it need not be ticked.</summary>
    public static bool IsChecked(string rule) => OfPieces.ContainsKey(rule) || OfWords.ContainsKey(rule)
        || rule.StartsWith(Avoid, StringComparison.OrdinalIgnoreCase) || LargestSize().IsMatch(rule) || GreatestThickness().IsMatch(rule);

    /// <summary>What of a card breaks a rule; nothing for a rule to tick.</summary>
    /// <param name="rule">The rule as written.</param>
    /// <param name="card">The card in the papers of the batch.</param>
    /// <param name="messages">The message to write in it.</param>
    /// <param name="thickness">The greatest thickness of the closed card in millimetres.</param>
    public static IEnumerable<Breach> Of(string rule, LaidOutCard card, IEnumerable<string> messages, double thickness)
    {
        if (OfPieces.TryGetValue(rule, out var pieces))
        {
            return pieces(card);
        }

        if (OfWords.TryGetValue(rule, out var words))
        {
            return InWords(words, card, messages);
        }

        if (rule.StartsWith(Avoid, StringComparison.OrdinalIgnoreCase))
        {
            var listed = rule[Avoid.Length..].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
            return listed.SelectMany(w => InWords(new($@"\b{Regex.Escape(w)}\b", RegexOptions.IgnoreCase), card, messages));
        }

        if (LargestSize().Match(rule) is { Success: true } size)
        {
            var (width, height) = (Millimetres(size, 1), Millimetres(size, 2));
            var (wide, high) = (card.Base.Closed.Width.Millimetres, card.Base.Closed.Height.Millimetres);
            return Math.Max(wide, high) <= Math.Max(width, height) + 1e-9 && Math.Min(wide, high) <= Math.Min(width, height) + 1e-9
                ? [] : [new("a larger size", null)];
        }

        return GreatestThickness().Match(rule) is { Success: true } most && thickness > Millimetres(most, 1)
            ? [new($"a thickness of up to {thickness.ToString("0.0", CultureInfo.InvariantCulture)} mm", null)] : [];
    }

    private static IEnumerable<Breach> InWords(Regex found, LaidOutCard card, IEnumerable<string> messages) => card.Pieces
        .Where(p => p.Words is { } words && found.IsMatch(words.Text)).Select(p => new Breach($"the words \"{p.Words!.Text}\"", p))
        .Concat(messages.Where(m => found.IsMatch(m)).Select(m => new Breach($"the message \"{m}\"", null)));

    // Foil lines from a roll are no paper.
    private static IEnumerable<Breach> Papers(LaidOutCard card, Func<Paint, bool> isSo) => card.Pieces
        .Where(p => p.Matter == PieceMatter.Paper && p.Kind != PieceKind.Line && isSo(p.Paint))
        .Select(p => new Breach($"{p.Paint.Paper ?? p.Paint.Role}", p))
        .Concat(isSo(card.Base.Paint) ? [new Breach($"a base of {card.Base.Paint.Paper ?? card.Base.Paint.Role}", null)] : []);

    private static IEnumerable<Breach> OfKind(LaidOutCard card, PieceKind kind) =>
        card.Pieces.Where(p => p.Kind == kind).Select(p => new Breach($"a {p.Kind.Name}", p));

    private static IEnumerable<Breach> Named(LaidOutCard card, Regex word)
    {
        foreach (var piece in card.Pieces)
        {
            string?[] names = [piece.Paint.Paper, piece.Paint.Role, piece.Path.Name];
            if (names.FirstOrDefault(n => n is not null && word.IsMatch(n)) is { } name)
            {
                yield return new(name, piece);
            }
        }
    }

    private static bool IsCalled(Paint paint, string word) =>
        $"{paint.Paper} {paint.Role}".Contains(word, StringComparison.OrdinalIgnoreCase);

    private static double Millimetres(Match match, int group) =>
        double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture) * (match.Groups["unit"].Value == "in" ? 25.4 : 1);

    // Months and seasons have a capital or stand alone; "may" and "march" are also verbs.
    [GeneratedRegex(@"\b(19|20)\d\d\b|\b\d{1,2}[./-]\d{1,2}[./-]\d{2,4}\b|\b(January|February|March|April|May|June|July|August|September"
        + @"|October|November|December)\b|\b(?i:spring|summer|autumn|winter)\b")]
    private static partial Regex Dates();

    [GeneratedRegex(@"\b\d+[a-z]?,? +([A-Z]\w+ +)*(Street|Road|Avenue|Lane|Drive|Court|Way|Close|Boulevard|St|Rd|Ave)\b"
        + @"|\b[A-Z]{1,2}\d[A-Z\d]? ?\d[A-Z]{2}\b|\b[A-Z]{2} \d{5}\b")]
    private static partial Regex Addresses();

    [GeneratedRegex(@"https?://|\bwww\.|\S+@\S+\.\w+|\b[\w-]+\.(com|org|net|info|co\.uk|de|fr|ca|au)\b", RegexOptions.IgnoreCase)]
    private static partial Regex WebAddresses();

    [GeneratedRegex(@"(?<!\d)\+?\(?\d[\d ()./-]{6,}\d")]
    private static partial Regex Telephones();

    [GeneratedRegex(@"(^|[-_])(pins?|staples?|needles?)($|[-_\d])", RegexOptions.IgnoreCase)]
    private static partial Regex Pins();

    [GeneratedRegex("scent|perfume|potpourri|incense", RegexOptions.IgnoreCase)]
    private static partial Regex Scents();

    [GeneratedRegex(@"^at most (\d+(?:\.\d+)?) x (\d+(?:\.\d+)?) (?<unit>in|mm)$", RegexOptions.IgnoreCase)]
    private static partial Regex LargestSize();

    [GeneratedRegex(@"^at most (\d+(?:\.\d+)?) (?<unit>in|mm) thick$", RegexOptions.IgnoreCase)]
    private static partial Regex GreatestThickness();
}
