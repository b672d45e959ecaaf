using System.Text.Json.Nodes;
using Json.Schema;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.Cli;

/// <summary>The schemas in <c>sketches/schemas</c> describe what the verbs write with --json.</summary>
public sealed class SchemaTests : IDisposable
{
    private const string Broken = "card \"Lamp\"\nbase A2, fold left, of white\nfront\n  panel 9 x 3, of sliver\n  mat +1/8\n";

    private readonly CommandLineRun _line = new();

    private string Out => _line.InFolder("out");

    public void Dispose() => _line.Dispose();

    private static string Sample(string name) => Repository.PathTo("sketches", name);

    [Fact]
    public void The_findings_of_all_kinds_of_file() =>
        Follows("check", "check", Sample("wide-view.card"), Sample("museum.stash"), _line.File("a.card", Broken));

    [Fact]
    public void The_sizes_of_cards() => Follows(
        "sizes", "sizes", Sample("every-construct.card"), Sample("lighthouse-tent.card"), _line.File("a.card", Broken),
        _line.Broken("b.card"));

    [Fact]
    public void Pictures() => Follows("draw", "draw", Sample("first-light.card"), _line.File("a.card", Broken), "-o", Out);

    [Fact]
    public void Templates() =>
        Follows("templates", "templates", Sample("first-light.card"), _line.File("a.card", Broken), "--hollow", "-o", Out);

    [Fact]
    public void Files_for_a_cutting_machine() =>
        Follows("templates-machine", "templates", Sample("first-light.card"), "--machine", "-o", Out);

    [Fact]
    public void Variants() => Follows(
        "variants", "variants", Sample("keepers-watch.card"), _line.File("a.card", Broken), "--stash", Sample("museum.stash"), "--limit",
        "2", "--as", "html", "-o", Out);

    [Fact]
    public void A_gallery() => Follows("gallery", "gallery", Sample("first-light.card"), "-o", Out);

    [Fact]
    public void A_plan() => Follows("plan", "plan", Batch());

    [Fact]
    public void The_plan_of_what_is_no_batch() => Follows("plan", "plan", _line.Broken("a.batch"));

    [Fact]
    public void A_count()
    {
        var batch = Batch();
        _line.Run("count", batch, "cut", "1", "parcel-post.card");
        Follows("count", "count", batch);
    }

    [Fact]
    public void Explanations() => Follows("explain", "explain");

    [Fact]
    public void Texts_in_their_canonical_spelling() =>
        Follows("format", "format", _line.File("a.card", Broken), _line.Broken("b.card"));

    [Fact]
    public void Each_verb_that_writes_json_has_a_schema()
    {
        var writers = _line.Verbs().Where(verb =>
        {
            _line.Run("help", verb);
            return _line.Output.Contains("--json", StringComparison.Ordinal);
        });

        Assert.Equal(writers.Order(StringComparer.Ordinal), Directory.GetFiles(Repository.PathTo("sketches", "schemas"))
            .Select(f => Path.GetFileName(f).Split('.', '-')[0]).Distinct().Order(StringComparer.Ordinal));
    }

    /// <summary>A batch with recipients, makers and much that is stuck on, and too little paper.</summary>
    private string Batch()
    {
        foreach (var name in new[] { "parcel.stash", "parcel-post.card", "well-wrapped.card" })
        {
            _line.File(name, File.ReadAllText(Sample(name)).Replace("4 sheets", "1 sheets", StringComparison.Ordinal));
        }

        return _line.File("few.batch", """
            batch "Few", hollow
            stash "parcel.stash"
            for "Keepers' club", 3 cards
            makers "Ann" "Beth"
            make 2 of "parcel-post.card"
            make 2 of "well-wrapped.card"
            cut 1 of 1 x 2 from any offcut
            cut 9 of 6 x 9 from harbour, front
            """);
    }

    private void Follows(string schema, params string[] line)
    {
        _line.Run([.. line, "--json"]);

        var result = Read(schema).Evaluate(_line.Json, new() { OutputFormat = OutputFormat.List });

        Assert.True(result.IsValid, string.Join('\n', (result.Details ?? []).Where(d => d.Errors is not null)
            .Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}").Take(20)));
    }

    /// <summary>
    /// A schema that allows nothing but what it names. As published it allows more, because later versions may write more.
    /// </summary>
    private static JsonSchema Read(string name)
    {
        var schema = JsonNode.Parse(File.ReadAllText(Repository.PathTo("sketches", "schemas", $"{name}.schema.json")))!;
        Close(schema);
        return JsonSchema.FromText(schema.ToJsonString());
    }

    private static void Close(JsonNode? node)
    {
        switch (node)
        {
            case JsonObject branch:
                foreach (var (_, child) in branch.ToList())
                {
                    Close(child);
                }

                if (branch["properties"] is JsonObject)
                {
                    branch["additionalProperties"] = false;
                }

                break;
            case JsonArray items:
                foreach (var item in items)
                {
                    Close(item);
                }

                break;
        }
    }
}
