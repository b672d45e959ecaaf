using System.Reflection;
using System.Runtime.CompilerServices;
using Sketch.Output.Folders;
using Xunit;

namespace Sketch.Tests.Project;

/// <summary>
/// What other programs can use of the library changes only on purpose. <c>UPDATE_SURFACE=1</c> writes the file anew; each line of the
/// difference belongs into the changelog.
/// </summary>
public sealed class PublicSurfaceTests
{
    private const BindingFlags Declared =
        BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static readonly string Kept = Repository.PathTo("tests", "Sketch.Tests", "Project", "public-surface.txt");

    [Fact]
    public void The_public_surface_is_the_one_that_is_kept()
    {
        var surface = string.Concat(new[] { typeof(Compiler).Assembly, typeof(MemoryFiles).Assembly }
            .SelectMany(assembly => assembly.GetExportedTypes()).OrderBy(Name, StringComparer.Ordinal).SelectMany(Lines)
            .Select(line => line + "\n"));
        if (Environment.GetEnvironmentVariable("UPDATE_SURFACE") == "1")
        {
            File.WriteAllText(Kept, surface);
        }

        Assert.Equal(File.ReadAllLines(Kept), surface.TrimEnd('\n').Split('\n'));
    }

    private static IEnumerable<string> Lines(Type type)
    {
        yield return $"{Kind(type)} {Name(type)}";
        foreach (var member in type.IsEnum
            ? Enum.GetNames(type) : type.GetMembers(Declared).Where(IsSeen).Select(Line).Order(StringComparer.Ordinal).ToArray())
        {
            yield return "  " + member;
        }
    }

    private static string Kind(Type type) => type switch
    {
        { IsEnum: true } => "enum",
        { IsInterface: true } => "interface",
        { IsValueType: true } => "struct",
        { IsAbstract: true, IsSealed: true } => "static class",
        { IsAbstract: true } => "abstract class",
        { IsSealed: true } => "sealed class",
        _ => "class",
    };

    /// <summary>Public and protected members that somebody wrote: neither accessors nor what the compiler adds to records.</summary>
    private static bool IsSeen(MemberInfo member) => !member.IsDefined(typeof(CompilerGeneratedAttribute)) && member switch
    {
        MethodBase { IsSpecialName: true } method and not ConstructorInfo => method.Name.StartsWith("op_", StringComparison.Ordinal),
        MethodBase method => IsSeen(method) && method.Name is not ("Equals" or "GetHashCode" or "ToString" or "<Clone>$" or "PrintMembers"),
        FieldInfo field => field.IsPublic || field.IsFamily || field.IsFamilyOrAssembly,
        PropertyInfo property => property.GetAccessors(true).Any(IsSeen) && property.Name != "EqualityContract",
        _ => false,
    };

    private static bool IsSeen(MethodBase method) => method.IsPublic || method.IsFamily || method.IsFamilyOrAssembly;

    private static string Line(MemberInfo member) => member switch
    {
        ConstructorInfo maker => $"new({Parameters(maker)})",
        MethodInfo method => Static(method) + method.Name + Arguments(method.GetGenericArguments())
            + $"({Parameters(method)}): {Name(method.ReturnType)}",
        PropertyInfo property => $"{Static(property.GetAccessors(true)[0])}{property.Name}: {Name(property.PropertyType)}"
            + (property.SetMethod is { } set && IsSeen(set) ? ", can be set" : ""),
        FieldInfo field => $"{(field.IsLiteral ? "const " : field.IsStatic ? "static " : "")}{field.Name}: {Name(field.FieldType)}",
        _ => member.Name,
    };

    private static string Static(MethodInfo method) => method.IsStatic ? "static " : "";

    private static string Parameters(MethodBase method) => string.Join(", ", method.GetParameters()
        .Select(p => $"{(p.IsOut ? "out " : "")}{Name(p.ParameterType)} {p.Name}{(p.HasDefaultValue ? " = default" : "")}"));

    private static string Name(Type type) => type switch
    {
        { IsGenericParameter: true } => type.Name,
        { HasElementType: true, IsArray: true } => Name(type.GetElementType()!) + "[]",
        { HasElementType: true } => Name(type.GetElementType()!),
        { IsNested: true } => $"{Name(type.DeclaringType!)}.{Bare(type)}{Arguments(type.GetGenericArguments())}",
        _ => (type.Namespace == "System" ? "" : type.Namespace + ".") + Bare(type) + Arguments(type.GetGenericArguments()),
    };

    private static string Bare(Type type) => type.Name.Split('`')[0];

    private static string Arguments(Type[] types) => types.Length == 0 ? "" : $"<{string.Join(", ", types.Select(Name))}>";
}
