namespace Sketch.Stationery;

/// <summary>How far two spellings are apart.</summary>
internal static class Spelling
{
    /// <summary>The fewest letters to put in, take out or change to make one word of the other (Levenshtein's distance).</summary>
    public static int Distance(string a, string b)
    {
        var above = Enumerable.Range(0, b.Length + 1).ToArray();
        for (var i = 0; i < a.Length; i++)
        {
            var row = new int[b.Length + 1];
            row[0] = i + 1;
            for (var j = 0; j < b.Length; j++)
            {
                var change = above[j] + (a[i] == b[j] ? 0 : 1);
                row[j + 1] = Math.Min(change, Math.Min(above[j + 1], row[j]) + 1);
            }

            above = row;
        }

        return above[b.Length];
    }
}
