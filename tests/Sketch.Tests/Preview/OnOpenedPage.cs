using Xunit;

namespace Sketch.Tests.Preview;

/// <summary>Tests that each serve a folder of their own.</summary>
public abstract class OnOpenedPage : IAsyncLifetime
{
    private OpenedPage? _page;

    internal OpenedPage Page => _page!;

    public virtual async ValueTask InitializeAsync() => _page = await OpenedPage.Start();

    public async ValueTask DisposeAsync()
    {
        if (_page is not null)
        {
            await _page.DisposeAsync();
        }

        GC.SuppressFinalize(this);
    }
}
