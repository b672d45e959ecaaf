using System.Net;
using Xunit;

namespace Sketch.Tests.Preview.Folder;

/// <summary>No name makes the page read or write a file outside the opened folder.</summary>
public sealed class FileNameTests : OnOpenedPage
{
    private const string Secret = "card \"Secret\"\nbase A2, fold left, of white\n";

    public static TheoryData<string> HostileNames() =>
    [
        "",
        ".",
        "..",
        "../secret.card",
        "sub/../../secret.card",
        "../cards/lamp.card",
        "./lamp.card",
        "sub//lamp.card",
        "/etc/passwd",
        "/secret.card",
        "..\\secret.card",
        "sub\\lamp.card",
        "C:\\secret.card",
        "C:secret.card",
        "lamp.card:stream.card",
        "//server/share/secret.card",
        ".hidden.card",
        ".git/config.card",
        ".sketch/drafts/a.card",
        "sub/.hidden/lamp.card",
        "lamp.txt",
        "lamp",
        "lamp.card.exe",
        "lamp.card/",
        "lamp.card\0.txt",
        "lamp\0.card",
        "..%2fsecret.card",
        "out/secret.card",
        "secret-link.card",
        "round.card",
        "chain.card",
        "new-link.card",
        "lamp.card\n",
        "line\nbreak.card",
        new string('a', 300) + ".card",
        new string('a', 5000) + ".card",
        string.Join('/', Enumerable.Repeat("a", 3000)) + ".card",
    ];

    public override async ValueTask InitializeAsync()
    {
        await base.InitializeAsync();
        Page.Around.Write("secret.card", Secret);
        Page.Write("sub/lamp.card", OpenedPage.Card);
        if (!OperatingSystem.IsWindows())
        {
            Directory.CreateSymbolicLink(Page.At("out"), Page.Around.Path);
            File.CreateSymbolicLink(Page.At("secret-link.card"), Page.Around.At("secret.card"));
            File.CreateSymbolicLink(Page.At("chain.card"), Path.Combine("out", "secret.card"));
            File.CreateSymbolicLink(Page.At("new-link.card"), Page.Around.At("new.card"));
            File.CreateSymbolicLink(Page.At("round.card"), Page.At("round.card"));
        }
    }

    [Theory]
    [MemberData(nameof(HostileNames), DisableDiscoveryEnumeration = true)]
    public async Task A_hostile_name_is_not_read(string name)
    {
        using var request = Page.Read($"text?file={Uri.EscapeDataString(name)}&window={OpenedPage.Window}");
        using var response = await Page.Send(request);
        Assert.InRange((int)response.StatusCode, 400, 499);
        Assert.DoesNotContain("Secret", await response.Content.ReadAsStringAsync(OpenedPage.Stop), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(HostileNames), DisableDiscoveryEnumeration = true)]
    public async Task A_hostile_name_is_not_shown(string name) => Assert.InRange((int)await Page.Status(Page.See("card", name)), 400, 499);

    [Theory]
    [MemberData(nameof(HostileNames), DisableDiscoveryEnumeration = true)]
    public async Task A_hostile_name_is_not_saved_to(string name)
    {
        var before = Everything();
        var status = await Page.Status(Page.Say("save", new { file = name, window = OpenedPage.Window, text = "changed", stamp = "" }));
        Assert.InRange((int)status, 400, 499);
        Assert.Equal(before, Everything());
    }

    [Theory]
    [MemberData(nameof(HostileNames), DisableDiscoveryEnumeration = true)]
    public async Task A_hostile_name_is_not_created(string name)
    {
        var before = Everything();
        Assert.InRange((int)await Page.Status(Page.Say("begin", new { file = name, window = OpenedPage.Window })), 400, 499);
        Assert.Equal(before, Everything());
    }

    [Theory]
    [InlineData("../../../secret")]
    [InlineData("..")]
    [InlineData("/etc/passwd")]
    public async Task A_hostile_name_of_an_earlier_version_is_not_read(string name) =>
        Assert.InRange((int)await Page.Status(Page.Read($"earlier-text?file=lamp.card&name={Uri.EscapeDataString(name)}")), 400, 499);

    [Fact]
    public async Task A_stash_outside_the_folder_is_not_read()
    {
        Page.Around.Write("secret.stash", "stash \"Secret\"\npaper hidden: 12 x 12, 1 sheet\n");
        var (_, json) = await Page.Ask(Page.Read("shelf?stash=..%2Fsecret.stash"));
        Assert.DoesNotContain("hidden", json.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_has_no_hidden_files_and_nothing_behind_links()
    {
        Page.Write(".hidden/a.card", OpenedPage.Card);
        Page.Write(".b.card", OpenedPage.Card);
        Page.Write("letter.txt", "private");
        var (_, json) = await Page.Ask(Page.Read("files"));
        Assert.Equal(["lamp.card", "sub/lamp.card"], json.GetProperty("files").EnumerateArray().Select(f => f.GetString()!));
    }

    [Fact]
    public async Task Nothing_is_written_to_a_hidden_folder_that_is_a_link()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Links need special rights on Windows.");
        var elsewhere = Directory.CreateDirectory(Page.Around.At("elsewhere")).FullName;
        Directory.CreateSymbolicLink(Page.At(".sketch"), elsewhere);
        await Page.Status(Page.See("typed"));
        await Page.Save("changed", (await Page.Open()).Stamp);
        await Page.Serve();
        Assert.Empty(Directory.GetFileSystemEntries(elsewhere, "*", SearchOption.AllDirectories));
    }

    public static TheoryData<string, string> TextsThatNameOutside()
    {
        const string Base = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  ";
        var data = new TheoryData<string, string>();
        foreach (var way in (string[])["../secret", "/secret", "..\\secret", "out/secret", "secret-link", "chain"])
        {
            data.Add("lamp.card", $"card \"Lamp\"\nlike \"{way}.card\"\n");
            data.Add("lamp.card", $"{Base}outline 1 wide, file \"{way}.svg\", of navy\n");
            data.Add("lamp.card", $"{Base}text \"Hello\", font \"{way}.ttf\"\n");
            data.Add("shelf.stash", $"stash \"Shelf\"\npaper gulls: 12 x 12, 1 sheet, front \"{way}.png\" 12 wide\n");
            data.Add("run.batch", $"batch \"Run\"\nfor \"Cliff ward\", 2 cards\nmake 2 of \"{way}.card\"\n");
            data.Add("run.batch", $"batch \"Run\"\nstash \"{way}.stash\"\nfor \"Cliff ward\", 2 cards\nmake 2 of \"lamp.card\"\n");
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(TextsThatNameOutside), DisableDiscoveryEnumeration = true)]
    public async Task A_text_that_names_a_file_outside_the_folder_is_reported(string file, string text)
    {
        foreach (var ending in (string[])["svg", "ttf", "png", "stash"])
        {
            Page.Around.Write($"secret.{ending}", "Secret");
            File.CreateSymbolicLink(Page.At($"secret-link.{ending}"), Page.Around.At($"secret.{ending}"));
            File.CreateSymbolicLink(Page.At($"chain.{ending}"), Path.Combine("out", $"secret.{ending}"));
        }

        var (status, json) = await Page.Ask(Page.See(text, file));
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Contains(json.GetProperty("findings").EnumerateArray(), f => f.GetProperty("message")
            .GetString()!.Contains("outside", StringComparison.Ordinal));
    }

    private string[] Everything() =>
    [
        .. Directory.EnumerateFileSystemEntries(
            Page.Around.Path, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.ReparsePoint })
            .Order(StringComparer.Ordinal)
            .Select(f => File.Exists(f) ? $"{f}: {File.ReadAllText(f)}" : f),
    ];

    [Theory]
    [InlineData("what?.card")]
    [InlineData("12:30.card")]
    [InlineData("a*b.card")]
    [InlineData("lamp|day.batch")]
    public async Task A_new_file_gets_no_name_that_some_systems_reject(string name)
    {
        Assert.Equal(HttpStatusCode.UnprocessableEntity,
            await Page.Status(Page.Say("begin", new { file = name, window = OpenedPage.Window })));
        Assert.False(File.Exists(Page.At(name)));
    }

    [Theory]
    [InlineData("what?.card", "the character ?", "what.card")]
    [InlineData("12:30 lamp.card", "the character :", "12-30 lamp.card")]
    [InlineData("lamp/day.card", "the character /", "lamp-day.card")]
    [InlineData("day /lamp.batch", "the character /", "day-lamp.batch")]
    [InlineData("/lamp.card", "the character /", "lamp.card")]
    [InlineData("../lamp.card", "the character /", "lamp.card")]
    [InlineData("lamp\\day.card", "the character \\", "lamp-day.card")]
    [InlineData("\"Lamp\".stash", "the character \"", "Lamp.stash")]
    [InlineData("?.card", "the character ?", "new.card")]
    [InlineData("lamp\tday.card", "control character", "lamp-day.card")]
    [InlineData(".lamp.card", "period", "lamp.card")]
    [InlineData("con.card", "\"con\" for a device", "my-con.card")]
    [InlineData("Lpt9.old.stash", "for a device", "my-Lpt9.old.stash")]
    [InlineData("COM¹.batch", "\"COM¹\" for a device", "my-COM¹.batch")]
    public async Task An_impossible_name_is_rejected_with_the_reason_and_a_possible_name(string name, string reason, string instead)
    {
        // Microsoft Learn, "Naming files, paths, and namespaces".
        var (status, json) = await Page.Ask(Page.Say("begin", new { file = name }));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, status);
        var problem = json.GetProperty("problem").GetString()!;
        Assert.Contains(reason, problem, StringComparison.Ordinal);
        Assert.EndsWith($"Type \"{instead}\" instead.", problem, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK,
            await Page.Status(Page.Say("begin", new { file = instead == "lamp.card" ? "lamp-2.card" : instead })));
    }

    [Fact]
    public async Task A_new_file_creates_no_folder()
    {
        await Page.Status(Page.Say("begin", new { file = "lamp/day.card" }));
        Assert.False(Directory.Exists(Page.At("lamp")));
    }

    [Fact]
    public async Task A_new_file_is_created_in_an_existing_folder()
    {
        Assert.Equal(HttpStatusCode.OK, await Page.Status(Page.Say("begin", new { file = "sub/second.card" })));
        Assert.True(File.Exists(Page.At("sub/second.card")));
    }

    [Theory]
    [InlineData("keepers-watch.card", "card \"Keepers watch\"")]
    [InlineData("LAMP_day 2.batch", "batch \"LAMP day 2\"")]
    [InlineData("sub/émile.stash", "stash \"Émile\"")]
    [InlineData("keeper's “first” light.card", "card \"Keeper's first light\"")]
    [InlineData("{0}.card", "card \"{0}\"")]
    [InlineData("---.card", "card \"New card\"")]
    public async Task A_new_file_is_titled_after_its_name(string name, string title)
    {
        await Page.Status(Page.Say("begin", new { file = name }));
        Assert.Equal(title, (await File.ReadAllLinesAsync(Page.At(name), OpenedPage.Stop))[0]);
    }

    [Theory]
    [InlineData("con.card")]
    [InlineData("NUL.stash")]
    [InlineData("sub/aux.batch")]
    [InlineData("what?.card")]
    public async Task A_save_creates_no_file_with_a_name_that_begin_rejects(string name)
    {
        var (begun, reason) = await Page.Ask(Page.Say("begin", new { file = name }));
        var (saved, same) = await Page.Save("changed", "", name);
        Assert.Equal((HttpStatusCode.UnprocessableEntity, HttpStatusCode.UnprocessableEntity), (begun, saved));
        Assert.Equal(reason.GetProperty("problem").GetString(), same.GetProperty("problem").GetString());
        Assert.False(File.Exists(Page.At(name)));
    }

    [Fact]
    public async Task An_existing_file_with_such_a_name_can_be_saved()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "Windows has no such files.");
        Page.Write("con.card", OpenedPage.Card);
        var (_, stamp) = await Page.Open("con.card");
        Assert.Equal(HttpStatusCode.OK, (await Page.Save("changed", stamp, "con.card")).Status);
        Assert.Equal("changed", await File.ReadAllTextAsync(Page.At("con.card"), OpenedPage.Stop));
    }

    [Theory]
    [InlineData("console.card")]
    [InlineData("com0.card")]
    [InlineData("lpt10.card")]
    [InlineData("my-aux.card")]
    public async Task A_name_that_only_starts_like_that_of_a_device_is_accepted(string name) =>
        Assert.Equal(HttpStatusCode.OK, await Page.Status(Page.Say("begin", new { file = name })));
}
