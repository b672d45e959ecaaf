using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Diagnostics;
using Sketch.Templates;
using Sketch.Text;

namespace Sketch.Cli.Verbs;

/// <summary>Makes full-size templates to trace and cut.</summary>
internal static class TemplatesVerb
{
    private static readonly string[] Forms = ["pdf", "svg"];

    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var files = Options.Files();
        var target = new Option<string>("--out")
        {
            Description = "The PDF to make, or a folder for FILE-templates.pdf; folders are created if needed.",
            HelpName = "FILE.pdf|DIR",
            Required = true,
        };
        var page = Read("--page", "The paper of your printer. [default: letter]", "letter|a4", Page);
        var forms = Options.Choice(
            "--as", "One PDF, one SVG per page for cutting machines, or both, separated by commas. [default: pdf]", "pdf,svg", Forms);
        var scale = Read("--printer-scale",
            "The size at which your printer prints a length of 1, such as 0.985; the templates correct for it.", "NUMBER",
                PrinterScale.Read);
        var measured = Read("--measured", "Alternatively, the printed length of the 4 in bar, such as \"3 15/16 in\".", "LENGTH",
            PrinterScale.Measured);
        var mirror = new Option<bool>("--mirror") { Description = "Add the placement guides mirrored, for tracing from the back." };
        var hollow = new Option<bool>(
            "--hollow")
        { Description = "Cut out the covered middle of each layer to save paper for smaller layers." };
        var glue = Read(
            "--glue", "With --hollow: the margin left for glue on each side, in the units of the card. [default: 1/4 in]", "LENGTH",
                GlueMargin.Read);
        var json = Options.Json();
        var verb = new VerbCommand(
            "templates",
            "Draws every piece at full size to trace and cut, with placement guides and bars to check the print.",
            "sketch templates fair-winds.card --out fair-winds.pdf",
            "sketch templates fair-winds.card --out templates --page a4 --as pdf,svg --hollow",
            "sketch templates fair-winds.card --out fair-winds.pdf --measured \"3 15/16 in\"")
        {
            files, target, page, forms, scale, measured, mirror, hollow, glue, json,
        };
        verb.Validators.Add(result =>
        {
            if (result.GetValue(target) is { } written && !Directory.Exists(written)
                && PictureFile.Forms.Except(["pdf"]).Contains(
                    Path.GetExtension(written).TrimStart('.'), StringComparer.OrdinalIgnoreCase))
            {
                result.AddError($"--out: templates go into a PDF or a folder, not into \"{written}\". "
                    + "For an SVG file of each page, name a folder and add --as svg.");
            }

            if (result.GetResult(scale) is not null && result.GetResult(measured) is not null)
            {
                result.AddError("Give one of --printer-scale and --measured, not both.");
            }

            if (result.GetResult(glue) is not null && !result.GetValue(hollow))
            {
                result.AddError("--glue sets the margin that --hollow leaves; write both.");
            }
        });
        verb.SetAction(parsed => new TemplatesRun(
            session,
            parsed.GetRequiredValue(target),
            parsed.GetValue(forms) is { Length: > 0 } chosen ? [.. chosen.Distinct()] : ["pdf"],
            new(
                parsed.GetValue(page) ?? PageFormat.Letter,
                Given(parsed, scale) ?? Given(parsed, measured) ?? PrinterScale.True,
                parsed.GetValue(mirror),
                parsed.GetValue(hollow) ? parsed.GetValue(glue) ?? GlueMargin.Usual : null))
            .Run(parsed.GetRequiredValue(files), parsed.GetValue(json)));
        return verb;
    }

    private static Option<T> Read<T>(string name, string description, string helpName, Func<string, Result<T>> read)
        where T : notnull =>
        new(name)
        {
            Description = description,
            HelpName = helpName,
            CustomParser = result =>
            {
                var value = read(result.Tokens[0].Value);
                if (value.Problem is { } problem)
                {
                    result.AddError($"{name}: {problem}");
                }

                return value.ValueOrDefault;
            },
        };

    private static T? Given<T>(ParseResult parsed, Option<T> option)
        where T : struct => parsed.GetResult(option) is null ? null : parsed.GetValue(option);

    private static Result<PageFormat> Page(string written)
    {
        var names = PageFormat.All.Select(f => f.Name).ToList();
        var page = PageFormat.All.FirstOrDefault(f => f.Name.Equals(written.Trim(), StringComparison.OrdinalIgnoreCase));
        var near = Nearest.Find(written.ToLowerInvariant(), names);
        return page is not null ? Result.Of(page)
            : new Failure($"there is no page \"{written}\". "
                + (near is not null ? $"Did you mean \"{near}\"?" : $"It knows {string.Join(" and ", names)}."));
    }
}
