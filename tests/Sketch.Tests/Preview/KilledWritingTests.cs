using System.Diagnostics;
using Sketch.Output.Files;
using Xunit;

namespace Sketch.Tests.Preview;

/// <summary>Partial files of a process killed while writing.</summary>
public sealed class KilledWritingTests : OnOpenedPage
{
    private const string Card =
        "card \"Card\"\nbase A2, fold left, of white\nrole sky: p1\nrole deep: p2\nfront\n"
        + "  panel 3 x 4, of sky\n    panel 2 x 2, of deep\n";

    private static readonly string[] Colours = ["navy", "gold", "red", "teal", "pink", "black"];

    private string[] Left =>
        Directory.GetFiles(Page.Root, "*.part", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0 });

    /// <summary>Kills the program in the middle of a large picture and returns the file that it leaves.</summary>
    private async Task<string> LeftByKilled()
    {
        Page.Write("a.card", Card);
        Page.Write("a.stash", "stash \"Shelf\"\n"
            + string.Concat(Colours.Select((colour, i) => $"paper p{i + 1}: 12 x 12, 3 sheets, front dots {colour}\n")));
        Directory.CreateDirectory(Page.At("out"));
        using var program = Process.Start(new ProcessStartInfo(
            "dotnet",
            [
                typeof(Sketch.Cli.Program)
                    .Assembly.Location, "variants", Page.At("a.card"), "--stash", Page.At("a.stash"), "--out", Page.At("out"),
                "--as", "png", "--dpi", "600", "--limit", "200",
            ])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        try
        {
            await OpenedPage.Until(() => Left.Length > 0);
        }
        finally
        {
            program.Kill();
        }

        await program.WaitForExitAsync(OpenedPage.Stop);
        return Assert.Single(Left);
    }

    [Fact]
    public async Task The_next_write_into_the_folder_deletes_them()
    {
        await LeftByKilled();
        SafeFile.WriteText(Page.At("out/next.svg"), "<svg/>");
        Assert.Equal(["next.svg"], Directory.GetFiles(Page.At("out")).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Opening_the_folder_deletes_them_wherever_the_page_saves()
    {
        Directory.CreateDirectory(Page.At(".sketch/drafts"));
        Directory.CreateDirectory(Page.At(".sketch/earlier/lamp"));
        var left = await LeftByKilled();
        foreach (var folder in new[] { "", ".sketch/drafts", ".sketch/earlier/lamp" })
        {
            File.Copy(left, Path.Combine(Page.At(folder), Path.GetFileName(left)));
        }

        await Page.Serve();
        Assert.Empty(Left);
    }

    [Fact]
    public void Files_of_other_programs_and_machines_are_kept()
    {
        string[] others = [".download.part", ".sketch-notes.part", $".{Guid.NewGuid():N}.part",
            $".sketch-00000000-1-1-{Guid.NewGuid():N}.part"];
        Directory.CreateDirectory(Page.At("out"));
        foreach (var other in others)
        {
            File.WriteAllText(Page.At("out/" + other), "");
        }

        SafeFile.WriteText(Page.At("out/next.svg"), "<svg/>");
        Assert.Equal(others.Append("next.svg").Order(StringComparer.Ordinal), Directory.GetFiles(Page.At("out"))
            .Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_file_still_being_written_is_kept()
    {
        SafeFile.Write(Page.At("out/first.svg"), _ => SafeFile.WriteText(Page.At("out/second.svg"), "<svg/>"));
        Assert.Equal(["first.svg", "second.svg"], Directory.GetFiles(Page.At("out")).Select(f => Path.GetFileName(f))
            .Order(StringComparer.Ordinal));
    }
}
