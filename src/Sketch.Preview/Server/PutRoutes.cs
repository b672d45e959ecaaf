using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Sketch.Edits;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Shapes;
using Sketch.Text;

namespace Sketch.Preview.Server;

/// <summary>A piece to put onto the card that a window shows.</summary>
/// <param name="File">The card.</param>
/// <param name="Window">The window.</param>
/// <param name="Kind">The word of its kind.</param>
/// <param name="Face">The name of the face.</param>
/// <param name="Line">The line of the piece on which it is put; 0 for the face.</param>
/// <param name="X">Millimetres from the left of the face to its middle; null for the middle of what it lies on.</param>
/// <param name="Y">Millimetres from the top of the face to its middle.</param>
internal sealed record PutRequest(
    string File = "", string Window = "", string Kind = "", string Face = "", int Line = 0, double? X = null, double? Y = null);

/// <summary>A word to put into the card that a window shows.</summary>
/// <param name="File">The card.</param>
/// <param name="Window">The window.</param>
/// <param name="Word">A word of <see cref="GuideView"/>.</param>
/// <param name="Line">The line at which the caret is.</param>
internal sealed record PutWordRequest(string File = "", string Window = "", string Word = "", int Line = 0);

/// <summary>A paper for a piece of the card that a window shows.</summary>
/// <param name="File">The card.</param>
/// <param name="Window">The window.</param>
/// <param name="Line">The line of the piece.</param>
/// <param name="Paper">The paper of the stash.</param>
internal sealed record PaintRequest(string File = "", string Window = "", int Line = 0, string Paper = "");

/// <summary>Requests to put something onto a card, and for what can be put there.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class PutRoutes(PageServices room)
{
    // Drawn when first asked for, and then the same for all windows.
    private readonly Lazy<AdditionsView> _additions = new(() => AdditionsView.Of(room.Readings.Files));
    private GuideView? _guide;

    /// <summary>Maps the requests about putting something on.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/additions", () => TypedResults.Ok(_additions.Value));
        routes.MapGet("/guide", () => TypedResults.Ok(Guide));
        routes.MapPost("/put-word", PutWord);
        routes.MapPost("/paint", Paint);
        routes.MapPost("/put", Put);
    }

    private Results<Ok<EditView>, Problem> Put(PutRequest asked)
    {
        if (room.Readings.Find(asked.Window, asked.File) is not { } reading)
        {
            return FileRoutes.NoName(asked.File);
        }

        if (reading.Card is not { } card)
        {
            return Refused("The text has errors, so nothing can be put on the card yet. Fix the problems listed below the text first.");
        }

        if (PieceKinds.Find(asked.Kind) is not { } kind || !AddedPiece.Kinds.Contains(kind)
            || FaceOf(asked.Face) is not { } face)
        {
            return Refused("That cannot be put on a card. Choose again.");
        }

        var spot = new PieceSpot(face, asked.Line, asked.X is { } x && asked.Y is { } y ? new Point(x, y) : null);
        var added = AddedPiece.Put(reading.Source, card, kind, spot, text => Compile(text).Card);
        if (added.ValueOrDefault is not { } piece)
        {
            return Refused(added.Problem!);
        }

        // What a maker would have to repair at once is not written.
        var after = Compile(new(reading.Source.Path, TextEdit.Apply(reading.Source.Content, [piece.Edit])));
        return new Reading(after, reading.Filling).ErrorSince(reading) is { } error
            ? Refused(error)
            : TypedResults.Ok(EditView.Of(reading.Source, piece.Edit, piece.Line));

        Compilation Compile(SourceText text) => Compiler.Compile(text, room.Readings.Files, reading.Filling);
    }

    private GuideView Guide => _guide ??= GuideView.Of(room.Readings.Files, _additions.Value);

    private Results<Ok<EditView>, Problem> PutWord(PutWordRequest asked)
    {
        if (room.Readings.Find(asked.Window, asked.File) is not { } reading)
        {
            return FileRoutes.NoName(asked.File);
        }

        if (Guide.Entries.FirstOrDefault(e => e.Word == asked.Word) is not { Typed.Length: > 0 } entry)
        {
            return Refused($"\"{asked.Word}\" cannot be put in by itself. Type it where it belongs.");
        }

        return AddedWord.Put(reading.Source, entry.Typed, entry.Kind == "clause", asked.Line) is { } added
            ? TypedResults.Ok(EditView.Of(reading.Source, added.Edit, added.Line))
            : Refused("A clause goes into the line of a piece. Put the caret into that line first.");
    }

    private Results<Ok<EditView>, Problem> Paint(PaintRequest asked)
    {
        if (room.Readings.Find(asked.Window, asked.File) is not { } reading)
        {
            return FileRoutes.NoName(asked.File);
        }

        // A name after "of" is a role first.
        if (reading.Card?.Roles.FirstOrDefault(r => r.Name.Equals(asked.Paper, StringComparison.OrdinalIgnoreCase)) is { } role
            && role.Paint.Paper != asked.Paper)
        {
            return Refused($"The role {role.Name} of this card has the name of that paper. Rename the role, or choose another paper.");
        }

        return asked.Paper.EndsWith("/back", StringComparison.Ordinal)
            ? Refused("Only a role can be made of the back of a paper. Choose the role of this piece, then the paper.")
            : PieceOn(reading, asked.Line) is not { } piece
            ? Refused("No piece is on the line of the caret. Click a piece in the picture first.")
            : PieceEditing.Of(reading.Card!, reading.Source, piece, new PaperChange(asked.Paper)) switch
            {
                { Refusals: [var refusal, ..] } => Refused(refusal.Reason),
                var painted => TypedResults.Ok(EditView.Of(reading.Source, painted.Edits.Single(), asked.Line)),
            };
    }

    private static Piece? PieceOn(Reading reading, int line) => reading.Card?.Pieces.FirstOrDefault(p =>
        p.Location.Source == reading.Source && p.Location.Start.Line == line && p.Kind != PieceKind.Shadow);

    private static FaceKind? FaceOf(string name) =>
        Enum.GetValues<FaceKind>().Where(f => Face.NameOf(f) == name).Select(f => (FaceKind?)f).FirstOrDefault();

    private static Problem Refused(string sentence) => new(StatusCodes.Status422UnprocessableEntity, sentence);
}
