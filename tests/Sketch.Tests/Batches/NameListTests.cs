using System.Collections.Immutable;
using Sketch.Batches;
using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Batches;

/// <summary>Lists of names, as comma-separated values (RFC 4180, section 2, whose numbers the tests give).</summary>
public sealed class NameListTests
{
    private static ImmutableArray<Person> Read(string text, FindingBag findings) => NameList.Read(new("names.csv", text), findings);

    private static List<string> Good(string text)
    {
        var findings = new FindingBag();
        var people = Read(text, findings);
        Assert.Empty(findings.ToImmutable());
        return [.. people.Select(p => p.Message is null ? p.Name : $"{p.Name}: {p.Message}")];
    }

    [Theory]
    [InlineData("Ann\r\nBen\r\n", "Ann|Ben")]
    [InlineData("Ann\nBen", "Ann|Ben")]
    [InlineData("name,message\nAnn,Ahoy\n", "Ann: Ahoy")]
    [InlineData("\uFEFFAnn\n", "Ann")]
    [InlineData("\n  \nAnn\n\n", "Ann")]
    [InlineData("Zoë, Ahoy \n", "Zoë: Ahoy")]
    [InlineData("Ann,\n", "Ann")]
    [InlineData("\"Ann\",\"Calm seas, Ann\"\n", "Ann: Calm seas, Ann")]
    [InlineData("\"Ann \"\"Annie\"\" Lee\"\n", "Ann \"Annie\" Lee")]
    [InlineData("Ann,\"Calm seas\r\nand a good light\"\nBen\n", "Ann: Calm seas / and a good light|Ben")]
    [InlineData("Ann,\"\"\n", "Ann")]
    [InlineData("", "")]
    public void A_list_is_read_as_the_rules_say(string text, string people) => Assert.Equal(people, string.Join('|', Good(text)));

    [Theory]
    [InlineData("Ann\nBen,Ahoy, Ben\nCy\n", 2, 10)]
    [InlineData("Ann\nBen \"Big\" Lee\nCy\n", 2, 5)]
    [InlineData("Ann\n\"Ben\nCy\n", 2, 1)]
    [InlineData("Ann\n\"Ben\" Lee\nCy\n", 2, 6)]
    [InlineData("Ann\n,Ahoy\nCy\n", 2, 1)]
    public void A_bad_line_is_reported_at_its_line_and_column_and_nobody_is_lost(string text, int line, int column)
    {
        var findings = new FindingBag();
        var people = Read(text, findings);
        var found = Assert.Single(findings.ToImmutable());
        Assert.Equal(("SK709", Severity.Error), (found.Code, found.Severity));
        Assert.Equal((line, column), (found.Location.Start.Line, found.Location.Start.Column));
        Assert.Equal(3, people.Length);
        Assert.Equal(("Ann", "Cy"), (people[0].Name, people[2].Name));
    }

    [Fact]
    public void Too_many_cells_are_kept_in_the_message() =>
        Assert.Equal("Ahoy, Ben", Read("Ben,Ahoy, Ben\n", new())[0].Message!.ToString());
}
