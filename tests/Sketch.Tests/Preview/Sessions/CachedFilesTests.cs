using Sketch.Output.Lettering;
using Sketch.Preview.Sessions;
using Sketch.Shapes;
using Sketch.Tests.Output.Files;
using Xunit;

namespace Sketch.Tests.Preview.Sessions;

/// <summary>What is remembered of pictures and artwork changes nothing of which file may name them.</summary>
public sealed class CachedFilesTests : IDisposable
{
    private const string Artwork = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\"><path d=\"M0 0H10V10Z\"/></svg>";

    private readonly TemporaryFolder _folder = new();
    private readonly CachedFiles _files = new(new FontShelf([]));

    public CachedFilesTests() => _folder.Write("sail.svg", Artwork);

    public void Dispose() => _folder.Dispose();

    private Outline? Read(string name, string namedIn) => _files.ReadArtwork(name, _folder.At(namedIn), out _);

    [Fact]
    public void What_one_card_may_name_a_card_in_another_folder_may_not()
    {
        Assert.NotNull(Read("sail.svg", "lamp.card"));
        Assert.Null(Read("../sail.svg", "day/lamp.card"));
    }

    [Fact]
    public void What_one_card_may_not_name_a_card_in_another_folder_may()
    {
        Assert.Null(Read("../sail.svg", "day/lamp.card"));
        Assert.NotNull(Read("sail.svg", "lamp.card"));
    }

    [Fact]
    public void What_may_be_named_from_the_folder_may_not_be_named_from_the_root()
    {
        Assert.NotNull(Read("sail.svg", "lamp.card"));
        Assert.Null(Read(_folder.At("sail.svg"), "lamp.card"));
    }

    [Fact]
    public void A_refusal_is_not_remembered()
    {
        // As with leave to read, neither the time nor the length tells that something has changed.
        var time = new DateTime(2024, 5, 1, 0, 0, 0, DateTimeKind.Utc);
        File.SetLastWriteTimeUtc(_folder.Write("sail.svg", Artwork.Replace("<svg", "<gvs", StringComparison.Ordinal)), time);
        Assert.Null(Read("sail.svg", "lamp.card"));
        File.SetLastWriteTimeUtc(_folder.Write("sail.svg", Artwork), time);
        Assert.NotNull(Read("sail.svg", "lamp.card"));
    }

    [Fact]
    public void What_was_read_is_remembered() => Assert.Same(Read("sail.svg", "lamp.card"), Read("sail.svg", "lamp.card"));
}
