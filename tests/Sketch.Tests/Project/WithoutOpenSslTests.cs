using System.Reflection;
using Sketch.Cutting;
using Sketch.Output.Files;
using Sketch.Planning;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>
/// Pictures, templates and plans are made on a Linux system without OpenSSL too, on which .NET's cryptography ends the program. Only the
/// server of the page needs it.
/// </summary>
public sealed class WithoutOpenSslTests
{
    public static TheoryData<Type> Assemblies => [typeof(Compiler), typeof(SheetPlanner), typeof(BatchPlanner), typeof(TextContent)];

    [Theory]
    [MemberData(nameof(Assemblies))]
    public void All_but_the_page_works_without_cryptography(Type type) => Assert.DoesNotContain(
        type.Assembly.GetReferencedAssemblies(),
        (AssemblyName a) => a.Name!.StartsWith("System.Security.Cryptography", StringComparison.Ordinal));
}
