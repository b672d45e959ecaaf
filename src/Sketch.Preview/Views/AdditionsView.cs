using Sketch.Drawing;
using Sketch.Edits;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Text;
using Sketch.World;

namespace Sketch.Preview.Views;

/// <summary>A kind of piece that can be put on a card.</summary>
/// <param name="Kind">The word of the kind.</param>
/// <param name="Svg">A picture of such a piece on a square.</param>
internal sealed record AdditionView(string Kind, string Svg);

/// <summary>What can be put on a card.</summary>
/// <param name="Additions">The kinds.</param>
internal sealed record AdditionsView(IEnumerable<AdditionView> Additions)
{
    private const double DotsPerInch = 40;

    private static readonly SourceText Square = new("square.card",
        """
        card "Square"
        base 2 x 2, of white
        role ground: #cfe3ea
        role deep: navy
        front
          panel 1 3/4 x 1 3/4, of ground

        """);

    /// <summary>The line of the panel on the square.</summary>
    private const int PanelLine = 6;

    /// <summary>All kinds, each drawn as it is put on.</summary>
    public static AdditionsView Of(IWorld files) => new([.. AddedPiece.Kinds.Select(k => new AdditionView(k.Name, Draw(k, files)))]);

    private static string Draw(PieceKind kind, IWorld files)
    {
        var card = Compiler.Compile(Square, files).Card!;
        var spot = new PieceSpot(FaceKind.Front, PanelLine, null);
        var added = AddedPiece.Put(Square, card, kind, spot, t => Compiler.Compile(t, files).Card).Value;
        var text = new SourceText(Square.Path, TextEdit.Apply(Square.Content, [added.Edit]));
        return CardDrawing.Draw(Compiler.Compile(text, files).Card!, FaceKind.Front, DotsPerInch);
    }
}
