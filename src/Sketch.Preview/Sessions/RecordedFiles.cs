using System.Collections.Concurrent;
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
internal sealed class RecordedFiles(CachedFiles files) : IWorld
{
    private readonly ConcurrentDictionary<object, Func<bool>> _questions = new();

    /// <summary>Whether every request so far has the same answer now. Texts are compared by content.</summary>
    public bool AnswerTheSame() => _questions.Values.All(isSame => isSame());

    /// <inheritdoc/>
    public SourceText? ReadText(string path, string namedIn, out string problem)
    {
        var answer = Read();
        _questions.TryAdd(("text", path, namedIn), () => Read() is var now && now.Problem == answer.Problem
            && now.Text?.Path == answer.Text?.Path && now.Text?.Content == answer.Text?.Content);
        problem = answer.Problem;
        return answer.Text;

        (SourceText? Text, string Problem) Read() => (files.ReadText(path, namedIn, out var problem), problem);
    }

    /// <inheritdoc/>
    public IEnumerable<string> NamesBeside(string path)
    {
        var answer = files.NamesBeside(path).ToHashSet(StringComparer.Ordinal);
        _questions.TryAdd(("names", path), () => answer.SetEquals(files.NamesBeside(path)));
        return answer;
    }

    /// <inheritdoc/>
    public Outline? ReadArtwork(string path, string namedIn, out string problem)
    {
        var answer = Read();
        _questions.TryAdd(("artwork", path, namedIn), () => Read() == answer);
        problem = answer.Problem;
        return answer.Outline;

        (Outline? Outline, string Problem) Read() => (files.ReadArtwork(path, namedIn, out var problem), problem);
    }

    /// <inheritdoc/>
    public IPaperPicture? ReadPicture(string path, string namedIn, Length width, out string problem)
    {
        var answer = Read();
        _questions.TryAdd(("picture", path, namedIn, width), () => Read() == answer);
        problem = answer.Problem;
        return answer.Picture;

        (IPaperPicture? Picture, string Problem) Read() => (files.ReadPicture(path, namedIn, width, out var problem), problem);
    }

    /// <inheritdoc/>
    public ShapedWords? ShapeWords(string words, string? font, string namedIn, out string problem)
    {
        var answer = Shape();
        // The tool's own font never changes.
        if (font is not null)
        {
            _questions.TryAdd(("words", words, font, namedIn), () => Shape() == answer);
        }

        problem = answer.Problem;
        return answer.Words;

        (ShapedWords? Words, string Problem) Shape() => (files.ShapeWords(words, font, namedIn, out var problem), problem);
    }
}
