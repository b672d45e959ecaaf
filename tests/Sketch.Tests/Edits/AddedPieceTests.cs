using Sketch.Diagnostics;
using Sketch.Edits;
using Sketch.Kinds;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Shapes;
using Sketch.Tests.Project;
using Sketch.Text;
using Xunit;

namespace Sketch.Tests.Edits;

public class AddedPieceTests
{
    private const string Card = """
        card "Lamp"
        base A2, of white
        role sky: blue
        role deep: navy
        front
          sky: panel 4 x 5, of sky
            mat +1/8, of deep   # the rim
            star 1, of gold
          # the words
          text "Hello", bottom 1/4
        inside
          text "Ahoy"

        """;

    private static readonly FolderFiles World = new();

    public static TheoryData<PieceKind> Kinds() => [.. AddedPiece.Kinds];

    [Theory]
    [InlineData(PieceKind.Star, 6, 54, 70, "    star 1 1/4, of deep", 9)]
    [InlineData(PieceKind.Star, 6, 30, 30, "    star 1 1/4, left 7/16, top 5/16, of deep", 9)]
    [InlineData(PieceKind.Circle, 6, 90, 120, "    circle 1 1/4, right 0, bottom 0, of deep", 9)]
    [InlineData(PieceKind.Strip, 6, 54, 120, "    strip full x 3/4, bottom 1/8, of deep", 9)]
    [InlineData(PieceKind.Mat, 6, 54, 70, "    mat +1/8, of deep", 8)]
    [InlineData(PieceKind.Mat, 8, 54, 70, "      mat +1/8, of deep", 9)]
    [InlineData(PieceKind.Heart, 10, 54, 120, "  heart 1 3/8, bottom 1/8, of deep", 11)]
    [InlineData(PieceKind.Ribbon, 6, 54, 100, "    ribbon 3/8, along bottom, shift up 1 1/8, of deep", 9)]
    public void A_maker_would_type_the_line(PieceKind kind, int line, double x, double y, string typed, int at)
    {
        var (text, added) = Put(Card, kind, new(FaceKind.Front, line, new(x, y)));

        Assert.Equal((typed, at), (text.Line(added.Line - 1), added.Line));
    }

    [Fact]
    public void Everything_else_stays_as_it_is()
    {
        var (text, added) = Put(Card, PieceKind.Star, new(FaceKind.Front, 6, null));

        Assert.Equal(Card, string.Join('\n', text.Content.Split('\n').Where((_, i) => i != added.Line - 1)));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Each_kind_fits_in_the_middle_of_a_panel_and_under_a_click(PieceKind kind)
    {
        foreach (var at in new Point?[] { null, new(30, 40), new(70, 100) })
        {
            var (text, added) = Put(Card, kind, new(FaceKind.Front, 6, at));
            var made = Compiler.Compile(text, World);

            Assert.Equal("", string.Join('\n', made.Findings.Where(f => f.Severity == Severity.Error).Select(f => f.Message)));
            Assert.Contains(made.Card!.Pieces, p => p.Kind == kind && p.Location.Start.Line == added.Line);
        }
    }

    [Fact]
    public void On_every_sample_a_line_is_added_and_all_others_stay()
    {
        var random = new Random(20);
        foreach (var file in Directory.GetFiles(Path.Combine(Repository.Root, "sketches"), "*.card"))
        {
            var source = new SourceText(file, File.ReadAllText(file));
            var card = Compiler.Compile(source, World).Card!;
            var kinds = AddedPiece.Kinds.ToList();
            foreach (var piece in card.Pieces.Where(p => p.Location.Source == source).OrderBy(_ => random.Next()).Take(3))
            {
                var kind = kinds[random.Next(kinds.Count)];
                var at = new Point((piece.Box.Left + piece.Box.Right).Millimetres / 2, piece.Box.Top.Millimetres);
                var added = AddedPiece.Put(
                    source, card, kind, new(piece.Face, piece.Location.Start.Line, at), t => Compiler.Compile(t, World).Card);
                if (added.ValueOrDefault is not { } one)
                {
                    continue;
                }

                var text = new SourceText(file, TextEdit.Apply(source.Content, [one.Edit]));
                Assert.Equal(source.Content, text.Content.Remove(one.Edit.Span.Start, one.Edit.Text.Length));
                Assert.StartsWith(kind.Name, text.Line(one.Line - 1).Trim(), StringComparison.Ordinal);
                Assert.Equal(source.LineCount + 1, text.LineCount);
            }
        }
    }

    [Fact]
    public void A_mat_needs_a_piece_to_lie_under() => Assert.StartsWith(
        "A mat goes under a piece.", Try(Card, PieceKind.Mat, new(FaceKind.Front, 0, null)).Problem, StringComparison.Ordinal);

    [Fact]
    public void A_metric_card_gets_whole_millimetres_and_keeps_its_tabs()
    {
        var (text, added) = Put("card \"Lamp\"\nunits mm\nbase ISO A6, of white\nfront\n\tpanel 90 x 120, of navy\n", PieceKind.Panel,
            new(FaceKind.Front, 5, new(40, 50)));

        Assert.Equal("\t\tpanel 45 x 60, left 10, top 6, of white", text.Line(added.Line - 1));
    }

    private static (SourceText Text, AddedPiece Added) Put(string card, PieceKind kind, PieceSpot spot)
    {
        var added = Try(card, kind, spot).Value;
        return (new("lamp.card", TextEdit.Apply(card, [added.Edit])), added);
    }

    private static Result<AddedPiece> Try(string card, PieceKind kind, PieceSpot spot)
    {
        var source = new SourceText("lamp.card", card);
        return AddedPiece.Put(source, Compiler.Compile(source, World).Card!, kind, spot, t => Compiler.Compile(t, World).Card);
    }
}
