using Sketch.Diagnostics;
using Xunit;

namespace Sketch.Tests.Cli.Verbs;

public sealed class ExplainVerbTests : IDisposable
{
    private readonly CommandLineRun _line = new();

    public void Dispose() => _line.Dispose();

    [Fact]
    public void A_code_is_explained_with_an_example_and_the_fix()
    {
        Assert.Equal(0, _line.Run("explain", "SK210"));

        Assert.StartsWith("SK210 (warning): unknown role\n", _line.Output);
        Assert.Contains("star 1 3/4, of glod\n", _line.Output);
        Assert.Contains("\nFix: ", _line.Output);
        Assert.EndsWith("star 1 3/4, of gold\n\n", _line.Output);
    }

    [Theory]
    [InlineData("sk001")]
    [InlineData("001")]
    [InlineData("1")]
    public void Lower_case_and_bare_numbers_are_codes_too(string code)
    {
        Assert.Equal(0, _line.Run("explain", code));
        Assert.StartsWith("SK001 ", _line.Output);
    }

    [Theory]
    [InlineData("SK2100", "Did you mean \"SK210\"?")]
    [InlineData("sl210", "Did you mean \"SK210\"?")]
    [InlineData("mats", "sketch explain without a code lists all.")]
    public void An_unknown_code_is_wrong_usage(string code, string way)
    {
        Assert.Equal(2, _line.Run("explain", code));
        Assert.Contains($"There is no finding \"{code}\". {way}", _line.Error);
        Assert.Empty(_line.Output);
    }

    [Fact]
    public void Without_a_code_every_finding_is_listed_with_its_title()
    {
        Assert.Equal(0, _line.Run("explain"));
        Assert.All(FindingCatalogue.All, k => Assert.Matches($"(?m)^  {k.Code} .*  {k.Title}$", _line.Output));
    }

    [Theory]
    [InlineData(1, "SK210")]
    [InlineData(0)]
    public void Json_is_one_document_of_the_same_shape_for_one_code_and_for_all(int one, params string[] code)
    {
        Assert.Equal(0, _line.Run(["explain", "--json", .. code]));

        var findings = _line.Json.GetProperty("findings");
        Assert.Equal(one == 1 ? 1 : FindingCatalogue.All.Length, findings.GetArrayLength());
        Assert.All(findings.EnumerateArray(), f =>
        {
            Assert.NotEqual("", f.GetProperty("meaning").GetString());
            Assert.NotEqual("", f.GetProperty("remedy").GetString());
            Assert.NotEqual("", f.GetProperty("example").GetProperty("files")[0].GetProperty("text").GetString());
        });
    }

    [Theory]
    [InlineData("--json")]
    [InlineData("SK210")]
    public void The_page_stands_alone(string other) => Assert.Equal(2, _line.Run("explain", "--markdown", other));
}
