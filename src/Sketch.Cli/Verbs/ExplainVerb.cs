using System.CommandLine;
using Sketch.Cli.Commands;
using Sketch.Diagnostics;
using Sketch.Reports;
using Sketch.Text;

namespace Sketch.Cli.Verbs;

/// <summary>Explains a finding: what it means, an example, and the fix.</summary>
internal static class ExplainVerb
{
    /// <summary>The verb.</summary>
    public static Command Create(Session session)
    {
        var code = new Argument<FindingKind?>("CODE")
        {
            Description = "The code of a finding, such as SK210; sk210 and 210 mean the same. Without a code all are listed.",
            HelpName = "CODE",
            Arity = ArgumentArity.ZeroOrOne,
            CustomParser = result =>
            {
                var written = result.Tokens[0].Value;
                var known = FindingCatalogue.All.FirstOrDefault(k => k.Code == Canonical(written));
                if (known is null)
                {
                    result.AddError(Unknown(written));
                }

                return known;
            },
        };
        code.CompletionSources.Add(_ => FindingCatalogue.All.Select(k => k.Code));
        var json = Options.Json();
        var markdown = new Option<bool>("--markdown") { Description = "Write the explanations of all findings as a Markdown page." };
        var verb = new VerbCommand(
            "explain",
            "Explains a finding: what it means, an example, and the fix. Without a code it lists all findings.",
            "sketch explain SK210",
            "sketch explain")
        {
            code, json, markdown,
        };
        verb.CheckTogether(result =>
        {
            if (result.GetValue(markdown) && (result.GetValue(json) || result.GetResult(code) is { Tokens.Count: > 0 }))
            {
                result.AddError("Write --markdown alone: it is a page of all findings.");
            }
        });
        verb.SetAction(parsed => Run(session, parsed.GetValue(code), parsed.GetValue(json), parsed.GetValue(markdown)));
        return verb;
    }

    private static int Run(Session session, FindingKind? kind, bool json, bool markdown)
    {
        var kinds = kind is null ? FindingCatalogue.All : [kind];
        if (json)
        {
            ReportJson.WriteDocument(session.Output, document => ExplanationJson.Write(document, kinds.Select(Explanations.Of)));
        }
        else if (markdown)
        {
            ExplanationPage.Write(session.Output, [.. kinds.Select(Explanations.Of)]);
        }
        else if (kind is not null)
        {
            ExplanationText.Write(session.Output, Explanations.Of(kind));
        }
        else
        {
            ExplanationText.WriteList(session.Output, kinds);
        }

        return ExitStatus.Done;
    }

    /// <summary>A code as in the catalogue: in capitals, with a number of three digits, and with SK added to a bare number.</summary>
    private static string Canonical(string written)
    {
        var upper = written.Trim().ToUpperInvariant();
        var number = upper.StartsWith("SK", StringComparison.Ordinal) ? upper[2..] : upper;
        return number.Length > 0 && number.All(char.IsAsciiDigit) ? $"SK{number.PadLeft(3, '0')}" : upper;
    }

    private static string Unknown(string written)
    {
        var near = Nearest.Find(Canonical(written), FindingCatalogue.All.Select(k => k.Code));
        var way = near is null ? "sketch explain without a code lists all." : $"Did you mean \"{near}\"?";
        return $"There is no finding \"{written}\". {way}";
    }
}
