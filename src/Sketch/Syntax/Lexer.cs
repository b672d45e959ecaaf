using System.Text;
using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>
/// Splits a text into lines of tokens. Never fails: what cannot be read becomes a finding and a token of kind <see cref="TokenKind.Bad"/>.
/// </summary>
public sealed class Lexer
{
    // How many characters are searched for the closing single quote; bounds the time that a long line takes.
    private const int LongestSingleQuoted = 200;

    private readonly SourceText _source;
    private readonly FindingBag _findings;
    private readonly string _text;
    private readonly List<Token> _tokens = [];
    private readonly List<(int, string)> _comments = [];
    private readonly List<int> _breaks = [];
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> _words;
    private char _indentWith;

    private Lexer(SourceText source, FindingBag findings)
    {
        _source = source;
        _findings = findings;
        _text = source.Content;
        _words = new HashSet<string>(StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>All lines of a text, and the blank and comment lines after the last.</summary>
    public static (IReadOnlyList<LogicalLine> Lines, IReadOnlyList<string> Trailing) Read(SourceText source, FindingBag findings) =>
        new Lexer(source, findings).ReadLines();

    private (IReadOnlyList<LogicalLine>, IReadOnlyList<string>) ReadLines()
    {
        var lines = new List<LogicalLine>();
        var before = new List<string>();
        var indent = 0;
        var open = false;
        for (var line = 0; line < _source.LineCount; line++)
        {
            var start = _source.LineStart(line);
            var content = _source.Line(line);
            var first = 0;
            while (first < content.Length && content[first] is ' ' or '\t' or '\ufeff')
            {
                first++;
            }

            if (first == content.Length || content[first] == '#')
            {
                if (!open)
                {
                    before.Add(content[first..].TrimEnd());
                }
                else if (first < content.Length)
                {
                    _comments.Add((_tokens.Count, content[first..].TrimEnd()));
                }

                continue;
            }

            if (open && StartsAnother(content[first..]))
            {
                ReportTrailingComma(line);
                open = false;
                Close(lines, before, indent);
            }

            if (open)
            {
                _breaks.Add(_tokens.Count);
            }
            else
            {
                indent = IndentOf(content, first, start, indent);
            }

            ReadTokens(start + first, start + content.Length);
            open = _tokens.Count > 0 && _tokens[^1].Kind == TokenKind.Comma;
            if (!open)
            {
                Close(lines, before, indent);
            }
        }

        if (open)
        {
            Close(lines, before, indent);
        }

        return (lines, before);
    }

    private void Close(List<LogicalLine> lines, List<string> before, int indent)
    {
        if (_tokens.Count == 0)
        {
            return;
        }

        var end = _tokens[^1].Span.End;
        _tokens.Add(new(TokenKind.End, new(end, end), ""));
        lines.Add(new(indent, _tokens.ToArray(), _comments.ToArray(), _breaks.ToArray(), before.ToArray()));
        _tokens.Clear();
        _comments.Clear();
        _breaks.Clear();
        before.Clear();
    }

    /// <summary>
    /// How far a line is indented; one that mixes tabs and spaces is taken as a sibling of the line before, the likeliest meaning.
    /// </summary>
    private int IndentOf(string content, int first, int start, int before)
    {
        for (var i = 0; i < first; i++)
        {
            if (content[i] == '\ufeff')
            {
                continue;
            }

            if (_indentWith == '\0')
            {
                _indentWith = content[i];
            }
            else if (content[i] != _indentWith)
            {
                var used = _indentWith == ' ' ? "spaces" : "tabs";
                Report(FindingCatalogue.MixedIndent, new(start, start + first),
                    $"This line is indented with {(content[i] == ' ' ? "spaces" : "a tab")}, the lines above with {used}.",
                    $"Indent with {used} in the whole file.");
                return before;
            }
        }

        return first;
    }

    /// <summary>Whether a continuation begins as only a separate line can: with a face, or with a name and a colon.</summary>
    private static bool StartsAnother(string content)
    {
        var word = new string(content.TakeWhile(c => char.IsLetterOrDigit(c) || c is '-' or '_').ToArray());
        var rest = content[word.Length..].TrimStart();
        return word.Length > 0 && char.IsLetter(word[0])
            && (rest.StartsWith(':') || (Vocabulary.Faces.Contains(word) && (rest.Length == 0 || rest[0] == '#')));
    }

    private void ReportTrailingComma(int line)
    {
        var comma = _tokens[^1];
        Report(FindingCatalogue.TrailingComma, comma.Span,
            $"Line {_source.PositionOf(comma.Span.Start).Line} ends in a comma, but line {line + 1} starts something new.",
            "Remove the comma.", "");
        _tokens.RemoveAt(_tokens.Count - 1);
    }

    private void ReadTokens(int position, int end)
    {
        while (position < end)
        {
            var c = _text[position];
            if (c is ' ' or '\t' or '\u00a0')
            {
                position++;
            }
            else if (c == '#')
            {
                if (ReadHash(ref position, end))
                {
                    return;
                }
            }
            else if (NumberReader.Begins(_text, position, end))
            {
                var token = NumberReader.Read(_text, ref position, end, out var problem);
                if (problem is { } p)
                {
                    Report(FindingCatalogue.BadNumber, token.Span, p.Message, p.Hint, p.Replacement);
                }

                _tokens.Add(token);
            }
            else if (IsTimes(position, end))
            {
                Add(TokenKind.Times, ref position, 1);
            }
            else if (char.IsLetter(c))
            {
                var length = 1;
                while (position + length < end && IsNameCharacter(position + length, end))
                {
                    length++;
                }

                Add(TokenKind.Word, ref position, length);
            }
            else if (c is '"' or '“' or '”' or '„')
            {
                ReadQuoted(ref position, end);
            }
            else
            {
                ReadSign(ref position, c);
            }
        }
    }

    private void ReadSign(ref int position, char c)
    {
        var kind = c switch
        {
            ':' => TokenKind.Colon,
            ',' => TokenKind.Comma,
            '/' => TokenKind.Slash,
            '+' => TokenKind.Plus,
            _ => TokenKind.Bad,
        };
        if (kind == TokenKind.Bad)
        {
            if (c == '*' && _tokens is [.., { Kind: TokenKind.Number }])
            {
                Report(FindingCatalogue.StrayCharacter, new(position, position + 1), "Separate width and height with x, not '*'.",
                    "Write 4 x 3.", Spaced(position, "x"));
                Add(TokenKind.Times, ref position, 1);
                return;
            }

            if (c == '\'' && SingleQuoted(position) is { } closed)
            {
                var words = $"\"{_text[(position + 1)..closed]}\"";
                Report(FindingCatalogue.StrayCharacter, new(position, closed + 1), "Words go in double quotes.", $"Write {words}.", words);
                Add(kind, ref position, closed + 1 - position);
                return;
            }

            var hint = c switch
            {
                '\'' when position > 0 && char.IsLetter(_text[position - 1]) => "Put words in double quotes.",
                '$' or '€' or '£' => "Write a price as a plain number, such as price 0.99.",
                ';' or '.' => "Use a comma between clauses.",
                '-' => "Write a minus sign directly before its number, as in left -1/8.",
                '\'' => "Write feet as ft, and put words in double quotes.",
                '°' => "Write the number alone, or 10 degrees.",
                '%' => "Write percent.",
                '[' or ']' => "Change one copy of a repeat with an indented line below it: item 2: of pearl.",
                _ => "Remove it, or put words in double quotes.",
            };
            Report(FindingCatalogue.StrayCharacter, new(position, position + 1), $"'{Shown(c)}' has no meaning here.", hint,
                c switch { ';' => ",", '°' => "", '%' => " percent", '$' or '€' or '£' => "", _ => null });
        }

        Add(kind, ref position, 1);
    }

    /// <summary>Where the words in single quotes end; null where the quote opens none on its line, as in 6' or don't.</summary>
    private int? SingleQuoted(int position)
    {
        if (position > 0 && !(char.IsWhiteSpace(_text[position - 1]) || _text[position - 1] == ':'))
        {
            return null;
        }

        for (var at = position + 1; at < Math.Min(_text.Length, position + LongestSingleQuoted)
            && _text[at] is not ('\n' or '\r' or '"'); at++)
        {
            if (_text[at] == '\'' && (at + 1 == _text.Length || char.IsWhiteSpace(_text[at + 1]) || _text[at + 1] == ','))
            {
                return at > position + 1 ? at : null;
            }
        }

        return null;
    }

    /// <summary>The replacement for a character, with a blank on each side that has none.</summary>
    private string Spaced(int position, string instead)
    {
        var before = position > 0 && _text[position - 1] is ' ' or '\t' ? "" : " ";
        var after = position + 1 < _text.Length && _text[position + 1] is ' ' or '\t' ? "" : " ";
        return before + instead + after;
    }

    private static string Shown(char c) => char.IsControl(c) || char.IsSurrogate(c) ? $"U+{(int)c:X4}" : c.ToString();

    private bool IsNameCharacter(int at, int end) =>
        char.IsLetterOrDigit(_text[at]) || _text[at] == '_'
        || (_text[at] == '-' && at + 1 < end && char.IsLetterOrDigit(_text[at + 1]));

    /// <summary>An x on its own, or one that touches the number before or after it.</summary>
    private bool IsTimes(int at, int end)
    {
        if (_text[at] is '×')
        {
            return true;
        }

        if (_text[at] is not ('x' or 'X'))
        {
            return false;
        }

        var next = at + 1 < end ? _text[at + 1] : ' ';
        var touchesNumber = _tokens.Count > 0 && _tokens[^1].Kind == TokenKind.Number && _tokens[^1].Span.End == at;
        return touchesNumber || NumberReader.IsDigit(next) || !(char.IsLetterOrDigit(next) || next is '-' or '_' or ':');
    }

    private bool ReadHash(ref int position, int end)
    {
        var blankBefore = position > 0 && _text[position - 1] is ' ' or '\t';
        var digits = 0;
        while (position + 1 + digits < end && char.IsAsciiHexDigit(_text[position + 1 + digits]))
        {
            digits++;
        }

        var after = position + 1 + digits;
        if (digits is 3 or 6 && (after == end || !char.IsLetterOrDigit(_text[after])))
        {
            _tokens.Add(new(TokenKind.Colour, new(position, after), _text[(position + 1)..after]));
            position = after;
            return false;
        }

        if (blankBefore && (position + 1 == end || _text[position + 1] is ' ' or '\t'))
        {
            _comments.Add((_tokens.Count, _text[position..end].TrimEnd()));
            position = end;
            return true;
        }

        var stop = position + 1;
        while (stop < end && !char.IsWhiteSpace(_text[stop]) && _text[stop] != ',')
        {
            stop++;
        }

        Report(FindingCatalogue.BadHash, new(position, stop), $"'{_text[position..stop]}' is neither a comment nor a colour.",
            "A comment has a space on both sides of its #; a colour has 3 or 6 hex digits, such as #9fc9e8.");
        Add(TokenKind.Bad, ref position, stop - position);
        return false;
    }

    private void ReadQuoted(ref int position, int end)
    {
        var start = position++;
        var words = new StringBuilder();
        while (position < end)
        {
            if (_text[position] is '"' or '”' or '“')
            {
                if (position + 1 < end && _text[position] == '"' && _text[position + 1] == '"')
                {
                    words.Append('"');
                    position += 2;
                    continue;
                }

                position++;
                _tokens.Add(new(TokenKind.Quoted, new(start, position), words.ToString()));
                return;
            }

            words.Append(_text[position++]);
        }

        Report(FindingCatalogue.OpenQuote, new(start, end), "These words have no closing quote on their line.", "Add a \" at their end.",
            _text[start..end].TrimEnd() + "\"");
        _tokens.Add(new(TokenKind.Bad, new(start, end), words.ToString()));
    }

    private void Add(TokenKind kind, ref int position, int length)
    {
        _tokens.Add(new(kind, new(position, position + length), Shared(_text.AsSpan(position, length))));
        position += length;
    }

    /// <summary>A word as a string; the words of a file repeat, so each is stored once.</summary>
    private string Shared(ReadOnlySpan<char> word)
    {
        if (_words.TryGetValue(word, out var known))
        {
            return known;
        }

        var text = word.ToString();
        _words.Add(text);
        return text;
    }

    private void Report(FindingKind kind, TextSpan span, string message, string hint, string? replacement = null) =>
        _findings.Add(kind, new(_source, span), message, hint, replacement);
}
