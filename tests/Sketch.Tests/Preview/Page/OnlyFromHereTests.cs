using System.Text.RegularExpressions;
using Sketch.Preview.Server;
using Xunit;

namespace Sketch.Tests.Preview.Page;

/// <summary>The page needs no network: it loads nothing from other hosts.</summary>
public sealed partial class OnlyFromHereTests : OnOpenedPage
{
    public static TheoryData<string> Served() =>
        [.. typeof(PageServer).Assembly.GetManifestResourceNames().Where(n => n.StartsWith("page/", StringComparison.Ordinal))
            .Select(n => n["page/".Length..]).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Served))]
    public async Task A_file_of_the_page_loads_nothing_from_other_hosts(string name)
    {
        using var request = Page.Read(name == "page.html" ? "" : name);
        using var response = await Page.Send(request);
        response.EnsureSuccessStatusCode();
        var text = await response.Content.ReadAsStringAsync(OpenedPage.Stop);
        // XML namespaces look like addresses but are not loaded; licence comments may contain the home page of a library.
        var addresses = Addresses().Matches(Comments().Replace(text, "")).Select(m => m.Value)
            .Where(a => !a.StartsWith("http://www.w3.org/", StringComparison.Ordinal));
        Assert.Empty(addresses);
    }

    [Fact]
    public async Task The_page_has_no_inline_script_or_style()
    {
        using var request = Page.Read("");
        using var response = await Page.Send(request);
        Assert.DoesNotMatch(@"<style|<script(?![^>]*\bsrc=)|\son\w+=|\sstyle=|javascript:",
            await response.Content.ReadAsStringAsync(OpenedPage.Stop));
    }

    [GeneratedRegex("""(?:https?|wss?|ftp):[/]{2}[^\s"'`)]+|(?:src|href|url|import|from)\s*[=(]?\s*["'`]?[/]{2}[a-z][^\s"'`)]*""",
        RegexOptions.IgnoreCase)]
    private static partial Regex Addresses();

    [GeneratedRegex(@"/\*.*?\*/|<!--.*?-->|^\s*//.*?$", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Comments();
}
