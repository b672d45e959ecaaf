using System.Collections.Immutable;
using System.Text;

namespace Sketch.Diagnostics;

/// <summary>
/// The explanations of all findings. They are written in Markdown, in a file beside each part of <see cref="FindingCatalogue"/>:
/// <code>
/// ## SK210
///
/// What it means.
///
/// ```card             or: ```stash shelf.stash, for a file with a name of its own
/// An example; several files may follow one another. ```console holds the command if it is not check or plan.
/// ```
///
/// Fix: What to do.
///
/// ```card
/// The corrected files.
/// ```
/// </code>
/// </summary>
public static class Explanations
{
    private const string Heading = "## ";
    private const string Fence = "```";
    private const string Fix = "Fix: ";

    private static readonly Lazy<ImmutableDictionary<string, Explanation>> ByCode = new(ReadAll);

    /// <summary>The codes that are explained; a test checks that these are the codes of the catalogue.</summary>
    public static IEnumerable<string> Codes => ByCode.Value.Keys;

    /// <summary>The explanation of a kind of finding.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public static Explanation Of(FindingKind kind) => ByCode.Value[kind.Code];

    private static ImmutableDictionary<string, Explanation> ReadAll()
    {
        var kinds = FindingCatalogue.All.ToDictionary(k => k.Code);
        var assembly = typeof(Explanations).Assembly;
        var all = ImmutableDictionary.CreateBuilder<string, Explanation>();
        var names = assembly.GetManifestResourceNames().Where(n => n.StartsWith(nameof(FindingCatalogue), StringComparison.Ordinal));
        foreach (var name in names)
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!, Encoding.UTF8);
            foreach (var section in Sections(reader.ReadToEnd().ReplaceLineEndings("\n").Split('\n')))
            {
                var code = section[0][Heading.Length..].Trim();
                var kind = kinds.GetValueOrDefault(code) ?? throw new FormatException($"{name} explains {code}, which is no finding.");
                all.Add(code, Read(kind, section[1..]));
            }
        }

        return all.ToImmutable();
    }

    private static IEnumerable<string[]> Sections(string[] lines)
    {
        var starts = Enumerable.Range(0, lines.Length)
            .Where(i => lines[i].StartsWith(Heading, StringComparison.Ordinal)).Append(lines.Length).ToList();
        return starts.Zip(starts.Skip(1), (from, to) => lines[from..to]);
    }

    private static Explanation Read(FindingKind kind, string[] lines)
    {
        var fix = Array.FindIndex(lines, l => l.StartsWith(Fix, StringComparison.Ordinal));
        if (fix < 0)
        {
            throw new FormatException($"The explanation of {kind.Code} has no fix.");
        }

        var (meaning, example) = ReadPart(lines[..fix]);
        var (remedy, fixedExample) = ReadPart(lines[fix..]);
        return new(kind, meaning, example, remedy[Fix.Length..], fixedExample);
    }

    private static (string Text, Example Example) ReadPart(string[] lines)
    {
        var text = lines.TakeWhile(l => !l.StartsWith(Fence, StringComparison.Ordinal)).ToArray();
        var files = ImmutableArray.CreateBuilder<ExampleFile>();
        string? command = null;
        for (var at = text.Length; at < lines.Length; at++)
        {
            if (!lines[at].StartsWith(Fence, StringComparison.Ordinal))
            {
                continue;
            }

            var info = lines[at][Fence.Length..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var end = Array.IndexOf(lines, Fence, at + 1);
            var content = string.Join('\n', lines[(at + 1)..end]);
            if (info[0] == "console")
            {
                command = content;
            }
            else
            {
                var name = info.Skip(1).FirstOrDefault(i => i.EndsWith($".{info[0]}", StringComparison.Ordinal)) ?? $"example.{info[0]}";
                files.Add(new(name, content + "\n", info.Contains("latin-1")));
            }

            at = end;
        }

        return (string.Join('\n', text).Trim(), new(files.ToImmutable(), command));
    }
}
