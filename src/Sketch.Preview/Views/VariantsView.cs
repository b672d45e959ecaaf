using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Drawing;
using Sketch.Output.Rendering;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Variants;

namespace Sketch.Preview.Views;

/// <summary>A card in many papers of a stash, each a small picture to choose.</summary>
public static class VariantsView
{
    /// <summary>The most variants that are shown at once.</summary>
    public const int Limit = 24;

    private const double DotsPerInch = 60;

    /// <summary>Writes the properties <c>variants</c> and <c>told</c>, a sentence about them.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="card">The card.</param>
    /// <param name="stash">The stash.</param>
    public static void Write(Utf8JsonWriter json, LaidOutCard card, Stash stash)
    {
        var found = VariantSearch.Find(card, stash, new([], [], Limit));
        var pictures = Pictures(card, new(stash, []), found.Best);
        json.WriteStartArray("variants");
        foreach (var (variant, picture) in found.Best.Zip(pictures))
        {
            json.WriteStartObject();
            json.WriteStartArray("choices");
            foreach (var choice in variant.Choices)
            {
                json.WriteStringValue(choice.ToString());
            }

            json.WriteEndArray();
            json.WriteString("name",
                string.Join(", ", variant.Choices.Select(c => $"{c.Role} {c.Paper}{(c.Side == PaperSide.Back ? " back" : "")}")));
            json.WriteBase64String("picture", picture);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("told", found.Best.IsEmpty
            ? found.WhyNone(card) : $"{found.Best.Length} of {Counted.Of(found.Found, "way")} to make it, the most different and most "
                + "legible first.");
    }

    private static byte[][] Pictures(LaidOutCard card, RoleFilling filling, ImmutableArray<PaperVariant> variants)
    {
        var pictures = new byte[variants.Length][];
        Parallel.For(0, variants.Length, i =>
        {
            var repainted = Repainting.With(card, variants[i].Over(filling));
            using var png = new MemoryStream();
            SvgRenderer.WritePng(CardDrawing.Draw(repainted, FaceKind.Front, DotsPerInch), DotsPerInch, png);
            pictures[i] = png.ToArray();
        });
        return pictures;
    }
}
