using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Edits;

/// <summary>Writes chosen papers into the lines that declare roles, so that a card or batch keeps them.</summary>
public static class KeptPapers
{
    /// <summary>
    /// The changes that make a card's own <c>role</c> lines name these papers. A paper of the stash is written with the colour of its
    /// side's ground, so that the card looks much the same without the stash; the side is written if it is the back. Comments stay. Left
    /// out are roles that no line of this file declares, unknown papers, and names that cannot be written as one word.
    /// </summary>
    /// <param name="card">The card's text; if it has errors, the lines that can be read are changed.</param>
    /// <param name="choices">The papers; of two for one role the last counts.</param>
    /// <param name="stash">The stash that the choices refer to, or null.</param>
    /// <returns>Changes in the order of the text; none for what is already there.</returns>
    public static ImmutableArray<TextEdit> InCard(SourceText card, IEnumerable<PaperChoice> choices, Stash? stash)
    {
        var filling = new RoleFilling(stash, [.. choices]);
        var file = Parser.Parse(card, new FindingBag());
        return file.Lines is [TitleLine { Word: "card" } title, .. var rest]
            ? [.. title.Children.Concat(rest).OfType<RoleLine>().SelectMany(line =>
                filling.ChoiceFor(line.Name.Text) is { } choice && InWords(choice, stash) is { } words
                    ? InLine(card, line, words, choice.Side) : [])]
            : [];
    }

    /// <summary>The changes that make a line name a paper.</summary>
    /// <param name="source">The line's file.</param>
    /// <param name="line">A line that could be read.</param>
    /// <param name="words">The paper as the line writes it, without its side.</param>
    /// <param name="side">The side.</param>
    internal static IEnumerable<TextEdit> InLine(SourceText source, RoleLine line, string words, PaperSide side)
    {
        if (!CanBeWritten(line.Name.Text, words))
        {
            yield break;
        }

        var tokens = line.Tokens.Tokens;
        var first = tokens.TakeWhile(t => t.Kind != TokenKind.Colon).Count() + 1;
        var last = line.AnyOffcut ? line.OffcutOf?.Span ?? tokens[first + 1].Span
            : line.Colours is [.., var colour] ? colour.Span : line.Paper!.Span;
        var value = TextSpan.Cover(tokens[first].Span, last);
        var sides = line.Clauses.OfType<SideClause>().Where(IsBare).ToList();
        var isBack = side == PaperSide.Back && !words.StartsWith('#');
        words += isBack && sides.Count == 0 ? ", back" : "";
        if (source.Content[value.Start..value.End] != words)
        {
            yield return new(value, words);
        }

        foreach (var written in sides.Where(s => s.IsBack != isBack))
        {
            // Anything else between the paper and its side must stay.
            var between = source.Content[value.End..written.Span.Start];
            yield return isBack ? new(written.Span, "back")
                : between.All(c => c is ' ' or ',') ? new(new(value.End, written.Span.End), "")
                : new(written.Span, "front");
        }
    }

    /// <summary>Whether a role line with these words is read as just that.</summary>
    internal static bool CanBeWritten(string role, string words)
    {
        var findings = new FindingBag();
        var file = Parser.Parse(new("", $"role {role}: {words}"), findings);
        return findings.ToImmutable().IsEmpty
            && file.Lines is [RoleLine { AnyOffcut: false, Clauses.IsEmpty: true } line] && line.Name.Text == role
            && (words.StartsWith('#') ? line.Paper is null : line.Paper?.Text == words.Split('#')[0].TrimEnd(' '));
    }

    /// <summary>A paper as a card writes it, with the colours that it has in the stash; null if it is unknown.</summary>
    private static string? InWords(PaperChoice choice, Stash? stash)
    {
        if (stash?.Find(choice.Paper) is { } paper)
        {
            var face = paper.Side(choice.Side);
            return face.IsDescribed ? string.Join(' ', ColoursOf(paper.Name, face.Look).Prepend(paper.Name)) : paper.Name;
        }

        return RoleFilling.None.Has(choice) ? choice.Paper : null;
    }

    /// <summary>
    /// The ground's colour; none if the name by itself means this look, and the figures' colours if it means this pattern.
    /// </summary>
    private static IEnumerable<string> ColoursOf(string name, PaperLook look)
    {
        var builtIn = BuiltIn.Find(name, []);
        return look.Equals(builtIn) ? []
            : builtIn?.Pattern == look.Pattern && look.Pictured is null ? look.Figures.Prepend(look.Ground).Select(c => c.Hex)
            : [look.Ground.Hex];
    }

    private static bool IsBare(SideClause clause) => clause is { Words: null, TrueWidth: null, Colours.IsEmpty: true };
}
