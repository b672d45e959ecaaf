using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Syntax;

/// <summary>Reads pieces of text as parts of a card.</summary>
internal static class Reading
{
    public static (FileSyntax File, Finding[] Findings) File(string text, string path = "a.card")
    {
        var findings = new FindingBag();
        var file = Parser.Parse(new SourceText(path, text), findings);
        return (file, [.. findings.ToImmutable()]);
    }

    /// <summary>One line on the front, which must have no errors.</summary>
    public static T Line<T>(string line, string units = "in")
        where T : LineSyntax
    {
        var (file, findings) = OnFront(line, units);
        Assert.Empty(findings);
        return Assert.IsType<T>(file);
    }

    /// <summary>The findings of one line on the front.</summary>
    public static Finding[] Mistakes(string line, string units = "in") => OnFront(line, units).Findings;

    /// <summary>A number as the width of a panel.</summary>
    public static Length Length(string number, string units = "in") =>
        Assert.IsType<LengthExtent>(Assert.IsType<BoxSize>(Line<PieceLine>($"panel {number} x 1 in", units).Head.Size).Width).Value;

    public static T Clause<T>(string clause)
        where T : Clause => Assert.IsType<T>(Assert.Single(Line<PieceLine>($"panel 1 x 1, {clause}").Clauses));

    private static (LineSyntax Line, Finding[] Findings) OnFront(string line, string units)
    {
        var (file, findings) = File($"card \"x\"\nunits {units}\nfront\n  {line}\n");
        return (file.Lines[2].Children[0], findings);
    }
}
