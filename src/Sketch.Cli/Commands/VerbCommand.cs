using System.CommandLine;
using System.CommandLine.Parsing;

namespace Sketch.Cli.Commands;

/// <summary>A verb with examples that its help shows.</summary>
/// <param name="name">The word on the command line.</param>
/// <param name="description">What it does, in one sentence.</param>
/// <param name="examples">Command lines as typed.</param>
internal sealed class VerbCommand(string name, string description, params string[] examples) : Command(name, description)
{
    /// <summary>Command lines as typed.</summary>
    public IReadOnlyList<string> Examples => examples;

    /// <summary>Adds a check of options against each other. It runs only if each of them can be read by itself.</summary>
    public void CheckTogether(Action<CommandResult> check) => Validators.Add(result =>
    {
        if (result.Children.OfType<OptionResult>().All(CanBeRead))
        {
            check(result);
        }
    });

    // The parser converts values after this check, or where they are asked for; then it throws what it otherwise reports.
    private static bool CanBeRead(OptionResult option)
    {
        try
        {
            option.GetValueOrDefault<object?>();
            return true;
        }
        catch (InvalidOperationException)
        {
            return false;
        }
    }
}
