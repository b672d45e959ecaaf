using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.World;

namespace Sketch.Layout;

/// <summary>
/// Binds a card with the chain of cards that it is like, root first. Each is bound, refitted to its base if it asks for that, and then
/// changed.
/// </summary>
internal sealed class LikeCards(IWorld world)
{
    /// <summary>The bound card of a file that begins with a card's title; null when the card that it is like cannot be read.</summary>
    public BoundCard? Bind(FileSyntax file, FindingBag findings) => Bind(file, findings, []);

    private BoundCard? Bind(FileSyntax file, FindingBag findings, ImmutableArray<string> chain)
    {
        var binder = new CardBinder(file, findings);
        BoundCard? other = null;
        if (binder.Like is { } like)
        {
            other = ReadOther(like, file, findings, chain.Add(file.Source.Path));
            if (other is null)
            {
                return null;
            }
        }

        var card = binder.Bind(other);
        if (other is not null && binder.Refit is { } refit)
        {
            card = Refit.Apply(card, other, refit, world, findings);
        }

        return binder.Change(card);
    }

    private BoundCard? ReadOther(TitleLine like, FileSyntax file, FindingBag findings, ImmutableArray<string> chain)
    {
        var path = like.Words.Text;
        var read = world.ReadText(path, file.Source.Path);
        if (read.Problem is { } problem)
        {
            var (hint, replacement) = NearestFile.Hint(
                NearestFile.Find(world, path, file.Source.Path, ".card"), "Write the name of a card file in the same folder.");
            Report(FindingCatalogue.BadFile, $"\"{path}\" cannot be read: {problem}", hint, replacement);
            return null;
        }

        var text = read.Value;
        if (chain.Length > Limits.LikeCards)
        {
            Report(FindingCatalogue.FileCircle, $"More than {Limits.LikeCards} cards are each like the next.",
                "Make this card like one nearer to the first.");
            return null;
        }

        if (chain.Contains(text.Path))
        {
            Report(FindingCatalogue.FileCircle, $"\"{path}\" is itself like this card, so neither can be read first.",
                "Write one of them without a like line.");
            return null;
        }

        var own = new FindingBag();
        var parsed = Parser.Parse(text, own);
        var card = parsed.Lines is [TitleLine { Word: "card" }, ..] ? Bind(parsed, own, chain) : null;
        if (card is null || own.HasErrors)
        {
            Report(FindingCatalogue.BadFile, $"\"{path}\" {(card is null ? "is no card that can be read" : "has mistakes of its own")}.",
                $"Run check on \"{path}\" and fix it first.");
        }

        return card;

        void Report(FindingKind kind, string message, string hint, string? replacement = null) =>
            findings.Add(kind, new(file.Source, like.Words.Span), message, hint, replacement);
    }
}
