using System.Text;
using System.Text.Json;
using Sketch.Preview.Server;

namespace Sketch.Benchmarks;

/// <summary>
/// The cost of one key on the page: processor time from the request with the changed text to the responses for the picture, the
/// findings and the open tab. The client runs in the same process and is counted too; a request that does nothing is measured beside it.
/// </summary>
internal static class Keys
{
    private const string Window = "window0000000001";

    private const int WarmUp = 100;

    // The server limits requests to 150 a second; a key takes two.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(15);

    /// <summary>Prints a table.</summary>
    /// <param name="sketches">The folder with the museum's stash and batch.</param>
    /// <param name="keys">The number of keys to measure for each row.</param>
    public static int Run(string sketches, int keys)
    {
        Clock.Print("| text | open tab | ms of processor a key: median | 95 of 100 below | allocated a key, MB |");
        Clock.Print("| --- | --- | ---: | ---: | ---: |");
        Measure(sketches, keys).GetAwaiter().GetResult();
        return 0;
    }

    private static async Task Measure(string sketches, int keys)
    {
        var folder = Directory.CreateTempSubdirectory("sketch-keys-").FullName;
        try
        {
            foreach (var file in Directory.GetFiles(sketches))
            {
                File.Copy(file, Path.Combine(folder, Path.GetFileName(file)));
            }

            await using var server = await PageServer.Start(folder, null, 0).ConfigureAwait(false);
            using var page = new HttpClient { BaseAddress = new(server.Address.GetLeftPart(UriPartial.Path)) };
            page.DefaultRequestHeaders.Add("Origin", server.Address.GetLeftPart(UriPartial.Authority));
            await Type(page, keys, "none: a request that does nothing", "", "-", null).ConfigureAwait(false);
            foreach (var (name, text) in new[] { ("15 pieces", Cards.FifteenPieces), ("200 pieces", Cards.TwoHundredPieces) })
            {
                await Type(page, keys, $"card of {name}", "measured.card", "Picture", text).ConfigureAwait(false);
                await Type(page, keys, $"card of {name}", "measured.card", "Sizes", text).ConfigureAwait(false);
            }

            var stash = await File.ReadAllTextAsync(Path.Combine(folder, "museum.stash")).ConfigureAwait(false);
            await Type(page, keys, "museum.stash", "museum.stash", "Stash", stash).ConfigureAwait(false);
            var batch = await File.ReadAllTextAsync(Path.Combine(folder, "lamp-day.batch")).ConfigureAwait(false);
            await Type(page, keys, "lamp-day.batch, five cards", "lamp-day.batch", "Sheets", batch).ConfigureAwait(false);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task Type(HttpClient page, int keys, string name, string file, string tab, string? text)
    {
        var times = new double[keys];
        long allocated = 0;
        for (var i = -WarmUp; i < keys; i++)
        {
            var typed = text is null ? null : Typed(text, i + WarmUp);
            var (processor, bytes) = (Environment.CpuUsage.TotalTime, GC.GetTotalAllocatedBytes(precise: false));
            await (typed is null ? Get(page, "answers") : Key(page, file, tab, typed)).ConfigureAwait(false);
            if (i >= 0)
            {
                times[i] = (Environment.CpuUsage.TotalTime - processor).TotalMilliseconds;
                allocated += GC.GetTotalAllocatedBytes(precise: false) - bytes;
            }

            await Task.Delay(Pause).ConfigureAwait(false);
        }

        Clock.Print($"| {name} | {tab} | {Clock.Quantile(times, 0.5):0.00} | {Clock.Quantile(times, 0.95):0.00} | "
            + $"{allocated / 1e6 / keys:0.00} |");
    }

    /// <summary>The text with the title after the keys so far, which never occurred before.</summary>
    private static string Typed(string text, int key)
    {
        var end = text.IndexOf('"', text.IndexOf('"', StringComparison.Ordinal) + 1);
        return text.Insert(end, $" {key}");
    }

    private static async Task Key(HttpClient page, string file, string tab, string text)
    {
        var known = await See(page, file, text).ConfigureAwait(false);
        if (tab is "Sizes" or "Stash")
        {
            var of = $"file={file}&window={Window}";
            await Get(page, tab == "Sizes" ? $"sizes?{of}&units=" : $"stash?{of}&stash={file}").ConfigureAwait(false);
        }

        if (!known.Contains("\"summary\"", StringComparison.Ordinal) || known.Contains("\"error\"", StringComparison.Ordinal))
        {
            throw new InvalidOperationException(known);
        }
    }

    private static async Task<string> See(HttpClient page, string file, string text)
    {
        var stash = file.EndsWith(".card", StringComparison.Ordinal) ? "museum.stash" : "";
        using var content = new StringContent(
            JsonSerializer.Serialize(new
            {
                file,
                window = Window,
                text,
                stamp = "",
                saved = true,
                stash,
                choices = Array.Empty<string>(),
                unfolded = false,
                known = Array.Empty<string>(),
            }), Encoding.UTF8, "application/json");
        using var answer = await page.PostAsync(new Uri("see", UriKind.Relative), content).ConfigureAwait(false);
        answer.EnsureSuccessStatusCode();
        return await answer.Content.ReadAsStringAsync().ConfigureAwait(false);
    }

    private static async Task Get(HttpClient page, string address)
    {
        using var answer = await page.GetAsync(new Uri(address, UriKind.Relative)).ConfigureAwait(false);
        answer.EnsureSuccessStatusCode();
        await answer.Content.ReadAsByteArrayAsync().ConfigureAwait(false);
    }
}
