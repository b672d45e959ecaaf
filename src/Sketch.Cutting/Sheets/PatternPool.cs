namespace Sketch.Cutting.Sheets;

/// <summary>The different patterns met so far, in the order in which they were found.</summary>
internal sealed class PatternPool
{
    private readonly Dictionary<string, Pattern> _byKey = [];
    private readonly List<Pattern> _patterns = [];

    public IReadOnlyList<Pattern> Patterns => _patterns;

    /// <summary>Keeps a pattern; false if one with the same pieces is there.</summary>
    public bool Add(Pattern pattern)
    {
        var isNew = _byKey.TryAdd(pattern.Key, pattern);
        if (isNew)
        {
            _patterns.Add(pattern);
        }

        return isNew;
    }
}
