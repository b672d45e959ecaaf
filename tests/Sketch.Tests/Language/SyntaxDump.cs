using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Sketch.Diagnostics;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Tests.Language;

/// <summary>The meaning of a text without its spelling: the tree without spans and tokens.</summary>
internal static class SyntaxDump
{
    public static string Of(string content)
    {
        var text = new StringBuilder();
        foreach (var line in Parse(new("dump.card", content)).Lines)
        {
            Write(text, line, 0);
        }

        return text.ToString();
    }

    public static IEnumerable<LineSyntax> Lines(SourceText source) => Parse(source).Lines.SelectMany(WithChildren);

    public static IEnumerable<Clause> Clauses(SourceText source) => Lines(source).SelectMany(l => l.Clauses);

    private static IEnumerable<LineSyntax> WithChildren(LineSyntax line) => line.Children.SelectMany(WithChildren).Prepend(line);

    private static FileSyntax Parse(SourceText source) => Parser.Parse(source, new FindingBag());

    private static void Write(StringBuilder text, object? value, int depth)
    {
        switch (value)
        {
            case null:
                text.Append("none");
                break;
            case string or Enum or bool:
                text.Append(value);
                break;
            case IFormattable number when value.GetType().IsPrimitive || value is decimal:
                text.Append(number.ToString(null, CultureInfo.InvariantCulture));
                break;
            case IEnumerable list:
                foreach (var item in list)
                {
                    text.Append('\n').Append(' ', depth);
                    Write(text, item, depth + 1);
                }

                break;
            default:
                text.Append(value.GetType().Name);
                foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(IsMeant))
                {
                    text.Append(' ').Append(property.Name).Append('=');
                    Write(text, property.GetValue(value), depth + 1);
                }

                break;
        }
    }

    private static bool IsMeant(PropertyInfo property) =>
        property.PropertyType != typeof(TextSpan) && property.PropertyType != typeof(LogicalLine)
        && property.Name is not ("MissingCommas" or "NameTokens") && property.GetIndexParameters().Length == 0
        && (property.CanWrite || property.DeclaringType is { IsValueType: false });
}
