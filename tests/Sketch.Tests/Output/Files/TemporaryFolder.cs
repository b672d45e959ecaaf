using System.Diagnostics;
using Xunit;

namespace Sketch.Tests.Output.Files;

/// <summary>A folder for one test, deleted afterwards.</summary>
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

    /// <summary>Creates a named pipe that nobody writes to, so opening it for reading blocks.</summary>
    public string Pipe(string name)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no pipes among its files.");
        using var made = Process.Start("mkfifo", [At(name)]);
        made.WaitForExit();
        Assert.Equal(0, made.ExitCode);
        return At(name);
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
