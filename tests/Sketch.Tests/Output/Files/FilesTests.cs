using System.Text;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Xunit;

namespace Sketch.Tests.Output.Files;

public sealed class FilesTests
{
    private static readonly FolderFiles Files = new();

    [Fact]
    public void A_file_is_complete_after_writing()
    {
        using var folder = new TemporaryFolder();
        SafeFile.WriteText(folder.At("new/picture.svg"), "<svg/>");
        Assert.Equal("<svg/>", File.ReadAllText(folder.At("new/picture.svg")));
    }

    [Fact]
    public void Names_beside_a_file_are_only_those_in_its_folder()
    {
        using var folder = new TemporaryFolder();
        folder.Write("day.batch", "");
        folder.Write("gull.card", "");
        Directory.CreateDirectory(folder.At("old"));
        folder.Write("old/tern.card", "");
        Assert.Equal(["day.batch", "gull.card"], Files.NamesBeside(folder.At("day.batch")).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_missing_folder_has_no_names() => Assert.Empty(Files.NamesBeside("/no/such/folder/day.batch"));

    [Fact]
    public void A_failed_write_leaves_only_the_old_file()
    {
        using var folder = new TemporaryFolder();
        folder.Write("picture.svg", "old");
        Assert.Throws<InvalidOperationException>(() => SafeFile.Write(folder.At("picture.svg"), stream =>
        {
            stream.WriteByte(1);
            throw new InvalidOperationException();
        }));
        Assert.Equal("old", File.ReadAllText(Assert.Single(Directory.GetFiles(folder.Path))));
    }

    [Fact]
    public void Writing_over_a_folder_is_explained()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder.At("picture.svg"));
        var refused = Assert.Throws<FileWriteException>(() => SafeFile.WriteText(folder.At("picture.svg"), ""));
        Assert.Equal($"\"{folder.At("picture.svg")}\" cannot be written: it is a folder.", refused.Message);
    }

    [Fact]
    public void Writing_below_a_file_is_explained()
    {
        using var folder = new TemporaryFolder();
        folder.Write("out", "");
        var refused = Assert.Throws<FileWriteException>(() => SafeFile.WriteText(folder.At("out/picture.svg"), ""));
        Assert.EndsWith("cannot be written: its folder is a file.", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void An_impossible_file_name_is_explained()
    {
        using var folder = new TemporaryFolder();
        Assert.Throws<FileWriteException>(() => SafeFile.WriteText(folder.At("a\0b"), ""));
        Assert.Throws<FileWriteException>(() => SafeFile.WriteText(folder.At(new string('x', 5000)), ""));
    }

    [Fact]
    public void A_link_still_points_to_the_written_file()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need special rights on Windows.");
        using var folder = new TemporaryFolder();
        folder.Write("real.card", "old");
        File.CreateSymbolicLink(folder.At("link.card"), folder.At("real.card"));
        SafeFile.WriteText(folder.At("link.card"), "new");
        Assert.Equal("new", File.ReadAllText(folder.At("real.card")));
        Assert.NotNull(new FileInfo(folder.At("link.card")).LinkTarget);
    }

    [Fact]
    public void A_byte_order_mark_is_removed()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.card", [0xEF, 0xBB, 0xBF, .. "card \"Ahoy\""u8]);
        Assert.Equal("card \"Ahoy\"", FolderFiles.ReadFile(folder.At("a.card")).Source!.Content);
    }

    [Fact]
    public void A_missing_file_on_the_command_line_cannot_be_opened()
    {
        using var folder = new TemporaryFolder();
        var reading = FolderFiles.ReadFile(folder.At("a.card"));
        Assert.Equal((null, null, $"\"{folder.At("a.card")}\" cannot be opened: there is no such file."),
            (reading.Source, reading.Finding, reading.Problem));
    }

    [Fact]
    public void A_folder_on_the_command_line_cannot_be_opened()
    {
        using var folder = new TemporaryFolder();
        Assert.EndsWith("cannot be opened: it is a folder.", FolderFiles.ReadFile(folder.Path).Problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(new byte[] { 0x89, 0x50, 0, 1 }, "it is not a text file: it contains zero bytes")]
    [InlineData(new byte[] { (byte)'a', (byte)'\n', 0xE9, (byte)'b' }, "it is not saved as UTF-8 (line 2); save it as UTF-8.")]
    [InlineData(new byte[] { 0xFF, 0xFE, (byte)'a', 0 }, "it is saved as UTF-16; save it as UTF-8.")]
    public void Content_that_is_not_text_is_a_finding(byte[] content, string message)
    {
        using var folder = new TemporaryFolder();
        var reading = FolderFiles.ReadFile(folder.Write("a.card", content));
        Assert.Equal("", reading.Problem);
        Assert.Contains(message, reading.Finding!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_text_of_more_than_ten_megabytes_is_a_finding()
    {
        using var folder = new TemporaryFolder();
        Assert.NotNull(FolderFiles.ReadFile(folder.Write("a.card", new byte[10_000_001])).Finding);
    }

    [Theory]
    [InlineData("shelf/museum.stash")]
    [InlineData("shelf\\museum.stash")]
    [InlineData("./shelf/../shelf/museum.stash")]
    public void A_path_is_relative_to_the_file_that_contains_it(string path)
    {
        using var folder = new TemporaryFolder();
        folder.Write("shelf/museum.stash", "stash");
        Assert.Equal("stash", Files.ReadText(path, folder.At("a.card")).Value.Content);
    }

    [Fact]
    public void A_missing_file_named_in_a_text_is_explained()
    {
        using var folder = new TemporaryFolder();
        var problem = Files.ReadText("museum.stash", folder.At("a.card")).Problem;
        Assert.Equal("there is no such file.", problem);
    }

    [Theory]
    [InlineData("../secret.card")]
    [InlineData("..\\secret.card")]
    [InlineData("sub/../../secret.card")]
    [InlineData("/etc/hostname")]
    public void A_path_out_of_the_folder_is_rejected(string path)
    {
        using var folder = new TemporaryFolder();
        folder.Write("secret.card", "card");
        var problem = Files.ReadText(path, folder.At("cards/a.card")).Problem;
        Assert.Equal("it lies outside the folder of \"a.card\"; put it into that folder or one in it.", problem);
    }

    [Fact]
    public void A_path_out_of_the_folder_is_read_where_that_is_allowed()
    {
        using var folder = new TemporaryFolder();
        folder.Write("museum.stash", "stash");
        Assert.Null(new FolderFiles(mayLeaveFolder: true).ReadText("../museum.stash", folder.At("cards/a.card")).Problem);
    }

    [Fact]
    public void A_link_out_of_the_folder_is_rejected()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need special rights on Windows.");
        using var folder = new TemporaryFolder();
        folder.Write("elsewhere/secret.card", "card");
        folder.Write("cards/a.card", "");
        Directory.CreateSymbolicLink(folder.At("cards/sub"), folder.At("elsewhere"));
        Assert.NotNull(Files.ReadText("sub/secret.card", folder.At("cards/a.card")).Problem);
    }

    [Theory]
    [InlineData("")]
    [InlineData("a\0b")]
    [InlineData(".")]
    public void A_path_that_names_no_file_is_explained(string path)
    {
        using var folder = new TemporaryFolder();
        var problem = Files.ReadText(path, folder.At("a.card")).Problem;
        Assert.NotEqual("", problem);
    }

    [Fact]
    public void Artwork_beside_the_card_is_read()
    {
        using var folder = new TemporaryFolder();
        folder.Write("boat.svg", Encoding.UTF8.GetBytes("<svg width='10mm' viewBox='0 0 1 1'><rect width='1' height='1'/></svg>"));
        Assert.Equal(100, Files.ReadArtwork("boat.svg", folder.At("a.card")).Value.Area, 6);
    }
}
