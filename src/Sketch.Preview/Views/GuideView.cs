using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Edits;
using Sketch.Guide;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.World;

namespace Sketch.Preview.Views;

/// <summary>A word that can be written.</summary>
/// <param name="Word">The word.</param>
/// <param name="Kind">Whether it is a <c>piece</c>, a <c>clause</c> or begins a <c>line</c>.</param>
/// <param name="Means">What it means, with what is typed between backticks.</param>
/// <param name="Example">A line in which it is used; empty for none.</param>
/// <param name="Typed">What is put into the text: for a clause that clause alone; empty for nothing.</param>
/// <param name="Svg">A picture; empty for none.</param>
internal sealed record GuideEntry(string Word, string Kind, string Means, string Example, string Typed, string Svg);

/// <summary>All that can be written in a card.</summary>
/// <param name="Entries">The words: pieces first.</param>
internal sealed record GuideView(IEnumerable<GuideEntry> Entries)
{
    private const double DotsPerInch = 30;

    // White pieces must be seen on it, and kraft ones.
    private const string Card = "card \"Example\"\nbase A2, of #c9dbe2\nrole deep: navy\nfront\n";

    /// <summary>The words with their pictures: as put on for a kind of piece, else of the example if it can stand alone.</summary>
    public static GuideView Of(IWorld files, AdditionsView additions)
    {
        var pictures = additions.Additions.ToDictionary(a => a.Kind, a => a.Svg);
        return new([.. WordGuide.All.AsParallel().AsOrdered().Select(e =>
        {
            var isPutOn = PieceKinds.Find(e.Word) is { } piece && AddedPiece.Kinds.Contains(piece);
            var kind = isPutOn ? "piece" : Vocabulary.CardLines.Contains(e.Word) ? "line" : "clause";
            var example = e.Example ?? "";
            return new GuideEntry(e.Word, kind, e.Means, example, kind == "clause" ? ClauseOf(e.Word, example) : example,
                pictures.GetValueOrDefault(e.Word) ?? (kind == "clause" ? Draw(example, files) : ""));
        })]);
    }

    /// <summary>The clause of a line that begins with a word; empty if none does.</summary>
    private static string ClauseOf(string word, string line) => line.Split(',').Select(c => c.Trim())
        .FirstOrDefault(c => $"{c} ".StartsWith($"{word} ", StringComparison.OrdinalIgnoreCase)) ?? "";

    private static string Draw(string line, IWorld files)
    {
        var made = line.Length == 0 ? null : Compiler.Compile(new SourceText("example.card", $"{Card}  {line}\n"), files);
        return made is { Card: { Pieces.IsEmpty: false } card } && made.Findings.All(f => f.Severity != Severity.Error)
            ? CardDrawing.Draw(card, FaceKind.Front, DotsPerInch) : "";
    }
}
