using System.Text.RegularExpressions;
using SixLabors.ImageSharp;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed partial class GalleryVerbTests : IDisposable
{
    private const string Head = "base A2, fold left, of white\nrole sky: gulls #9fc9e8, back\nfront\n  panel 2 x 2 \"Ahoy\", of sky\n";

    private readonly CommandLineRun _run = new();

    private string Page()
    {
        _run.File("cards/b.card", "card \"Second & last\"\n" + Head);
        _run.File("cards/a.card", "card \"First\"\nnote \"Cut **first**.\"\n" + Head + "inside\n  text \"Well met\"\n");
        Assert.Equal(0, _run.Run("gallery", _run.InFolder("cards"), "--out", _run.InFolder("out"), "--title", "All <cards>"));
        return File.ReadAllText(_run.InFolder("out/index.html"));
    }

    [Fact]
    public void Every_card_of_the_folder_is_on_the_page_in_order_of_its_files() =>
        Assert.Equal(["First", "Second &amp; last"], Headings().Matches(Page()).Select(m => m.Groups[1].Value));

    [Fact]
    public void Everything_that_the_page_names_is_there()
    {
        var named = Addresses().Matches(Page()).Select(m => m.Groups[1].Value).Where(a => a[0] != '#').ToList();

        Assert.All(named, a => Assert.True(File.Exists(_run.InFolder("out/" + a)), a));
        Assert.Equal(8, named.Count);
    }

    [Fact]
    public void Small_pictures_have_the_shape_of_the_face()
    {
        Page();

        using var small = Image.Load(_run.InFolder("out/small/a-inside.png"));
        Assert.Equal(4.25 / 5.5, (double)small.Width / small.Height, 0.01);
    }

    [Fact]
    public void Alt_texts_say_what_is_on_a_face() =>
        Assert.Contains("alt=\"First, front: panel “Ahoy”\"", System.Net.WebUtility.HtmlDecode(Page()), StringComparison.Ordinal);

    [Fact]
    public void Control_characters_of_titles_and_words_are_not_on_the_page()
    {
        _run.File("cards/a.card",
            $"card \"First\u0007\"\nnote \"Cut\u001b[2J\"\n{Head.Replace("Ahoy", "Ahoy\u001b[1m", StringComparison.Ordinal)}");

        _run.Run("gallery", _run.InFolder("cards"), "--out", _run.InFolder("out"));

        Assert.DoesNotContain(File.ReadAllText(_run.InFolder("out/index.html")), c => char.IsControl(c) && c != '\n');
    }

    [Theory]
    [InlineData("x.card", "envelope back", "x-envelope.card", "back")]
    [InlineData("lamp.card", "front", "Lamp.card", "front")]
    public void Two_cards_whose_pictures_would_share_a_name_are_an_error_and_the_first_keeps_it(
        string first, string face, string second, string otherFace)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Two names that differ only in case need a disk that tells them apart.");
        _run.File("cards/" + first, $"card \"First\"\nbase A2, of white\n{face}\n  text \"one\"\n");
        _run.File("cards/" + second, $"card \"Second\"\nbase A2, of white\n{otherFace}\n  text \"two\"\n");

        Assert.Equal(1, _run.Run("gallery", _run.InFolder("cards"), "--out", _run.InFolder("out")));
        Assert.Contains("SK", _run.Error, StringComparison.Ordinal);
        Assert.Contains("would both be drawn as", _run.Error, StringComparison.Ordinal);
        Assert.Single(Headings().Matches(File.ReadAllText(_run.InFolder("out/index.html"))));
    }

    [Theory]
    [InlineData("Cut <strong>first</strong>.")]
    [InlineData("sky: gulls, back")]
    [InlineData("Front, 4 1/4 x 5 1/2 in")]
    [InlineData("All &lt;cards&gt;")]
    public void The_page_reports_notes_papers_and_sizes(string text) => Assert.Contains(text, Page(), StringComparison.Ordinal);

    [Theory]
    [InlineData("Score the base, 8 1/2 x 5 1/2 in, 4 1/4 in from the left edge.")]
    [InlineData("<li>envelope US A2: 1</li>")]
    [InlineData("src=\"a-steps.svg\"")]
    public void The_page_says_how_each_card_is_made(string text) => Assert.Contains(text, Page(), StringComparison.Ordinal);

    [Fact]
    public void Messages_names_and_recipients_are_in_no_file_of_the_gallery()
    {
        _run.File("cards/names.csv", "Annabel\n");
        _run.File("cards/day.batch", "batch \"Day\"\nmakers \"Bertha\"\nfor \"Cliff ward\", 1 card\n  names \"names.csv\"\n"
            + "make 1 of \"c.card\"\n  message \"Dear Annabel\"\n");
        _run.File("cards/day.count", "2026-11-27 16:40 given 1 \"Third\" to \"Cliff ward\" #c4a8e6f213579bd0\n");
        _run.File("cards/c.card", "card \"Third\"\nmessage \"Dear Annabel\" \"of the Cliff ward\"\n" + Head);
        Page();

        var all = string.Concat(Directory.GetFiles(_run.InFolder("out"), "*", SearchOption.AllDirectories).Select(File.ReadAllText));
        Assert.Contains("Third", all, StringComparison.Ordinal);
        Assert.All((string[])["Annabel", "Bertha", "Cliff ward", "names.csv"],
            name => Assert.DoesNotContain(name, all, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void The_text_of_each_card_stands_beside_its_pictures() =>
        Assert.Contains("<span class=\"line\">  panel 2 x 2 &quot;Ahoy&quot;, of sky\n</span>", Page(), StringComparison.Ordinal);

    [Theory]
    [InlineData("message \"Dear Annabel\"")]
    [InlineData("message \"Dear Annabel\",\n  letters 1/4")]
    public void A_message_is_left_out_of_the_text(string message)
    {
        _run.File("cards/c.card", $"card \"Third\"\n{message}\n{Head}");

        Assert.DoesNotContain("letters", Page().Split("id=\"c\"")[1], StringComparison.Ordinal);
    }

    [Fact]
    public void The_sizes_of_a_card_are_folded() =>
        Assert.Contains("<details>\n<summary>Sizes</summary>", Page(), StringComparison.Ordinal);

    [Fact]
    public void A_guide_in_the_folder_of_the_cards_becomes_pages()
    {
        _run.File("cards/guide/index.md", "# Learn it\n\n[One](one.md)\n");
        _run.File("cards/guide/one.md", "# One\n\n```card\ncard \"C\"\nbase A2, of white\n```\n");
        var page = Page();

        Assert.Contains("<a href=\"guide/one.html\">One</a>", page, StringComparison.Ordinal);
        var one = File.ReadAllText(_run.InFolder("out/guide/one.html"));
        Assert.Contains("<svg ", one, StringComparison.Ordinal);
        Assert.Contains("<a href=\"../index.html\">All &lt;cards&gt;</a>", one, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", one, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void The_page_has_no_script() => Assert.DoesNotContain("<script", Page(), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void A_card_with_errors_is_reported_and_the_others_are_shown()
    {
        _run.Broken("cards/c.card");
        _run.File("cards/a.card", "card \"First\"\n" + Head);

        var status = _run.Run("gallery", _run.InFolder("cards"), "--out", _run.InFolder("out"));

        Assert.Equal((1, 1), (status, Headings().Count(File.ReadAllText(_run.InFolder("out/index.html")))));
    }

    [Fact]
    public void A_folder_without_cards_is_wrong_usage() => Assert.Equal(2, _run.Run("gallery", _run.Folder, "--out", _run.InFolder("out")));

    [Fact]
    public void A_second_run_makes_the_same_gallery()
    {
        var (first, again) = (Page(), Page());

        Assert.Equal(first, again);
    }

    public void Dispose() => _run.Dispose();

    [GeneratedRegex("<h2>(.*?)</h2>")]
    private static partial Regex Headings();

    [GeneratedRegex("(?:href|src)=\"([^\"]+)\"")]
    private static partial Regex Addresses();
}
