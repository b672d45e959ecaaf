using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Checks;
using Sketch.Diagnostics;
using Sketch.Layout;
using Sketch.Messages;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.World;

namespace Sketch;

/// <summary>The result of reading, laying out and checking a file.</summary>
/// <param name="Source">The file.</param>
/// <param name="Card">The valid part of the card, or null when the file could not be laid out or is not a card.</param>
/// <param name="Findings">All findings, in the order of their places.</param>
public sealed record Compilation(SourceText Source, LaidOutCard? Card, ImmutableArray<Finding> Findings)
{
    /// <summary>The valid part of the stash, or null when the file is not a stash.</summary>
    public Stash? Stash { get; init; }

    /// <summary>The valid part of the batch, without the files that it names, or null when the file is not a batch.</summary>
    public Batch? Batch { get; init; }

    /// <summary>Whether any finding is an error.</summary>
    public bool HasErrors => Findings.Any(f => f.Severity == Severity.Error);
}

/// <summary>Compiles a text to a laid-out and checked card.</summary>
public static class Compiler
{
    /// <summary>Reads, lays out and checks a file. Never throws for the content of a file: every mistake is a finding.</summary>
    public static Compilation Compile(SourceText source, IWorld world) => Compile(source, world, RoleFilling.None);

    /// <summary>The same, with papers from a stash in the card's roles.</summary>
    /// <param name="source">The file.</param>
    /// <param name="world">The files and fonts around it.</param>
    /// <param name="filling">The stash and the papers chosen; choices for roles that the card does not have are ignored.</param>
    public static Compilation Compile(SourceText source, IWorld world, RoleFilling filling)
    {
        var findings = new FindingBag();
        var file = Parser.Parse(source, findings);
        if (file.Lines is [TitleLine { Word: "stash" }, ..])
        {
            var stash = StashReader.Read(file, world, findings);
            return new(source, null, findings.ToImmutable()) { Stash = stash };
        }

        if (BatchReader.Read(file, findings) is { } batch)
        {
            return new(source, null, findings.ToImmutable()) { Batch = batch };
        }

        var card = file.Lines switch
        {
            [] when !findings.HasErrors => Nothing(source, findings),
            [TitleLine { Word: "card" }, ..] => Lay(file, world, filling, findings),
            [TitleLine { Word: "like" }, ..] or [not (TitleLine or BadLine), ..] => NoTitle(file, findings),
            _ => null,
        };
        return new(source, card, findings.ToImmutable());
    }

    /// <summary>Lays out and checks a card whose lines have been read already, such as one that a batch changes.</summary>
    /// <param name="card">The lines of the card, its title first.</param>
    /// <param name="world">The files and fonts around it.</param>
    public static Compilation CompileLines(FileSyntax card, IWorld world)
    {
        var findings = new FindingBag();
        return new(card.Source, Lay(card, world, RoleFilling.None, findings), findings.ToImmutable());
    }

    private static LaidOutCard? Lay(FileSyntax file, IWorld world, RoleFilling filling, FindingBag findings)
    {
        var bound = new LikeCards(world).Bind(file, findings);
        var card = bound is null ? null : CardLayout.Lay(bound, filling, world, findings);
        if (card is not null)
        {
            FitChecks.Run(card, findings);
            MessageChecks.Check(card, world, findings);
        }

        if (card is not null && filling.Stash is { } stash)
        {
            PaperFit.Check(card, stash, findings);
            ToolFit.Check([card], stash, findings);
        }

        return card;
    }

    private static LaidOutCard? Nothing(SourceText source, FindingBag findings)
    {
        findings.Add(FindingCatalogue.NothingToMake, new(source, new(0, 0)), "There is nothing in this file.",
            "Begin with card \"Fair winds\", then base A2, fold left, of white.");
        return null;
    }

    private static LaidOutCard? NoTitle(FileSyntax file, FindingBag findings)
    {
        findings.Add(FindingCatalogue.Expected, new(file.Source, file.Lines[0].Span), "The file does not say what it is.",
            "Let its first line be card \"…\", batch \"…\" or stash \"…\".");
        return null;
    }
}
