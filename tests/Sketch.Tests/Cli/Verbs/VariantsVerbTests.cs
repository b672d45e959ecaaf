using System.Xml.Linq;
using SixLabors.ImageSharp;
using Sketch.Output.Contact;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Variants;
using UglyToad.PdfPig;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class VariantsVerbTests : IDisposable
{
    private const string Card =
        "card \"Card\"\nbase A2, fold left, of white\nrole sky: gulls\nrole deep: navy\nfront\n  panel 3 x 4, of sky\n    panel 2 x 2, "
            + "of deep\n";
    private const string Stash =
        "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front dots #123456, back #654321\npaper night: 12 x 12, 1 sheet, front "
            + "stars, back #b8332f\ncardstock navy: letter, 2 sheets\n";

    private readonly CommandLineRun _run = new();

    private int Variants(params string[] more) =>
        _run.Run(["variants", _run.File("a.card", Card), "--stash", _run.File("a.stash", Stash), "--out", _run.InFolder("out"), .. more]);

    [Fact]
    public void A_card_that_cannot_be_laid_out_is_said_to_have_errors()
    {
        var card = _run.File("a6.card", "card \"Card\"\nbase A6, of white\n");
        Assert.Equal(1, _run.Run("variants", card, "--stash", _run.File("a.stash", Stash), "--out", _run.InFolder("out")));
        Assert.Contains("has errors, so it is not drawn.", _run.Error);
    }

    private int VariantsOf(string[] cards, params string[] more) =>
        _run.Run(["variants", .. cards, "--stash", _run.File("a.stash", Stash), "--out", _run.InFolder("out"), "--as", "svg", .. more]);

    private IEnumerable<string?> Drawn() => !Directory.Exists(_run.InFolder("out")) ? []
        : Directory.GetFiles(_run.InFolder("out")).Select(Path.GetFileName).Order(StringComparer.Ordinal);

    [Fact]
    public void Each_card_of_a_folder_gets_a_contact_sheet_of_its_own()
    {
        _run.File("cards/lamp.card", Card);
        _run.File("cards/wave.card", Card);

        Assert.Equal(0, VariantsOf([_run.InFolder("cards")]));
        Assert.Equal(["lamp-variants.svg", "wave-variants.svg"], Drawn());
    }

    [Fact]
    public void Cards_of_one_name_in_two_folders_do_not_share_a_contact_sheet()
    {
        var status = VariantsOf([_run.File("spring/lamp.card", Card), _run.File("autumn/lamp.card", Card.Replace("Card", "Autumn"))]);

        Assert.Equal((1, true), (status, _run.Error.Contains("SK501", StringComparison.Ordinal)));
        Assert.Contains("Card", File.ReadAllText(_run.InFolder("out/lamp-variants.svg")));
    }

    [Fact]
    public void A_card_with_errors_does_not_keep_the_others_from_being_drawn()
    {
        var status = VariantsOf([_run.File("a.card", "card \"Card\"\nbase A6, of white\n"), _run.File("b.card", Card)]);

        Assert.Equal(1, status);
        Assert.Equal(["b-variants.svg"], Drawn());
    }

    [Fact]
    public void A_role_that_one_of_the_cards_has_may_be_varied()
    {
        var other = Card.Replace("deep", "sea", StringComparison.Ordinal);
        var status = VariantsOf([_run.File("a.card", Card), _run.File("b.card", other)], "--roles", "sky,sea", "--json");

        Assert.Equal(0, status);
        Assert.Equal(["sky", "sky sea"], _run.Json.GetProperty("files").EnumerateArray().Select(f => string.Join(' ',
            f.GetProperty("variants")[0].GetProperty("papers").EnumerateArray().Select(p => p.GetProperty("role").GetString()))));
    }

    [Fact]
    public void A_card_without_any_of_the_roles_is_named_and_not_drawn()
    {
        var other = Card.Replace("deep", "sea", StringComparison.Ordinal);
        var status = VariantsOf([_run.File("a.card", Card), _run.File("b.card", other)], "--roles", "sea");

        Assert.Equal((2, true), (status, _run.Error.Contains("a.card: the card has no role sea.", StringComparison.Ordinal)));
        Assert.Equal(["b-variants.svg"], Drawn());
    }

    [Fact]
    public void A_card_without_the_face_is_named_and_not_drawn()
    {
        var status = VariantsOf(
            [_run.File("a.card", Card), _run.File("b.card", Card + "envelope US A2, of white\n")], "--face", "envelope");

        Assert.Equal((2, true), (status, _run.Error.Contains("a.card: the card has no envelope.", StringComparison.Ordinal)));
        Assert.Equal(["b-variants.svg"], Drawn());
    }

    [Fact]
    public void Nothing_more_is_written_after_a_write_that_failed()
    {
        _run.File("out/a-variants.svg", "<svg/>");
        var status = VariantsOf([_run.File("a.card", Card), _run.File("b.card", Card)]);

        Assert.Equal(2, status);
        Assert.Equal(["a-variants.svg"], Drawn());
    }

    [Fact]
    public void One_contact_sheet_shows_every_variant_with_its_papers()
    {
        Variants("--json", "--as", "svg", "--limit", "7");

        var ids = _run.Json.GetProperty("files")[0].GetProperty("variants").EnumerateArray()
            .Select((v, i) => $"{i + 1}: {v.GetProperty("id").GetString()}");
        var titles = XDocument.Load(_run.InFolder("out/a-variants.svg")).Root!.Elements().Where(e => e.Name.LocalName == "g")
            .Select(g => g.Elements().First().Value).Skip(1);
        Assert.Equal(ids, titles);
    }

    [Fact]
    public void No_id_of_the_contact_sheet_is_used_twice()
    {
        Variants("--as", "svg");

        var ids = XDocument.Load(_run.InFolder("out/a-variants.svg")).Descendants().Attributes("id").Select(a => a.Value).ToList();
        Assert.Equal(ids.Distinct().Count(), ids.Count);
    }

    [Fact]
    public void Draw_takes_an_id()
    {
        Variants("--json");
        var id = _run.Json.GetProperty("files")[0].GetProperty("variants")[1].GetProperty("id").GetString()!;

        Assert.Equal(0, _run.Run(
            "draw", _run.InFolder("a.card"), "--stash", _run.InFolder("a.stash"), "--out", _run.InFolder("large"), "--paper", id));
    }

    [Fact]
    public void A_png_of_strips_is_a_whole_picture()
    {
        Variants("--as", "png", "--dpi", "40");

        using var picture = Image.Load(_run.InFolder("out/a-variants.png"));
        Assert.Equal(340, picture.Width);
    }

    [Fact]
    public void A_pdf_has_pages_that_can_be_printed()
    {
        Variants("--as", "pdf", "--limit", "20");

        using var document = PdfDocument.Open(_run.InFolder("out/a-variants.pdf"));
        Assert.All(document.GetPages(), p => Assert.Equal((612, 792), ((int)Math.Round(p.Width), (int)Math.Round(p.Height))));
    }

    [Fact]
    public void The_page_names_every_picture_in_words()
    {
        Variants("--as", "html");

        var html = File.ReadAllText(_run.InFolder("out/a-variants.html"));
        Assert.Equal(html.Split("<img ").Length - 1, html.Split("alt=\"Variant ").Length - 1);
    }

    [Theory]
    [InlineData("--roles", "skye", "Did you mean \"sky\"?")]
    [InlineData("--papers", "guls/back", "Did you mean \"gulls\"?")]
    [InlineData("--limit", "0", "from 1 to 1000")]
    [InlineData("--face", "envelope", "no envelope")]
    public void An_unknown_value_is_wrong_usage_and_gets_a_hint(string option, string value, string hint)
    {
        var status = Variants(option, value);

        Assert.Equal((2, true), (status, _run.Error.Contains(hint, StringComparison.Ordinal)));
    }

    [Fact]
    public void A_foreign_file_is_not_replaced()
    {
        _run.File("out/a-variants.svg", "<svg/>");

        Assert.Equal((2, "<svg/>"), (Variants("--as", "svg"), File.ReadAllText(_run.InFolder("out/a-variants.svg"))));
    }

    [Fact]
    public void A_stopped_run_leaves_no_partial_file()
    {
        var card = FolderFiles.ReadFile(_run.File("a.card", Card)).Source!;
        var stash = Compiler.Compile(new("a.stash", Stash), new FolderFiles()).Stash!;
        var laidOut = Compiler.Compile(card, new FolderFiles()).Card!;
        var variants = VariantSearch.Find(laidOut, stash, new([], [], 20));
        using var stop = new CancellationTokenSource();
        var sheet = new ContactSheet(laidOut, FaceKind.Front, new(stash, []), variants, new FolderFiles());
        var file = new ContactSheetFile(sheet, _ => stop.Cancel(), stop.Token);

        void Draw() => SafeFile.Write(_run.InFolder("stopped.svg"), output => file.WriteSvg(output, ""));
        Assert.Throws<OperationCanceledException>(Draw);
        Assert.Equal(["a.card"], Directory.GetFiles(_run.Folder).Select(Path.GetFileName));
    }

    public void Dispose() => _run.Dispose();
}
