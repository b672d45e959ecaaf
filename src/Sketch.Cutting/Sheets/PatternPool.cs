namespace Sketch.Cutting.Sheets;

/// <summary>The distinct patterns found so far, in the order in which they were found.</summary>
internal sealed class PatternPool
{
    private readonly Dictionary<string, Pattern> _byKey = [];
    private readonly List<Pattern> _patterns = [];

    public IReadOnlyList<Pattern> Patterns => _patterns;

    /// <summary>Adds a pattern; false if one with the same pieces is already there.</summary>
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
