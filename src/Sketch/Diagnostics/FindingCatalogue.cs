using System.Collections.Immutable;
using System.Reflection;

namespace Sketch.Diagnostics;

/// <summary>
/// Every kind of finding. Codes are permanent; a retired number is never used again.
/// The first digit is the group (see <see cref="GroupOf"/>).
/// Each part of this class lists the codes of one stage, and a Markdown file beside it explains them
/// (see <see cref="Explanations"/>).
/// </summary>
public static partial class FindingCatalogue
{
    private static readonly Lazy<ImmutableArray<FindingKind>> Every = new(() =>
    [
        .. typeof(FindingCatalogue).GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(f => f.GetValue(null)).OfType<FindingKind>().OrderBy(k => k.Code, StringComparer.Ordinal),
    ]);

    /// <summary>Every kind of finding, in the order of codes.</summary>
    public static ImmutableArray<FindingKind> All => Every.Value;

    /// <summary>What the codes of one hundred are about, such as "Layout" for SK301.</summary>
    public static string GroupOf(FindingKind kind) => kind.Code[..3] switch
    {
        "SK0" => "Files",
        "SK1" => "Spelling and grammar",
        "SK2" => "Names and values",
        "SK3" => "Layout",
        "SK4" => "Fit",
        "SK5" => "Output",
        "SK6" => "Stash",
        "SK7" => "Cutting plan",
        "SK8" => "Count",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind.Code, "This code belongs to no group."),
    };

    private static FindingKind Error(string code, string title) => new(code, Severity.Error, title);

    private static FindingKind Warning(string code, string title) => new(code, Severity.Warning, title);

    private static FindingKind Note(string code, string title) => new(code, Severity.Note, title);
}
