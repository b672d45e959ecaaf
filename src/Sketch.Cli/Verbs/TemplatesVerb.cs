using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Sketch.Cli.Commands;
using Sketch.CutFiles;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Templates;
using Sketch.Text;

namespace Sketch.Cli.Verbs;

/// <summary>Makes full-size templates to trace and cut.</summary>
internal static class TemplatesVerb
{
    private static readonly string[] Forms = ["pdf", "svg", "dxf"];

    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var files = Options.Files();
        var target = Options.Out(
            "The PDF to make, or a folder for FILE-templates.pdf; folders are created if needed. Write - to send the PDF to "
                + "standard output.",
            "FILE.pdf|DIR", takesStandard: true);
        var watch = Watching.Option();
        var machine = new Option<bool>("--machine")
        {
            Description = "Make files for a cutting machine instead: the pieces of each paper on sheets, without words.",
        };
        var page = new Option<string>("--page")
        {
            Description = "The paper of your printer; with --machine the page to cut from, such as 12x24, a3 or \"300x600 mm\". "
                + "[default: letter; 12x12]",
            HelpName = "letter|a4|SIZE",
        };
        page.CompletionSources.Add(PageFormat.All.Select(f => f.Name).ToArray());
        var copies = new Option<int?>("--copies")
        {
            Description = "With --machine: how many of each card. [default: 1]",
            HelpName = "NUMBER",
            CustomParser = result => Copies(result),
        };
        var gap = Read("--gap", "With --machine: the room between pieces and at the edges of the page. [default: 1/8 in]", "LENGTH",
            written => WrittenLength.Read(written, "write the room between pieces, such as \"1/8\" or \"3 mm\"."));
        var forms = Options.Choice(
            "--as", "One PDF, one SVG per page, or both, separated by commas; with --machine SVG, DXF or both. [default: pdf; svg,dxf]",
                "pdf,svg,dxf", Forms);
        var scale = Read("--printer-scale",
            "The size at which your printer prints a length of 1, such as 0.985; the templates correct for it.", "NUMBER",
                PrinterScale.Read);
        var measured = Read("--measured", "Alternatively, the printed length of the 4 in bar, such as \"3 15/16 in\".", "LENGTH",
            PrinterScale.Measured);
        var mirror = new Option<bool>("--mirror")
        {
            Description = "Add the placement guides mirrored, for tracing from the back; with --machine cut everything mirrored, "
                + "as what is ironed on is cut from the back.",
        };
        var shapes = new Option<bool>("--shapes") { Description = "Leave out plain rectangles, which a ruler or a trimmer cuts." };
        var hollow = new Option<bool>(
            "--hollow")
        { Description = "Cut out the covered middle of each layer to save paper for smaller layers." };
        var glue = Read(
            "--glue", "With --hollow: the margin left for glue on each side, in the units of the card. [default: 1/4 in]", "LENGTH",
                GlueMargin.Read);
        var json = Options.Json();
        var stash = new StashOptions();
        var verb = new VerbCommand(
            "templates",
            "Draws every piece at full size to trace and cut, with placement guides and bars to check the print.",
            "sketch templates fair-winds.card --out fair-winds.pdf",
            "sketch templates fair-winds.card --out templates --page a4 --as pdf,svg --hollow",
            "sketch templates fair-winds.card --out fair-winds.pdf --measured \"3 15/16 in\"",
            "sketch templates fair-winds.card --out machine --machine --page 12x24 --copies 10",
            "sketch templates fair-winds.card --out machine --machine --stash museum.stash")
        {
            files, target, page, forms, scale, measured, mirror, shapes, hollow, glue, machine, copies, gap, stash.Stash,
            stash.Papers, stash.Outside, watch, json,
        };
        verb.CheckTogether(result =>
        {
            var forMachine = result.GetValue(machine);
            if (result.GetValue(target) == Session.Standard
                && (forMachine || result.GetValue(json) || result.GetValue(forms) is { Length: > 0 } and not ["pdf"]))
            {
                result.AddError("--out -: standard output takes one PDF: leave out --machine, --as and --json, or name a folder.");
            }

            if (!forMachine && result.GetValue(target) is { } written && !Directory.Exists(written)
                && PictureFile.Forms.Except(["pdf"]).Contains(
                    Path.GetExtension(written).TrimStart('.'), StringComparer.OrdinalIgnoreCase))
            {
                result.AddError($"--out: templates go into a PDF or a folder, not into \"{written}\". "
                    + "For an SVG file of each page, name a folder and add --as svg.");
            }

            if (result.GetValue(page) is { } name && (forMachine ? CutPage.Read(name) : Page(name)) is { Problem: { } problem })
            {
                result.AddError($"--page: {problem}");
            }

            if (result.GetValue(forms) is { } wanted && wanted.Contains(forMachine ? "pdf" : "dxf"))
            {
                result.AddError(forMachine ? "--as: with --machine write svg, dxf or both; a machine does not cut from a PDF."
                    : "--as: DXF files are for cutting machines; add --machine.");
            }

            if (forMachine && result.GetValue(target) is { } file && !Directory.Exists(file)
                && Path.GetExtension(file).ToLowerInvariant() is ".pdf" or ".svg" or ".dxf")
            {
                result.AddError($"--out: with --machine name a folder, not \"{file}\": there is a file for each sheet.");
            }

            if (forMachine && (result.GetResult(scale) ?? (SymbolResult?)result.GetResult(measured)) is not null)
            {
                result.AddError("--printer-scale and --measured correct a printer; leave them out with --machine.");
            }

            if (!forMachine && (result.GetResult(copies) ?? (SymbolResult?)result.GetResult(gap)) is not null)
            {
                result.AddError("--copies and --gap are for cutting machines; add --machine. Printed templates say how many to cut.");
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
        verb.SetAction(parsed => Watching.Run(session, parsed.GetValue(watch), parsed.GetRequiredValue(files), () => Run(parsed)));
        return verb;

        int Run(ParseResult parsed)
        {
            if (stash.Read(session, parsed, out var status) is not { } filling)
            {
                return status;
            }

            var mayLeaveFolder = parsed.GetValue(stash.Outside);
            var (names, chosen, margin) = (parsed.GetRequiredValue(files), parsed.GetValue(forms),
                parsed.GetValue(hollow) ? parsed.GetValue(glue) ?? GlueMargin.Usual : null);
            return parsed.GetValue(machine)
                ? new CutFilesRun(
                    session,
                    parsed.GetRequiredValue(target),
                    chosen is { Length: > 0 } ? [.. chosen.Distinct()] : ["svg", "dxf"],
                    new(
                        parsed.GetValue(page) is { } size ? CutPage.Read(size).ValueOrDefault! : CutPage.Usual,
                        Given(parsed, gap) ?? CutFileOptions.UsualGap,
                        parsed.GetValue(copies) ?? 1,
                        parsed.GetValue(mirror),
                        margin,
                        parsed.GetValue(shapes)))
                    .Run(names, mayLeaveFolder, filling, parsed.GetValue(json))
                : new TemplatesRun(
                    session,
                    parsed.GetRequiredValue(target),
                    chosen is { Length: > 0 } ? [.. chosen.Distinct()] : ["pdf"],
                    new(
                        parsed.GetValue(page) is { } printed ? Page(printed).ValueOrDefault! : PageFormat.Letter,
                        Given(parsed, scale) ?? Given(parsed, measured) ?? PrinterScale.True,
                        parsed.GetValue(mirror),
                        margin,
                        parsed.GetValue(shapes)))
                    .Run(names, mayLeaveFolder, filling, parsed.GetValue(json));
        }
    }

    private static int? Copies(ArgumentResult result)
    {
        var written = result.Tokens[0].Value;
        if (int.TryParse(written, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number is >= 1 and <= CutFileOptions.MostCopies)
        {
            return number;
        }

        result.AddError(string.Create(CultureInfo.InvariantCulture,
            $"--copies {written} is not valid: write a whole number from 1 to {CutFileOptions.MostCopies}."));
        return null;
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
                + (near is not null ? $"Did you mean \"{near}\"?"
                : $"It knows {string.Join(" and ", names)}; other sizes need --machine."));
    }
}
