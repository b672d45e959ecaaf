using System.Text;

namespace Sketch.Fuzz;

/// <summary>Cuts a failing input down as long as it fails alike: whole files, then lines, words and bytes.</summary>
/// <param name="target">The target that fails.</param>
internal sealed class Shrinking(IFuzzTarget target)
{
    private const int MostRuns = 3000;
    private static readonly TimeSpan MostTime = TimeSpan.FromSeconds(20);

    private readonly System.Diagnostics.Stopwatch _watch = System.Diagnostics.Stopwatch.StartNew();
    private int _runs;

    /// <summary>The smallest input found.</summary>
    public FuzzInput Of(FuzzInput input, string failure)
    {
        bool Fails(FuzzInput candidate) => _runs++ < MostRuns && _watch.Elapsed < MostTime && Failure.Of(target, candidate)?.Key == failure;

        var files = Parts(input.Files, kept => Fails(new([.. kept])));
        for (var i = 0; i < files.Count; i++)
        {
            var at = i;
            foreach (var between in (char[])['\n', ','])
            {
                Try(between);
            }

            Try(' ');
            if (files[at].Content.Length < 2000)
            {
                var bytes = Parts([.. files[at].Content], kept => Fails(With([.. kept])));
                files[at] = files[at] with { Content = [.. bytes] };
            }

            void Try(char between)
            {
                // Bytes of no text stay as they are: Latin 1 keeps each of them.
                var parts = Parts([.. Encoding.Latin1.GetString(files[at].Content).Split(between)], kept => Fails(With(Joined(kept,
                    between))));
                files[at] = files[at] with { Content = Joined(parts, between) };
            }

            FuzzInput With(byte[] content) => new([.. files[..at], files[at] with { Content = content }, .. files[(at + 1)..]]);
        }

        return new([.. files]);
    }

    private static byte[] Joined(IEnumerable<string> parts, char between) => Encoding.Latin1.GetBytes(string.Join(between, parts));

    /// <summary>The parts without which it does not fail: large runs of them are left out first (Zeller and Hildebrandt, 2002).</summary>
    private static List<T> Parts<T>(IReadOnlyList<T> all, Func<List<T>, bool> fails)
    {
        var parts = all.ToList();
        for (var size = Math.Max(1, parts.Count / 2); size > 0; size /= 2)
        {
            for (var at = 0; at < parts.Count;)
            {
                var rest = parts.ToList();
                rest.RemoveRange(at, Math.Min(size, rest.Count - at));
                if (fails(rest))
                {
                    parts = rest;
                }
                else
                {
                    at += size;
                }
            }
        }

        return parts;
    }
}
