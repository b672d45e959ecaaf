using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Routing;
using Sketch.Drawing;
using Sketch.Edits;
using Sketch.Panels;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Text;

namespace Sketch.Preview.Server;

/// <summary>Requests about pieces that are changed by hand. They answer with a text; the window takes it as an edit of its own.</summary>
/// <param name="room">The services of the page.</param>
internal sealed class HandRoutes(PageServices room)
{
    /// <summary>Maps the requests about pieces.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/hold", Hold);
        routes.MapPost("/hand", Hand);
    }

    private Results<Ok<HoldView>, Problem> Hold(HoldRequest asked)
    {
        if (Find(asked.Sheet, asked.Piece, out var found) is { } problem)
        {
            return problem;
        }

        var hold = PieceEditing.HoldOn(found.Card, found.Reading.Source, found.Piece);
        return hold.ValueOrDefault is { } held
            ? TypedResults.Ok(HoldView.Of(found.Card, held))
            : new Problem(StatusCodes.Status422UnprocessableEntity, hold.Problem!);
    }

    private Results<Ok<HandView>, Problem> Hand(HandRequest asked)
    {
        if (Find(asked.Sheet, asked.Piece, out var found) is { } problem)
        {
            return problem;
        }

        var (reading, card, piece) = found;
        var read = (asked.Change ?? new()).ToChange(card.Units);
        if (read.ValueOrDefault is not { } change)
        {
            return Answer(reading.Source.Content, asked.Piece, "", [new(read.Problem!, null)]);
        }

        var edit = PieceEditing.Of(card, reading.Source, piece, change);
        var text = TextEdit.Apply(reading.Source.Content, edit.Edits);
        if (edit.Edits.IsEmpty)
        {
            return Answer(text, asked.Piece, "", edit.Refusals);
        }

        // The picture that the window asks for next shows this text, so it is compiled once.
        var after = room.Readings.Of(reading.Source.Path, asked.Sheet!.ToText() with { Text = text });
        if (after.ErrorSince(reading) is { } error)
        {
            return Answer(reading.Source.Content, asked.Piece, "", [.. edit.Refusals, new(error, null)]);
        }

        var there = After(after, edit, change, piece);
        return Answer(text, there?.Path.ToString() ?? "", Sentence(after, there, piece, change), edit.Refusals);
    }

    /// <summary>The piece after the edit: of the same path, unless its lines have been moved or copied.</summary>
    private static Piece? After(Reading after, PieceEdit edit, PieceChange change, Piece piece) => change is DeleteChange ? null
        : after.Card?.Pieces.FirstOrDefault(p => edit.LineStart is { } start
            ? p.Location.Source == after.Source && p.Location.Span.Start == start : p.Path == piece.Path);

    private static string Sentence(Reading after, Piece? there, Piece before, PieceChange change)
    {
        if (there is null || after.Card is not { } card || PieceEditing.HoldOn(card, after.Source, there).ValueOrDefault is not { } hold)
        {
            return change is DeleteChange ? $"{before.Path.Name} is deleted." : "Done.";
        }

        var name = hold.Piece.Path.Name;
        return change switch
        {
            MoveChange or CopyChange => $"{name}: {PieceForm.PlaceOf(card, hold)}.",
            SizeChange => $"{name}: {PieceTitle.Size(hold.Piece.Box.Size, card.Units)}, {PieceForm.PlaceOf(card, hold)}.",
            OrderChange { Up: true } => $"{name} is one higher.",
            OrderChange => $"{name} is one lower.",
            _ => PieceTitle.Of(hold.Piece, card.Units) + ".",
        };
    }

    private static Ok<HandView> Answer(string text, string piece, string said, IEnumerable<Refusal> refusals) =>
        TypedResults.Ok(new HandView(text, piece, said, refusals.Select(r => RefusalView.Of(r)!)));

    /// <summary>The piece of a text; else the problem.</summary>
    private Problem? Find(SeeRequest? sheet, string path, out (Reading Reading, LaidOutCard Card, Piece Piece) found)
    {
        found = default;
        if (sheet is null || room.Folder.PathOf(sheet.File) is not { } file)
        {
            return FileRoutes.NoName(sheet?.File ?? "");
        }

        var reading = room.Readings.Of(file, sheet.ToText());
        if (reading.Card is not { } card || card.Pieces.FirstOrDefault(p => p.Path.ToString() == path) is not { } piece)
        {
            return new Problem(StatusCodes.Status404NotFound, "This piece is no longer on the card.");
        }

        found = (reading, card, piece);
        return null;
    }
}
