using Sketch.Text;

namespace Sketch.Editors.Protocol;

/// <summary>
/// From offsets in a text to lines and characters as editors count them. Lines end with <c>\n</c>, <c>\r\n</c> or <c>\r</c> (Language
/// Server Protocol 3.17, "Text Documents"), while for the language a lone <c>\r</c> ends no line.
/// </summary>
internal sealed class LineMap
{
    private readonly List<int> _starts = [0];
    private readonly string _text;

    /// <summary>Reads the lines of a text.</summary>
    public LineMap(string text)
    {
        _text = text;
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n')))
            {
                _starts.Add(i + 1);
            }
        }
    }

    /// <summary>The offset of a place. Past the end of its line it is the end of that line, past the text the end of the text.</summary>
    public int OffsetOf(EditorPosition place)
    {
        if (place.Line >= _starts.Count)
        {
            return _text.Length;
        }

        var line = Math.Max(place.Line, 0);
        var (start, end) = (_starts[line], line + 1 < _starts.Count ? _starts[line + 1] : _text.Length);
        while (end > start && _text[end - 1] is '\n' or '\r')
        {
            end--;
        }

        return (int)Math.Clamp((long)start + place.Character, start, end);
    }

    /// <summary>The part of the text that a range means; empty at its start if it ends before it.</summary>
    public TextSpan SpanOf(EditorRange range)
    {
        var start = OffsetOf(range.Start);
        return new(start, Math.Max(start, OffsetOf(range.End)));
    }

    /// <summary>The place of an offset; one past the text is its end.</summary>
    public EditorPosition PlaceOf(int offset)
    {
        var at = Math.Clamp(offset, 0, _text.Length);
        var line = _starts.BinarySearch(at);
        line = line >= 0 ? line : ~line - 1;
        return new(line, at - _starts[line]);
    }

    /// <summary>The range of a part of the text.</summary>
    public EditorRange RangeOf(TextSpan span) => new(PlaceOf(span.Start), PlaceOf(span.End));
}
