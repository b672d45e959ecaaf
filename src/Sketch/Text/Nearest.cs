namespace Sketch.Text;

/// <summary>The nearest known word to a misspelt one.</summary>
public static class Nearest
{
    /// <summary>
    /// The candidate with the smallest edit distance (a letter inserted, deleted, changed, or two neighbours swapped: optimal string
    /// alignment); among equals the one nearest in length, as fingers swap letters more often than they add one, then the first in order;
    /// null when none is within a third of the word's letters.
    /// </summary>
    public static string? Find(string word, IEnumerable<string> candidates)
    {
        if (word.Length > 40)
        {
            return null;
        }

        var lower = word.ToLowerInvariant();
        return candidates
            .Select(c => (Candidate: c, Distance: Distance(lower, c.ToLowerInvariant())))
            .Where(c => c.Distance <= Math.Max(1, Math.Max(word.Length, c.Candidate.Length) / 3))
            .OrderBy(c => c.Distance).ThenBy(c => Math.Abs(c.Candidate.Length - word.Length))
            .ThenBy(c => c.Candidate, StringComparer.Ordinal)
            .Select(c => c.Candidate)
            .FirstOrDefault();
    }

    private static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            rows[i, 0] = i;
        }

        for (var j = 0; j <= b.Length; j++)
        {
            rows[0, j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                rows[i, j] = Math.Min(change, Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
                }
            }
        }

        return rows[a.Length, b.Length];
    }
}
