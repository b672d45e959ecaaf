using System.Diagnostics;
using Xunit;

namespace Sketch.Tests.Preview;

/// <summary>The program as a separate process, ended by a kill and by a request.</summary>
public sealed class KilledServerTests : OnOpenedPage
{
    private const string Typed = "card \"Lamp\"\n# typed before the lights went out\n";

    /// <summary>Starts the program on the folder and returns it with the address that it prints.</summary>
    private async Task<(Process Program, Uri Address)> Open()
    {
        var program = Process.Start(
            new ProcessStartInfo("dotnet", [typeof(Sketch.Cli.Program).Assembly.Location, "open", Page.Root, "--no-browser"])
            {
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            })!;
        try
        {
            var line = await program.StandardOutput.ReadLineAsync(OpenedPage.Stop) ?? "";
            return (program, new(line[line.IndexOf("http", StringComparison.Ordinal)..]));
        }
        catch
        {
            program.Kill();
            throw;
        }
    }

    [Fact]
    public async Task Typing_survives_when_the_program_is_killed()
    {
        var (program, address) = await Open();
        using (program)
        {
            using (var request = Page.See(Typed))
            {
                request.RequestUri = new(address, "see");
                request.Headers.Remove("Origin");
                request.Headers.Add("Origin", address.GetLeftPart(UriPartial.Authority));
                using var response = await Page.Send(request);
                response.EnsureSuccessStatusCode();
            }

            await OpenedPage.Until(() => Page.Keeps(".json", Typed));
            program.Kill();
            await program.WaitForExitAsync(OpenedPage.Stop);
        }

        await Page.Serve();
        var (_, json) = await Page.Ask(Page.Read("text?file=lamp.card&window=window0000000009"));
        Assert.Equal(Typed, json.GetProperty("unsaved").GetProperty("text").GetString());
    }

    [Fact]
    public async Task The_program_ends_when_asked()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no signals.");
        var (program, _) = await Open();
        using (program)
        {
            using var kill = Process.Start("kill", ["-TERM", $"{program.Id}"]);
            await program.WaitForExitAsync(OpenedPage.Stop);
            // 130 as for Ctrl-C.
            Assert.Equal(130, program.ExitCode);
        }
    }
}
