using System.Globalization;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>Reads numbers: 2, 2.625, 5/8, 2 5/8, 2-5/8, 2⅝, each with or without a minus sign and a unit.</summary>
internal static class NumberReader
{
    // More digits than any measure needs, and too few to overflow a long.
    private const int MostDigits = 9;

    private const string Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒";
    private static readonly (int Numerator, int Denominator)[] VulgarValues =
        [(1, 2), (1, 3), (2, 3), (1, 4), (3, 4), (1, 5), (2, 5), (3, 5), (4, 5), (1, 6), (5, 6), (1, 7), (1, 8), (3, 8), (5, 8), (7, 8),
            (1, 9), (1, 10)];

    private static readonly Dictionary<string, Unit> Units = new(StringComparer.OrdinalIgnoreCase)
    {
        ["in"] = Unit.Inch,
        ["mm"] = Unit.Millimetre,
        ["cm"] = Unit.Centimetre,
        ["ft"] = Unit.Foot,
        ["yd"] = Unit.Yard,
        ["m"] = Unit.Metre,
    };

    private static readonly Dictionary<string, string> LongUnits = new(StringComparer.OrdinalIgnoreCase)
    {
        ["inch"] = "in",
        ["inches"] = "in",
        ["ins"] = "in",
        ["foot"] = "ft",
        ["feet"] = "ft",
        ["yard"] = "yd",
        ["yards"] = "yd",
        ["yds"] = "yd",
        ["millimetre"] = "mm",
        ["millimetres"] = "mm",
        ["millimeter"] = "mm",
        ["millimeters"] = "mm",
        ["centimetre"] = "cm",
        ["centimetres"] = "cm",
        ["centimeter"] = "cm",
        ["centimeters"] = "cm",
    };

    /// <summary>What is wrong with a number and what to type instead.</summary>
    public sealed record Problem(string Message, string Hint, string? Replacement = null);

    public static bool IsDigit(char c) => c is >= '0' and <= '9' || Vulgar.Contains(c);

    public static bool Begins(string text, int at, int end)
    {
        var c = text[at];
        var next = at + 1 < end ? text[at + 1] : ' ';
        return IsDigit(c) || (c == '.' && char.IsAsciiDigit(next))
            || (c is '-' or '−' && (IsDigit(next) || (next == '.' && at + 2 < end && char.IsAsciiDigit(text[at + 2]))));
    }

    /// <summary>Reads a number at <paramref name="position"/> and moves past it and its unit.</summary>
    public static Token Read(string text, ref int position, int end, out Problem? problem)
    {
        problem = null;
        var start = position;
        var negative = text[position] is '-' or '−';
        position += negative ? 1 : 0;
        var whole = Digits(text, ref position, end);
        long numerator = 0, denominator = 1;
        var isFraction = false;
        var isWhole = true;
        if (position < end && text[position] == '.' && position + 1 < end && char.IsAsciiDigit(text[position + 1]))
        {
            position++;
            var decimals = Digits(text, ref position, end);
            isWhole = false;
            if (whole.Length > MostDigits || decimals.Length > MostDigits)
            {
                problem = TooLong(text[start..position]);
            }
            else
            {
                denominator = (long)Math.Pow(10, decimals.Length);
                numerator = Value(whole) * denominator + Value(decimals);
            }
        }
        else
        {
            var fraction = whole.Length > 0 ? FractionAfter(text, ref position, end, ref whole) : FractionAt(text, ref position, end);
            if (whole.Length > MostDigits)
            {
                problem = TooLong(text[start..position]);
            }
            else if (fraction is (var top, var bottom))
            {
                isFraction = true;
                isWhole = false;
                if (bottom == 0)
                {
                    problem = new($"{text[start..position]} has a zero as its bottom number.", "Write a fraction such as 1/8.");
                }
                else if (whole.Length > 0 && top >= bottom)
                {
                    problem = new($"The fraction in '{text[start..position]}' is not smaller than 1.",
                        "Write whole and fraction, such as 2 5/8.");
                }
                else
                {
                    denominator = bottom;
                    numerator = Value(whole) * bottom + top;
                }
            }
            else
            {
                numerator = Value(whole);
            }
        }

        if (position + 1 < end && text[position] == ',' && char.IsAsciiDigit(text[position + 1]) && problem is null)
        {
            var comma = position++;
            Digits(text, ref position, end);
            var withPoint = text[start..comma] + "." + text[(comma + 1)..position];
            problem = new($"'{text[start..position]}' has a comma between digits.",
                $"Write {withPoint}; put a space after a comma that ends a clause.", withPoint);
        }

        var (corrected, unitFrom) = (problem?.Replacement, position);
        var unit = ReadUnit(text, ref position, end, start, ref problem);
        if (corrected is not null)
        {
            problem = problem! with { Replacement = corrected + text[unitFrom..position] };
        }

        var span = new TextSpan(start, position);
        return problem is null
            ? new(TokenKind.Number, span, text[start..position],
                new(negative ? -numerator : numerator, denominator, isFraction, isWhole, unit))
            : new(TokenKind.Bad, span, text[start..position]);
    }

    private static Problem TooLong(string written) =>
        new($"'{(written.Length > 24 ? written[..24] + "…" : written)}' has more digits than any measure needs.",
            "Write a shorter number, such as 2.625.");

    private static string Digits(string text, ref int position, int end)
    {
        var start = position;
        while (position < end && char.IsAsciiDigit(text[position]))
        {
            position++;
        }

        return text[start..position];
    }

    private static long Value(string digits) => digits.Length == 0 ? 0 : long.Parse(digits, CultureInfo.InvariantCulture);

    /// <summary>
    /// The fraction after a whole number, if one follows; where the whole turns out to be the numerator, it becomes part of the fraction.
    /// </summary>
    private static (long, long)? FractionAfter(string text, ref int position, int end, ref string whole)
    {
        if (position < end && text[position] is '/' or '⁄' && position + 1 < end && char.IsAsciiDigit(text[position + 1]))
        {
            position++;
            var top = whole;
            whole = "";
            return Fraction(top, Digits(text, ref position, end));
        }

        var ahead = position;
        var hyphen = ahead < end && text[ahead] == '-';
        if (hyphen)
        {
            ahead++;
        }
        else
        {
            while (ahead < end && text[ahead] == ' ')
            {
                ahead++;
            }
        }

        var fraction = ahead < end ? FractionAt(text, ref ahead, end) : null;
        if (fraction is not null)
        {
            position = ahead;
        }

        return fraction;
    }

    private static (long, long)? FractionAt(string text, ref int position, int end)
    {
        var vulgar = Vulgar.IndexOf(text[position]);
        if (vulgar >= 0)
        {
            position++;
            return VulgarValues[vulgar];
        }

        var ahead = position;
        var top = Digits(text, ref ahead, end);
        if (top.Length == 0 || ahead >= end || text[ahead] is not ('/' or '⁄') || ahead + 1 >= end || !char.IsAsciiDigit(text[ahead + 1]))
        {
            return null;
        }

        ahead++;
        var bottom = Digits(text, ref ahead, end);
        position = ahead;
        return Fraction(top, bottom);
    }

    private static (long, long) Fraction(string top, string bottom) =>
        top.Length > MostDigits || bottom.Length > MostDigits ? (0, 0) : (Value(top), Value(bottom));

    private static Unit? ReadUnit(string text, ref int position, int end, int start, ref Problem? problem)
    {
        if (position < end && text[position] is '"' or '”' or '″')
        {
            position++;
            return Unit.Inch;
        }

        var at = position;
        while (at < end && text[at] is ' ' or '\u00a0')
        {
            at++;
        }

        var wordEnd = at;
        while (wordEnd < end && char.IsLetter(text[wordEnd]))
        {
            wordEnd++;
        }

        var word = text[at..wordEnd];
        // In "4inx5in" the x of the size touches the unit.
        if (word.Length > 1 && word[^1] is 'x' or 'X' && Units.ContainsKey(word[..^1]) && wordEnd < end && IsDigit(text[wordEnd]))
        {
            word = word[..^1];
            wordEnd--;
        }

        if (LongUnits.TryGetValue(word, out var shorter))
        {
            problem ??= new($"Write units in short: '{word}' is {shorter}.", $"Write {text[start..position]} {shorter}.",
                $"{text[start..position]} {shorter}");
            position = wordEnd;
            return null;
        }

        if (!Units.TryGetValue(word, out var unit) || (unit == Unit.Inch && IsClauseIn(text, wordEnd, end)))
        {
            return null;
        }

        position = wordEnd;
        return unit;
    }

    /// <summary>Whether the "in" that ends here begins the clause "in a row" or "in turn" and is not a unit.</summary>
    private static bool IsClauseIn(string text, int at, int end)
    {
        while (at < end && text[at] == ' ')
        {
            at++;
        }

        var stop = at;
        while (stop < end && char.IsLetter(text[stop]))
        {
            stop++;
        }

        return text[at..stop].ToLowerInvariant() is "a" or "turn";
    }
}
