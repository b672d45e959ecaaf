using Sketch.Drawing;
using Sketch.Editors.Protocol;
using Sketch.Panels;

namespace Sketch.Editors.Answers;

/// <summary>The pictures of a card, to show beside its text.</summary>
internal static class Picturing
{
    private const double DotsPerInch = 96;

    /// <summary>A picture of each face that the file mentions, the front in any case.</summary>
    public static CardPictures Of(Compilation compilation)
    {
        if (compilation.Card is not { } card)
        {
            var other = compilation.Stash?.Title ?? compilation.Batch?.Title;
            return new(other ?? "", [],
                other is null ? "The card cannot be laid out yet: the findings say why." : "Only a card has a picture.");
        }

        var faces = card.Faces.Select(f => f.Kind).Prepend(FaceKind.Front).Distinct();
        return new(card.Title, [.. faces.Select(f => new FacePicture(Face.NameOf(f), CardDrawing.Draw(card, f, DotsPerInch)))]);
    }
}
