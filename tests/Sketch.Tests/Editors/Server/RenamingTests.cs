using System.Text.Json;
using StreamJsonRpc;
using Xunit;

namespace Sketch.Tests.Editors.Server;

/// <summary>Names that the files of a folder share get other names in all of them, over the real streams.</summary>
public sealed class RenamingTests : IDisposable
{
    private const string Lamp = "card \"Lamp\"\nbase A2, of white\nrole sky: gulls\nfront\n  panel 3 x 4, of sky\n    star 2, of gulls\n";

    private readonly RunningEditor _editor = new();

    public RenamingTests()
    {
        Write("museum.stash", "stash \"Shelf\"\npaper gulls: 12 x 12, 3 sheets\noffcut gulls: 3 x 4, 1\n");
        Write("lamp.card", Lamp);
        Write("night.card", "card \"Night\"\nlike \"lamp.card\"\nrole sky: navy\nadd to front\n  strip full x 1, of sky\n");
        Write("day.batch", "batch \"Day\"\nstash \"museum.stash\"\nmake 2 of \"lamp.card\"\n  role sky: gulls, back\n"
            + "make 1 of \"night.card\"\n  role sky: gulls\ncut 2 of 3 x 4 from gulls, front\n");
    }

    public void Dispose() => _editor.Dispose();

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(_editor.Folder, name), text);

    private string Read(string name) => File.ReadAllText(Path.Combine(_editor.Folder, name));

    private async Task Begin(params (string Name, string Text)[] open)
    {
        await _editor.Begin();
        foreach (var (name, text) in open)
        {
            await _editor.Open(name, text);
        }
    }

    /// <summary>Renames what is at a place in an open file; returns the lines that this changes, without their indentation.</summary>
    private async Task<string[]> Rename(string name, int line, int character, string other) =>
        Changed(await _editor.Ask("textDocument/rename", _editor.At(name, line, character, other)), []);

    private string[] Changed(JsonElement changes, Dictionary<string, string> open) =>
    [
        .. changes.GetProperty("changes").EnumerateObject().OrderBy(f => f.Name, StringComparer.Ordinal).SelectMany(file =>
        {
            var name = Path.GetFileName(new Uri(file.Name).LocalPath);
            var lines = open.GetValueOrDefault(name, Read(name)).Split('\n');
            foreach (var edit in file.Value.EnumerateArray().Reverse())
            {
                var (start, end) = (edit.GetProperty("range").GetProperty("start"), edit.GetProperty("range").GetProperty("end"));
                ref var text = ref lines[start.GetProperty("line").GetInt32()];
                text = text[..start.GetProperty("character").GetInt32()] + edit.GetProperty("newText").GetString()
                    + text[end.GetProperty("character").GetInt32()..];
            }

            return file.Value.EnumerateArray().Select(e => e.GetProperty("range").GetProperty("start").GetProperty("line").GetInt32())
                .Distinct().Select(l => $"{name}: {lines[l].Trim()}");
        }),
    ];

    [Fact]
    public async Task A_paper_gets_another_name_in_its_stash_in_the_batches_with_that_stash_and_in_cards()
    {
        await Begin(("museum.stash", Read("museum.stash")));

        Assert.Equal(
            [
                "day.batch: role sky: terns, back", "day.batch: role sky: terns", "day.batch: cut 2 of 3 x 4 from terns, front",
                "lamp.card: role sky: terns", "lamp.card: star 2, of terns",
                "museum.stash: paper terns: 12 x 12, 3 sheets", "museum.stash: offcut terns: 3 x 4, 1",
            ],
            await Rename("museum.stash", 1, 7, "terns"));
    }

    [Fact]
    public async Task A_role_gets_another_name_in_its_card_in_cards_like_it_and_in_batches()
    {
        await Begin(("day.batch", Read("day.batch")));

        Assert.Equal(
            [
                "day.batch: role air: gulls, back", "day.batch: role air: gulls",
                "lamp.card: role air: gulls", "lamp.card: panel 3 x 4, of air",
                "night.card: role air: navy", "night.card: strip full x 1, of air",
            ],
            await Rename("day.batch", 3, 8, "air"));
    }

    [Fact]
    public async Task What_is_open_counts_instead_of_the_file_on_the_disk()
    {
        const string typed = "# A comment that is not saved yet.\n" + Lamp;
        await Begin(("lamp.card", typed), ("museum.stash", Read("museum.stash")));

        var changes = await _editor.Ask("textDocument/rename", _editor.At("museum.stash", 1, 7, "terns"));

        Assert.Equal(["lamp.card: role sky: terns", "lamp.card: star 2, of terns"],
            Changed(changes, new() { ["lamp.card"] = typed }).Where(l => l.StartsWith("lamp", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task A_card_that_is_made_with_two_stashes_keeps_what_both_of_them_list()
    {
        Write("parcel.stash", "stash \"Parcel\"\npaper gulls: 12 x 12, 3 sheets\n");
        Write("parcel.batch", "batch \"Parcel\"\nstash \"parcel.stash\"\nmake 2 of \"lamp.card\"\n");
        await Begin(("museum.stash", Read("museum.stash")));

        var refused = await Assert.ThrowsAsync<RemoteInvocationException>(() => Rename("museum.stash", 1, 7, "terns"));

        Assert.Equal("lamp.card is made with museum.stash and with parcel.stash, and both list a paper \"gulls\". "
            + "Change the name by hand in each file.", refused.Message);
    }

    [Fact]
    public async Task A_paper_that_another_stash_lists_too_keeps_its_name_in_cards_that_are_made_with_that()
    {
        Write("parcel.stash", "stash \"Parcel\"\npaper gulls: 12 x 12, 3 sheets\n");
        Write("post.card", Lamp);
        Write("parcel.batch", "batch \"Parcel\"\nstash \"parcel.stash\"\nmake 2 of \"post.card\"\n  role sky: gulls\n");
        await Begin(("parcel.stash", Read("parcel.stash")));

        Assert.Equal(
            ["parcel.batch: role sky: terns", "parcel.stash: paper terns: 12 x 12, 3 sheets", "post.card: role sky: terns",
                "post.card: star 2, of terns"],
            await Rename("parcel.stash", 1, 7, "terns"));
    }

    [Fact]
    public async Task A_colour_word_is_the_paper_only_in_cards_that_are_made_with_its_stash()
    {
        Write("museum.stash", "stash \"Shelf\"\ncardstock navy: letter, 3 sheets\n");
        Write("loose.card", "card \"Loose\"\nbase A2, of white\nfront\n  star 2, of navy\n");
        await Begin(("museum.stash", Read("museum.stash")));

        Assert.Equal(["museum.stash: cardstock dusk: letter, 3 sheets", "night.card: role sky: dusk"],
            await Rename("museum.stash", 1, 11, "dusk"));
    }

    [Fact]
    public async Task Ink_of_a_colour_is_no_paper()
    {
        Write("museum.stash", "stash \"Shelf\"\ncardstock navy: letter, 3 sheets\n");
        Write("night.card", "card \"Night\"\nbase A2, of white\nfront\n  text \"Ahoy\", of navy\n");
        await Begin(("museum.stash", Read("museum.stash")));

        Assert.Equal(["museum.stash: cardstock dusk: letter, 3 sheets"], await Rename("museum.stash", 1, 11, "dusk"));
    }

    [Theory]
    [InlineData("museum.stash", 1, 7, "sky", "There is a role \"sky\" in lamp.card already.")]
    [InlineData("museum.stash", 1, 7, "navy", "night.card names the paper or colour \"navy\" already, which would then be this paper.")]
    [InlineData("lamp.card", 2, 6, "white", "lamp.card names the paper or colour \"white\" already, which would then be this role.")]
    [InlineData("lamp.card", 2, 6, "two words", "\"two words\" cannot be a name: a name is a letter, then letters, digits, _ and -.")]
    public async Task A_name_that_would_mean_something_else_is_refused(string file, int line, int character, string other, string reason)
    {
        await Begin((file, Read(file)));

        var refused = await Assert.ThrowsAsync<RemoteInvocationException>(() => Rename(file, line, character, other));

        Assert.Equal(reason, refused.Message);
    }

    [Fact]
    public async Task The_declaration_of_a_paper_is_found_from_a_card()
    {
        await Begin(("lamp.card", Lamp));

        var declared = await _editor.Ask("textDocument/definition", _editor.At("lamp.card", 5, 16));

        Assert.Equal(_editor.UriOf("museum.stash"), Assert.Single(declared.EnumerateArray()).GetProperty("uri").GetString());
    }

    [Fact]
    public async Task The_uses_of_a_role_are_found_in_all_files()
    {
        await Begin(("lamp.card", Lamp));

        var uses = await _editor.Ask("textDocument/references", _editor.At("lamp.card", 2, 6));

        Assert.Equal([("day.batch", 2), ("lamp.card", 2), ("night.card", 2)], uses.EnumerateArray()
            .GroupBy(u => Path.GetFileName(u.GetProperty("uri").GetString()!)).Select(g => (g.Key, g.Count())).Order());
    }

    [Theory]
    [InlineData("lamp.card", "lantern.card", "day.batch: make 2 of \"lantern.card\"", "night.card: like \"lantern.card\"")]
    [InlineData("museum.stash", "shelf.stash", "day.batch: stash \"shelf.stash\"")]
    public async Task A_file_with_another_name_is_named_so_in_the_others(string name, string other, params string[] lines)
    {
        await Begin();

        var changes = await _editor.Ask(
            "workspace/willRenameFiles", new { files = new[] { new { oldUri = _editor.UriOf(name), newUri = _editor.UriOf(other) } } });

        Assert.Equal(lines, Changed(changes, []));
    }
}
