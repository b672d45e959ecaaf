using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.AspNetCore.Routing;
using Sketch.Output.Files;
using Sketch.Output.Pictures;
using Sketch.Preview.Folder;
using Sketch.Preview.Sessions;
using Sketch.Preview.Views;
using Sketch.Rows;
using Sketch.Text;

namespace Sketch.Preview.Server;

/// <summary>
/// Requests that make a paper of a photograph or scan. Their body is the file, which is written beside the stash only when it becomes a
/// paper; the text answers as for a row.
/// </summary>
/// <param name="room">The services of the page.</param>
internal sealed class ScanRoutes(PageServices room)
{
    private const int MostBytes = 100_000_000;
    private const int MostNames = 1000;

    private static readonly string[] Endings = [".jpg", ".jpeg", ".png", ".webp"];

    /// <summary>Maps the requests about scans.</summary>
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/scan-allowed", Allowed);
        routes.MapPost("/scan-size", Measure).WithMetadata(new BodyLimit());
        routes.MapPost("/scan", Keep).WithMetadata(new BodyLimit());
    }

    /// <summary>Whether a file may be sent at all; a browser cannot show an answer to what is cut off.</summary>
    private static Results<Ok<Done>, Problem> Allowed(string name = "", long bytes = 0) =>
        !Endings.Contains(Path.GetExtension(name).ToLowerInvariant())
            ? Refused($"\"{name}\" is not a picture that Sketch can read. Save it as JPEG, PNG or WebP, and drop that file.")
            : bytes > MostBytes
            ? Refused($"\"{name}\" is larger than {MostBytes / 1_000_000} MB. Save it at 300 dots per inch, and drop that file.")
            : TypedResults.Ok(new Done());

    private async Task<Results<Ok<ScanView>, Problem>> Measure(Stream body, string file = "", string window = "", string name = "")
    {
        var content = await Read(body);
        var scan = ScanFile.Read(content);
        return room.Readings.Find(window, file)?.Compilation.Stash is not { } stash ? NoStash()
            : scan.ValueOrDefault is { } read ? TypedResults.Ok(ScanView.Of(read, Path.GetFileNameWithoutExtension(name), stash))
            : Refused(Unusable(name, scan.Problem!));
    }

    private async Task<Results<Ok<RowDone>, Problem>> Keep(
        Stream body, string file = "", string window = "", string name = "", string paper = "", string sheet = "", string width = "",
        string stock = "")
    {
        var content = await Read(body);
        if (room.Folder.PathOf(file) is not { } path || room.Readings.Find(window, file) is not { Compilation.Stash: not null } before)
        {
            return NoStash();
        }

        var read = ScanFile.Read(content);
        if (read.ValueOrDefault is not { } scan)
        {
            return Refused(Unusable(name, read.Problem!));
        }

        var folder = Path.GetDirectoryName(path)!;
        try
        {
            if (Write(folder, Path.GetFileNameWithoutExtension(name), scan.Ending, content) is not { } written)
            {
                return Refused($"Too many files have names like \"{name}\". Rename the picture, and drop it again.");
            }

            var done = Added(before, new Dictionary<string, string>
            {
                ["name"] = paper,
                ["size"] = sheet,
                ["stock"] = stock,
                ["front"] = $"\"{written}\"{(width.Trim().Length == 0 ? "" : $" {width.Trim()} wide")}",
            });
            if (done.Refused.Length == 0)
            {
                return TypedResults.Ok(done with { Said = $"{paper} is added. Its picture is the file {written}." });
            }

            File.Delete(Path.Combine(folder, written));
            return TypedResults.Ok(done);
        }
        catch (Exception refused) when (refused is FileWriteException or UnauthorizedAccessException)
        {
            return new Problem(StatusCodes.Status500InternalServerError, $"\"{name}\" is not copied: {refused.Message}");
        }
    }

    private RowDone Added(Reading before, Dictionary<string, string> values)
    {
        var text = before.Source.Content;
        var added = RowEditing.Add(before.Source, "paper", values);
        if (added.ValueOrDefault is not { } row)
        {
            return new(text, "", added.Problem!);
        }

        var changed = TextEdit.Apply(text, [row.Edit]);
        var after = before with { Compilation = Compiler.Compile(new(before.Source.Path, changed), room.Readings.Files) };
        return after.ErrorSince(before) is { } error ? new(text, "", error) : new(changed, "", "");
    }

    /// <summary>Writes a new file, with a number where the name is taken; null where there are too many.</summary>
    private static string? Write(string folder, string stem, string ending, byte[] content)
    {
        // Each of these quotes would end the name in the stash.
        var plain = string.Concat(stem.Where(c => c is not ('“' or '”' or '„')));
        for (var number = 1; number <= MostNames; number++)
        {
            var name = CarriedName.Like(number == 1 ? plain : $"{plain}-{number}", ending);
            var path = Path.Combine(folder, name);
            if (!File.Exists(path) && SafeFile.Write(path, file => file.Write(content), () => !File.Exists(path)))
            {
                return name;
            }
        }

        return null;
    }

    private static async Task<byte[]> Read(Stream body)
    {
        using var content = new MemoryStream();
        await body.CopyToAsync(content);
        return content.ToArray();
    }

    private static string Unusable(string name, string problem) => $"\"{name}\" cannot be used: {problem}";

    private static Problem NoStash() => Refused("The text has no stash line. Open a stash, and drop the picture there.");

    private static Problem Refused(string sentence) => new(StatusCodes.Status422UnprocessableEntity, sentence);

    private sealed class BodyLimit : IRequestSizeLimitMetadata
    {
        public long? MaxRequestBodySize => MostBytes;
    }
}
