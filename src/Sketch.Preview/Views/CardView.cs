using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Serialization;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>A picture of a face, or of the unfolded base.</summary>
/// <param name="Name">The face.</param>
/// <param name="Title">The face and its size, in words.</param>
/// <param name="Width">Its width in millimetres.</param>
/// <param name="Height">Its height in millimetres.</param>
/// <param name="Stamp">Identifies the picture; two with the same stamp are equal.</param>
/// <param name="Svg">The picture; null when the page has it already.</param>
/// <param name="Pieces">The pieces in it.</param>
internal sealed record PictureView(
    string Name,
    string Title,
    double Width,
    double Height,
    string Stamp,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Svg,
    IEnumerable<PieceView> Pieces);

/// <summary>A piece in a picture.</summary>
/// <param name="Id">Its id in the picture.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Line">Its line in the text; 0 for a piece from another file.</param>
/// <param name="Path">
/// Its path, by which it can be changed by hand; null for what is no piece, such as the base, and where the base is unfolded.
/// </param>
internal sealed record PieceView(
    string Id, string Title, int Line, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] string? Path);

/// <summary>A role of the card and its paper.</summary>
/// <param name="Name">The role.</param>
/// <param name="Paper">The paper, in words.</param>
/// <param name="Side">front or back.</param>
internal sealed record RoleView(string Name, string Paper, string Side);

/// <summary>What the page shows of a card: pictures and the papers of its roles.</summary>
internal static class CardView
{
    /// <summary>The pictures of a card.</summary>
    /// <param name="card">The card.</param>
    /// <param name="source">The text that the window shows.</param>
    /// <param name="isUnfolded">Whether the base is shown unfolded in place of its faces.</param>
    /// <param name="known">Stamps of the pictures that the page has.</param>
    public static IEnumerable<PictureView> Pictures(LaidOutCard card, SourceText source, bool isUnfolded, IReadOnlySet<string> known)
    {
        foreach (var (name, title, size, picture) in Drawn(card, isUnfolded))
        {
            var stamp = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(picture.Svg)).AsSpan(0, 10));
            yield return new(
                name,
                $"{title}, {PieceTitle.Size(size, card.Units)}",
                size.Width.Millimetres,
                size.Height.Millimetres,
                stamp,
                known.Contains(stamp) ? null : picture.Svg,
                picture.Pieces.Select(p => new PieceView(p.Id, p.Title, p.Location.Source == source ? p.Location.Start.Line : 0,
                    isUnfolded ? null : p.Path?.ToString())));
        }
    }

    /// <summary>The roles of a card.</summary>
    public static IEnumerable<RoleView> Roles(LaidOutCard card) => card.Roles.Select(r =>
        new RoleView(r.Name, PieceTitle.Paint(r.Paint), r.Paint.Side == PaperSide.Back ? "back" : "front"));

    private static IEnumerable<(string Name, string Title, Units.Size Size, CardPicture Picture)> Drawn(LaidOutCard card, bool isUnfolded)
    {
        if (isUnfolded)
        {
            yield return ("outside", "Outside, unfolded", card.Base.Flat, CardDrawing.Flat(card, outside: true));
            yield return ("inside", "Inside, unfolded", card.Base.Flat, CardDrawing.Flat(card, outside: false));
            yield break;
        }

        ImmutableArray<FaceKind> faces = card.Faces.IsEmpty ? [FaceKind.Front] : [.. card.Faces.Select(f => f.Kind)];
        foreach (var face in faces)
        {
            var name = Face.NameOf(face);
            var label = name.Replace('-', ' ');
            yield return (name, char.ToUpperInvariant(label[0]) + label[1..], card.Find(face)?.Size
                ?? card.Base.Closed, CardDrawing.Picture(card, face));
        }
    }
}
