using Xunit;

namespace Sketch.Tests.Cli.Commands;

public sealed class ReadingTests : IDisposable
{
    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    private string[] FilesInJson() => [.. _line.Json.GetProperty("files").EnumerateArray().Select(f => f.GetProperty("file").GetString()!)];

    [Fact]
    public void A_file_that_cannot_be_opened_is_wrong_usage()
    {
        Assert.Equal(2, _line.Run("check", _line.InFolder("none.card")));
        Assert.Contains("there is no such file", _line.Error);
    }

    [Fact]
    public void A_folder_stands_for_its_files_in_the_order_of_their_names()
    {
        string[] files = [_line.Broken("a.stash"), _line.Broken("b.card"), _line.Broken("c.batch")];
        _line.Broken("photo.png");
        _line.Run("check", "--json", _line.Folder);
        Assert.Equal(files, FilesInJson());
    }

    [Fact]
    public void A_folder_stands_only_for_the_files_that_a_verb_reads()
    {
        var card = _line.Broken("b.card");
        _line.Broken("a.stash");
        _line.Run("sizes", "--json", _line.Folder);
        Assert.Equal([card], FilesInJson());
    }

    [Fact]
    public void A_folder_without_such_files_is_wrong_usage()
    {
        Assert.Equal(2, _line.Run("check", _line.Folder));
        Assert.Contains("no file in", _line.Error);
    }

    [Fact]
    public void A_binary_file_is_read_and_holds_an_error() => Assert.Equal(1, _line.Run("check", _line.Broken("photo.card")));

    [Fact]
    public void All_files_are_read_when_the_first_cannot_be_opened()
    {
        var broken = _line.Broken("b.card");
        Assert.Equal(2, _line.Run("check", _line.InFolder("none.card"), broken));
        Assert.Contains(broken, _line.Output);
    }

    [Fact]
    public void All_findings_of_all_files_are_reported()
    {
        string[] files = [_line.Broken("a.card"), _line.Broken("b.card"), _line.Broken("c.card")];
        _line.Run("check", files[0], files[1], files[2]);
        Assert.All(files, f => Assert.Contains($"{f}:1:1: error ", _line.Output));
    }

    [Fact]
    public void All_mistakes_of_one_file_are_reported_at_once()
    {
        _line.Run("check", _line.File("a.card", "card \"Lamp\nbase A2, fold lefft\nfrnt\n  panle 1 x 1\n"));
        Assert.All([":1:", ":2:", ":3:"], line => Assert.Contains($"a.card{line}", _line.Output));
    }

    [Fact]
    public void Warnings_alone_leave_the_status_at_0()
    {
        // A role that is neither declared nor a colour is a warning.
        Assert.Equal(0, _line.Run(
            "check", _line.File("a.card", "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel 1 x 1, of gulls\n")));
        Assert.Contains(": warning ", _line.Output);
    }

    [Fact]
    public void A_missing_file_that_another_names_is_a_finding()
    {
        Assert.Equal(1, _line.Run("check", _line.File("a.card", "like \"none.card\"\ncard \"Lamp\"\n")));
        Assert.Contains("none.card", _line.Output);
    }

    [Fact]
    public void Json_reports_each_file_in_the_order_of_the_command_line()
    {
        string[] files = [_line.Broken("b.card"), _line.Broken("a.card")];
        _line.Run("check", "--json", files[0], files[1]);
        Assert.Equal(files, FilesInJson());
    }

    [Fact]
    public void Json_stays_one_document_when_a_file_cannot_be_opened()
    {
        var broken = _line.Broken("a.card");
        Assert.Equal(2, _line.Run("check", "--json", _line.InFolder("none.card"), broken));
        Assert.Equal([broken], FilesInJson());
    }

    [Fact]
    public void A_finding_in_Json_has_the_fields_that_others_rely_on()
    {
        _line.Run("check", "--json", _line.Broken("a.card"));
        Assert.Equal(
            ["file", "code", "severity", "message", "hint", "line", "column", "endLine", "endColumn"],
            _line.Json.GetProperty("files")[0].GetProperty("findings")[0].EnumerateObject().Select(p => p.Name));
    }

    [Fact]
    public void A_file_named_twice_is_read_once()
    {
        var broken = _line.Broken("a.card");
        _line.Run("check", "--json", broken, Path.Combine(_line.Folder, ".", "a.card"));
        Assert.Equal([broken], FilesInJson());
    }

    [Fact]
    public void A_star_that_the_shell_left_stands_for_all_that_fit()
    {
        string[] files = [_line.Broken("a.card"), _line.Broken("b.card")];
        _line.Broken("c.stash");
        _line.Run("check", "--json", _line.InFolder("*.card"));
        Assert.Equal(files, FilesInJson());
    }

    [Theory]
    [InlineData("blank in name.card")]
    [InlineData("quote\"apostrophe'.card")]
    [InlineData("semi;colon&pipe|.card")]
    [InlineData("Leuchtturm-äöü-灯台.card")]
    [InlineData("line\nend.card")]
    [InlineData("[brackets].card")]
    public void File_names_may_hold_whatever_the_system_allows(string name)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows does not allow some of these names.");
        Assert.Equal(1, _line.Run("check", "--json", _line.Broken(name)));
        Assert.Equal([_line.InFolder(name)], FilesInJson());
    }

    [Fact]
    public void A_file_name_cannot_send_commands_to_the_terminal()
    {
        _line.Run("check", "\u001b[2J.card");
        Assert.DoesNotContain('\u001b', _line.Error);
    }

    [Theory]
    [InlineData("")]
    [InlineData("a\0b.card")]
    public void A_name_that_no_file_can_have_is_reported(string name) => Assert.Equal(2, _line.Run("check", name));

    [Fact]
    public void A_run_that_is_stopped_ends_with_130()
    {
        var broken = _line.Broken("a.card");
        Assert.Equal(130, _line.Run(new CancellationToken(canceled: true), "check", broken));
    }
}
