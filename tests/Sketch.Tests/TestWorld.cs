using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Output.Lettering;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Tests;

/// <summary>
/// A world of a few files and one plain lettering, so that sizes that follow from words can be worked out by hand: every character
/// is 0.8 of a capital's height wide and as tall as a capital, letters stand without gaps, and a blank is an empty 0.8. Words printed
/// about a card are set in the tool's own font.
/// </summary>
internal sealed class TestWorld : IWorld
{
    /// <summary>Width of every character in heights of a capital.</summary>
    public const double CharacterWidth = 0.8;

    private static readonly FontLibrary OwnFont = new([]);

    private readonly Dictionary<string, string> _texts = [];
    private readonly Dictionary<string, Outline> _artwork = [];

    /// <summary>The lines of words that were shaped, in order.</summary>
    public List<string> Shaped { get; } = [];

    public TestWorld WithText(string path, string content)
    {
        _texts[path] = content;
        return this;
    }

    /// <summary>A file with one filled triangle, its point at the top, in a box of the given size in millimetres.</summary>
    public TestWorld WithTriangle(string path, double width, double height)
    {
        _artwork[path] = new Outline(
            [new Contour(new(width / 2, 0),
                [Segment.Line(new(width, height)), Segment.Line(new(0, height)), Segment.Line(new(width / 2, 0))])]);
        return this;
    }

    public Result<SourceText> ReadText(string path, string namedIn) =>
        _texts.TryGetValue(path, out var content) ? Result.Of(new SourceText(path, content)) : new Failure($"There is no file '{path}'.");

    public IEnumerable<string> NamesBeside(string path) => _texts.Keys.Where(t => t != path);

    public Result<Outline> ReadArtwork(string path, string namedIn) =>
        _artwork.TryGetValue(path, out var outline) ? Result.Of(outline) : new Failure($"There is no file '{path}'.");

    public Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width) => new Failure("there is no such file.");

    public Result<ShapedWords> ShapeWords(string words, string? font, string namedIn)
    {
        Shaped.Add(words);
        var boxes = ImmutableArray.CreateBuilder<Contour>();
        var leading = words.Length - words.TrimStart().Length;
        for (var start = leading; start < words.Length;)
        {
            var end = words.IndexOf(' ', start) is var blank and >= 0 ? blank : words.Length;
            if (end > start)
            {
                boxes.Add(Box((start - leading) * CharacterWidth, (end - leading) * CharacterWidth));
            }

            start = end + 1;
        }

        return Result.Of(new ShapedWords(new(boxes.ToImmutable()), ""));
    }

    public TextRun SetWords(string words) => OwnFont.Set(words);

    private static Contour Box(double left, double right) => new(
        new(left, -1), [Segment.Line(new(right, -1)), Segment.Line(new(right, 0)), Segment.Line(new(left, 0)),
            Segment.Line(new(left, -1))]);
}
