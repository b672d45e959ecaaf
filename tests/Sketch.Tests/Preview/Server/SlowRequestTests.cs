using System.Text;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>A program that sends its headers one character at a time cannot keep a connection open for ever.</summary>
public sealed class SlowRequestTests
{
    [Fact]
    public async Task Headers_that_never_end_are_rejected()
    {
        await using var page = await OpenedPage.Start(headersWithin: TimeSpan.FromSeconds(0.1));
        using var line = await page.Connect();
        await line.SendAsync(Encoding.ASCII.GetBytes($"GET {page.Address.AbsolutePath} HTTP/1.1\r\nHost: "), OpenedPage.Stop);
        Assert.Contains("408", await OpenedPage.Rest(line), StringComparison.Ordinal);
    }
}
