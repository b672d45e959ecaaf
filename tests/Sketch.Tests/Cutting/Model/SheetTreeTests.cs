using Sketch.Cutting;
using Sketch.Cutting.Model;
using Sketch.Planning.CutSteps;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Cutting.Model;

/// <summary>A layout keeps the tree of its cuts, from which the steps of work are read.</summary>
public class SheetTreeTests
{
    private static readonly SheetLayout Row = Filled(Given.Inches(100, 1), new("square", Given.Inches(1, 1), 100));

    [Fact]
    public void A_layout_is_a_piece_a_rest_or_a_cut_into_two_layouts()
    {
        var tree = Assert.IsType<SheetCut>(Filled(Given.Inches(3, 1), new("square", Given.Inches(1, 1), 1)).Tree);

        Assert.Equal((true, Length.Inch(1)), (tree.IsUpright, tree.Distance));
        Assert.Equal("square", Assert.IsType<SheetPiece>(tree.First).Piece.Id);
        Assert.False(Assert.IsType<SheetRest>(tree.Second).IsTrim);
    }

    [Fact]
    public void Trim_is_cut_off_at_the_root_of_the_tree()
    {
        var sheet = new StockSheet(Given.Inches(12, 12), new(Length.Inch(1), Length.Zero, Length.Zero, Length.Zero));
        var layout = Assert.Single(Given.Problem(sheet, (Given.Inches(4, 4), 1, true)).Planned().Layouts);

        Assert.Equal(Assert.Single(layout.Trim).Size, Assert.IsType<SheetCut>(layout.Tree).WithoutTrim is { } kept
            ? new Size(layout.Stock.Width - kept.Place.Width, kept.Place.Height) : default);
    }

    [Fact]
    public void A_leftover_that_is_cut_up_takes_its_own_place_in_the_tree()
    {
        var problem = Given.Problem(Given.Sheet(4, 1), (Given.Inches(1, 1), 1, true));
        var (plans, _) = LeftoverFilling.Fill([(problem, problem.Planned())], [new("strip", Given.Inches(2, 1), 1)]);

        Assert.Equal(
            ["SheetCut", "SheetPiece", "SheetCut", "SheetPiece", "SheetRest"],
            Assert.Single(plans[0].Layouts).Tree.InOrder().Select(p => p.GetType().Name));
    }

    [Fact]
    public void Leftovers_of_one_size_are_listed_from_the_top_left()
    {
        var layout = new SheetLayout(Given.Inches(4, 2), false, 1,
            new SheetCut(At(0, 0, 4, 2), true, Length.Inch(2), Halved(At(0, 0, 2, 2)), Halved(At(2, 0, 2, 2))));
        Assert.Equal([At(0, 0, 2, 1), At(2, 0, 2, 1), At(0, 1, 2, 1), At(2, 1, 2, 1)], layout.Leftovers);

        static SheetCut Halved(Rect part)
        {
            var upper = part with { Height = part.Height / 2 };
            return new(part, false, upper.Height, new SheetRest(upper, false), new SheetRest(upper with { Top = upper.Bottom }, false));
        }
    }

    private static Rect At(int left, int top, int width, int height) =>
        new(Length.Inch(left), Length.Inch(top), Length.Inch(width), Length.Inch(height));

    [Fact]
    public void Every_leftover_can_be_cut_up()
    {
        var layout = Assert.Single(Given.Problem(Given.Sheet(12, 10), (Given.Inches(2, 2), 1, true), (Given.Inches(3, 3), 1, true))
            .Planned().Layouts);
        Assert.InRange(layout.Leftovers.Length, 2, 4);
        Assert.All(layout.Leftovers, leftover =>
        {
            var part = new SheetPiece(new("p", leftover, false));
            Assert.Contains(part, layout.Tree.With(leftover, part).InOrder());
        });
    }

    [Fact]
    public void A_part_replaces_only_a_leftover() =>
        Assert.Throws<ArgumentException>(() => Row.Tree.With(Row.Pieces[0].Place, Row.Tree));

    [Fact]
    public void The_cuts_of_a_row_are_one_step() => Assert.Equal(99, Assert.Single(CutSequence.Of(Row)).Cuts.Length);

    [Fact]
    public void The_steps_are_all_cuts_of_the_tree()
    {
        var problem = Given.Problem(Given.Sheet(12, 12), (Given.Inches(4, 5.25), 3, true), (Given.Inches(2, 3), 5, true));
        Assert.All(problem.Planned().Layouts, layout => Assert.Equal(
            layout.Cuts.OrderBy(c => c.ToString()), CutSequence.Of(layout).SelectMany(s => s.Cuts).OrderBy(c => c.ToString())));
    }

    [Fact]
    public void A_row_of_100_000_pieces_is_cut_in_one_step()
    {
        const int Pieces = 100_000;
        var layout = Filled(Given.Inches(Pieces, 1), new("square", Given.Inches(1, 1), Pieces));

        Assert.Equal(Pieces - 1, Assert.Single(CutSequence.Of(layout)).Cuts.Length);
        Assert.NotEqual(0, layout.GetHashCode());
        Assert.NotEmpty(layout.Tree.ToString());
    }

    private static SheetLayout Filled(Size offcut, PieceDemand pieces)
    {
        var problem = new CuttingProblem(Given.Sheet(1, 1), [new(offcut, 1)], []);
        return Assert.Single(LeftoverFilling.Fill([(problem, new(0, 0, [], []))], [pieces]).Plans[0].Layouts);
    }
}
