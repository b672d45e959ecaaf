using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Batches;

/// <summary>A maker whom a line names.</summary>
/// <param name="Name">The name.</param>
/// <param name="Location">Where it is written.</param>
public sealed record NamedMaker(string Name, Location Location)
{
    /// <summary>The makers whom a clause names.</summary>
    internal static ImmutableArray<NamedMaker> Of(MadeByClause clause, SourceText source) =>
        [.. clause.Makers.Select(m => new NamedMaker(m.Text, new(source, m.Span)))];
}

/// <summary>What one maker of a batch makes, and what all of them make together.</summary>
public static class NamedMakers
{
    /// <summary>Whether a maker makes what a line says: every maker does, unless the line names others.</summary>
    /// <param name="line">The makers whom the line names.</param>
    /// <param name="maker">The maker.</param>
    public static bool Makes(ImmutableArray<NamedMaker> line, string maker) =>
        line.IsEmpty || line.Any(m => m.Name.Equals(maker, StringComparison.OrdinalIgnoreCase));

    /// <summary>Each named maker with the part of the batch that she or he makes.</summary>
    public static IEnumerable<(string Name, Batch Own)> Each(Batch batch) => batch.MakerNames.Select(n => (n, Of(batch, n)));

    /// <summary>The part of a batch with named makers that one of them makes.</summary>
    /// <param name="batch">The batch.</param>
    /// <param name="maker">One of its makers.</param>
    public static Batch Of(Batch batch, string maker) => batch with
    {
        Title = $"{batch.Title}: {maker}",
        MakerNames = [],
        For = [.. batch.For.Where(f => Makes(f.MadeBy, maker))
            .Select(f => f with { SharedBy = batch.MakersOf(f), Part = PartOf(batch, f, maker) })],
        Makes = [.. batch.Makes.Where(m => Makes(m.MadeBy, maker))
            .Select(m => m with { Count = (m.Count + m.Makers - 1) / m.Makers, OnHand = m.OnHand / m.Makers, Makers = 1 })],
        OtherOnHand = batch.OtherOnHand / batch.Makers,
        Cuts = [.. batch.Cuts.Select(c => c with { Count = c.Count / batch.Makers })],
    };

    /// <summary>A batch with named makers for all of them: a line without names counts once for each.</summary>
    internal static Batch Together(Batch batch) => batch.MakerNames.IsEmpty ? batch : batch with
    {
        Makes = [.. batch.Makes.Select(m => Times(m, m.MadeBy.IsEmpty ? batch.Makers : m.MadeBy.Length))],
        Cuts = [.. batch.Cuts.Select(c => c with { Count = Product(c.Count, batch.Makers) })],
    };

    /// <summary>Reports makers whom a line names and the batch does not.</summary>
    internal static void ReportUnknown(Batch batch, FindingBag findings)
    {
        foreach (var maker in batch.For.SelectMany(f => f.MadeBy).Concat(batch.Makes.SelectMany(m => m.MadeBy))
            .Where(m => !batch.MakerNames.Contains(m.Name, StringComparer.OrdinalIgnoreCase)))
        {
            var near = Nearest.Find(maker.Name, batch.MakerNames);
            findings.Add(FindingCatalogue.NoSuchMaker, maker.Location, $"The batch has no maker \"{maker.Name}\".",
                near is null ? $"Name all makers in one line of the batch: makers {string.Join(' ', Quoted(batch, maker.Name))}."
                    : $"Did you mean \"{near}\"?", near is null ? null : $"\"{near}\"");
        }
    }

    private static IEnumerable<string> Quoted(Batch batch, string more) => batch.MakerNames.Append(more).Select(n => $"\"{n}\"");

    private static MakeRequest Times(MakeRequest line, int makers) => line with { Count = Product(line.Count, makers), Makers = makers };

    private static int Product(int count, int makers) => (int)Math.Min(int.MaxValue / makers * makers, (long)count * makers);

    private static (int Index, int Of) PartOf(Batch batch, Recipients recipient, string maker)
    {
        var names = recipient.MadeBy.IsEmpty ? batch.MakerNames : [.. recipient.MadeBy.Select(m => m.Name)];
        return (names.IndexOf(maker, 0, names.Length, StringComparer.OrdinalIgnoreCase), names.Length);
    }
}
