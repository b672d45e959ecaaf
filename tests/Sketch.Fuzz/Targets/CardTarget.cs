using Sketch.Assembly;
using Sketch.CutFiles;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Fuzz.Inputs;
using Sketch.Fuzz.Invariants;
using Sketch.Output.Folders;
using Sketch.Output.Rendering;
using Sketch.Panels;
using Sketch.Planning.Diagrams;
using Sketch.Reports;
using Sketch.Syntax;
using Sketch.Templates;
using Sketch.Text;
using Sketch.World;

namespace Sketch.Fuzz.Targets;

/// <summary>From the text of a card to all that is made of it: findings, sizes, pictures, templates, files for machines.</summary>
internal sealed class CardTarget : IFuzzTarget
{
    private const string Main = "storm.card";

    /// <summary>What is made of the card beyond what is always made, as words.</summary>
    private const string Options = "options.txt";

    private static readonly string[] AllOptions = ["hollow", "mirror", "a4", "shapes", "copies"];

    public string Name => "card";

    public int Weight => 6;

    public FuzzInput Make(Draws draws)
    {
        var text = draws.OnceIn(4) ? draws.Any(Corpus.Cards) : draws.OnceIn(12) ? RandomCards.Text(draws.Below(1_000_000))
            : GrammarCards.Text(draws);
        if (draws.OnceIn(4) || Corpus.Cards.Contains(text))
        {
            text = Damage.OfText(text, Corpus.All, draws);
        }

        var options = AllOptions.Where(_ => draws.OnceIn(12)).ToList();
        if (draws.OnceIn(40))
        {
            options.AddRange(["png", "pdf"]);
        }

        return new([new(Main, text), new(Options, string.Join(' ', options)), .. Neighbours(draws)]);
    }

    /// <summary>The files that a card may name.</summary>
    public static IEnumerable<FuzzFile> Neighbours(Draws draws) =>
        [new("first.card", GrammarCards.Text(draws)), new("second.card", draws.Any(Corpus.Cards)), new("boat.svg", Corpus.Read("sketches",
            "boat.svg")),
            new("gull.svg", Corpus.Read("sketches", "gull.svg"))];

    public void Run(FuzzInput input)
    {
        var options = input[Options].Text.Split(' ').ToHashSet();
        var source = new SourceText(Main, input[Main].Text);
        var world = input.Files.Aggregate(new MemoryFiles(), (files, file) => files.With(file.Name, file.Content));
        var compilation = Compiler.Compile(source, world);
        FindingRules.Check(compilation.Findings);
        Format(source, compilation, world);
        if (compilation.Card is { } card)
        {
            Sizes(compilation, card);
            foreach (var svg in Pictures(card))
            {
                WellFormed.Svg(svg);
                Render(svg, card.Title, options);
            }

            if (!compilation.HasErrors)
            {
                Cut(card, options, world);
            }
        }
    }

    /// <summary>The rules that formatting is idempotent and changes neither sizes nor findings.</summary>
    private static void Format(SourceText source, Compilation compilation, MemoryFiles world)
    {
        if (Formatter.Format(source, new()) is not { } formatted)
        {
            return;
        }

        var again = Formatter.Format(new(Main, formatted), new());
        BrokenInvariantException.Unless(formatted == again, "format is idempotent", formatted);
        var after = Compiler.Compile(new SourceText(Main, formatted), world.With(Main, formatted));
        BrokenInvariantException.Unless(SizesOf(compilation.Card) == SizesOf(after.Card), "format keeps the sizes", SizesOf(after.Card));
        BrokenInvariantException.Unless(Codes(compilation) == Codes(after), "format keeps the findings",
            $"{Codes(compilation)} | {Codes(after)}");

        static string Codes(Compilation c) => string.Join(' ', c.Findings.Select(f => f.Code).Order(StringComparer.Ordinal));
    }

    private static string SizesOf(LaidOutCard? card)
    {
        if (card is null)
        {
            return "";
        }

        using var csv = new StringWriter();
        SizeCsv.Write(csv, SizeList.Of(card), Main, card.Units.Format());
        return csv.ToString();
    }

    private static void Sizes(Compilation compilation, LaidOutCard card)
    {
        var list = SizeList.Of(card);
        using var text = new StringWriter();
        SizeText.Write(text, list, card.Units.Format());
        SizeMarkdown.Write(text, list, card.Units.Format());
        using var csv = new StringWriter();
        SizeCsv.WriteHeader(csv);
        SizeCsv.Write(csv, list, Main, card.Units.Format());
        WellFormed.Csv(csv.ToString());
        using var json = new StringWriter();
        ReportJson.WriteDocument(json, document => SizeJson.Write(document, Main, card, compilation.Findings));
        WellFormed.Json(json.ToString());
        foreach (var step in AssemblyOrder.Of(card))
        {
            BrokenInvariantException.Unless(StepText.Of(card, step).Length > 0, "each step says something", $"{step.Action}");
        }
    }

    private static IEnumerable<string> Pictures(LaidOutCard card)
    {
        foreach (var face in card.Faces.Select(f => f.Kind).Append(FaceKind.Front).Distinct())
        {
            yield return CardDrawing.Draw(card, face);
            if (ExplodedPicture.Of(card, face) is not null)
            {
                yield return CardDrawing.Flat(card, outside: face == FaceKind.Front).Svg;
            }
        }
    }

    private static void Render(string svg, string title, HashSet<string> options)
    {
        if (options.Contains("png"))
        {
            using var png = new MemoryStream();
            SvgRenderer.WritePng(svg, 60, png);
        }

        if (options.Contains("pdf"))
        {
            Pdf([new(svg)], title);
        }
    }

    private static void Pdf(IReadOnlyList<DrawnPage> pages, string title)
    {
        using var pdf = new MemoryStream();
        if (SvgRenderer.WritePdf(pages, title, pdf) is null)
        {
            BrokenInvariantException.Unless(pdf.ToArray().AsSpan().StartsWith("%PDF-"u8), "a PDF is one", $"{pdf.Length} bytes");
        }
    }

    private static void Cut(LaidOutCard card, HashSet<string> options, IWorld world)
    {
        var findings = new FindingBag();
        var hollow = options.Contains("hollow") ? GlueMargin.Usual : null;
        var templates = CardTemplates.Make([card], new(options.Contains("a4") ? PageFormat.A4 : PageFormat.Letter, PrinterScale.True,
            options.Contains("mirror"), hollow, options.Contains("shapes")), world, findings);
        foreach (var page in templates?.Pages ?? [])
        {
            WellFormed.Svg(page.Svg);
        }

        if (templates is { Pages.IsEmpty: false } && options.Contains("pdf"))
        {
            Pdf(templates.Pages, card.Title);
        }

        var sheets = CutSheets.Make([card], new(CutPage.Usual, CutFileOptions.UsualGap, options.Contains("copies") ? 3 : 1,
            options.Contains("mirror"), hollow, options.Contains("shapes")), findings);
        foreach (var sheet in sheets ?? [])
        {
            WellFormed.Svg(CutSvg.Of(sheet));
            var dxf = CutDxf.Of(sheet);
            var isFinite = !dxf.Contains("NaN", StringComparison.Ordinal) && !dxf.Contains("Infinity", StringComparison.Ordinal);
            BrokenInvariantException.Unless(isFinite, "numbers in DXF are finite", card.Title);
        }

        FindingRules.Check(findings.ToImmutable());
        WellFormed.Svg(CardTutorial.Of(card, null, world).Picture);
    }
}
