using System.Diagnostics;
using Xunit;

namespace Sketch.Tests.Cli.Commands;

/// <summary>The program as a process that writes over its earlier output, on a disk that is full or takes no large file.</summary>
public sealed class FullDiskTests : IDisposable
{
    /// <summary>A small disk, on which the writing of a file can begin and then fails: 4 KB are left.</summary>
    private const string Full = """
        mount -t tmpfs -o size=8m tmpfs "$DISK" && cp -R "$EARLIER/." "$DISK" || exit
        cat /dev/zero > "$DISK/ballast" 2> /dev/null
        truncate -s -4096 "$DISK/ballast"
        "$@"
        status=$?
        rm "$DISK/ballast"
        cp -R "$DISK/." "$LEFT"
        exit $status
        """;

    /// <summary>No file may have more than eight blocks of 512 or 1024 bytes.</summary>
    private const string Limited = """
        cp -R "$EARLIER/." "$DISK"
        (ulimit -f 8; exec "$@")
        status=$?
        cp -R "$DISK/." "$LEFT"
        exit $status
        """;

    private const string FullSays = "the disk is full";
    private const string LimitedSays = "it would be larger than the system allows a file to be";

    private readonly CommandLineRun _run = new();

    public FullDiskTests()
    {
        _run.File("a.stash", "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets, front dots #123456\ncardstock navy: letter, 2 sheets\n");
        _run.File("a.batch", "batch \"Day\"\nstash \"a.stash\"\nmake 2 of \"a.card\"\n");
        Array.ForEach(["disk", "earlier", "later", "left"], name => Directory.CreateDirectory(_run.InFolder(name)));
    }

    public void Dispose() => _run.Dispose();

    [Theory]
    [InlineData("draw", Full, FullSays)]
    [InlineData("templates", Full, FullSays)]
    [InlineData("gallery", Full, FullSays)]
    [InlineData("variants", Full, FullSays)]
    [InlineData("plan", Full, FullSays)]
    [InlineData("draw", Limited, LimitedSays)]
    [InlineData("plan", Limited, LimitedSays)]
    public async Task What_cannot_be_written_is_named_with_the_reason(string verb, string disk, string reason)
    {
        var (status, error) = await Overwrite(verb, disk);

        Assert.Equal(2, status);
        Assert.Matches($"^sketch: \"{_run.InFolder("disk")}/out/[^\"]+\" cannot be written: {reason}\\.\n$",
            error[Math.Max(0, error.IndexOf("sketch: ", StringComparison.Ordinal))..]);
    }

    [Theory]
    [InlineData("draw", Full)]
    [InlineData("plan", Full)]
    [InlineData("draw", Limited)]
    [InlineData("plan", Limited)]
    public async Task Each_file_is_the_earlier_one_or_the_whole_new_one(string verb, string disk)
    {
        await Overwrite(verb, disk);

        var (earlier, later, left) = (Files("earlier"), Files("later"), Files("left"));
        Assert.Equal(earlier.Keys.Order(StringComparer.Ordinal), left.Keys.Order(StringComparer.Ordinal));
        Assert.All(left, file => Assert.Contains(file.Value, new[] { earlier[file.Key], later.GetValueOrDefault(file.Key) }));
    }

    /// <summary>
    /// Writes the output of a verb into <c>earlier</c>, and that for a changed card into <c>later</c>. Then writes the second output again
    /// over the first on a small disk, and copies what that disk holds into <c>left</c>.
    /// </summary>
    private async Task<(int Status, string Error)> Overwrite(string verb, string disk)
    {
        Assert.SkipUnless(disk != Full || await CanMount(), "This system lets nobody mount a disk of memory.");
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no limit on the size of files.");
        _run.Run(Line(verb, "navy", "earlier"));
        _run.Run(Line(verb, "gulls", "later"));

        string[] line = ["sh", "-c", disk, "sh", "dotnet", typeof(Sketch.Cli.Program).Assembly.Location, .. Line(verb, "gulls", "disk")];
        using var shell = Start(disk == Full ? ["unshare", "-rm", .. line] : line);
        var output = shell.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var error = await shell.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await output;
        await shell.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (shell.ExitCode, error);
    }

    private string[] Line(string verb, string paper, string folder)
    {
        var card = _run.File("a.card", "card \"Lamp\"\nbase A2, of white\nrole deep: " + paper
            + "\nfront\n  panel 3 x 4, of deep\n    star 2, of gold\n    sentiment \"Lamp day\", bottom 1/4, of cream\n");
        return
        [
            verb, verb == "plan" ? _run.InFolder("a.batch") : card, "--out", Path.Combine(_run.InFolder(folder), "out"), "--quiet",
            .. verb switch
            {
                "draw" => ["--as", "svg,png,pdf"],
                "variants" => ["--stash", _run.InFolder("a.stash")],
                _ => Array.Empty<string>(),
            },
        ];
    }

    private async Task<bool> CanMount()
    {
        using var shell = Start("sh", "-c", "unshare -rm mount -t tmpfs tmpfs \"$DISK\"");
        await shell.WaitForExitAsync(TestContext.Current.CancellationToken);
        return shell.ExitCode == 0;
    }

    private Process Start(params string[] line)
    {
        var start = new ProcessStartInfo(line[0], line[1..]) { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var name in new[] { "disk", "earlier", "left" })
        {
            start.Environment[name.ToUpperInvariant()] = _run.InFolder(name);
        }

        // The runtime reserves its code in a large file of memory, to which the limit applies too.
        start.Environment["DOTNET_EnableWriteXorExecute"] = "0";
        return Process.Start(start)!;
    }

    private Dictionary<string, string> Files(string folder) => Directory
        .GetFiles(_run.InFolder(folder), "*", new EnumerationOptions { AttributesToSkip = 0, RecurseSubdirectories = true })
        .ToDictionary(f => Path.GetRelativePath(_run.InFolder(folder), f), f => Convert.ToHexString(File.ReadAllBytes(f)));
}
