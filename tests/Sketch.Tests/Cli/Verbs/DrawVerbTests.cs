using System.Xml.Linq;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class DrawVerbTests : IDisposable
{
    private const string Lamp = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel, showing 1/8, of blue\n";
    private const string LampInside = Lamp + "inside\n  strip full x 1/2, bottom 1/4, of blue\n";

    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    private string Pictures => _line.InFolder("pictures");

    private string[] Drawn() =>
        Directory.Exists(Pictures) ? [.. Directory.GetFiles(Pictures).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)] : [];

    private int Draw(string content, params string[] options) =>
        _line.Run(["draw", _line.File("lamp.card", content), "--out", Pictures, .. options]);

    [Fact]
    public void Each_face_named_in_the_file_is_a_picture()
    {
        Assert.Equal(0, Draw(LampInside));
        Assert.Equal(["lamp-front.svg", "lamp-inside.svg"], Drawn());
    }

    [Fact]
    public void The_pictures_are_listed_on_the_output()
    {
        Draw(LampInside);
        Assert.Equal([Path.Combine(Pictures, "lamp-front.svg"), Path.Combine(Pictures, "lamp-inside.svg"), ""], _line.Output.Split('\n'));
    }

    [Fact]
    public void Every_requested_kind_of_picture_is_drawn()
    {
        Draw(Lamp, "--as", "svg,png,pdf");
        Assert.Equal(["lamp-front.pdf", "lamp-front.png", "lamp-front.svg"], Drawn());
    }

    [Fact]
    public void A_face_not_named_in_the_file_is_drawn_bare()
    {
        Assert.Equal(0, Draw(Lamp, "--face", "back,inside left"));
        Assert.Equal(["lamp-back.svg", "lamp-inside-left.svg"], Drawn());
    }

    [Fact]
    public void A_face_that_the_card_cannot_have_is_reported()
    {
        Assert.Equal(2, Draw(Lamp, "--face", "front,envelope"));
        Assert.Contains("the card has no envelope", _line.Error);
    }

    [Fact]
    public void A_misspelt_face_is_reported_with_the_nearest()
    {
        Assert.Equal(2, Draw(Lamp, "--face", "frnot"));
        Assert.Contains("Did you mean \"front\"?", _line.Error);
    }

    [Fact]
    public void The_picture_has_the_size_of_the_card()
    {
        Draw(Lamp);
        var root = XDocument.Load(Path.Combine(Pictures, "lamp-front.svg")).Root!;
        Assert.Equal(("4.25in", "5.5in"), ((string)root.Attribute("width")!, (string)root.Attribute("height")!));
    }

    [Fact]
    public void The_resolution_gives_the_number_of_pixels()
    {
        Draw(Lamp, "--as", "png", "--dpi", "96");
        var png = File.ReadAllBytes(Path.Combine(Pictures, "lamp-front.png"));
        // PNG specification, chunk IHDR: width and height are the first eight bytes of its data; 4 1/4 x 5 1/2 in at 96 an inch are 408 x
        // 528.
        Assert.Equal([0, 0, 1, 152, 0, 0, 2, 16], png[16..24]);
    }

    [Fact]
    public void Too_many_pixels_are_reported_and_nothing_is_left_behind()
    {
        Assert.Equal(2, Draw(Lamp, "--as", "png", "--dpi", "2400"));
        Assert.Empty(Drawn());
    }

    [Theory]
    [InlineData("0")]
    [InlineData("1e3")]
    [InlineData("-150")]
    [InlineData("150.5")]
    public void A_resolution_is_a_whole_number(string dpi) => Assert.Equal(2, Draw(Lamp, "--dpi", dpi));

    [Fact]
    public void A_card_with_errors_is_not_drawn_but_the_others_are()
    {
        Assert.Equal(1, _line.Run("draw", _line.Broken("broken.card"), _line.File("lamp.card", Lamp), "--out", Pictures));
        Assert.Equal(["lamp-front.svg"], Drawn());
    }

    [Fact]
    public void Two_files_of_one_name_do_not_overwrite_each_other()
    {
        var (first, second) = (_line.File("a/lamp.card", Lamp), _line.File("b/lamp.card", LampInside));
        Assert.Equal(1, _line.Run("draw", first, second, "--out", Pictures));
        Assert.Equal((1, true), (Drawn().Length, _line.Error.Contains("SK501")));
    }

    [Fact]
    public void A_name_that_ends_like_a_face_does_not_overwrite_that_face()
    {
        const string Posted = Lamp + "envelope US A2, of white\nenvelope back\n";
        var (first, second) = (_line.File("lamp.card", Posted), _line.File("lamp-envelope.card", Lamp + "back\n"));
        Assert.Equal(1, _line.Run("draw", first, second, "--out", Pictures));
    }

    [Fact]
    public void An_earlier_picture_is_replaced()
    {
        Draw(Lamp, "--as", "svg,png,pdf");
        Assert.Equal(0, Draw(Lamp, "--as", "svg,png,pdf"));
    }

    [Theory]
    [InlineData("svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"/>")]
    [InlineData("png", "a photo of the lighthouse")]
    [InlineData("pdf", "%PDF-1.7")]
    public void A_file_not_made_by_this_tool_is_not_replaced(string form, string content)
    {
        var file = _line.File($"pictures/lamp-front.{form}", content);
        Assert.Equal(2, Draw(Lamp, "--as", form));
        Assert.Equal(content, File.ReadAllText(file));
    }

    [Fact]
    public void A_file_in_place_of_the_folder_is_reported_once()
    {
        _line.File("pictures", "");
        Assert.Equal(2, Draw(LampInside, "--as", "svg,png"));
        Assert.Single(_line.Error.Split('\n'), l => l.Contains("cannot be written"));
    }

    [Fact]
    public void A_file_without_a_card_is_wrong_usage() =>
        Assert.Equal(2, _line.Run(
            "draw", _line.File("museum.stash", "stash \"Museum shelf\"\ncardstock white: letter, 25 sheets\n"), "--out", Pictures));

    [Fact]
    public void Json_lists_the_pictures()
    {
        Draw(LampInside, "--json");
        var pictures = _line.Json.GetProperty("files")[0].GetProperty("pictures").EnumerateArray();
        Assert.Equal(
            [("front", Path.Combine(Pictures, "lamp-front.svg")), ("inside", Path.Combine(Pictures, "lamp-inside.svg"))],
            pictures.Select(p => (p.GetProperty("face").GetString()!, p.GetProperty("path").GetString()!)));
    }

    [Fact]
    public void The_same_card_is_drawn_to_the_same_bytes()
    {
        Draw(Lamp, "--as", "svg,png,pdf");
        var first = Drawn().Select(f => Convert.ToHexString(File.ReadAllBytes(Path.Combine(Pictures, f)))).ToArray();
        Draw(Lamp, "--as", "svg,png,pdf");
        Assert.Equal(first, Drawn().Select(f => Convert.ToHexString(File.ReadAllBytes(Path.Combine(Pictures, f)))));
    }

    [Fact]
    public void A_run_that_is_stopped_leaves_nothing_half_drawn()
    {
        Assert.Equal(130, _line.Run(new CancellationToken(canceled: true), "draw", _line.File("lamp.card", Lamp), "--out", Pictures));
        Assert.Empty(Drawn());
    }
}
