using Sketch.Offers;
using Sketch.Stashes;
using Sketch.Text;
using Sketch.World;

namespace Sketch.Preview.Sessions;

/// <summary>
/// The latest compilations, so that a text is compiled once for all views of it, and the files that it names are not compiled
/// again with every keystroke. A compilation is reused only while its text, its papers and everything that it read are the same. At most
/// <see cref="MostOfOneFile"/> of one file and <see cref="MostWeight"/> in total are held; the newest is held whatever its weight.
/// </summary>
/// <param name="files">The files that texts are compiled with.</param>
public sealed class Compilations(IWorld files)
{
    /// <summary>How many compilations of one file are held: for its text in some windows, and as a batch reads it.</summary>
    public const int MostOfOneFile = 4;

    /// <summary>The most pieces and lines of all compilations held, at about 4 kB each: about 100 MB.</summary>
    public const int MostWeight = 25_000;

    private const int CharactersOfLine = 32;

    private readonly Lock _gate = new();

    // Most recently used first.
    private readonly LinkedList<Entry> _entries = [];

    /// <summary>Compiles a text without papers of a stash.</summary>
    public Compilation Of(SourceText source) => Of(source, RoleFilling.None);

    /// <summary>Compiles a text.</summary>
    /// <param name="source">The text. The result may contain an earlier text that is equal.</param>
    /// <param name="filling">The stash, which is the same only if it comes from the same compilation, and the papers chosen.</param>
    public Compilation Of(SourceText source, RoleFilling filling)
    {
        if (Find(source, filling) is { } known && known.Files.AnswerTheSame())
        {
            return known.Compilation;
        }

        var recorded = new RecordedFiles(files);
        var compilation = Compiler.Compile(source, recorded, filling);
        Add(new(compilation, filling, recorded));
        return compilation;
    }

    /// <summary>What is in the folder of a file: its files, and its stashes by name, without those that cannot be read.</summary>
    /// <param name="path">The path of the file, which does not have to exist.</param>
    public FilesBeside Beside(string path)
    {
        string[] names = [.. files.NamesBeside(path)];
        return new([.. names.Where(n => n.EndsWith(".stash", StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal)
            .Select(n => files.ReadText(n, path).ValueOrDefault).OfType<SourceText>()
            .Select(s => Of(s).Stash).OfType<Stash>()], [.. names]);
    }

    private Entry? Find(SourceText source, RoleFilling filling)
    {
        lock (_gate)
        {
            for (var node = _entries.First; node is not null; node = node.Next)
            {
                if (node.Value.IsOf(source, filling))
                {
                    _entries.Remove(node);
                    _entries.AddFirst(node);
                    return node.Value;
                }
            }

            return null;
        }
    }

    private void Add(Entry added)
    {
        lock (_gate)
        {
            var (ofFile, weight) = (1, added.Weight);
            for (var node = _entries.First; node is not null;)
            {
                var (entry, next) = (node.Value, node.Next);
                var isOfFile = entry.Compilation.Source.Path == added.Compilation.Source.Path;
                if (entry.IsOf(added.Compilation.Source, added.Filling) || (isOfFile && ofFile == MostOfOneFile)
                    || weight + entry.Weight > MostWeight)
                {
                    _entries.Remove(node);
                }
                else
                {
                    (ofFile, weight) = (ofFile + (isOfFile ? 1 : 0), weight + entry.Weight);
                }

                node = next;
            }

            _entries.AddFirst(added);
        }
    }

    private sealed record Entry(Compilation Compilation, RoleFilling Filling, RecordedFiles Files)
    {
        public int Weight => 1 + (Compilation.Card?.Pieces.Length ?? 0) + Compilation.Source.Content.Length / CharactersOfLine;

        public bool IsOf(SourceText source, RoleFilling filling) =>
            Compilation.Source.Path == source.Path && Filling with { Choices = [] } == filling with { Choices = [] }
            && Filling.Choices.SequenceEqual(filling.Choices) && Compilation.Source.Content == source.Content;
    }
}
