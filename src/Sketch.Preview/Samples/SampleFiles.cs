using System.Text;
using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Output.Artwork;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Preview.Samples;

/// <summary>The museum's cards, stashes, batches and drawings, which come with the tool. They name only each other.</summary>
/// <param name="fonts">Shapes the words.</param>
internal sealed class SampleFiles(IWorld fonts) : IWorld
{
    private const string Folder = "samples/";

    /// <summary>The name of the stash of the samples.</summary>
    public const string Shelf = "museum.stash";

    /// <summary>The names of all files, in order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. typeof(SampleFiles).Assembly.GetManifestResourceNames()
        .Where(n => n.StartsWith(Folder, StringComparison.Ordinal)).Select(n => n[Folder.Length..]).Order(StringComparer.Ordinal)];

    /// <summary>The text of a file.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    public static SourceText Read(string name)
    {
        using var stream = typeof(SampleFiles).Assembly.GetManifestResourceStream(Folder + name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return new(name, reader.ReadToEnd().ReplaceLineEndings("\n"));
    }

    /// <inheritdoc/>
    public Result<SourceText> ReadText(string path, string namedIn) =>
        Names.Contains(path) ? Result.Of(Read(path)) : new Failure("it is not one of the samples.");

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path) => Names;

    /// <inheritdoc/>
    public Result<Outline> ReadArtwork(string path, string namedIn) => ReadText(path, namedIn).Then(drawing =>
    {
        using var content = new MemoryStream(Encoding.UTF8.GetBytes(drawing.Content), writable: false);
        return ArtworkReader.Read(content);
    });

    /// <inheritdoc/>
    public Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width) => new Failure("it is not one of the samples.");

    /// <inheritdoc/>
    public Result<ShapedWords> ShapeWords(string words, string? font, string namedIn) => fonts.ShapeWords(words, font, namedIn);

    /// <inheritdoc/>
    public TextRun SetWords(string words) => fonts.SetWords(words);
}
