using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;
using Xunit;

namespace Sketch.Tests.Layout;

/// <summary>Lays out the text of a card and compares its pieces with values worked out by hand.</summary>
internal static class Laid
{
    /// <summary>Equal gaps and centres are rounded to whole nanometres, so a place may differ this much from the exact value.</summary>
    private static readonly Length Crumb = new(2);

    public static LaidOutCard Out(string text, IWorld? world = null, string path = "card.card")
    {
        var compilation = Compiler.Compile(new SourceText(path, text), world ?? new TestWorld());
        Assert.DoesNotContain(compilation.Findings, f => f.Severity == Severity.Error);
        return compilation.Card!;
    }

    public static LaidOutCard OnA2(string pieces) => Out($"card \"Test\"\nbase A2, fold left, of white\nfront\n{pieces}");

    public static Piece Piece(this LaidOutCard card, string path)
    {
        Assert.Contains(path, card.Pieces.Select(p => p.Path.ToString()));
        return card.Pieces.Single(p => p.Path.ToString() == path);
    }

    /// <summary>The finished size, and the place of the unturned piece without its mats.</summary>
    public static void HasSizeAndPlace(this LaidOutCard card, string path, string size, string place)
    {
        card.HasSize(path, size);
        card.HasPlace(path, place);
    }

    public static void HasSize(this LaidOutCard card, string path, string size) =>
        Assert.Equal(Measure.Size(size), card.Piece(path).Box.Size);

    public static void HasPlace(this LaidOutCard card, string path, string place)
    {
        var box = card.Piece(path).Box;
        var expected = Measure.Place(place);
        Assert.True(
            (box.Left - expected.Left).Abs() <= Crumb && (box.Top - expected.Top).Abs() <= Crumb,
            $"{path} lies at {box.Left}, {box.Top} and not at {expected.Left}, {expected.Top}");
    }

    public static void IsCut(this LaidOutCard card, string path, string? size) =>
        Assert.Equal(size is null ? null : Measure.Size(size), card.Piece(path).Cut);

    /// <summary>A mat's border: left, top, right, bottom.</summary>
    public static void ShowsBorder(this LaidOutCard card, string path, string left, string top, string right, string bottom) =>
        Assert.Equal(
        new Insets(Measure.Length(left), Measure.Length(top), Measure.Length(right), Measure.Length(bottom)), card.Piece(path).Border);

    public static void ShowsBorder(this LaidOutCard card, string path, string everySide) =>
        card.ShowsBorder(path, everySide, everySide, everySide, everySide);

    public static void IsRaised(this LaidOutCard card, string path, string height) =>
        Assert.Equal(Measure.Length(height), card.Piece(path).Raised);

    /// <summary>The paths of the visible pieces, in drawing order.</summary>
    public static string[] Order(this LaidOutCard card) =>
        [.. card.Pieces.Where(p => p.Matter != PieceMatter.Unseen).Select(p => p.Path.ToString())];

    /// <summary>The roles of a piece's copies in reading order.</summary>
    public static string?[] RolesOf(this LaidOutCard card, string path) =>
        [.. card.Pieces.Where(p => p.Path.Copy is not null && p.Path.WithoutCopies.ToString() == path)
            .Select(p => p.Paint.Role)];
}
