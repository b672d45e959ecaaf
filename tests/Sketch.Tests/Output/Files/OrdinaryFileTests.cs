using System.Net.Sockets;
using Sketch.Output.Files;
using Sketch.Output.Folders;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Output.Files;

/// <summary>A pipe, a socket or a device in place of a file is reported without waiting for it.</summary>
public sealed class OrdinaryFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_pipe_on_the_command_line_is_a_finding() =>
        Assert.Contains("it is not a regular file",
            FolderFiles.ReadFile(_folder.Pipe("a.card")).Finding?.Message, StringComparison.Ordinal);

    [Fact]
    public void A_pipe_that_a_card_names_is_not_read_as_text()
    {
        _folder.Pipe("shelf.stash");
        var problem = new FolderFiles().ReadText("shelf.stash", _folder.At("a.card")).Problem;
        Assert.Equal(OrdinaryFile.Problem, problem);
    }

    [Fact]
    public void A_pipe_is_not_read_as_a_picture_of_a_paper()
    {
        _folder.Pipe("waves.png");
        var problem = new FolderFiles().ReadPicture("waves.png", _folder.At("a.stash"), Length.Millimetre(100)).Problem;
        Assert.Equal(OrdinaryFile.Problem, problem);
    }

    [Fact]
    public void A_pipe_is_not_read_as_a_font()
    {
        _folder.Pipe("quill.ttf");
        var problem = new FolderFiles().ShapeWords("Lamp", "quill.ttf", _folder.At("a.card")).Problem;
        Assert.Equal(OrdinaryFile.Problem, problem);
    }

    [Fact]
    public void A_socket_is_reported_as_a_socket()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no sockets among its files.");
        using var socket = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        socket.Bind(new UnixDomainSocketEndPoint(_folder.At("a.card")));
        var problem = FileContent.Read(_folder.At("a.card"), 10).Problem;
        Assert.Equal(OrdinaryFile.Problem, problem);
    }

    [Fact]
    public void A_link_to_a_device_is_reported_as_a_device()
    {
        Assert.SkipUnless(File.Exists("/dev/zero"), "There is no /dev/zero.");
        File.CreateSymbolicLink(_folder.At("a.card"), "/dev/zero");
        var problem = FileContent.Read(_folder.At("a.card"), 10).Problem;
        Assert.Equal(OrdinaryFile.Problem, problem);
    }

    [Fact]
    public void Files_and_folders_and_missing_paths_are_ordinary() =>
        Assert.All([_folder.Write("a.card", ""), _folder.Path, _folder.At("none.card")], path =>
            Assert.False(OrdinaryFile.IsOtherwise(path)));
}
