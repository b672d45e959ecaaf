using Sketch.Diagnostics;
using Sketch.Edits;
using Sketch.Tests.Layout;
using Sketch.Text;

namespace Sketch.Tests.Edits;

/// <summary>Does something to a piece of a card by hand.</summary>
internal static class Hands
{
    private const string Head = "card \"Test\"\nbase A2, fold left, of white\n";

    /// <summary>The lines beneath the front of an A2 card after a change.</summary>
    public static string On(string pieces, string path, PieceChange change, string head = Head)
    {
        var (edit, source) = Edit(pieces, path, change, head);
        var text = TextEdit.Apply(source.Content, edit.Edits);
        Laid.Out(text);
        return text[(head.Length + "front\n".Length)..];
    }

    /// <summary>What is refused, and what is offered instead.</summary>
    public static Refusal? Refused(string pieces, string path, PieceChange change) =>
        Edit(pieces, path, change, Head).Edit.Refusals.FirstOrDefault();

    public static string InMillimetres(string pieces, string path, PieceChange change) =>
        On(pieces, path, change, "card \"Test\"\nunits mm\nbase 105 x 148, fold left, of white\n");

    private static (PieceEdit Edit, SourceText Source) Edit(string pieces, string path, PieceChange change, string head)
    {
        var source = new SourceText("card.card", head + "front\n" + pieces);
        var compilation = Compiler.Compile(source, new TestWorld());
        Xunit.Assert.DoesNotContain(compilation.Findings, f => f.Severity == Severity.Error);
        return (PieceEditing.Of(compilation.Card!, source, compilation.Card!.Piece(path), change), source);
    }
}
