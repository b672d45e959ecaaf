namespace Sketch.Tests.Project;

/// <summary>The checkout from which these tests were built.</summary>
internal static class Repository
{
    /// <summary>The folder of the solution.</summary>
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    public static string PathTo(params string[] parts) => Path.Combine([Root, .. parts]);

    private static string FindRoot(string from)
    {
        var folder = from;
        while (!File.Exists(Path.Combine(folder, "Sketch.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException($"no Sketch.sln above {from}");
        }

        return folder;
    }
}
