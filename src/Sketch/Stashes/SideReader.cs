using System.Collections.Immutable;
using Sketch.Colours;
using Sketch.Diagnostics;
using Sketch.Papers;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Stashes;

/// <summary>Reads one side of a paper: a built-in pattern, a colour, or a picture file.</summary>
internal sealed class SideReader(SourceText source, IWorld world, FindingBag findings)
{
    private static readonly string[] PictureEndings = [".jpg", ".jpeg", ".png", ".webp"];
    private static readonly PaperLook White = PaperLook.Plain(new(255, 255, 255));

    /// <summary>The blank side of a paper that is printed on the other side only.</summary>
    public static PaperFace Unprinted { get; } = new(null, White, true);

    /// <summary>How a side looks when only the paper's name is known.</summary>
    public static PaperFace Named(string paper) =>
        BuiltIn.Find(paper, []) is { } look ? new(null, look, true) : new(null, White, false);

    /// <summary>Reads a side.</summary>
    /// <param name="side">The clause.</param>
    /// <param name="paper">The paper so far: its size and trim decide which part of a picture remains to cut from.</param>
    public PaperFace Read(SideClause side, StockPaper paper)
    {
        if (side.Words is { } file
            && (side.TrueWidth is not null || PictureEndings.Any(e => file.Text.EndsWith(e, StringComparison.OrdinalIgnoreCase))))
        {
            return ReadPicture(side, file, paper);
        }

        var label = side.Words?.Text;
        var words = side.Colours;
        var pattern = label is not null && BuiltIn.Find(label, []) is not null ? label : null;
        if (pattern is null && words is [{ IsHex: false } first, ..] && BuiltIn.Find(first.Text, []) is not null)
        {
            pattern = first.Text;
            words = words.RemoveAt(0);
        }

        var colours = ImmutableArray.CreateBuilder<Rgb>();
        foreach (var word in words)
        {
            if (word.IsHex)
            {
                colours.Add(Rgb.FromHex(word.Text));
            }
            else if (ColourWords.TryGet(word.Text, out var colour))
            {
                colours.Add(colour.Ground);
            }
            else
            {
                var known = colours.Count == 0 && pattern is null ? BuiltIn.PatternWords.AddRange(ColourWords.All) : ColourWords.All;
                var near = Nearest.Find(word.Text, known);
                findings.Add(FindingCatalogue.UnknownRole, new(source, word.Span),
                    $"'{word.Text}' is no {(known == ColourWords.All ? "colour" : "pattern or colour")}.",
                    near is null ? "Write a pattern such as dots and its colours, or hex digits such as #16324f."
                        : $"Did you mean {near}?", near);
            }
        }

        var look = pattern is not null ? BuiltIn.Find(pattern, colours.ToImmutable())!
            : colours.Count > 0 ? new(paper.Kind == StockKind.Cardstock ? PaperPattern.Cardstock : PaperPattern.Plain, colours[0], [])
            : null;
        return new(label, look ?? White, look is not null);
    }

    private PaperFace ReadPicture(SideClause side, QuotedSyntax file, StockPaper paper)
    {
        var read = world.ReadPicture(file.Text, source.Path, side.TrueWidth ?? paper.Size.Width);
        if (read.Problem is { } problem)
        {
            var near = NearestFile.Find(world, file.Text, source.Path, PictureEndings);
            var (hint, replacement) = NearestFile.Hint(near, "Name a JPEG, PNG or WebP file in the folder of this stash or below it.");
            findings.Add(FindingCatalogue.BadPicture, new(source, file.Span), $"The picture \"{file.Text}\" cannot be used: {problem}",
                hint, replacement);
            return new(null, White, false);
        }

        var picture = read.Value;
        return new(null, PaperLook.Plain(picture.Mean) with { Pictured = WithoutTrim(picture, paper) }, true);
    }

    /// <summary>A picture of the whole sheet shows its trim too, which no card shows; a picture of a part of it has none.</summary>
    private static PicturedSheet WithoutTrim(IPaperPicture picture, StockPaper paper)
    {
        const double Alike = 0.02;
        var isWhole = IsAlike(picture.Width, paper.Size.Width) && IsAlike(picture.Height, paper.Size.Height);
        return isWhole
            ? new(picture, paper.Trim.Left.Millimetres, paper.Trim.Top.Millimetres,
                picture.Width - (paper.Trim.Left + paper.Trim.Right).Millimetres, picture.Height - (paper.Trim.Top + paper.Trim.Bottom)
                    .Millimetres)
            : new(picture, 0, 0, picture.Width, picture.Height);

        static bool IsAlike(double shown, Length sheet) => Math.Abs(shown / sheet.Millimetres - 1) <= Alike;
    }
}
