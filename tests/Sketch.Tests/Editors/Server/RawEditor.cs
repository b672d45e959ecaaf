using System.Diagnostics;
using System.Globalization;
using System.Text.Json;

namespace Sketch.Tests.Editors.Server;

/// <summary>An editor that sends any bytes, which no library does.</summary>
internal sealed class RawEditor : IDisposable
{
    private readonly Process _program = Process.Start(
        new ProcessStartInfo("dotnet", [typeof(Sketch.Cli.Program).Assembly.Location, "language-server"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;

    public int Status => _program.ExitCode;

    public void Send(byte[] bytes)
    {
        _program.StandardInput.BaseStream.Write(bytes);
        _program.StandardInput.BaseStream.Flush();
    }

    /// <summary>The next message of the program.</summary>
    public JsonElement Read()
    {
        var length = 0;
        while (_program.StandardOutput.ReadLine() is { Length: > 0 } header)
        {
            length = int.Parse(header.Split(": ")[1], CultureInfo.InvariantCulture);
        }

        var content = new char[length];
        _program.StandardOutput.ReadBlock(content);
        return JsonDocument.Parse(new string(content)).RootElement;
    }

    /// <summary>Sends no more, and returns what the program reports on standard error until it ends.</summary>
    public async Task<string> End()
    {
        _program.StandardInput.Close();
        var reported = await _program.StandardError.ReadToEndAsync(RunningEditor.Stop);
        await _program.WaitForExitAsync(RunningEditor.Stop);
        return reported;
    }

    public void Dispose()
    {
        if (!_program.HasExited)
        {
            _program.Kill();
        }

        _program.Dispose();
    }
}
