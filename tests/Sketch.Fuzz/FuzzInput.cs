using System.Collections.Immutable;
using System.Text;

namespace Sketch.Fuzz;

/// <summary>One file of an input.</summary>
/// <param name="Name">Its name, without folders.</param>
/// <param name="Content">Its bytes.</param>
internal sealed record FuzzFile(string Name, byte[] Content)
{
    public FuzzFile(string name, string text)
        : this(name, Encoding.UTF8.GetBytes(text))
    {
    }

    /// <summary>The content as a text; bytes that are none are replaced.</summary>
    public string Text => Encoding.UTF8.GetString(Content);
}

/// <summary>What a target runs on: a few files, as they are kept for a failure.</summary>
/// <param name="Files">The files; what each is for follows from its name.</param>
internal sealed record FuzzInput(ImmutableArray<FuzzFile> Files)
{
    public long Length => Files.Sum(f => (long)f.Content.Length);

    /// <summary>The file of a name; an empty one if it is missing.</summary>
    public FuzzFile this[string name] => Files.FirstOrDefault(f => f.Name == name) ?? new(name, []);

    /// <summary>Reads a kept input.</summary>
    public static FuzzInput Load(string folder) =>
        new([.. Directory.GetFiles(folder).Order(StringComparer.Ordinal).Select(f => new FuzzFile(Path.GetFileName(f),
            File.ReadAllBytes(f)))]);

    /// <summary>Keeps it in a folder of its own.</summary>
    public void Save(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var file in Files)
        {
            File.WriteAllBytes(Path.Combine(folder, file.Name), file.Content);
        }
    }
}
