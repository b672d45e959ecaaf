using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Sketch.Fuzz.Inputs;
using Sketch.Fuzz.Invariants;
using Sketch.Preview.Server;

namespace Sketch.Fuzz.Targets;

/// <summary>
/// The server of the page, in this process, with requests that the page or a hostile program makes. An input is a folder and requests to
/// be sent in order: a file <c>01-post-see</c> holds the body, a file <c>02-get-sizes</c> the query.
/// </summary>
internal sealed class PageTarget : IFuzzTarget
{
    private const string Secret = "The lamp oil is in the boathouse.";

    public string Name => "page";

    public int Weight => 2;

    public FuzzInput Make(Draws draws)
    {
        var requests = new PageRequests(draws);
        var files = ImmutableArray.CreateBuilder<FuzzFile>();
        files.AddRange(requests.Folder());
        var number = 1;
        foreach (var (name, body) in requests.Sequence(draws.From(1, 6)))
        {
            files.Add(new($"{number++:00}-{name}", body));
        }

        return new(files.ToImmutable());
    }

    public void Run(FuzzInput input)
    {
        var around = Directory.CreateTempSubdirectory("sketch-fuzz-").FullName;
        try
        {
            RunIn(around, input).GetAwaiter().GetResult();
        }
        finally
        {
            Directory.Delete(around, recursive: true);
        }
    }

    private static async Task RunIn(string around, FuzzInput input)
    {
        var folder = Directory.CreateDirectory(Path.Combine(around, "cards")).FullName;
        await File.WriteAllTextAsync(Path.Combine(around, "secret.txt"), Secret);
        var files = input.Files.Where(f => !IsRequest(f)).ToList();
        foreach (var file in files)
        {
            await File.WriteAllBytesAsync(Path.Combine(folder, file.Name), file.Content);
        }

        await using (var server = await PageServer.Start(folder, null, 0))
        {
            using var client = new HttpClient(new SocketsHttpHandler { AllowAutoRedirect = false, UseProxy = false });
            foreach (var request in input.Files.Where(IsRequest))
            {
                await Send(client, new(server.Address.GetLeftPart(UriPartial.Path)), request);
            }
        }

        var others = Directory.GetFileSystemEntries(around).Select(Path.GetFileName).Except(["cards", "secret.txt"]);
        BrokenInvariantException.Unless(!others.Any(), "the page writes into its folder only", string.Join(' ', others));
        foreach (var file in files)
        {
            BrokenInvariantException.Unless(IsKept(folder, file), "no text is lost", file.Name);
        }
    }

    private static bool IsRequest(FuzzFile file) => file.Name is [>= '0' and <= '9', >= '0' and <= '9', '-', ..];

    /// <summary>Whether the content of a file is still in its place, at the beginning of a log, or among the earlier texts.</summary>
    private static bool IsKept(string folder, FuzzFile file)
    {
        var content = file.Content.AsSpan();
        var path = Path.Combine(folder, file.Name);
        if (File.Exists(path) && File.ReadAllBytes(path).AsSpan().StartsWith(content))
        {
            return true;
        }

        foreach (var kept in Directory.EnumerateFiles(folder, "*", new EnumerationOptions
        {
            RecurseSubdirectories = true,
            AttributesToSkip = 0
        }))
        {
            if (File.ReadAllBytes(kept).AsSpan().SequenceEqual(content))
            {
                return true;
            }
        }

        return false;
    }

    private static async Task Send(HttpClient client, Uri page, FuzzFile file)
    {
        var parts = file.Name.Split('-', 3);
        var (isPost, route) = (parts[1] == "post", parts[2]);
        // A picture follows its query.
        var split = isPost && route.StartsWith("scan", StringComparison.Ordinal) ? Array.IndexOf(file.Content, (byte)'\n') + 1 : 0;
        var query = isPost ? Encoding.UTF8.GetString(file.Content, 0, Math.Max(0, split - 1)) : file.Text;
        using var request = new HttpRequestMessage(isPost ? HttpMethod.Post : HttpMethod.Get, new Uri(page, isPost ? route
            : $"{route}?{file.Text}"));
        if (isPost)
        {
            request.Content = new ByteArrayContent(file.Content[split..]) { Headers = { ContentType = new("application/json") } };
            request.Headers.Add("Origin", page.GetLeftPart(UriPartial.Authority));
            request.Headers.Add("Sec-Fetch-Site", "same-origin");
        }

        using var response = await client.SendAsync(request);
        var body = await response.Content.ReadAsByteArrayAsync();
        var text = Encoding.UTF8.GetString(body);
        var type = response.Content.Headers.ContentType?.MediaType;
        var isProblem = type == "application/json" && text.StartsWith("{\"problem\":\"", StringComparison.Ordinal);
        BrokenInvariantException.Unless((int)response.StatusCode < 500 || isProblem, $"the page never fails at {route}",
            $"{response.StatusCode} {text}");
        BrokenInvariantException.Unless(!text.Contains(Secret, StringComparison.Ordinal), "nothing outside the folder is shown", route);
        switch (type)
        {
            case "application/json":
                Check(WellFormed.Json(text));
                break;
            case "application/x-ndjson":
                foreach (var line in text.Split('\n', StringSplitOptions.RemoveEmptyEntries))
                {
                    Check(WellFormed.Json(line));
                }

                break;
            case "text/csv":
                WellFormed.Csv(text);
                break;
            case "application/pdf":
                BrokenInvariantException.Unless(body.AsSpan().StartsWith("%PDF-"u8), "a PDF is one", route);
                break;
            default:
                break;
        }
    }

    /// <summary>Checks the pictures in an answer.</summary>
    private static void Check(JsonElement answer)
    {
        switch (answer.ValueKind)
        {
            case JsonValueKind.Object:
                foreach (var member in answer.EnumerateObject())
                {
                    Check(member.Value);
                }

                break;
            case JsonValueKind.Array:
                foreach (var member in answer.EnumerateArray())
                {
                    Check(member);
                }

                break;
            case JsonValueKind.String when answer.GetString()!.StartsWith("<svg", StringComparison.Ordinal):
                WellFormed.Svg(answer.GetString()!);
                break;
            default:
                break;
        }
    }
}
