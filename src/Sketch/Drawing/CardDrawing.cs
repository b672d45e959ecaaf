using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Drawing;

/// <summary>The picture of one face of a card.</summary>
public static class CardDrawing
{
    /// <summary>The default pixels per inch of pictured papers: sharp on a screen, good enough in print.</summary>
    public const double UsualDotsPerInch = 150;

    /// <summary>
    /// Draws a face at true size as SVG: the paper of the base, then every piece in drawing order in a group of its own, whose id is
    /// derived from its path and whose title says what it is. Through a window in the base the inside shows behind the front. The picture
    /// is exactly as large as the face; what hangs over the edge is cut off. The same card gives the same text on every machine.
    /// </summary>
    /// <param name="card">The card.</param>
    /// <param name="face">A face; one that the file does not mention is drawn bare.</param>
    /// <param name="dotsPerInch">The most pixels per inch of pictured papers; what is drawn needs none.</param>
    /// <exception cref="ArgumentException">An envelope is requested and the card has none.</exception>
    public static string Draw(LaidOutCard card, FaceKind face, double dotsPerInch = UsualDotsPerInch) =>
        Picture(card, face, dotsPerInch).Svg;

    /// <summary>The same picture, with the source lines of its groups.</summary>
    /// <param name="card">The card.</param>
    /// <param name="face">A face; one that the file does not mention is drawn bare.</param>
    /// <param name="dotsPerInch">The most pixels per inch of pictured papers; what is drawn needs none.</param>
    /// <exception cref="ArgumentException">An envelope is requested and the card has none.</exception>
    public static CardPicture Picture(LaidOutCard card, FaceKind face, double dotsPerInch = UsualDotsPerInch)
    {
        var drawn = new List<DrawnPiece>();
        var svg = SvgWriter.Sheet(SizeOf(card, face), card.Units == UnitSystem.Inches, $"{card.Title}: {Spoken(face)}")
            .Insert(Part(card, face, dotsPerInch, new(), drawn)).Close().ToString();
        return new(svg, [.. drawn]);
    }

    /// <summary>
    /// Draws one side of the base unfolded, at true size. The outside is the back and the front: side by side, or the back above and upside
    /// down where the card folds at the top. The inside is the back of the front beside (or above) the inside. A dashed line shows where to
    /// score; its title gives the distance from the edge.
    /// </summary>
    /// <param name="card">The card.</param>
    /// <param name="outside">Whether the outside is drawn; otherwise the inside.</param>
    /// <param name="dotsPerInch">The most pixels per inch of pictured papers.</param>
    public static CardPicture Flat(LaidOutCard card, bool outside, double dotsPerInch = UsualDotsPerInch) =>
        FlatBaseDrawing.Draw(card, outside, dotsPerInch);

    /// <summary>
    /// A face without the root element, in millimetres from the top left of the face, for insertion into a larger drawing.
    /// </summary>
    /// <param name="card">The card.</param>
    /// <param name="face">A face.</param>
    /// <param name="dotsPerInch">The most pixels per inch of pictured papers.</param>
    /// <param name="ids">The ids of the larger drawing.</param>
    /// <exception cref="ArgumentException">An envelope is requested and the card has none.</exception>
    public static SvgWriter Part(LaidOutCard card, FaceKind face, double dotsPerInch, SvgIds ids) =>
        Part(card, face, dotsPerInch, ids, []);

    /// <summary>The same, recording what is drawn.</summary>
    /// <param name="card">The card.</param>
    /// <param name="face">A face.</param>
    /// <param name="dotsPerInch">The most pixels per inch of pictured papers.</param>
    /// <param name="ids">The ids of the larger drawing.</param>
    /// <param name="drawn">Receives what is drawn, in drawing order.</param>
    internal static SvgWriter Part(LaidOutCard card, FaceKind face, double dotsPerInch, SvgIds ids, List<DrawnPiece> drawn)
    {
        var size = SizeOf(card, face);
        var definitions = new Definitions(ids);
        var body = new SvgWriter(indent: 1);
        var faces = new FaceDrawing(card, body, definitions, ids, dotsPerInch, drawn);
        if (face == FaceKind.Front && card.Base.Outline.Contours.Length > 1)
        {
            faces.Draw(FaceKind.Inside, size);
        }

        faces.Draw(face, size);

        var part = new SvgWriter(indent: 1);
        if (definitions.Svg.Length > 0)
        {
            part.Open("defs").Insert(definitions.Svg).Close();
        }

        return part.Insert(body);
    }

    /// <summary>How large a face is drawn.</summary>
    /// <exception cref="ArgumentException">An envelope is requested and the card has none.</exception>
    public static Size SizeOf(LaidOutCard card, FaceKind face) => face is FaceKind.Envelope or FaceKind.EnvelopeBack
        ? (FaceDrawing.EnvelopeOf(card, face) ?? throw new ArgumentException($"'{card.Title}' has no envelope.", nameof(face))).Size
        : card.Base.Closed;

    private static string Spoken(FaceKind face) => Face.NameOf(face).Replace('-', ' ');
}
