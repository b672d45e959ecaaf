using System.Collections.Concurrent;
using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Preview.Sessions;

/// <summary>
/// Passes each request of a compilation to the files and records the answer, to determine later whether the same
/// compilation would get the same answers.
/// </summary>
/// <param name="files">The files that answer.</param>
internal sealed class RecordedFiles(IWorld files) : IWorld
{
    private readonly ConcurrentDictionary<object, Func<bool>> _questions = new();

    /// <summary>Whether every request so far has the same answer now. Texts are compared by content.</summary>
    public bool AnswerTheSame() => _questions.Values.All(isSame => isSame());

    /// <inheritdoc/>
    public Result<SourceText> ReadText(string path, string namedIn)
    {
        var answer = files.ReadText(path, namedIn);
        _questions.TryAdd(("text", path, namedIn), () => ContentOf(files.ReadText(path, namedIn)) == ContentOf(answer));
        return answer;

        static (string? Problem, string? Path, string? Content) ContentOf(Result<SourceText> read) =>
            (read.Problem, read.ValueOrDefault?.Path, read.ValueOrDefault?.Content);
    }

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path)
    {
        var answer = files.NamesBeside(path).ToHashSet(StringComparer.Ordinal);
        _questions.TryAdd(("names", path), () => answer.SetEquals(files.NamesBeside(path)));
        return answer;
    }

    /// <inheritdoc/>
    public Result<Outline> ReadArtwork(string path, string namedIn)
    {
        var answer = files.ReadArtwork(path, namedIn);
        _questions.TryAdd(("artwork", path, namedIn), () => files.ReadArtwork(path, namedIn) == answer);
        return answer;
    }

    /// <inheritdoc/>
    public Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width)
    {
        var answer = files.ReadPicture(path, namedIn, width);
        _questions.TryAdd(("picture", path, namedIn, width), () => files.ReadPicture(path, namedIn, width) == answer);
        return answer;
    }

    /// <inheritdoc/>
    public Result<ShapedWords> ShapeWords(string words, string? font, string namedIn)
    {
        var answer = files.ShapeWords(words, font, namedIn);
        // The tool's own font never changes.
        if (font is not null)
        {
            _questions.TryAdd(("words", words, font, namedIn), () => files.ShapeWords(words, font, namedIn) == answer);
        }

        return answer;
    }

    /// <inheritdoc/>
    public TextRun SetWords(string words) => files.SetWords(words);
}
