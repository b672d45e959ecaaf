using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Output.Handbook;

/// <summary>The files around the examples of a page: those examples that have a file name, before those of the folder.</summary>
/// <param name="examples">The examples of the page.</param>
/// <param name="folder">The folder in which they stand.</param>
/// <param name="others">The files of the folder, and the fonts.</param>
public sealed class ExampleFiles(ImmutableArray<HandbookExample> examples, string folder, IWorld others) : IWorld
{
    private readonly Dictionary<string, SourceText> _named = examples.Where(e => e.File is not null).GroupBy(e => e.File!)
        .ToDictionary(e => e.Key, e => e.Last().Source(folder), StringComparer.Ordinal);

    /// <inheritdoc/>
    public Result<SourceText> ReadText(string path, string namedIn) =>
        _named.TryGetValue(path, out var example) ? Result.Of(example) : others.ReadText(path, namedIn);

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path) => others.NamesBeside(path).Union(_named.Keys);

    /// <inheritdoc/>
    public Result<Outline> ReadArtwork(string path, string namedIn) => others.ReadArtwork(path, namedIn);

    /// <inheritdoc/>
    public Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width) => others.ReadPicture(path, namedIn, width);

    /// <inheritdoc/>
    public Result<ShapedWords> ShapeWords(string words, string? font, string namedIn) => others.ShapeWords(words, font, namedIn);

    /// <inheritdoc/>
    public TextRun SetWords(string words) => others.SetWords(words);
}
