using System.Globalization;
using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Counts;

/// <summary>Reads one line of a log from left to right; the first thing that is not as expected is the one finding.</summary>
internal sealed class CountLineReader(SourceText source, int line, FindingBag findings)
{
    private const string Example = "An entry reads 2026-11-25 14:30 cut 12 \"Fair winds\" #0f1e2d3c4b5a6978; write one with sketch count.";

    private readonly string _text = source.Line(line).TrimEnd();
    private int _at;
    private bool _isBroken;

    /// <summary>The entry, or null if the line is not one, which is reported.</summary>
    public CountEntry? Read()
    {
        var time = Time();
        var stage = Stage();
        var number = Number();
        var card = Quoted("the card in quotes");
        var recipient = stage == CountStage.Given && TakeWord("to") ? Quoted("the recipient in quotes") : null;
        var note = TakeWord("note") ? Quoted("the note in quotes") : null;
        var id = Id();
        return _isBroken ? null : new(time, stage, number, card) { Recipient = recipient, Note = note, Id = id };
    }

    private DateTime Time()
    {
        var end = Math.Min(_text.Length, _at + CountEntry.TimeForm.Length);
        if (DateTime.TryParseExact(_text[_at..end], CountEntry.TimeForm, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
        {
            _at = end;
            return time;
        }

        Fail("a date and time such as 2026-11-25 14:30");
        return default;
    }

    private CountStage Stage()
    {
        var (start, word) = Word();
        if (CountStages.Of(word) is { } stage)
        {
            return stage;
        }

        Fail($"one of {string.Join(", ", CountStages.Words)}", start);
        return default;
    }

    private int Number()
    {
        var (start, word) = Word();
        if (int.TryParse(word, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            && number != 0 && number is >= -CountEntry.MostCards and <= CountEntry.MostCards)
        {
            return number;
        }

        Fail("a number of cards", start);
        return 0;
    }

    private string Quoted(string what)
    {
        SkipBlanks();
        var end = _at < _text.Length && _text[_at] == '"' ? _text.IndexOf('"', _at + 1) : -1;
        if (end < 0)
        {
            Fail(what);
            return "";
        }

        var words = _text[(_at + 1)..end];
        _at = end + 1;
        return words;
    }

    private string Id()
    {
        var (start, word) = Word();
        if (word.StartsWith('#') && CountEntry.IsId(word[1..]) && _at == _text.Length)
        {
            return word[1..];
        }

        Fail("# and the 16 digits that end an entry", start);
        return "";
    }

    private bool TakeWord(string word)
    {
        var before = _at;
        if (Word().Text == word)
        {
            return true;
        }

        _at = before;
        return false;
    }

    private (int Start, string Text) Word()
    {
        SkipBlanks();
        var start = _at;
        while (_at < _text.Length && _text[_at] != ' ')
        {
            _at++;
        }

        return (start, _text[start.._at]);
    }

    private void SkipBlanks()
    {
        while (_at < _text.Length && _text[_at] == ' ')
        {
            _at++;
        }
    }

    private void Fail(string expected, int? start = null)
    {
        if (_isBroken)
        {
            return;
        }

        _isBroken = true;
        var from = start ?? _at;
        var blank = from < _text.Length ? _text.IndexOf(' ', from) : -1;
        var to = blank > from ? blank : _text.Length;
        var lineStart = source.LineStart(line);
        findings.Add(FindingCatalogue.BadEntry, new(source, new(lineStart + from, lineStart + to)),
            $"Expected {expected}, found {(to > from ? $"'{_text[from..to]}'" : "the end of the line")}.", Example);
    }
}
