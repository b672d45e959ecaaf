using System.CommandLine;
using Sketch.Cli.Commands;

namespace Sketch.Cli.Verbs;

/// <summary>Makes a page of all cards in a folder.</summary>
internal static class GalleryVerb
{
    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var cards = new Argument<string[]>("DIR")
        {
            Description = "Folders with card files, or card files.",
            Arity = ArgumentArity.OneOrMore,
        };
        var stash = new StashOptions();
        var folder = Options.Out("The folder for index.html and the pictures; created if needed.");
        var title = new Option<string>(
            "--title")
        { Description = "The page's title.", HelpName = "WORDS", DefaultValueFactory = _ => "Cards" };
        var json = Options.Json();
        var verb = new VerbCommand(
            "gallery",
            "Makes a page of all cards in a folder, with pictures, texts, papers, notes, how each is made, and sizes; it works offline and "
                + "prints well. Messages and recipients are not on it. Markdown pages in the folder guide become pages too.",
            "sketch gallery cards --out gallery",
            "sketch gallery cards --out gallery --stash museum.stash --title \"Cards of the keepers' club\"")
        {
            cards, folder, title, stash.Stash, stash.Outside, json,
        };
        verb.SetAction(parsed => stash.Read(session, parsed, out var status) is { } filling
            ? new GalleryRun(session, parsed.GetRequiredValue(folder), parsed.GetRequiredValue(title), filling,
                parsed.GetValue(stash.Outside))
                .Run(parsed.GetRequiredValue(cards), parsed.GetValue(json))
            : status);
        return verb;
    }
}
