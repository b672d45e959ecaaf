using System.Globalization;
using System.Text.RegularExpressions;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.World;

namespace Sketch.Output.Handbook;

/// <summary>The drawings of a card beside its text.</summary>
internal static partial class CardFigures
{
    private const double PixelsPerMillimetre = 2.1;

    private static readonly (string Word, FaceKind Face)[] More =
        [("inside", FaceKind.Inside), ("back", FaceKind.Back), ("envelope", FaceKind.Envelope)];

    /// <summary>The front, or the first face that has anything on it, then the faces that the example asks for; none with errors.</summary>
    /// <param name="example">The example.</param>
    /// <param name="folder">The folder in which it stands.</param>
    /// <param name="world">The files round it.</param>
    /// <param name="prefix">The beginning of all ids in these drawings.</param>
    public static IEnumerable<ExampleFigure> Of(HandbookExample example, string folder, IWorld world, string prefix)
    {
        var read = Compiler.Compile(example.Source(folder), world);
        if (read.HasErrors || read.Card is not { } card)
        {
            yield break;
        }

        var first = card.Faces.FirstOrDefault(f => f.Kind == FaceKind.Front || card.On(f.Kind).Any())?.Kind ?? FaceKind.Front;
        if (example.Has("rough"))
        {
            yield return new("Pencil sketch", Sized(new RoughLayout(card, example.LinesAbove, world).Draw(first)));
        }

        foreach (var (number, face) in More.Where(m => example.Has(m.Word)).Select(m => m.Face).Prepend(first).Distinct().Index())
        {
            var name = Face.NameOf(face).Replace('-', ' ');
            var ids = new SvgIds(string.Create(CultureInfo.InvariantCulture, $"{prefix}{number}-"));
            var drawing = CardDrawing.Part(card, face, CardDrawing.UsualDotsPerInch, ids);
            yield return new($"{char.ToUpperInvariant(name[0])}{name[1..]}, {PieceTitle.Size(CardDrawing.SizeOf(card, face), card.Units)}",
                Sized(SvgWriter.Sheet(CardDrawing.SizeOf(card, face), inInches: false, $"{card.Title}: {name}").Insert(drawing).Close()
                    .ToString()));
        }
    }

    /// <summary>A picture about half as large as the card. Browsers read <c>href</c>, so the older form of each reference goes.</summary>
    private static string Sized(string svg) => Physical().Replace(
        OlderReference().Replace(svg, ""),
        size => string.Create(CultureInfo.InvariantCulture,
            $" {size.Groups["side"]}=\"{double.Parse(size.Groups["mm"].Value, CultureInfo.InvariantCulture) * PixelsPerMillimetre:0}\""),
        2);

    [GeneratedRegex(" (?:xmlns:xlink|xlink:href)=\"[^\"]*\"")]
    private static partial Regex OlderReference();

    [GeneratedRegex(" (?<side>width|height)=\"(?<mm>[0-9.]+)mm\"")]
    private static partial Regex Physical();
}
