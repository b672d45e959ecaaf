using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.World;

namespace Sketch.Messages;

/// <summary>Whether a message goes with its card: it has a place, fits it, and does not repeat the front.</summary>
public static class MessageChecks
{
    private static readonly FaceKind[] Inside = [FaceKind.Inside, FaceKind.InsideLeft, FaceKind.InsideTop];

    /// <summary>Checks the words that a card has inside, and its own message.</summary>
    /// <param name="card">The card.</param>
    /// <param name="world">Shapes the words.</param>
    /// <param name="findings">Receives what is found.</param>
    public static void Check(LaidOutCard card, IWorld world, FindingBag findings)
    {
        var front = FrontWords(card);
        foreach (var line in card.Pieces.Where(p => Inside.Contains(p.Face) && p.Words is not null).GroupBy(p => p.Location))
        {
            if (line.FirstOrDefault(p => Repeats(front, p.Words!.Text)) is { } piece)
            {
                findings.Add(FindingCatalogue.RepeatsTheFront, line.Key,
                    $"“{piece.Words!.Text.Replace('\n', ' ')}” is also on the front.", "Say something else inside.");
            }
        }

        if (card.Message is { IsPersonal: false } message)
        {
            Check(message, card, world, findings);
        }
        else if (card.Message is not null && MessagePlace.Of(card) is null)
        {
            NoPlace(card.Message, card, findings);
        }
    }

    /// <summary>Checks a message in a card.</summary>
    /// <param name="message">The message, with the name of the person if it has one.</param>
    /// <param name="card">The card.</param>
    /// <param name="world">Shapes the words.</param>
    /// <param name="findings">Receives what is found.</param>
    public static void Check(CardMessage message, LaidOutCard card, IWorld world, FindingBag findings)
    {
        var front = FrontWords(card);
        if (message.Lines.FirstOrDefault(l => Repeats(front, l)) is { } repeated)
        {
            findings.Add(FindingCatalogue.RepeatsTheFront, message.Location, $"“{repeated}” is also on the front of \"{card.Title}\".",
                "Say something else inside.");
        }

        if (MessagePlace.Of(card) is not { } place)
        {
            NoPlace(message, card, findings);
            return;
        }

        if (SetMessage.In(place, message, card, world) is not { } set)
        {
            findings.Add(FindingCatalogue.BadFont, message.Location, "The lettering of the message cannot be used.",
                "Write a kind of lettering, as in lettering script, or name a font file beside the card.");
        }
        else if (!set.Fits)
        {
            var lengths = card.Units.Format();
            findings.Add(FindingCatalogue.MessageTooLong, message.Location,
                $"“{string.Join(' ', message.Lines)}” does not fit its place in \"{card.Title}\", {lengths.About(place.Box.Size)}.",
                message.Letters is null ? "Write fewer words, or give it a larger place inside." : "Write smaller letters or fewer words.");
        }
    }

    private static void NoPlace(CardMessage message, LaidOutCard card, FindingBag findings) => findings.Add(
        FindingCatalogue.MessageWithoutPlace, message.Location, $"The inside of \"{card.Title}\" has no place for this message.",
        "To its inside, add a line such as message: group 3 x 1 1/2, bottom 1/2. Or keep a band of the inside free.");

    private static HashSet<string> FrontWords(LaidOutCard card) => [.. card.On(FaceKind.Front)
        .Where(p => p.Words is not null).SelectMany(p => p.Words!.Text.Split('\n').Append(p.Words.Text)).Select(Letters)];

    private static bool Repeats(HashSet<string> front, string words) =>
        words.Split('\n').Append(words).Select(Letters).Any(w => w.Length > 0 && front.Contains(w));

    private static string Letters(string words) => string.Concat(words.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
