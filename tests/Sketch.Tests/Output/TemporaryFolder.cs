namespace Sketch.Tests.Output;

/// <summary>A folder of its own for one test, gone afterwards.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("sketch-").FullName;

    public string At(string name) => System.IO.Path.Combine(Path, name);

    public string Write(string name, string text)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(At(name))!);
        File.WriteAllText(At(name), text);
        return At(name);
    }

    public string Write(string name, byte[] content)
    {
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(At(name))!);
        File.WriteAllBytes(At(name), content);
        return At(name);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
