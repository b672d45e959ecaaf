using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Rows;

/// <summary>The lines of a stash or batch as blocks: each with what is indented beneath it.</summary>
internal static class RowLines
{
    /// <summary>The lines of a file but its title; those indented under the title mean the same as those below it.</summary>
    public static IEnumerable<LineSyntax> Top(FileSyntax file) =>
        file.Lines is [TitleLine title, ..] ? title.Children.Concat(file.Lines.Skip(1)) : [];

    /// <summary>The last line of a block.</summary>
    public static LineSyntax Last(LineSyntax line) => line.Children is [.., var child] ? Last(child) : line;

    /// <summary>
    /// Takes a block away with its line end and the comments at the ends of its lines. Comments above it stay: they may be a heading for
    /// the lines that follow.
    /// </summary>
    public static TextEdit Deletion(SourceText source, LineSyntax line)
    {
        var content = source.Content;
        var start = source.LineStart(source.PositionOf(line.Span.Start).Line - 1);
        var next = content.IndexOf('\n', Last(line).Span.End);
        if (next >= 0)
        {
            return new(new(start, next + 1), "");
        }

        // The last line of a text that has no line end there: that of the line above goes.
        var before = start > 0 ? start - 1 : 0;
        return new(new(before > 0 && content[before - 1] == '\r' ? before - 1 : before, content.Length), "");
    }
}
