using System.Collections.Immutable;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Text;

namespace Sketch.Batches;

/// <summary>A person who gets a card.</summary>
/// <param name="Name">The name.</param>
/// <param name="Message">The message for this person alone, or null.</param>
/// <param name="Location">Where the name is written.</param>
public sealed record Person(string Name, CardMessage? Message, Location Location);

/// <summary>
/// A list of people: comma-separated values as in RFC 4180, a name and if wanted a message for each person, and a first line of
/// headings if wanted. In a line that breaks the rules everything is kept as well as it can be read.
/// </summary>
public static class NameList
{
    private const int Columns = 2;

    /// <summary>Reads the people of a list in its order; a line that cannot be read as it should is an error at its place.</summary>
    public static ImmutableArray<Person> Read(SourceText source, FindingBag findings)
    {
        var people = ImmutableArray.CreateBuilder<Person>();
        foreach (var cells in new CellReader(source, findings).Lines())
        {
            if (people.Count == 0 && cells[0].Text.Trim().Equals("name", StringComparison.OrdinalIgnoreCase))
            {
                continue;
            }

            if (cells.Count > Columns)
            {
                Report(source, findings, cells[Columns].Span,
                    $"This line has {Counted.Of(cells.Count, "cell")}, but a person has a name and a message.",
                    "Put a message with a comma in quotes: Ann,\"Fair winds, Ann\".");
            }

            var (name, words) = (cells[0].Text.Trim(), string.Join(',', cells.Skip(1).Select(c => c.Text)).Trim());
            if (name.Length == 0)
            {
                Report(source, findings, cells[0].Span, "The name is missing.", "Write the name first, or delete this line.");
            }

            var lines = words.Split('\n', StringSplitOptions.TrimEntries);
            people.Add(new(name, words.Length == 0 ? null : new([.. lines], new(source, cells[1].Span)), new(source, cells[0].Span)));
        }

        return people.ToImmutable();
    }

    private static void Report(SourceText source, FindingBag findings, TextSpan span, string message, string hint) =>
        findings.Add(FindingCatalogue.BadName, new(source, span), message, hint);

    private readonly record struct Cell(string Text, TextSpan Span);

    private sealed class CellReader(SourceText source, FindingBag findings)
    {
        private readonly string _text = source.Content;
        private int _at = source.Content.StartsWith('\uFEFF') ? 1 : 0;

        public IEnumerable<IReadOnlyList<Cell>> Lines()
        {
            while (_at < _text.Length)
            {
                var cells = new List<Cell>();
                do
                {
                    cells.Add(_at < _text.Length && _text[_at] == '"' ? Quoted() : Plain(_at));
                }
                while (Take(','));
                Take('\r');
                Take('\n');
                if (cells.Count > 1 || cells[0].Text.Trim().Length > 0)
                {
                    yield return cells;
                }
            }
        }

        private Cell Plain(int start)
        {
            while (!AtEndOfCell())
            {
                _at++;
            }

            var span = new TextSpan(start, _at);
            var text = _text[start.._at];
            if (text.IndexOf('"', StringComparison.Ordinal) is var quote and >= 0)
            {
                Report(source, findings, new(start + quote, start + quote + 1), "A quotation mark stands in a cell without quotes.",
                    "Put the whole cell in quotes, and write the quotation mark twice: \"Ann \"\"Annie\"\" Lee\".");
            }

            return new(text, span);
        }

        private Cell Quoted()
        {
            var start = _at;
            var text = new System.Text.StringBuilder();
            for (_at++; _at < _text.Length; _at++)
            {
                if (_text[_at] != '"')
                {
                    text.Append(_text[_at]);
                }
                else if (_at + 1 < _text.Length && _text[_at + 1] == '"')
                {
                    text.Append(_text[_at++]);
                }
                else
                {
                    _at++;
                    return AfterQuote(start, text.ToString());
                }
            }

            // Without its end it would swallow the lines that follow.
            Report(source, findings, new(start, start + 1), "This quotation mark has no partner.",
                "Write a quotation mark at the end of the cell too.");
            _at = start + 1;
            var rest = Rest();
            return new(rest, new(start, _at));
        }

        private Cell AfterQuote(int start, string text)
        {
            var end = _at;
            if (AtEndOfCell())
            {
                return new(text, new(start, end));
            }

            var rest = Rest();
            if (rest.Trim().Length > 0)
            {
                Report(source, findings, new(end, _at), "These words follow the quotation mark that ends the cell.",
                    "Write a quotation mark within quotes twice: \"Ann \"\"Annie\"\" Lee\".");
            }

            return new(text + rest, new(start, _at));
        }

        private string Rest()
        {
            var start = _at;
            while (!AtEndOfCell())
            {
                _at++;
            }

            return _text[start.._at];
        }

        private bool AtEndOfCell() => _at >= _text.Length || _text[_at] is ',' or '\n'
            || (_text[_at] == '\r' && (_at + 1 == _text.Length || _text[_at + 1] == '\n'));

        private bool Take(char sign)
        {
            if (_at >= _text.Length || _text[_at] != sign)
            {
                return false;
            }

            _at++;
            return true;
        }
    }
}
