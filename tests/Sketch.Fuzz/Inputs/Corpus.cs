using System.Collections.Immutable;

namespace Sketch.Fuzz.Inputs;

/// <summary>The files of this repository from which inputs are made: samples, and the examples of the written reference.</summary>
internal static class Corpus
{
    /// <summary>The folder of the solution.</summary>
    public static string Root { get; } = FindRoot(AppContext.BaseDirectory);

    /// <summary>Cards that can be laid out, and small examples.</summary>
    public static ImmutableArray<string> Cards { get; } = [.. Files(".card"), .. Examples("card")];

    /// <summary>Stashes.</summary>
    public static ImmutableArray<string> Stashes { get; } = [.. Files(".stash"), .. Examples("stash")];

    /// <summary>Batches.</summary>
    public static ImmutableArray<string> Batches { get; } = [.. Files(".batch"), .. Examples("batch")];

    /// <summary>Everything written in the language.</summary>
    public static ImmutableArray<string> All { get; } = [.. Cards, .. Stashes, .. Batches];

    /// <summary>A file of the repository.</summary>
    public static byte[] Read(params string[] path) => File.ReadAllBytes(Path.Combine([Root, .. path]));

    private static IEnumerable<string> Files(string ending) =>
        Directory.GetFiles(Path.Combine(Root, "sketches"), "*" + ending).Order(StringComparer.Ordinal).Select(File.ReadAllText);

    private static List<string> Examples(string kind)
    {
        var examples = new List<string>();
        List<string>? example = null;
        var above = "";
        foreach (var line in File.ReadLines(Path.Combine(Root, "sketches", "LANGUAGE.md")))
        {
            if (example is null && line.StartsWith("```" + kind, StringComparison.Ordinal))
            {
                (example, above) = ([], line.EndsWith(" pieces", StringComparison.Ordinal)
                    ? "card \"E\"\nbase A2, fold left, of white\nfront\n" : "");
            }
            else if (example is not null && line == "```")
            {
                examples.Add(above + string.Concat(example.Select(l => (above.Length > 0 ? "  " : "") + l + "\n")));
                example = null;
            }
            else
            {
                example?.Add(line);
            }
        }

        return examples;
    }

    private static string FindRoot(string folder)
    {
        while (!File.Exists(Path.Combine(folder, "Sketch.sln")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("There is no Sketch.sln above the program.");
        }

        return folder;
    }
}
