using System.Globalization;
using System.Text;

namespace Sketch.Output.Rendering;

/// <summary>
/// Marks what a page shows: each paragraph by a number that the document's structure names, and the shapes around the words as a figure
/// or as decoration (ISO 32000-1, 14.6 and 14.8.2.2). Marks never cross the ends of saved graphics states or of text objects.
/// </summary>
/// <param name="lines">The drawing of the page, as Skia writes it: a line for each operator, or for several that set colours.</param>
/// <param name="roleOf">The role of a text object, and which part of the page it belongs to, by its place among the text objects.</param>
/// <param name="isPicture">Whether the shapes have a meaning of their own.</param>
internal sealed class MarkedContent(string[] lines, Func<int, (string Role, int Part)> roleOf, bool isPicture)
{
    /// <summary>The part that is the picture.</summary>
    public const int Picture = -1;

    private const int Nothing = -2;

    // They set how later operators draw; the end of a text object and of a clip draws nothing either.
    private static readonly HashSet<string> Settings =
        ["cm", "gs", "w", "J", "j", "M", "d", "ri", "i", "g", "G", "rg", "RG", "k", "K", "cs", "CS", "sc", "SC", "scn", "SCN", ""];

    private readonly StringBuilder _marked = new();
    private readonly List<int> _parts = [];
    private int _open = Nothing;
    private int _texts;

    /// <summary>Marks the drawing.</summary>
    /// <returns>The drawing, and for each number, from 0, which part of the page it marks.</returns>
    public (string Drawing, IReadOnlyList<int> Parts) Write()
    {
        var ends = EndsOfStates(out var hasText, out var hasShapes);
        for (var i = 0; i < lines.Length; i++)
        {
            var line = lines[i];
            if (line == "q" && !hasText.Contains(i))
            {
                // A whole state without words belongs to the shapes.
                if (hasShapes.Contains(i))
                {
                    OpenShapes();
                }

                Copy(ref i, ends[i]);
            }
            else if (line is "q" or "Q")
            {
                Close();
                Copy(ref i, i);
            }
            else if (line == "BT")
            {
                var (role, part) = roleOf(_texts++);
                Open(role, part);
                Copy(ref i, Array.IndexOf(lines, "ET", i));
            }
            else
            {
                if (!Settings.Contains(Operator(line)))
                {
                    OpenShapes();
                }

                Copy(ref i, i);
            }
        }

        Close();
        return (_marked.ToString(0, _marked.Length - 1), _parts);
    }

    private void Copy(ref int from, int to)
    {
        for (var i = from; i <= to; i++)
        {
            _marked.Append(lines[i]).Append('\n');
        }

        from = to;
    }

    private void OpenShapes()
    {
        if (isPicture)
        {
            Open("Figure", Picture);
        }
        else if (_open != Picture)
        {
            Close();
            _marked.Append("/Artifact BMC\n");
            _open = Picture;
        }
    }

    private void Open(string role, int part)
    {
        if (_open == part)
        {
            return;
        }

        Close();
        _marked.Append(CultureInfo.InvariantCulture, $"/{role} <</MCID {_parts.Count}>> BDC\n");
        _parts.Add(part);
        _open = part;
    }

    private void Close()
    {
        if (_open != Nothing)
        {
            _marked.Append("EMC\n");
            _open = Nothing;
        }
    }

    // Where each saved state ends, and which of them, by where they begin, hold words or shapes.
    private Dictionary<int, int> EndsOfStates(out HashSet<int> hasText, out HashSet<int> hasShapes)
    {
        var (ends, open) = (new Dictionary<int, int>(), new Stack<int>());
        (hasText, hasShapes) = ([], []);
        for (var i = 0; i < lines.Length; i++)
        {
            switch (lines[i])
            {
                case "q":
                    open.Push(i);
                    break;
                case "Q":
                    ends[open.Pop()] = i;
                    break;
                case "BT":
                    hasText.UnionWith(open);
                    i = Array.IndexOf(lines, "ET", i);
                    break;
                case var line when !Settings.Contains(Operator(line)):
                    hasShapes.UnionWith(open);
                    break;
            }
        }

        return ends;
    }

    private static string Operator(string line) => line[(line.LastIndexOf(' ') + 1)..];
}
