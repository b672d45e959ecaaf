using System.Text.RegularExpressions;
using Xunit;

namespace Sketch.Tests.Cli.Commands;

public sealed class ManualPageTests : IDisposable
{
    private readonly CommandLineRun _line = new();

    public ManualPageTests() => _line.Run("help", "--man");

    public void Dispose() => _line.Dispose();

    [Fact]
    public void Every_option_of_every_verb_is_in_it_with_the_words_of_its_help()
    {
        var page = Plain(_line.Output);
        var verbs = _line.Verbs();
        Assert.NotEmpty(verbs);
        foreach (var verb in verbs)
        {
            _line.Run("help", verb);
            var options = Regex.Matches(_line.Output, @"^  (?:-\w, )?(--[\w-]+)[^\n]*?  +(\w[^\n\[(]+)", RegexOptions.Multiline);
            Assert.All(options, o => Assert.Contains(o.Groups[1].Value, page, StringComparison.Ordinal));
            Assert.All(options, o => Assert.Contains(o.Groups[2].Value.Trim(), page, StringComparison.Ordinal));
        }
    }

    /// <summary>By man(7), a line that begins with a dot is a request.</summary>
    [Fact]
    public void Each_request_is_one_that_man_knows() => Assert.All(
        _line.Output.Split('\n').Where(l => l.StartsWith('.')),
        line => Assert.Contains(line.Split(' ')[0], (string[])[".TH", ".SH", ".B", ".I", ".br", ".PP", ".TP", ".RS", ".RE"]));

    private static string Plain(string page) =>
        Regex.Replace(page, @"\\f[BIR]", "").Replace("\\-", "-").Replace("\\e", "\\").Replace("...", "…");
}
