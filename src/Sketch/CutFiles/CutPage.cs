using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Templates;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.CutFiles;

/// <summary>Pages that machines cut from, as written on the command line.</summary>
public static class CutPage
{
    /// <summary>The usual page, 12 x 12 in.</summary>
    public static readonly PageFormat Usual = new("12x12", new(Length.Inch(12), Length.Inch(12)), true);

    private static readonly PageFormat A3 = new("a3", new(Length.Millimetre(297), Length.Millimetre(420)), false);

    private static readonly Length Longest = Length.Inch(200);

    /// <summary>Reads a page such as <c>a3</c>, <c>12x24</c> (inches) or <c>"300x600 mm"</c>, width first.</summary>
    /// <returns>The page; a problem says, in sentences, what is wrong and what to write.</returns>
    public static Result<PageFormat> Read(string written)
    {
        var text = written.Trim().ToLowerInvariant();
        PageFormat[] named = [.. PageFormat.All, A3];
        if (named.FirstOrDefault(f => f.Name == text) is { } known)
        {
            return Result.Of(known);
        }

        var sides = text.Split('x', '×');
        if (sides.Length != 2)
        {
            var near = Nearest.Find(text, [.. named.Select(f => f.Name)]);
            return new Failure($"there is no page \"{written}\". {(near is not null ? $"Did you mean \"{near}\"?"
                : $"Write {string.Join(", ", named.Select(f => f.Name))}, or a size such as 12x24 or \"300x600 mm\".")}");
        }

        // The unit after the height is that of the width too.
        var unit = sides[1].Trim().TrimStart([.. "0123456789./ "]);
        var width = sides[0].Trim().Any(char.IsLetter) ? sides[0] : $"{sides[0].Trim()} {unit}";
        const string instead = "write width and height, such as 12x24 or \"300x600 mm\".";
        return WrittenLength.Read(width, instead).Then(across => WrittenLength.Read(sides[1], instead).Then(down =>
            Length.Min(across, down) == Length.Zero || Length.Max(across, down) > Longest
                ? new Failure($"a page of \"{written}\" cannot be cut from: write a size up to 200 in (5080 mm), such as 12x24.")
                : Result.Of(new PageFormat(text, new(across, down), unit is "" or "in" or "\""))));
    }
}
