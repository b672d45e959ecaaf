using System.Collections.Immutable;
using Sketch.Text;

namespace Sketch.Diagnostics;

/// <summary>How serious a finding is.</summary>
public enum Severity
{
    /// <summary>Worth knowing; no problems found.</summary>
    Note,

    /// <summary>The card can be made, but probably not as intended.</summary>
    Warning,

    /// <summary>The card cannot be read, laid out or made.</summary>
    Error,
}

/// <summary>One thing found in a file: what is wrong, where, and what to type instead.</summary>
/// <param name="Kind">The entry of the catalogue: its stable code and severity.</param>
/// <param name="Location">Where.</param>
/// <param name="Message">A plain sentence with the user's own words and numbers.</param>
/// <param name="Hint">What to type or do instead.</param>
public sealed record Finding(FindingKind Kind, Location Location, string Message, string Hint)
{
    /// <summary>Where the hint is a plain replacement: the text to put in place of <see cref="Location"/>.</summary>
    public string? Replacement { get; init; }

    /// <summary>Stable code, such as SK101.</summary>
    public string Code => Kind.Code;

    /// <summary>How serious it is.</summary>
    public Severity Severity => Kind.Severity;
}

/// <summary>A kind of finding. Codes are permanent: a retired number is never used again.</summary>
/// <param name="Code">Stable code.</param>
/// <param name="Severity">How serious it is.</param>
/// <param name="Title">What it is about, in a few words.</param>
public sealed record FindingKind(string Code, Severity Severity, string Title);

/// <summary>Collects what one run finds, in order; a flood of findings is cut off, and the cut is reported.</summary>
public sealed class FindingBag
{
    /// <summary>How many findings of one kind are reported before the rest are only counted.</summary>
    public const int LimitPerKind = 100;

    private readonly List<Finding> _findings = [];
    private readonly Dictionary<FindingKind, (int Count, Location Last)> _counts = [];

    /// <summary>Whether an error is among them.</summary>
    public bool HasErrors { get; private set; }

    /// <summary>Whether further findings of a kind are only counted, so that their hints need not be computed.</summary>
    public bool IsFull(FindingKind kind) => _counts.TryGetValue(kind, out var known) && known.Count >= LimitPerKind;

    /// <summary>Adds a finding.</summary>
    public void Add(Finding finding)
    {
        HasErrors |= finding.Severity == Severity.Error;
        var (count, _) = _counts.GetValueOrDefault(finding.Kind);
        _counts[finding.Kind] = (count + 1, finding.Location);
        if (count < LimitPerKind)
        {
            _findings.Add(finding);
        }
    }

    /// <summary>Adds a finding of a kind.</summary>
    public void Add(FindingKind kind, Location location, string message, string hint, string? replacement = null) =>
        Add(new Finding(kind, location, message, hint) { Replacement = replacement });

    /// <summary>Takes back the findings of a kind that lie in a place where a later one says what to write instead.</summary>
    internal void Withdraw(FindingKind kind, Location place)
    {
        var taken = _findings.RemoveAll(f => f.Kind == kind && f.Location.Source == place.Source
            && place.Span.Start <= f.Location.Span.Start && f.Location.Span.End <= place.Span.End);
        if (taken > 0)
        {
            var (count, last) = _counts[kind];
            _counts[kind] = (count - taken, last);
        }
    }

    /// <summary>All findings in the order of files as first met and of places in them.</summary>
    public ImmutableArray<Finding> ToImmutable()
    {
        var all = new List<Finding>(_findings);
        foreach (var (kind, (count, last)) in _counts)
        {
            if (count > LimitPerKind)
            {
                all.Add(new(kind, last, $"{count - LimitPerKind} more of the same kind are not listed ({kind.Title}).",
                    "Fix the listed ones and run the check again."));
            }
        }

        var files = new Dictionary<SourceText, int>();
        foreach (var finding in all)
        {
            files.TryAdd(finding.Location.Source, files.Count);
        }

        return [.. all.OrderBy(f => files[f.Location.Source]).ThenBy(f => f.Location.Span.Start).ThenByDescending(f => f.Severity)];
    }
}
