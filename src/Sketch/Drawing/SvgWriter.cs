using System.Buffers;
using System.Text;
using Sketch.Shapes;
using Sketch.Units;

namespace Sketch.Drawing;

/// <summary>
/// Writes SVG text in millimetres, one element per line. Text and attributes are always well-formed: XML's special characters are
/// escaped, characters that XML 1.0 does not allow become U+FFFD.
/// </summary>
public sealed class SvgWriter
{
    private static readonly SearchValues<char> Plain = SearchValues.Create(
        [.. Enumerable.Range(' ', '~' - ' ' + 1).Select(c => (char)c).Where(c => c is not ('&' or '<' or '>' or '"'))]);

    private readonly StringBuilder _text = new();
    private readonly Stack<(string Name, Affine OnPage)> _open = new();
    private readonly List<WordsOnPage> _words = [];
    private readonly int _indent;
    private bool _inStartTag;
    private bool _onOneLine;

    /// <summary>A writer with an initial indentation, for text to be inserted into another's.</summary>
    public SvgWriter(int indent = 0) => _indent = indent;

    /// <summary>The length written so far, in characters.</summary>
    public int Length => _text.Length;

    /// <summary>
    /// Opens the root of a picture at true size: as wide and high as <paramref name="size"/> in inches or millimetres, with the user
    /// unit 1 mm, so that what is drawn is clipped at exactly that size.
    /// </summary>
    /// <param name="size">The size of the picture.</param>
    /// <param name="inInches">Whether width and height are given in inches; otherwise in millimetres.</param>
    /// <param name="title">What the picture shows, in plain words.</param>
    public static SvgWriter Sheet(Size size, bool inInches, string title)
    {
        var (width, height) = (size.Width, size.Height);
        return new SvgWriter()
            .Open("svg")
            .Attribute("xmlns", "http://www.w3.org/2000/svg")
            .Attribute("xmlns:xlink", "http://www.w3.org/1999/xlink")
            .Attribute("width", Physical(width))
            .Attribute("height", Physical(height))
            .Attribute("viewBox", $"0 0 {DecimalText.Of(width.Millimetres, 6)} {DecimalText.Of(height.Millimetres, 6)}")
            .Attribute("role", "img")
            .Title(title);

        string Physical(Length length) => inInches ? DecimalText.Of(length.Inches, 6) + "in" : DecimalText.Of(length.Millimetres, 6) + "mm";
    }

    /// <summary>Opens an element inside the open one.</summary>
    public SvgWriter Open(string name)
    {
        EndStartTag();
        NewLine(_open.Count);
        _text.Append('<').Append(name);
        _open.Push((name, OnPage));
        _inStartTag = true;
        return this;
    }

    /// <summary>An attribute of the element just opened.</summary>
    public SvgWriter Attribute(string name, string value)
    {
        _text.Append(' ').Append(name).Append("=\"");
        Escape(value);
        _text.Append('"');
        return this;
    }

    /// <summary>
    /// A reference from the element just opened, as SVG 2 spells it and as SVG 1.1 does (section 5.6): a program that knows only one of
    /// the two finds it.
    /// </summary>
    public SvgWriter Reference(string target) => Attribute("href", target).Attribute("xlink:href", target);

    /// <summary>A number of millimetres or degrees, or a fraction, with at most four decimals.</summary>
    public SvgWriter Attribute(string name, double value)
    {
        _text.Append(' ').Append(name).Append("=\"").AppendNumber(value).Append('"');
        return this;
    }

    /// <summary>Moves the element just opened; writes nothing for the identity.</summary>
    public SvgWriter Transform(Affine by)
    {
        if (by.IsIdentity)
        {
            return this;
        }

        var (name, outer) = _open.Pop();
        _open.Push((name, by.Then(outer)));
        var isShift = by == Affine.Shift(by.E, by.F);
        _text.Append(" transform=\"").Append(isShift ? "translate(" : "matrix(");
        if (!isShift)
        {
            // Six decimals keep the far end of a metre-wide piece within a micrometre.
            foreach (var number in (ReadOnlySpan<double>)[by.A, by.B, by.C, by.D])
            {
                _text.AppendNumber(number, 6).Append(' ');
            }
        }

        _text.AppendNumber(by.E).Append(' ').AppendNumber(by.F).Append(")\"");
        return this;
    }

    /// <summary>The title of the element just opened: what a pointer resting on it shows and a screen reader speaks.</summary>
    public SvgWriter Title(string words)
    {
        Open("title");
        _text.Append('>');
        _inStartTag = false;
        Escape(words);
        _onOneLine = true;
        return Close();
    }

    /// <summary>
    /// Puts words into the open element. A page shows them above all its shapes, so what is to cover them must not be drawn here.
    /// </summary>
    public SvgWriter Words(PageWords words)
    {
        EndStartTag();
        _words.Add(new(words, OnPage, _text.Length, _indent + _open.Count));
        return this;
    }

    /// <summary>Closes the innermost open element.</summary>
    public SvgWriter Close()
    {
        var (name, _) = _open.Pop();
        if (_inStartTag)
        {
            _text.Append("/>");
        }
        else
        {
            if (!_onOneLine)
            {
                NewLine(_open.Count);
            }

            _text.Append("</").Append(name).Append('>');
        }

        _inStartTag = _onOneLine = false;
        return this;
    }

    /// <summary>Inserts what another writer has written.</summary>
    public SvgWriter Insert(SvgWriter other)
    {
        EndStartTag();
        _words.AddRange(other._words.Select(w => w with { At = w.At + _text.Length, OnPage = w.OnPage.Then(OnPage) }));
        _text.Append(other._text);
        return this;
    }

    /// <summary>The drawing as a page to print; every element is closed.</summary>
    public DrawnPage ToPage() => new(_text.ToString() + "\n", [.. _words]);

    /// <summary>
    /// The text so far, words as outlines, with a line end; it is a complete picture only when every element is closed.
    /// </summary>
    public override string ToString() => _words.Count == 0 ? _text.ToString() + "\n" : ToPage().Svg;

    private Affine OnPage => _open.TryPeek(out var innermost) ? innermost.OnPage : Affine.Identity;

    private void EndStartTag()
    {
        if (_inStartTag)
        {
            _text.Append('>');
            _inStartTag = false;
        }
    }

    private void NewLine(int depth)
    {
        if (_text.Length > 0 || _indent > 0)
        {
            _text.Append('\n').Append(' ', _indent + depth);
        }
    }

    private void Escape(string value)
    {
        if (!value.AsSpan().ContainsAnyExcept(Plain))
        {
            _text.Append(value);
            return;
        }

        for (var i = 0; i < value.Length; i++)
        {
            var c = value[i];
            switch (c)
            {
                case '&':
                    _text.Append("&amp;");
                    break;
                case '<':
                    _text.Append("&lt;");
                    break;
                case '>':
                    _text.Append("&gt;");
                    break;
                case '"':
                    _text.Append("&quot;");
                    break;
                case < ' ':
                    _text.Append(c is '\t' or '\n' or '\r' ? ' ' : '\uFFFD');
                    break;
                case '\uFFFE' or '\uFFFF':
                    _text.Append('\uFFFD');
                    break;
                case >= '\uD800' and <= '\uDFFF' when i + 1 < value.Length && char.IsSurrogatePair(c, value[i + 1]):
                    _text.Append(c).Append(value[++i]);
                    break;
                case >= '\uD800' and <= '\uDFFF':
                    _text.Append('\uFFFD');
                    break;
                default:
                    _text.Append(c);
                    break;
            }
        }
    }
}
