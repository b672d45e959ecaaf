namespace Sketch.Text;

/// <summary>A file's text with its name, and the mapping from an offset to a line and column.</summary>
public sealed class SourceText
{
    private readonly int[] _lineStarts;

    /// <summary>Takes a text as read.</summary>
    /// <param name="path">The name that findings use for the file.</param>
    /// <param name="content">The whole text.</param>
    public SourceText(string path, string content)
    {
        Path = path;
        Content = content;
        var starts = new List<int> { 0 };
        for (var i = 0; i < content.Length; i++)
        {
            if (content[i] == '\n')
            {
                starts.Add(i + 1);
            }
        }

        _lineStarts = [.. starts];
    }

    /// <summary>The name that findings use for the file.</summary>
    public string Path { get; }

    /// <summary>The whole text.</summary>
    public string Content { get; }

    /// <summary>How many lines the text has; an empty text has one.</summary>
    public int LineCount => _lineStarts.Length;

    /// <summary>The offset at which a line (from 0) begins.</summary>
    public int LineStart(int line) => _lineStarts[line];

    /// <summary>A line's text (from 0) without its end.</summary>
    public string Line(int line)
    {
        var end = line + 1 < _lineStarts.Length ? _lineStarts[line + 1] - 1 : Content.Length;
        return Content[_lineStarts[line]..end].TrimEnd('\r');
    }

    /// <summary>Line and column, both from 1, of an offset; an offset past the end is the end.</summary>
    public LinePosition PositionOf(int offset)
    {
        var line = Array.BinarySearch(_lineStarts, Math.Clamp(offset, 0, Content.Length));
        line = line >= 0 ? line : ~line - 1;
        return new(line + 1, Math.Clamp(offset, 0, Content.Length) - _lineStarts[line] + 1);
    }

    /// <summary>The offset of a line and column; a place outside the text or its line is the nearest inside.</summary>
    public int OffsetOf(LinePosition place)
    {
        var line = Math.Clamp(place.Line, 1, LineCount) - 1;
        return _lineStarts[line] + Math.Clamp(place.Column, 1, Line(line).Length + 1) - 1;
    }
}

/// <summary>Part of a text: offsets in UTF-16 code units, the end exclusive.</summary>
public readonly record struct TextSpan(int Start, int End)
{
    /// <summary>Number of characters.</summary>
    public int Length => End - Start;

    /// <summary>From the start of one span to the end of another.</summary>
    public static TextSpan Cover(TextSpan first, TextSpan last) => new(Math.Min(first.Start, last.Start), Math.Max(first.End, last.End));
}

/// <summary>A place in a text for people: line and column, both from 1.</summary>
public readonly record struct LinePosition(int Line, int Column);
