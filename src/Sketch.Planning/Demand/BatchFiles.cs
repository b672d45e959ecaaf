using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Checks;
using Sketch.Counts;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.World;

namespace Sketch.Planning.Demand;

/// <summary>A card with the order to make it.</summary>
/// <param name="Order">How many, and in which papers.</param>
/// <param name="Card">The card in these papers.</param>
public sealed record Design(MakeRequest Order, LaidOutCard Card)
{
    /// <summary>The cards that are still to be worked on, where some are cut already; null where all are to be cut.</summary>
    public Unfinished? Unfinished { get; init; }

    /// <summary>How many cards are to be put together.</summary>
    public int ToGlue => Unfinished?.ToGlue ?? Order.Count;

    /// <summary>How many cards are to be put into their envelopes.</summary>
    public int ToEnclose => Unfinished?.ToEnclose ?? Order.Count;

    /// <summary>The message inside: that of the line that makes it, else that of the card's file; null for none.</summary>
    public CardMessage? Message => Order.Message?.InsteadOf(Card.Message) ?? Card.Message;

    /// <summary>The message inside the cards of a recipient, who may have one of its own.</summary>
    public CardMessage? MessageFor(Recipients recipient) => recipient.Message?.InsteadOf(Message) ?? Message;

    /// <summary>Two lines that make the same card are two designs.</summary>
    public bool Equals(Design? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(this);
}

/// <summary>A batch with the files that it names, as far as they are free of errors.</summary>
/// <param name="Batch">The batch.</param>
/// <param name="Stash">The stash, or null if the batch names none that can be read.</param>
/// <param name="Designs">The cards, one for each line that makes some.</param>
/// <param name="LeftOut">The orders of cards that cannot be planned because they or their line have errors.</param>
/// <param name="Files">All files that were read, the batch first.</param>
public sealed record BatchFiles(
    Batch Batch, Stash? Stash, ImmutableArray<Design> Designs, ImmutableArray<MakeRequest> LeftOut, ImmutableArray<SourceText> Files)
{
    /// <summary>The classes of letters against which cards that are posted are held; empty if none are.</summary>
    public ImmutableArray<LetterClass> LetterClasses { get; init; } = [];

    /// <summary>The people of the lists of names, by recipient.</summary>
    public ImmutableDictionary<Recipients, ImmutableArray<Person>> People { get; init; } =
        ImmutableDictionary<Recipients, ImmutableArray<Person>>.Empty;

    /// <summary>The count by which only what is left is planned; null to plan all.</summary>
    public BatchCount? Count { get; init; }

    /// <summary>Whether a paper may take a sheet more where that saves much work.</summary>
    public bool IsEasy { get; init; }

    /// <summary>Reads files and shapes words.</summary>
    public required IWorld World { get; init; }

    /// <summary>The people who get the cards of a recipient; empty if there is no list of their names.</summary>
    public ImmutableArray<Person> PeopleOf(Recipients recipient) => People.GetValueOrDefault(recipient, []);

    /// <summary>The designs that are posted to some recipient.</summary>
    public IEnumerable<Design> Posted => Designs.Where(d => !d.Card.IsHandedOver
        && Batch.For.Any(f => f.Delivery == Delivery.ByPost && Batch.Gets(f, d.Order)));

    /// <summary>Cards that all lines together make, without those left out because of errors.</summary>
    public long Cards => Designs.Sum(d => (long)d.Order.Count);

    /// <summary>Whether the batch names a stash that cannot be read, so that its content is unknown.</summary>
    public bool IsStashUnreadable => Stash is null && (Batch.Stash is not null || Batch.IsStashMistaken);

    /// <summary>Whether there is anything to plan: a card without errors, or loose pieces.</summary>
    public bool HasWork => !Designs.IsEmpty || !Batch.Cuts.IsEmpty;

    /// <summary>
    /// Reads a batch, its stash and its cards; every mistake is a finding in the file that contains it. Null if the text is not a batch.
    /// </summary>
    public static BatchFiles? Read(SourceText source, IWorld world, FindingBag findings) =>
        Read(Compiler.Compile(source, world), world, findings, s => Compiler.Compile(s, world));

    /// <summary>The same for a file that is already compiled.</summary>
    /// <param name="file">The batch.</param>
    /// <param name="world">Reads the files that it names.</param>
    /// <param name="findings">Receives every mistake.</param>
    /// <param name="compile">Compiles a file that the batch names.</param>
    public static BatchFiles? Read(Compilation file, IWorld world, FindingBag findings, Func<SourceText, Compilation> compile) =>
        new Reader(file, world, findings, compile).Read();

    /// <summary>The finding for a file that is a card or a stash.</summary>
    public static Finding NotABatch(SourceText source) => new(FindingCatalogue.NoBatch,
        new(source, new(0, source.Line(0).Length)), "This file is not a batch.", "Make its first line batch \"Lamp day\".");

    private sealed class Reader(Compilation own, IWorld world, FindingBag findings, Func<SourceText, Compilation> compile)
    {
        private const int MostNames = 3;

        private readonly SourceText _source = own.Source;
        private readonly Dictionary<string, Compilation> _read = new(StringComparer.Ordinal);
        private readonly List<(SourceText Source, ImmutableArray<Person> People)> _lists = [];

        public BatchFiles? Read()
        {
            Pass(own.Findings);
            if (own.Batch is not { } batch)
            {
                if (!own.HasErrors)
                {
                    findings.Add(NotABatch(_source));
                }

                return null;
            }

            if (batch.Makes.IsEmpty && batch.Cuts.IsEmpty && batch.OnHand.IsEmpty && !own.HasErrors)
            {
                findings.Add(FindingCatalogue.NothingToPlan, batch.Location, "The batch has nothing to make or cut.",
                    "Add a line make 12 of \"fair-winds.card\", or cut 12 of 4 x 5 1/4 from gulls.");
            }

            var stash = batch.Stash is { } named ? Open(named, "stash")?.Stash : null;
            var limits = new BatchLimits(batch, findings);
            var papers = new BatchPapers(stash, findings);
            foreach (var cards in batch.OnHand)
            {
                Open(cards.Card, "card");
            }

            // A line that makes none because all of its cards are on hand has nothing to plan.
            var designs = batch.Makes.Where(m => m.Count > 0 || m.OnHand == 0)
                .Select(m => (Order: m, Design: DesignOf(m, papers, limits))).ToList();
            var people = batch.For.Where(f => f.Names is not null).ToImmutableDictionary(f => f, f => PartOf(ReadNames(f.Names!), f));
            return new(
                batch with { Cuts = [.. batch.Cuts.Where(limits.Allow)] }, stash, [.. designs.Select(d => d.Design).OfType<Design>()],
                    [.. designs.Where(d => d.Design is null).Select(d => d.Order)],
                [_source, .. _read.Values.Select(c => c.Source), .. _lists.Select(l => l.Source)])
            {
                World = world,
                People = people,
                LetterClasses = batch.For.Any(f => f.Delivery == Delivery.ByPost) ? ReadLetterClasses() : [],
            };
        }

        // In the run of one of several makers, the people for whose cards this maker cares.
        private static ImmutableArray<Person> PartOf(ImmutableArray<Person> people, Recipients recipient) =>
            recipient.Part is not var (index, of) ? people
            : people[(int)((long)people.Length * index / of)..(int)((long)people.Length * (index + 1) / of)];

        private ImmutableArray<Person> ReadNames(NamedFile named)
        {
            var read = world.ReadText(named.Path, _source.Path);
            if (read.Problem is { } problem)
            {
                var (hint, replacement) = NearestFile.Hint(
                    NearestFile.Find(world, named.Path, _source.Path, ".csv"), "Write the name of a file in the same folder.");
                findings.Add(FindingCatalogue.BadFile, named.Location, $"\"{named.Path}\" cannot be read: {problem}", hint, replacement);
                return [];
            }

            if (_lists.FirstOrDefault(l => l.Source.Path == read.Value.Path) is { Source: not null } known)
            {
                return known.People;
            }

            var people = NameList.Read(read.Value, findings);
            _lists.Add((read.Value, people));
            return people;
        }

        private ImmutableArray<LetterClass> ReadLetterClasses()
        {
            const string own = "post.csv";
            if (!world.NamesBeside(_source.Path).Contains(own))
            {
                return LetterClass.Known;
            }

            var read = world.ReadText(own, _source.Path);
            if (read.Problem is not { } problem)
            {
                return LetterClass.Read(read.Value, findings);
            }

            findings.Add(FindingCatalogue.BadFile, new(_source, new(0, _source.Line(0).Length)),
                $"\"{own}\" cannot be read: {problem}", "Save it as text in UTF-8.");
            return [];
        }

        private Design? DesignOf(MakeRequest order, BatchPapers papers, BatchLimits limits)
        {
            if (Open(order.Card, "card") is not { } card)
            {
                return null;
            }

            if (order.Count == 0)
            {
                papers.ReportOwn(card.Findings);
                return null;
            }

            if (card.HasErrors || card.Card is null)
            {
                papers.ReportOwn(card.Findings);
                findings.Add(FindingCatalogue.CardWithMistakes, order.Card.Location,
                    $"\"{order.Card.Path}\" has errors of its own, so its cards cannot be planned.",
                    "Fix the errors in that file first.");
                return null;
            }

            if (order.Changed is { } changed)
            {
                var bent = Compiler.CompileLines(changed, world);
                Pass(bent.Findings.Where(f => bent.Card is null || !PaperChecks.Give(f.Kind)));
                if (bent.HasErrors || bent.Card is null)
                {
                    return null;
                }

                card = bent with { Card = bent.Card with { Title = card.Card.Title } };
            }

            var filled = papers.Fill(order, card.Card);
            papers.Report(order, filled, card.Findings);
            return limits.Allow(order, filled) ? new(order, filled) : null;
        }

        private Compilation? Open(NamedFile named, string what)
        {
            var read = world.ReadText(named.Path, _source.Path);
            if (read.Problem is { } problem)
            {
                var (hint, replacement) =
                    NearestFile.Hint(NearestFile.Find(world, named.Path, _source.Path, $".{what}"), NamesOf(what));
                findings.Add(FindingCatalogue.BadFile, named.Location, $"\"{named.Path}\" cannot be read: {problem}", hint, replacement);
                return null;
            }

            var text = read.Value;
            if (text.Path == _source.Path)
            {
                findings.Add(FindingCatalogue.FileCircle, named.Location, $"\"{named.Path}\" is this batch itself.",
                    $"Write the name of a {what} file.");
                return null;
            }

            if (!_read.TryGetValue(text.Path, out var compilation))
            {
                compilation = compile(text);
                _read.Add(text.Path, compilation);
                // What depends on the papers is reported once the batch's papers are known.
                Pass(compilation.Findings.Where(f => compilation.Card is null || !PaperChecks.Give(f.Kind)));
            }

            if (compilation is { HasErrors: true } || (what == "card" ? compilation.Card is not null : compilation.Stash is not null))
            {
                return compilation;
            }

            findings.Add(FindingCatalogue.BadFile, named.Location, $"\"{named.Path}\" is not a {what}.",
                $"Write the name of a {what} file; it begins with {what} \"…\".");
            return null;
        }

        private string NamesOf(string what)
        {
            var names = world.NamesBeside(_source.Path).Where(n => n.EndsWith($".{what}", StringComparison.OrdinalIgnoreCase))
                .Order(StringComparer.OrdinalIgnoreCase).Take(MostNames).Select(n => $"\"{n}\"").ToList();
            return names.Count == 0 ? $"Write the name of a {what} file in the same folder."
                : $"Write the name of a {what} file in the same folder, such as {string.Join(" or ", names)}.";
        }

        private void Pass(IEnumerable<Finding> found)
        {
            foreach (var finding in found)
            {
                findings.Add(finding);
            }
        }
    }
}
