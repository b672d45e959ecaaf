using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Preview.Sessions;
using Sketch.Text;

namespace Sketch.Preview.Views;

/// <summary>
/// What the page shows of a card: a picture of every face, with the line of every piece in it, and the papers of its roles.
/// </summary>
public static class CardView
{
    /// <summary>
    /// Writes the properties <c>pictures</c> and <c>roles</c>. A picture that the page has already is written without its SVG.
    /// </summary>
    /// <param name="json">The writer.</param>
    /// <param name="reading">The card.</param>
    /// <param name="isUnfolded">Whether the base is shown unfolded in place of its faces.</param>
    /// <param name="known">Stamps of the pictures that the page has.</param>
    public static void Write(Utf8JsonWriter json, Reading reading, bool isUnfolded, IReadOnlySet<string> known)
    {
        if (reading.Card is not { } card)
        {
            return;
        }

        json.WriteStartArray("pictures");
        foreach (var (name, title, size, picture) in Pictures(card, isUnfolded))
        {
            var stamp = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(picture.Svg)).AsSpan(0, 10));
            json.WriteStartObject();
            json.WriteString("name", name);
            json.WriteString("title", $"{title}, {PieceTitle.Size(size, card.Units)}");
            json.WriteNumber("width", size.Width.Millimetres);
            json.WriteNumber("height", size.Height.Millimetres);
            json.WriteString("stamp", stamp);
            if (!known.Contains(stamp))
            {
                json.WriteString("svg", picture.Svg);
            }

            Pieces(json, picture, reading.Source);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Roles(json, card);
    }

    private static IEnumerable<(string Name, string Title, Units.Size Size, CardPicture Picture)> Pictures(
        LaidOutCard card, bool isUnfolded)
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

    private static void Pieces(Utf8JsonWriter json, CardPicture picture, SourceText source)
    {
        json.WriteStartArray("pieces");
        foreach (var piece in picture.Pieces)
        {
            json.WriteStartObject();
            json.WriteString("id", piece.Id);
            json.WriteString("title", piece.Title);
            // A piece from another file has no line in this one.
            json.WriteNumber("line", piece.Location.Source == source ? piece.Location.Start.Line : 0);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Roles(Utf8JsonWriter json, LaidOutCard card)
    {
        json.WriteStartArray("roles");
        foreach (var role in card.Roles)
        {
            json.WriteStartObject();
            json.WriteString("name", role.Name);
            json.WriteString("paper", PieceTitle.Paint(role.Paint));
            json.WriteString("side", role.Paint.Side == PaperSide.Back ? "back" : "front");
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
