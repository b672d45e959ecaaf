using System.Text;
using System.Text.Json;
using Sketch.Cli;
using Sketch.Cli.Commands;

namespace Sketch.Tests.Cli;

/// <summary>A folder of its own with files in it, and command lines run in this process on them.</summary>
public sealed class CommandLineRun : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("sketch-tests-").FullName;

    public TimeProvider Clock { get; init; } = TimeProvider.System;

    public string Output { get; private set; } = "";

    public string Error { get; private set; } = "";

    /// <summary>What standard input holds.</summary>
    public string Input { get; set; } = "";

    /// <summary>What was written to standard output as bytes.</summary>
    public byte[] Bytes { get; private set; } = [];

    /// <summary>Whether a person sees the output and the messages.</summary>
    public bool IsTerminal { get; set; }

    /// <summary>The variables of the environment.</summary>
    public Dictionary<string, string> Variables { get; } = [];

    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    public string File(string name, string content)
    {
        var path = InFolder(name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        System.IO.File.WriteAllText(path, content);
        return path;
    }

    /// <summary>A file that is no text, and so one error.</summary>
    public string Broken(string name) => File(name, "\0");

    public string InFolder(string name) => Path.Combine(Folder, name);

    public int Run(params string[] args) => Run(CancellationToken.None, args);

    public int Run(CancellationToken cancellation, params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        using var bytes = new MemoryStream();
        var status = Program.Run(args, new Session(output, error, cancellation)
        {
            Clock = Clock,
            OpenInput = () => new MemoryStream(Encoding.UTF8.GetBytes(Input)),
            Bytes = bytes,
            IsTerminal = _ => IsTerminal,
            Variable = Variables.GetValueOrDefault,
        });
        (Output, Error, Bytes) = (output.ToString(), error.ToString(), bytes.ToArray());
        return status;
    }

    /// <summary>The verbs that the help lists.</summary>
    public IReadOnlyList<string> Verbs()
    {
        Run("--help");
        return [.. Output[Output.IndexOf("Commands:\n", StringComparison.Ordinal)..].Split('\n').Skip(1)
            .Select(line => line.Trim().Split(' ')[0]).Where(verb => verb.Length > 0)];
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
