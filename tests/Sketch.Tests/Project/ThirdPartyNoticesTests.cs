using Xunit;

namespace Sketch.Tests.Project;

/// <summary>
/// Whoever gets Sketch gets the licences of all that is in it. <c>UPDATE_NOTICES=1</c> makes the first test write the file anew.
/// </summary>
public sealed class ThirdPartyNoticesTests
{
    [Fact]
    public void The_notices_kept_are_those_of_the_packages()
    {
        Assert.SkipUnless(ThirdPartyNotices.EditorIsBundled, "The parts of the text editor are known only where npm has bundled it.");

        var written = ThirdPartyNotices.Write();
        if (Environment.GetEnvironmentVariable("UPDATE_NOTICES") == "1")
        {
            File.WriteAllText(ThirdPartyNotices.Kept, written);
        }

        Assert.Equal(written, File.ReadAllText(ThirdPartyNotices.Kept));
    }

    [Fact]
    public void Each_text_that_is_kept_is_used() => Assert.All(
        Directory.EnumerateFiles(Repository.PathTo("src", "Notices", "Texts")).Select(Path.GetFileNameWithoutExtension),
        licence => Assert.Contains($"licence: {licence}, text [", File.ReadAllText(ThirdPartyNotices.Kept), StringComparison.Ordinal));

    [Fact]
    public void Each_library_beside_the_solver_is_named()
    {
        var named = File.ReadAllText(Repository.PathTo("src", "Notices", "parts.txt"));

        Assert.All(NativeLibraries(), library => Assert.Contains(library, named, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Of the libraries that the solver brings, what its makers call them.</summary>
    private static IEnumerable<string> NativeLibraries() =>
        from file in Directory.EnumerateFiles(AppContext.BaseDirectory, "lib*", SearchOption.AllDirectories)
        let name = Path.GetFileName(file)["lib".Length..].Split('.', '_')[0]
        where !name.Contains("Skia", StringComparison.Ordinal) && !name.Contains("HarfBuzz", StringComparison.Ordinal)
        select name switch
        {
            "absl" => "Abseil",
            "z" => "zlib",
            "bz2" => "bzip2",
            "protobuf" => "Protocol Buffers",
            "ClpSolver" => "Clp",
            "CbcSolver" or "OsiCbc" => "Cbc",
            "OsiClp" => "Clp",
            "utf8" => "utf8_range",
            "ortools" => "Google.OrTools",
            _ => name,
        };
}
