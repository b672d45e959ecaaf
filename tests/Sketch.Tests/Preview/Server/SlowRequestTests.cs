using System.Text;
using Xunit;

namespace Sketch.Tests.Preview.Server;

/// <summary>
/// A program that sends its headers a letter at a time does not hold a line for ever. On its own, as it takes as long as the server's
/// patience.
/// </summary>
public sealed class SlowRequestTests : OnOpenedPage
{
    [Fact]
    public async Task Headers_that_never_end_are_refused()
    {
        using var line = await Page.Connect();
        await line.SendAsync(Encoding.ASCII.GetBytes($"GET {Page.Address.AbsolutePath} HTTP/1.1\r\nHost: "), OpenedPage.Stop);
        Assert.Contains("408", await OpenedPage.Rest(line), StringComparison.Ordinal);
    }
}
