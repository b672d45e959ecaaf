using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Batches;

/// <summary>One run of cards: what to make, for whom, and from which stash. The files that it names are not read yet.</summary>
/// <param name="Title">The words after <c>batch</c>.</param>
/// <param name="Location">The title line.</param>
public sealed record Batch(string Title, Location Location)
{
    /// <summary>The stash file that it names, or null.</summary>
    public NamedFile? Stash { get; init; }

    /// <summary>Whether the line of the stash has a mistake, which is reported there, so that its papers are unknown.</summary>
    public bool IsStashMistaken { get; init; }

    /// <summary>The recipients of cards.</summary>
    public ImmutableArray<Recipients> For { get; init; } = [];

    /// <summary>Sets of rules that recipients may have.</summary>
    public ImmutableArray<RuleSet> RuleSets { get; init; } = [];

    /// <summary>The cards to make.</summary>
    public ImmutableArray<MakeRequest> Makes { get; init; } = [];

    /// <summary>Finished cards that are used, as written.</summary>
    public ImmutableArray<CardsOnHand> OnHand { get; init; } = [];

    /// <summary>Those of them that no line makes.</summary>
    public long OtherOnHand { get; init; }

    /// <summary>The cards that recipients can get: those made and those on hand.</summary>
    public long Available => Makes.Sum(m => (long)m.Count + m.OnHand) + OtherOnHand;

    /// <summary>Pieces to cut that belong to no card.</summary>
    public ImmutableArray<CutRequest> Cuts { get; init; } = [];

    /// <summary>How many people share the cards among them, each with a run like this one; at least 1.</summary>
    public int Makers { get; init; } = 1;

    /// <summary>
    /// The names of the makers. If there are any, the batch is that of all of them together; else it is the run of one maker.
    /// </summary>
    public ImmutableArray<string> MakerNames { get; init; } = [];

    /// <summary>Cards that each maker makes beyond those that are needed, by the line <c>spare</c>.</summary>
    public int OwnSpare { get; init; }

    /// <summary>The same with the spare cards of each recipient.</summary>
    public int Spare => (int)Math.Min(int.MaxValue, OwnSpare + For.Sum(f => (long)f.Spare));

    /// <summary>The width lost to each cut; zero for a trimmer.</summary>
    public Length Kerf { get; init; }

    /// <summary>
    /// The step to which the blanks of shapes are rounded up; zero for blanks of exactly the size of their shapes; null for the usual step
    /// of the units.
    /// </summary>
    public Length? BlankStep { get; init; }

    /// <summary>
    /// The margin for glue that stays where layers are cut hollow, so that the paper freed can be used; zero for the usual margin, null if
    /// nothing is cut hollow.
    /// </summary>
    public Length? Hollow { get; init; }

    /// <summary>When the cards must be ready, as written, or null.</summary>
    public string? Date { get; init; }

    /// <summary>Notes, one per line.</summary>
    public string Notes { get; init; } = "";

    /// <summary>The units that the file is written in.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Cards for all recipients together, or null when the file names no recipients.</summary>
    public int? Recipients => For.IsEmpty ? null : (int)Math.Min(int.MaxValue, For.Sum(f => (long)f.Cards));

    /// <summary>How the recipients' cards are shared: one entry for each number of makers, in the order of the file.</summary>
    public ImmutableArray<MakerShare> Shares => [.. For.GroupBy(f => (Makers: MakersOf(f), Names: NamesOf(f)))
        .Select(g => new MakerShare(g.Key.Makers, g.Sum(f => (long)f.Cards)))];

    /// <summary>
    /// Cards that each maker needs: the recipients' divided by the makers who share them, rounded up, and the spare ones; null without
    /// recipients. With named makers, what all of them need.
    /// </summary>
    public int? Needed => For.IsEmpty ? null
        : !MakerNames.IsEmpty ? (int)Math.Min(int.MaxValue, NamedMakers.Each(this).Sum(m => (long)(m.Own.Needed ?? 0)))
        : (int)Math.Min(int.MaxValue, Shares.Sum(s => s.Each) + Spare);

    /// <summary>The cards of a recipient that are made in this run, by all named makers or by one maker.</summary>
    public long CardsHere(Recipients recipient)
    {
        var each = new MakerShare(MakersOf(recipient), recipient.Cards).Each;
        return MakerNames.IsEmpty ? each : each * MakersOf(recipient);
    }

    /// <summary>The rules of a recipient: those of the sets that its line names.</summary>
    public IEnumerable<WrittenRule> RulesOf(Recipients recipient) => RuleSets
        .Where(s => recipient.Rules.Any(r => r.Name.Equals(s.Name, StringComparison.OrdinalIgnoreCase))).SelectMany(s => s.Rules);

    /// <summary>How many people share the cards of a recipient.</summary>
    public int MakersOf(Recipients recipient) => recipient.SharedBy ?? Makers;

    /// <summary>The makers whom its line names, as one text; empty for all.</summary>
    public static string NamesOf(Recipients recipient) => string.Join(", ", recipient.MadeBy.Select(m => m.Name));

    /// <summary>Whether a design is meant for a recipient: each is, unless its line names those who get it.</summary>
    public static bool Gets(Recipients recipient, MakeRequest design) =>
        design.For.IsEmpty || design.For.Any(w => w.Whom.Equals(recipient.Whom, StringComparison.OrdinalIgnoreCase));

    /// <summary>Cards that are made or on hand beyond those needed, negative where some are missing; null without recipients.</summary>
    public long? Surplus => Needed is { } needed ? Available - needed : null;

    /// <summary>
    /// Whether all recipients still get their cards when this many are left out; without recipients any number may be left out.
    /// </summary>
    public bool CanSpare(int cards) => Surplus is not { } over || cards <= over;
}

/// <summary>A file as another names it.</summary>
/// <param name="Path">The name as written.</param>
/// <param name="Location">Where it is written.</param>
public sealed record NamedFile(string Path, Location Location);

/// <summary>A recipient of cards.</summary>
/// <param name="Whom">Who.</param>
/// <param name="Cards">How many.</param>
/// <param name="Location">The line.</param>
public sealed record Recipients(string Whom, int Cards, Location Location)
{
    /// <summary>How many people share these cards, 1 for one maker alone; null for the makers of the batch.</summary>
    public int? SharedBy { get; init; }

    /// <summary>The makers whom its line names; empty for all.</summary>
    public ImmutableArray<NamedMaker> MadeBy { get; init; } = [];

    /// <summary>In the run of one of several named makers, which of them she or he is, from 0; else null.</summary>
    public (int Index, int Of)? Part { get; init; }

    /// <summary>Cards to make for it beyond those that it gets.</summary>
    public int Spare { get; init; }

    /// <summary>How the cards get there.</summary>
    public Delivery Delivery { get; init; }

    /// <summary>The message inside its cards, instead of that of the designs; null for theirs.</summary>
    public CardMessage? Message { get; init; }

    /// <summary>The file that lists the people who get the cards, or null.</summary>
    public NamedFile? Names { get; init; }

    /// <summary>The sets of rules that apply to its cards.</summary>
    public ImmutableArray<NamedRules> Rules { get; init; } = [];

    /// <summary>When the cards must be there, as written, or null.</summary>
    public string? Date { get; init; }

    /// <summary>Notes, one per line.</summary>
    public string Notes { get; init; } = "";
}

/// <summary>Rules of those who receive cards.</summary>
/// <param name="Name">The name of the set.</param>
/// <param name="Rules">The rules.</param>
public sealed record RuleSet(string Name, ImmutableArray<WrittenRule> Rules);

/// <summary>A rule in the words of the file.</summary>
/// <param name="Text">The rule.</param>
/// <param name="Location">Where it is written.</param>
public sealed record WrittenRule(string Text, Location Location);

/// <summary>A set of rules that a recipient's line names.</summary>
/// <param name="Name">The name.</param>
/// <param name="Location">Where it is written.</param>
public sealed record NamedRules(string Name, Location Location);

/// <summary>How cards get to their recipient.</summary>
public enum Delivery
{
    /// <summary>The batch does not say.</summary>
    Unsaid,

    /// <summary>By hand, so that no postal limit applies.</summary>
    ByHand,

    /// <summary>By post.</summary>
    ByPost,
}

/// <summary>Cards that so many makers share.</summary>
/// <param name="Makers">How many share them; 1 for one maker alone.</param>
/// <param name="Cards">The cards of all of them.</param>
public sealed record MakerShare(int Makers, long Cards)
{
    /// <summary>The cards of each, rounded up.</summary>
    public long Each => (Cards + Makers - 1) / Makers;

    /// <summary>The share in words: <c>90 cards shared by 2 makers</c>, <c>6 cards</c>.</summary>
    public override string ToString() => Counted.Of(Cards, "card") + (Makers > 1 ? $" shared by {Counted.Of(Makers, "maker")}" : "");
}

/// <summary>A recipient that a line names.</summary>
/// <param name="Whom">Who.</param>
/// <param name="Location">Where it is written.</param>
public sealed record NamedRecipient(string Whom, Location Location);

/// <summary>A number of cards of one kind.</summary>
/// <param name="Count">How many; zero if what is written is not a count, which is reported.</param>
/// <param name="Card">The card's file.</param>
/// <param name="Roles">The papers that fill its roles in this run, instead of its own.</param>
/// <param name="Location">The line.</param>
public sealed record MakeRequest(int Count, NamedFile Card, ImmutableArray<RoleChoice> Roles, Location Location)
{
    /// <summary>The makers whom its line names; empty for all.</summary>
    public ImmutableArray<NamedMaker> MadeBy { get; init; } = [];

    /// <summary>How many finished cards are used instead, which the count leaves out.</summary>
    public int OnHand { get; init; }

    /// <summary>How many makers the count is for.</summary>
    public int Makers { get; init; } = 1;

    /// <summary>The message inside these cards, instead of that of the card's file; null for that.</summary>
    public CardMessage? Message { get; init; }

    /// <summary>
    /// The card as this run changes it: a card file that is like the card's, with the indented changes; null if it makes the card as it is.
    /// </summary>
    public FileSyntax? Changed { get; init; }

    /// <summary>The recipients for whom it is meant; empty for all of them.</summary>
    public ImmutableArray<NamedRecipient> For { get; init; } = [];
}

/// <summary>The paper that a line of a batch gives to a role.</summary>
/// <param name="Paint">The paper with its role, as the line gives it.</param>
/// <param name="Location">The role's name in the file.</param>
public sealed record RoleChoice(Paint Paint, Location Location)
{
    /// <summary>The role.</summary>
    public string Role => Paint.Role!;
}

/// <summary>Loose pieces to cut.</summary>
/// <param name="Count">How many.</param>
/// <param name="Size">The size of each, upright on the paper.</param>
/// <param name="Paper">The paper's name.</param>
/// <param name="Side">The side that must show, or null for either.</param>
/// <param name="Upright">Whether they must not be turned.</param>
/// <param name="Location">The line.</param>
public sealed record CutRequest(int Count, Size Size, string Paper, PaperSide? Side, bool Upright, Location Location);
