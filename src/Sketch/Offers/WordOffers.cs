using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Sketch.Kinds;
using Sketch.Lettering;
using Sketch.Names;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Offers;

/// <summary>
/// What can be written at a place in a text. Only what stands before it on its line decides, so that an unfinished line gets offers too.
/// </summary>
public static partial class WordOffers
{
    /// <summary>The most characters before the place on its line; longer lines are not typed, and would take long to read.</summary>
    private const int LongestLine = 2_000;

    private static readonly ImmutableArray<WordOffer> Pieces = [.. Vocabulary.Kinds.Order(StringComparer.Ordinal)
        .Select(w => new WordOffer(w, OfferKind.Piece))];

    private static readonly ImmutableArray<WordOffer> Shapes = [.. Vocabulary.Shapes.Order(StringComparer.Ordinal)
        .Select(w => new WordOffer(w, OfferKind.Piece))];

    private static readonly ImmutableArray<WordOffer> Colours = Offered(ColourWords.All, OfferKind.Colour);

    private static readonly ImmutableArray<WordOffer> Patterns =
        Offered(BuiltIn.PatternWords.Except(ColourWords.All, StringComparer.Ordinal), OfferKind.Pattern);

    private static readonly ImmutableArray<WordOffer> Clauses =
        Offered(Vocabulary.ClauseWords.Order(StringComparer.Ordinal), OfferKind.Clause);

    private static readonly ImmutableArray<WordOffer> Lettering =
        Offered(LetteringKinds.All.Select(k => k.Word).Order(StringComparer.Ordinal), OfferKind.Lettering);

    /// <summary>The word that opens a file of each kind, and the words that begin its other lines.</summary>
    private static readonly ImmutableDictionary<string, ImmutableArray<WordOffer>> Starts = new[]
    {
        ("card", Vocabulary.CardLines), ("stash", Vocabulary.StashLines), ("batch", Vocabulary.BatchLines),
    }.ToImmutableDictionary(s => s.Item1, s => s.Item2.Order(StringComparer.Ordinal)
        .Select(w => new WordOffer(w, s.Item1 == "card" && Vocabulary.Kinds.Contains(w) ? OfferKind.Piece : OfferKind.Line))
        .ToImmutableArray());

    /// <summary>What can be written at an offset.</summary>
    /// <param name="file">The file.</param>
    /// <param name="offset">The place; what follows it does not matter.</param>
    /// <param name="beside">What is beside the file.</param>
    public static OfferedWords At(FileSyntax file, int offset, FilesBeside beside)
    {
        var text = file.Source;
        var at = Math.Clamp(offset, 0, text.Content.Length);
        var line = text.PositionOf(at).Line - 1;
        var before = text.Content[text.LineStart(line)..at];
        if (before.Length > LongestLine)
        {
            return new(new(at, at), []);
        }

        if (Quotes().Count(before) % 2 == 1)
        {
            var opened = before.LastIndexOfAny(['"', '“', '”']);
            return new(new(text.LineStart(line) + opened + 1, at), FilesAfter(before[..opened], file.Kind, beside));
        }

        var typed = Typed().Match(before).Length;
        var lead = before[..^typed];
        return new(new(at - typed, at), Comment().IsMatch(lead) ? []
            : [.. AfterLead(lead, file, line, beside).DistinctBy(o => o.Text, StringComparer.Ordinal)]);
    }

    private static ImmutableArray<WordOffer> AfterLead(string lead, FileSyntax file, int line, FilesBeside beside)
    {
        var kind = file.Kind;
        if (FileWord().IsMatch(lead))
        {
            return [.. FilesAfter(lead, kind, beside).Select(o => o with { Text = $"\"{o.Text}\"" })];
        }

        if (AfterLettering().IsMatch(lead))
        {
            return Lettering;
        }

        if (AfterPiece().IsMatch(lead))
        {
            return Named(file, NameKind.Piece, OfferKind.Name);
        }

        if (RolePaper().IsMatch(lead) || StockSide().IsMatch(lead))
        {
            return [.. PapersOf(beside, kind), .. Patterns, .. Colours];
        }

        if (AfterOf().IsMatch(lead))
        {
            return [.. Named(file, NameKind.Role, OfferKind.Role), .. IsReadyMade(lead) ? [] : PapersOf(beside, kind), .. Colours,
                .. Patterns];
        }

        if (AfterRoleName().IsMatch(lead))
        {
            return Colours;
        }

        if (AfterWith().IsMatch(lead))
        {
            return Named(file, NameKind.Role, OfferKind.Role);
        }

        if (FixedWord().Match(lead) is { Success: true } word)
        {
            return AfterWord(word.Groups["word"].Value.ToLowerInvariant(), file, beside);
        }

        if (StockSize().Match(lead) is { Success: true } stock && kind == "stash")
        {
            return Sized(stock.Groups["kind"].Value.Equals("envelope", StringComparison.OrdinalIgnoreCase)
                ? NamedSizes.Envelopes : NamedSizes.Sheets);
        }

        if (lead.TrimEnd().EndsWith(',') || (string.IsNullOrWhiteSpace(lead) && GoesOn(file.Source, line)) || AfterItem().IsMatch(lead))
        {
            return Clauses;
        }

        if (LineStart().Match(lead) is { Success: true } start)
        {
            var isBare = start.Groups["name"].Length == 0 && start.Groups["count"].Length == 0;
            return kind != "card" ? isBare ? Starts.GetValueOrDefault(kind, []) : []
                : [.. isBare ? Starts["card"] : start.Groups["count"].Length > 0 ? Pieces : [.. Pieces, new("use", OfferKind.Line)],
                    .. ReadyMade(beside)];
        }

        return [];
    }

    /// <summary>What completes a word that only few words can follow.</summary>
    private static ImmutableArray<WordOffer> AfterWord(string word, FileSyntax file, FilesBeside beside) => word switch
    {
        "base" => Sized(NamedSizes.Cards),
        "envelope" => Sized(NamedSizes.Envelopes),
        "fold" => Offered(Enum.GetNames<Fold>().Select(f => f.ToLowerInvariant()), OfferKind.Word),
        "units" => Offered(["in", "mm", "cm"], OfferKind.Word),
        "refit" => Offered(Enum.GetNames<RefitWhat>().Select(w => w.ToLowerInvariant()), OfferKind.Word),
        "use" when file.Kind == "card" => Named(file, NameKind.Part, OfferKind.Name),
        "using" => Supplies(beside, s => s.Kind is SupplyKind.Die or SupplyKind.Stamp, s => s.Name),
        "window" or "gem" or "sticker" => Shapes,
        _ => [],
    };

    /// <summary>The files that a word can name; in a stash, <c>stash</c> is followed by its title.</summary>
    private static ImmutableArray<WordOffer> FilesAfter(string lead, string kind, FilesBeside beside)
    {
        var ending = FileWord().Match(lead).Groups["word"].Value.ToLowerInvariant() switch
        {
            "stash" when kind != "stash" => ".stash",
            "like" or "of" => ".card",
            "file" => ".svg",
            _ => null,
        };
        return ending is null ? []
            : Offered(beside.Files.Where(f => f.EndsWith(ending, StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal),
                OfferKind.File);
    }

    /// <summary>Whether a line is one of a thing that is bought, which no paper is cut for.</summary>
    private static bool IsReadyMade(string line) =>
        PieceKinds.Find(LineKind().Match(line).Groups["kind"].Value)?.Traits.Matter == PieceMatter.Ready;

    private static bool GoesOn(SourceText text, int line) => line > 0 && Continued().IsMatch(text.Line(line - 1));

    private static ImmutableArray<WordOffer> Named(FileSyntax file, NameKind kind, OfferKind offered) =>
        Offered(WrittenNames.Of(file).All.Where(n => n.IsDeclaration && n.Kind == kind)
            .Select(n => n.Text).Distinct(StringComparer.OrdinalIgnoreCase), offered);

    /// <summary>The papers; in a batch, which fills roles, also their backs.</summary>
    private static ImmutableArray<WordOffer> PapersOf(FilesBeside beside, string kind) => Offered(
        beside.Stashes.SelectMany(s => s.Papers)
            .SelectMany(p => kind == "batch" && p.Front != p.Back ? new[] { p.Name, $"{p.Name}, back" } : [p.Name])
            .Distinct(StringComparer.OrdinalIgnoreCase), OfferKind.Paper);

    /// <summary>What is ready-made in the stashes, as the line of a card that uses it.</summary>
    private static ImmutableArray<WordOffer> ReadyMade(FilesBeside beside) => [.. beside.Stashes.SelectMany(stash => Supplies(
        beside with { Stashes = [stash] },
        s => s.Measure is not null && PieceKinds.Find(s.Kind.Traits.Word) is not null,
        s => $"{s.Kind.Traits.Word} {stash.Units.Format().WithUnit(s.Measure!.Value)}, of {s.Name}"))];

    private static ImmutableArray<WordOffer> Supplies(FilesBeside beside, Func<Supply, bool> which, Func<Supply, string> written) =>
        Offered(beside.Stashes.SelectMany(s => s.Supplies).Where(which).Select(written).Distinct(StringComparer.OrdinalIgnoreCase),
            OfferKind.Supply);

    private static ImmutableArray<WordOffer> Sized(IEnumerable<NamedSize> sizes) => Offered(sizes.Select(s => s.Name), OfferKind.Size);

    private static ImmutableArray<WordOffer> Offered(IEnumerable<string> words, OfferKind kind) =>
        [.. words.Select(w => new WordOffer(w, kind))];

    [GeneratedRegex(@"[\p{L}\p{N}_-]*$")]
    private static partial Regex Typed();

    [GeneratedRegex("[\"“”]")]
    private static partial Regex Quotes();

    [GeneratedRegex(@"(?:^\s*|\s)#(?:\s|$)")]
    private static partial Regex Comment();

    [GeneratedRegex(@"(?:^|[\s,])lettering\s+$", RegexOptions.IgnoreCase)]
    private static partial Regex AfterLettering();

    [GeneratedRegex(@"(?:(?:^|[\s,])(?:above|below|around|tucked\s+under|measured\s+from|same\s+size\s+as|(?:left|right|top|bottom)\s+of)"
        + @"|^\s*(?:change|leave\s+out|add\s+to))\s+(?:[\p{L}\p{N}_-]+/)*$", RegexOptions.IgnoreCase)]
    private static partial Regex AfterPiece();

    [GeneratedRegex(@"^\s*role\s+[^\s:,]+\s*:\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex RolePaper();

    [GeneratedRegex(@"^\s*role\s+[^\s:,]+\s*:.*\s$", RegexOptions.IgnoreCase)]
    private static partial Regex AfterRoleName();

    [GeneratedRegex(@"^\s*(?:paper|cardstock)\s.*,\s*(?:front|back)\s+$", RegexOptions.IgnoreCase)]
    private static partial Regex StockSide();

    [GeneratedRegex(@"(?:^|[\s,])(?:of|ink|of\s+[^\s,]+\s+and|with\s+[^\s,]+\s+as)\s+$", RegexOptions.IgnoreCase)]
    private static partial Regex AfterOf();

    [GeneratedRegex(@"(?:^|[\s,])with\s+$", RegexOptions.IgnoreCase)]
    private static partial Regex AfterWith();

    [GeneratedRegex(@"(?:^|[\s,:])(?<word>base|envelope|fold|units|refit|use|using|window|gem|sticker)\s+$", RegexOptions.IgnoreCase)]
    private static partial Regex FixedWord();

    [GeneratedRegex(@"^\s*(?<kind>paper|cardstock|envelope)\s+[^\s:,]+\s*:\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex StockSize();

    [GeneratedRegex(@"^\s*item\s+\d+[^:]*:\s*$", RegexOptions.IgnoreCase)]
    private static partial Regex AfterItem();

    [GeneratedRegex(@"^\s*(?<name>[^\s:,]+\s*:\s*)?(?<count>\d+\s+)?$")]
    private static partial Regex LineStart();

    [GeneratedRegex(@"^\s*(?:[^\s:,]+\s*:\s*)?(?:\d+\s+)?(?<kind>\p{L}+)")]
    private static partial Regex LineKind();

    [GeneratedRegex(@",\s*(?:#\s.*)?$")]
    private static partial Regex Continued();

    [GeneratedRegex(@"(?:^\s*(?<word>stash|like)|(?:make|use)\s+\d+\s+(?<word>of)|(?:^|[\s,])(?<word>file))\s+$", RegexOptions.IgnoreCase)]
    private static partial Regex FileWord();
}
