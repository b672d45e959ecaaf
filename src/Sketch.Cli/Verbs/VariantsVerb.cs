using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Panels;

namespace Sketch.Cli.Verbs;

/// <summary>Draws cards in many papers.</summary>
internal static class VariantsVerb
{
    private const int UsualLimit = 24;

    private static readonly string[] Forms = ["svg", "png", "pdf", "html"];

    private static readonly string[] FaceNames = [.. Enum.GetValues<FaceKind>().Select(Face.NameOf)];

    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var files = Options.Files();
        var stash = new StashOptions();
        stash.Stash.Required = true;
        var folder = Options.Out("The folder for the contact sheets, which are named FILE-variants.svg; created if needed.");
        var roles = Names("--roles", "ROLE,…",
            "The roles to vary, in each card those that it has. [default: all that are cut from paper]");
        var papers = Names("--papers", "PAPER,…", "The papers to try for every role, or sides of them such as "
            + "gulls/back. [default: the whole stash, where patterned stays patterned, plain stays plain and foil stays foil]");
        roles.CompletionSources.Add(context => NamesInFiles.InList(context, _ => NamesInFiles.Roles(context)));
        papers.CompletionSources.Add(context => NamesInFiles.InList(context, _ => NamesInFiles.Papers(context)));
        var limit = Options.Number(
            "--limit", "The maximum number of variants.", "N", UsualLimit, n => n is >= 1 and <= 1000, "a whole number from 1 to 1000");
        var forms = Options.Choice("--as", "Kinds of files, separated by commas. [default: svg,html]", "svg,png,pdf,html", Forms);
        var dpi = Options.Number(
            "--dpi", "Resolution of a PNG in pixels per inch.", "N", 110, n => n is >= 10 and <= 600, "a whole number from 10 to 600");
        var face = Options.Choice(
            "--face", $"The face to show, out of {string.Join(", ", FaceNames)}. [default: front]", "FACE", FaceNames);
        var json = Options.Json();
        var verb = new VerbCommand(
            "variants",
            "Draws each card in many papers of a stash on a contact sheet of its own, the most different and most legible first; two sides "
                + "of one sheet and sheets of one collection go together first.",
            "sketch variants fair-winds.card --stash museum.stash --out pictures",
            "sketch variants fair-winds.card --stash museum.stash --out pictures --roles sky,rope --papers gulls,rope/back,night --as png",
            "sketch variants cards --stash museum.stash --out pictures --limit 12",
            "sketch draw fair-winds.card --stash museum.stash --out pictures --paper sky=gulls/back,rope=night")
        {
            files, stash.Stash, folder, roles, papers, limit, stash.Papers, forms, dpi, face, stash.Outside, json,
        };
        verb.SetAction(parsed =>
        {
            if (stash.Read(session, parsed, out var status) is not { } filling)
            {
                return status;
            }

            var run = new VariantsRun(
                session,
                parsed.GetRequiredValue(folder),
                parsed.GetValue(forms) is { Length: > 0 } chosen ? [.. chosen.Distinct()] : ["svg", "html"],
                parsed.GetValue(dpi),
                parsed.GetValue(face) is [.., var shown] ? (FaceKind)Array.IndexOf(FaceNames, shown) : FaceKind.Front);
            return run.Run(parsed.GetRequiredValue(files), parsed.GetValue(stash.Outside), filling,
                new([.. parsed.GetValue(roles) ?? []], [.. parsed.GetValue(papers) ?? []], parsed.GetValue(limit)), parsed.GetValue(json));
        });
        return verb;
    }

    private static Option<string[]> Names(string name, string helpName, string description) => new(name)
    {
        Description = description,
        HelpName = helpName,
        Arity = ArgumentArity.OneOrMore,
        CustomParser = result => [.. result.Tokens.SelectMany(t => t.Value.Split(',')).Select(n => n.Trim()).Where(n => n.Length > 0)],
    };
}
