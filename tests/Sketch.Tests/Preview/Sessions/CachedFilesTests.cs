using Sketch.Output.Lettering;
using Sketch.Preview.Sessions;
using Sketch.Shapes;
using Sketch.Tests.Output.Files;
using Xunit;

namespace Sketch.Tests.Preview.Sessions;

/// <summary>Caching pictures and artwork does not change which files may name them.</summary>
public sealed class CachedFilesTests : IDisposable
{
    private const string Artwork = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 10 10\"><path d=\"M0 0H10V10Z\"/></svg>";

    private readonly TemporaryFolder _folder = new();
    private readonly CachedFiles _files = new(new FontLibrary([]));

    public CachedFilesTests() => _folder.Write("sail.svg", Artwork);

    public void Dispose() => _folder.Dispose();

    private Outline? Read(string name, string namedIn) => _files.ReadArtwork(name, _folder.At(namedIn)).ValueOrDefault;

    [Fact]
    public void A_path_allowed_in_one_folder_is_not_allowed_in_another()
    {
        Assert.NotNull(Read("sail.svg", "lamp.card"));
        Assert.Null(Read("../sail.svg", "day/lamp.card"));
    }

    [Fact]
    public void A_path_not_allowed_in_one_folder_is_allowed_in_another()
    {
        Assert.Null(Read("../sail.svg", "day/lamp.card"));
        Assert.NotNull(Read("sail.svg", "lamp.card"));
    }

    [Fact]
    public void A_path_allowed_from_the_folder_is_not_allowed_from_the_root()
    {
        Assert.NotNull(Read("sail.svg", "lamp.card"));
        Assert.Null(Read(_folder.At("sail.svg"), "lamp.card"));
    }

    [Fact]
    public void A_rejection_is_not_cached()
    {
        // As with read permission, neither the time nor the length shows the change.
        var time = new DateTime(2024, 5, 1, 0, 0, 0, DateTimeKind.Utc);
        File.SetLastWriteTimeUtc(_folder.Write("sail.svg", Artwork.Replace("<svg", "<gvs", StringComparison.Ordinal)), time);
        Assert.Null(Read("sail.svg", "lamp.card"));
        File.SetLastWriteTimeUtc(_folder.Write("sail.svg", Artwork), time);
        Assert.NotNull(Read("sail.svg", "lamp.card"));
    }

    [Fact]
    public void A_file_read_once_is_cached() => Assert.Same(Read("sail.svg", "lamp.card"), Read("sail.svg", "lamp.card"));
}
