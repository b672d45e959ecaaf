using Sketch.Editors.Grammar;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.Editors.Grammar;

/// <summary>
/// <c>UPDATE_GRAMMAR=1</c> writes the file of the grammar anew. What it makes of a text is tested in <c>tests/Sketch.Page.Tests</c>, by the
/// library that editors use.
/// </summary>
public sealed class TextMateGrammarTests
{
    private static readonly string Kept = Repository.PathTo("src", "Sketch.Editors", "VsCode", "sketch.tmLanguage.json");

    [Fact]
    public void The_file_is_the_grammar_of_the_words_of_the_language()
    {
        var written = TextMateGrammar.Write();
        if (Environment.GetEnvironmentVariable("UPDATE_GRAMMAR") == "1")
        {
            File.WriteAllText(Kept, written);
        }

        Assert.Equal(written, File.ReadAllText(Kept));
    }
}
