using System.Diagnostics;
using System.Xml.Linq;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>The library as a stranger meets it.</summary>
public sealed class LibraryTests
{
    private static readonly string Program =
        File.ReadAllText(Repository.PathTo("tests", "FirstCard", "Program.cs")).ReplaceLineEndings("\n");

    [Fact]
    public void The_program_in_the_readme_of_the_package_is_the_sample() => Assert.Contains(
        $"```csharp\n{Program}```", File.ReadAllText(Repository.PathTo("src", "Sketch.Output", "README.md")).ReplaceLineEndings("\n"));

    [Fact]
    public void Fifteen_lines_are_enough() => Assert.InRange(Program.TrimEnd().Split('\n').Length, 1, 15);

    [Fact]
    public async Task The_sample_lists_the_sizes_and_draws_the_card()
    {
        var folder = Directory.CreateTempSubdirectory("sketch-tests-").FullName;
        try
        {
            using var sample = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "FirstCard.dll")])
            {
                WorkingDirectory = folder,
                RedirectStandardOutput = true,
                RedirectStandardError = true,
            })!;
            var error = sample.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
            var output = await sample.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);

            Assert.Equal("", await error);
            Assert.Contains("3 x 3/4", output);
            Assert.Equal("svg", XDocument.Load(Path.Combine(folder, "first-light.svg")).Root!.Name.LocalName);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
