using System.Collections.Immutable;
using System.Globalization;
using System.Numerics;
using System.Text;
using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Prints a file in its canonical spelling and keeps every comment. Formatting is idempotent.</summary>
public static class Formatter
{
    private const int Step = 2;
    private const int ContinuationStep = 4;

    /// <summary>The canonical text, or null when the file has syntax errors, which go to <paramref name="findings"/>.</summary>
    public static string? Format(SourceText source, FindingBag findings)
    {
        var file = Parser.Parse(source, findings);
        return findings.HasErrors ? null : Format(file);
    }

    private static string Format(FileSyntax file)
    {
        var text = new StringBuilder();
        foreach (var line in file.Lines)
        {
            Write(text, line, 0);
        }

        WriteBefore(text, file.Trailing, 0);
        var end = text.Length;
        while (end > 0 && text[end - 1] == '\n')
        {
            end--;
        }

        return end == 0 ? "" : text.ToString(0, end) + "\n";
    }

    private static void Write(StringBuilder text, LineSyntax line, int depth)
    {
        WriteBefore(text, line.Tokens.Before, depth);
        text.Append(' ', depth * Step);
        WriteTokens(text, line, depth);
        foreach (var child in line.Children)
        {
            Write(text, child, depth + 1);
        }
    }

    private static void WriteBefore(StringBuilder text, IReadOnlyList<string> before, int depth)
    {
        foreach (var line in before)
        {
            if (line.Length > 0)
            {
                text.Append(' ', depth * Step).Append(Comment(line)).Append('\n');
            }
            else if (text.Length > 0 && !EndsInBlankLine(text))
            {
                text.Append('\n');
            }
        }
    }

    private static bool EndsInBlankLine(StringBuilder text) => text.Length >= 2 && text[^1] == '\n' && text[^2] == '\n';

    private static string Comment(string comment) =>
        comment.Length > 1 && comment[1] is not (' ' or '\t') ? "# " + comment[1..] : comment;

    private static void WriteTokens(StringBuilder text, LineSyntax line, int depth)
    {
        var tokens = line.Tokens.Tokens;
        var last = tokens.Count - 1;
        while (last > 0 && tokens[last - 1].Kind == TokenKind.Comma)
        {
            last--;
        }

        var breakAt = line.Tokens.Breaks.ToHashSet();
        var names = line.NameTokens.ToHashSet();
        var commentsAt = line.Tokens.Comments.ToLookup(c => Math.Min(c.Token, last), c => c.Text);
        for (var i = 0; i < last; i++)
        {
            var breaks = breakAt.Contains(i);
            if (i > 0)
            {
                if (line.MissingCommas.Contains(i))
                {
                    text.Append(',');
                }

                ImmutableArray<string> comments = [.. commentsAt[i]];
                if (comments.Length > 0 || breaks)
                {
                    WriteComments(text, comments, depth);
                    text.Append('\n').Append(' ', depth * Step + ContinuationStep);
                }
                else if (BlankBetween(tokens[i - 1], tokens[i]))
                {
                    text.Append(' ');
                }
            }

            text.Append(Spell(tokens[i], names.Contains(i)));
        }

        // Without the comma that continues the line, a second comment below it would belong to the next line.
        ImmutableArray<string> ends = [.. commentsAt[last]];
        WriteComments(text, ends.IsEmpty ? ends : [string.Join(' ', ends.Select(Comment))], depth);
        text.Append('\n');
    }

    private static void WriteComments(StringBuilder text, ImmutableArray<string> comments, int depth)
    {
        for (var i = 0; i < comments.Length; i++)
        {
            if (i > 0)
            {
                text.Append('\n').Append(' ', depth * Step + ContinuationStep - 2);
            }

            text.Append("  ").Append(Comment(comments[i]));
        }
    }

    private static bool BlankBetween(Token left, Token right) =>
        right.Kind is not (TokenKind.Comma or TokenKind.Colon or TokenKind.Slash) && left.Kind is not (TokenKind.Slash or TokenKind.Plus);

    private static string Spell(Token token, bool isName) => token.Kind switch
    {
        TokenKind.Word when isName => token.Text,
        TokenKind.Word when token.Is("US") || token.Is("ISO") => token.Text.ToUpperInvariant(),
        TokenKind.Word when token.Text.ToLowerInvariant() is "center" or "centred" or "centered" => "centre",
        TokenKind.Word => token.Text.ToLowerInvariant(),
        TokenKind.Number => SpellNumber(token),
        TokenKind.Quoted => "\"" + token.Text.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"",
        TokenKind.Colour => "#" + token.Text.ToLowerInvariant(),
        TokenKind.Times => "x",
        _ => token.Text,
    };

    private static string SpellNumber(Token token)
    {
        var number = token.Number!;
        var digits = number.IsFraction ? SpellFraction(number)
            : number.IsWhole ? number.Numerator.ToString(CultureInfo.InvariantCulture)
            : ((decimal)number.Numerator / number.Denominator).ToString("0.0########", CultureInfo.InvariantCulture);
        return number.Unit switch
        {
            null => digits,
            Unit.Inch => digits + " in",
            Unit.Millimetre => digits + " mm",
            Unit.Centimetre => digits + " cm",
            Unit.Foot => digits + " ft",
            Unit.Yard => digits + " yd",
            _ => digits + " m",
        };
    }

    private static string SpellFraction(Numeral number)
    {
        var (whole, rest) = Math.DivRem(Math.Abs(number.Numerator), number.Denominator);
        var sign = number.Numerator < 0 ? "-" : "";
        if (rest == 0)
        {
            return $"{number.Numerator}/{number.Denominator}";
        }

        var common = (long)BigInteger.GreatestCommonDivisor(rest, number.Denominator);
        var fraction = $"{rest / common}/{number.Denominator / common}";
        return whole == 0 ? sign + fraction : $"{sign}{whole} {fraction}";
    }
}
