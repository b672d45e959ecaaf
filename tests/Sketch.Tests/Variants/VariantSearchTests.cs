using CsCheck;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Tests.Stashes;
using Sketch.Variants;
using Xunit;

namespace Sketch.Tests.Variants;

public class VariantSearchTests
{
    private const string Roles = "role sky: white\nrole deep: white\n";
    private const string Front = "front\n  panel 3 x 4, of sky\n    panel 2 x 2, of deep\n";
    private const string TwoLayers = Roles + Front;
    private const string Shelf =
        "paper gulls: 12 x 12, 3 sheets, front #9fc9e8, back #e8dcc0\npaper night: 12 x 12, 1 sheet, front #101c33, back #b8332f\n";

    [Fact]
    public void Every_role_is_filled_with_every_contrasting_side() =>
        // Four sides in each of two roles, minus the four with the same side in both.
        Assert.Equal(12, Find(TwoLayers, Shelf).Found);

    [Fact]
    public void A_layer_that_cannot_be_told_from_the_next_makes_no_variant() =>
        Assert.Empty(Find(TwoLayers,
            "paper a: 12 x 12, 1 sheet, front #9fc9e8, back #9fc9e8\npaper b: 12 x 12, 1 sheet, front #9fc9e9, back #9fc9e9\n").Best);

    [Fact]
    public void Only_the_requested_roles_are_varied() =>
        Assert.All(Find(TwoLayers, Shelf, roles: ["deep"]).Best, v => Assert.Equal("deep", Assert.Single(v.Choices).Role));

    [Fact]
    public void Only_the_requested_papers_are_used() =>
        Assert.All(Find(TwoLayers, Shelf, papers: ["gulls", "night/back"]).Best.SelectMany(v => v.Choices),
            c => Assert.True(c.Paper == "gulls" || c.Side == PaperSide.Back));

    [Fact]
    public void Variants_that_lack_paper_for_one_card_are_left_out_and_counted()
    {
        var variants = Find(TwoLayers, Shelf + "paper scrap: 2 1/2 x 2 1/2, 1 sheet, front #2f6f6a, back #2f6f6a\n");

        Assert.Equal((16, 4), (variants.Found, variants.Lacking));
    }

    [Fact]
    public void A_paper_that_has_run_out_fills_no_role()
    {
        var variants = Find(TwoLayers, Shelf.Replace("1 sheet", "0 sheets", StringComparison.Ordinal), papers: ["night", "gulls/back"]);

        Assert.Equal((0, 6), (variants.Found, variants.Lacking));
    }

    [Fact]
    public void Legible_variants_come_before_others()
    {
        var best = Find(
            "role sky: white\nfront\n  panel 3 x 4 \"Fair winds\", of sky, ink #16324f\n",
            "paper pale: 12 x 12, 1 sheet, front #f2efe6, back #f2efe6\npaper dark: 12 x 12, 1 sheet, front #254a6b, back "
                + "#254a6b\ncardstock white: letter, 3 sheets\n").Best;

        Assert.Equal(["pale", "dark"], best.Select(v => v.Choices[0].Paper).Where(p => p != "white"));
    }

    [Fact]
    public void The_second_variant_differs_clearly_from_the_first()
    {
        var best = Find("role sky: white\nfront\n  panel 3 x 4, of sky\n",
            "paper a: 12 x 12, 1 sheet, front #101c33, back #101c33\npaper b: 12 x 12, 1 sheet, front #111d34, back #111d34\npaper c: "
                + "12 x 12, 1 sheet, front #b8332f, back #b8332f\n").Best;

        Assert.Contains("c", best.Take(2).Select(v => v.Choices[0].Paper));
    }

    [Fact]
    public void A_base_is_made_from_cardstock_only() =>
        Assert.All(
            VariantSearch.Find(
                Compiler.Compile(new("c.card", "card \"C\"\nbase A2, of fold\nrole fold: white\nfront\n  panel 2 x 2, of red\n"),
                    new TestWorld()).Card!,
                Stashed.Stash(Shelf + "cardstock navy: letter, 3 sheets\n"), new([], [], 10)).Best,
            v => Assert.Equal("navy", v.Choices.Single().Paper));

    [Fact]
    public void An_id_is_accepted_by_draw_as_papers()
    {
        var variant = Find(TwoLayers, Shelf).Best[0];

        Assert.Equal(variant.Choices, variant.Id.Split(',').Select(t => PaperChoice.TryParse(t, out var choice) ? choice : null));
    }

    [Fact]
    public void The_limit_is_respected() => Assert.Equal(5, Find(TwoLayers, Shelf, limit: 5).Best.Length);

    private static readonly Gen<string> Looks = Gen.OneOf("#9fc9e8", "#16324f", "#b8332f", "dots #cfe3ea #2d5d73", "stars #1d2c4a",
        "plaid", "foil gold", "foil #b9bec3", "pearl", "kraft", "waves");

    /// <summary>A shelf that has every character, and a card whose roles have some.</summary>
    private static readonly Gen<(string Shelf, string Roles)> Shelves = Gen.Select(
        Gen.Select(Looks, Looks).Array[2, 6], Looks, Looks).Select((papers, sky, deep) => (string.Concat(papers.Select((p, i) =>
            $"paper p{i}: 12 x 12, 3 sheets, front {p.Item1}, back {p.Item2}\n"))
                + "paper f: 12 x 12, 3 sheets, front foil gold, back plain white\npaper q: 12 x 12, 3 sheets, front pearl, back waves\n",
            $"role sky: {sky}\nrole deep: {deep}\n"));

    [Fact]
    public void Patterned_stays_patterned_plain_stays_plain_and_foil_stays_foil() => Shelves.Sample(
        made =>
        {
            var (shelf, roles) = made;
            var card = Stashed.Card(roles + Front, null).Card!;
            var stash = Stashed.Stash(shelf);
            Assert.All(VariantSearch.Find(card, stash, new([], [], 24)).Best.SelectMany(v => v.Choices), choice =>
            {
                var paper = stash.Papers.Single(p => p.Name == choice.Paper).Side(choice.Side).Look;
                Assert.Equal(
                    PaperCharacters.Of(card.Roles.Single(r => r.Name == choice.Role).Paint.Look), PaperCharacters.Of(paper));
            });
        },
        iter: 200);

    [Fact]
    public void A_paper_of_another_character_is_taken_where_it_is_asked_for() => Assert.Contains(
        Find(TwoLayers, Shelf + "paper shine: 12 x 12, 3 sheets, front foil gold, back plain white\n", papers: ["gulls", "shine/front"])
            .Best,
        v => v.Choices.Any(c => c.Paper == "shine"));

    [Fact]
    public void Where_the_stash_has_no_paper_of_a_character_any_stands_in_and_a_note_says_so()
    {
        var found = Find("role sky: foil gold\n" + "front\n  panel 3 x 4, of sky\n", Shelf);
        Assert.Equal(4, found.Found);
        Assert.Equal("sky: the stash has no foil paper for it, so any paper was tried, 4 sides.", found.Notes[0]);
    }

    [Fact]
    public void What_was_tried_is_counted_and_each_role_is_named()
    {
        var found = Find(TwoLayers, Shelf + "paper unseen: 12 x 12, 1 sheet\n");
        Assert.Equal((16, 12), (found.Tried, found.Found));
        Assert.Equal(["sky: stays plain, 4 sides tried.", "deep: stays plain, 4 sides tried.",
            "Left out, because the stash does not say what they look like: unseen."], found.Notes);
    }

    /// <summary>Three prints that contrast alike: only their sheets and collections differ.</summary>
    [Theory]
    [InlineData("paper a: 12 x 12, 3 sheets, front dots #cfe3ea #2d5d73, back dots #2d5d73 #cfe3ea\n"
        + "paper b: 12 x 12, 3 sheets, front dots #cfe3ea #2d5d73, back white\n"
        + "paper c: 12 x 12, 3 sheets, front dots #2d5d73 #cfe3ea, back white\n",
        "a a")]
    [InlineData("paper a: 12 x 12, 3 sheets, collection \"Sea\", front dots #cfe3ea #2d5d73, back white\n"
        + "paper b: 12 x 12, 3 sheets, collection \"Land\", front dots #2d5d73 #cfe3ea, back white\n"
        + "paper c: 12 x 12, 3 sheets, collection \"sea\", front dots #2d5d73 #cfe3ea, back white\n",
        "a c")]
    public void Sides_of_one_sheet_and_sheets_of_one_collection_come_first(string shelf, string first)
    {
        var best = Find("role sky: plaid\nrole deep: plaid\n" + Front, shelf).Best;
        Assert.Equal(first, string.Join(' ', best[0].Choices.Select(c => c.Paper).Order()));
    }

    private static VariantList Find(string card, string shelf, string[]? roles = null, string[]? papers = null, int limit = 24) =>
        VariantSearch.Find(Stashed.Card(card, null).Card!, Stashed.Stash(shelf), new([.. roles ?? []], [.. papers ?? []], limit));
}
