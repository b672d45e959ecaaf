using System.Collections.Immutable;
using Sketch.Drawing;
using Sketch.Output.Rendering;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.Variants;

namespace Sketch.Preview.Views;

/// <summary>A card in other papers.</summary>
/// <param name="Choices">The paper of each role, as on the command line.</param>
/// <param name="Name">The papers, in words.</param>
/// <param name="Picture">A small picture, a PNG.</param>
internal sealed record VariantView(IEnumerable<string> Choices, string Name, byte[] Picture);

/// <summary>A card in many papers of a stash, each a small picture to choose.</summary>
/// <param name="Variants">The variants.</param>
/// <param name="Told">A sentence about them.</param>
/// <param name="Notes">What was tried for each role, and what was left out and why, in sentences.</param>
internal sealed record VariantsView(IEnumerable<VariantView> Variants, string Told, IEnumerable<string> Notes)
{
    /// <summary>The most variants that are shown at once.</summary>
    public const int Limit = 24;

    private const double DotsPerInch = 60;

    /// <summary>The best variants of a card in the papers of a stash.</summary>
    /// <param name="card">The card.</param>
    /// <param name="stash">The stash.</param>
    public static VariantsView Of(LaidOutCard card, Stash stash)
    {
        var found = VariantSearch.Find(card, stash, new([], [], Limit));
        var pictures = Pictures(card, new(stash, []), found.Best);
        return new(
            found.Best.Zip(pictures, (variant, picture) => new VariantView(
                variant.Choices.Select(c => c.ToString()),
                string.Join(", ", variant.Choices.Select(c => $"{c.Role} {c.Paper}{(c.Side == PaperSide.Back ? " back" : "")}")),
                picture)),
            found.Best.IsEmpty
                ? found.WhyNone(card)
                : $"{found.Best.Length} shown of {Counted.Of(found.Found, "good way")} to make it, out of {found.Tried} tried; "
                    + "the most varied and most legible first.",
            found.Notes);
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
