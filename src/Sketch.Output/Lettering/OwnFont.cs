using System.Collections.Concurrent;

namespace Sketch.Output.Lettering;

/// <summary>
/// The font that comes with the tool, so that words look the same on every machine: Inter, under the SIL Open Font License.
/// </summary>
internal static class OwnFont
{
    /// <summary>Its family name.</summary>
    public const string Family = "Inter";

    /// <summary>The available weights, lightest first; there is no italic.</summary>
    public static readonly IReadOnlyList<FontWeight> Weights =
        [FontWeight.Thin, FontWeight.Light, FontWeight.Regular, FontWeight.Medium, FontWeight.SemiBold, FontWeight.Bold];

    private static readonly ConcurrentDictionary<FontWeight, Lazy<LetterFont>> Opened = new();

    /// <summary>One of <see cref="Weights"/>, opened once for the whole run.</summary>
    public static LetterFont Open(FontWeight weight) => Opened.GetOrAdd(weight, w => new(() => Read(w))).Value;

    private static LetterFont Read(FontWeight weight)
    {
        using var resource = typeof(OwnFont).Assembly.GetManifestResourceStream($"Inter-{weight}.ttf")
            ?? throw new InvalidOperationException($"The tool was built without its font in {weight}.");
        var bytes = new byte[resource.Length];
        resource.ReadExactly(bytes);
        return LetterFont.Open(bytes, 0) ?? throw new InvalidOperationException($"The tool's own font in {weight} is broken.");
    }
}
