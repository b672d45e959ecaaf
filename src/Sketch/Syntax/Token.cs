using Sketch.Text;

namespace Sketch.Syntax;

/// <summary>The kinds of token in a line.</summary>
public enum TokenKind
{
    /// <summary>Letters, digits and hyphens, beginning with a letter.</summary>
    Word,

    /// <summary>A number with or without a unit.</summary>
    Number,

    /// <summary>Words in quotes.</summary>
    Quoted,

    /// <summary>A colour of three or six hex digits.</summary>
    Colour,

    /// <summary>The x of a size.</summary>
    Times,

    /// <summary>A colon.</summary>
    Colon,

    /// <summary>A comma.</summary>
    Comma,

    /// <summary>A slash between the names of a path.</summary>
    Slash,

    /// <summary>The plus of a mat's size.</summary>
    Plus,

    /// <summary>Something already reported; the parser skips its clause without another finding.</summary>
    Bad,

    /// <summary>The end of a line.</summary>
    End,
}

/// <summary>The units that a number may have.</summary>
public enum Unit
{
    /// <summary>Inches.</summary>
    Inch,

    /// <summary>Millimetres.</summary>
    Millimetre,

    /// <summary>Centimetres.</summary>
    Centimetre,

    /// <summary>Feet.</summary>
    Foot,

    /// <summary>Yards.</summary>
    Yard,

    /// <summary>Metres.</summary>
    Metre,
}

/// <summary>A number as written.</summary>
/// <param name="Numerator">Numerator with its sign; both parts hold at most 15 digits.</param>
/// <param name="Denominator">Denominator, at least 1; a power of ten for decimals.</param>
/// <param name="IsFraction">Whether it was written with a fraction bar.</param>
/// <param name="IsWhole">Whether it was written without fraction and decimals.</param>
/// <param name="Unit">The unit, or null for the file's.</param>
public sealed record Numeral(long Numerator, long Denominator, bool IsFraction, bool IsWhole, Unit? Unit);

/// <summary>One token.</summary>
/// <param name="Kind">Its kind.</param>
/// <param name="Span">Its place in the source.</param>
/// <param name="Text">The text as written; for quoted words without the quotes, for colours the hex digits.</param>
/// <param name="Number">The number, for numbers.</param>
public sealed record Token(TokenKind Kind, TextSpan Span, string Text, Numeral? Number = null)
{
    /// <summary>Whether it is this word, ignoring case.</summary>
    public bool Is(string word) => Kind == TokenKind.Word && Text.Equals(word, StringComparison.OrdinalIgnoreCase);
}

/// <summary>A line of a file, with the lines that continue it after a comma.</summary>
/// <param name="Indent">Characters of indentation.</param>
/// <param name="Tokens">Its tokens, closed by one of kind <see cref="TokenKind.End"/>.</param>
/// <param name="Comments">Comments at the end of its parts: the index of the token that follows each, and its text with the
/// sign.</param>
/// <param name="Breaks">Indices of tokens that begin a continuation line.</param>
/// <param name="Before">Blank lines (empty) and comment lines (with the sign) before it.</param>
public sealed record LogicalLine(
    int Indent,
    IReadOnlyList<Token> Tokens,
    IReadOnlyList<(int Token, string Text)> Comments,
    IReadOnlyList<int> Breaks,
    IReadOnlyList<string> Before)
{
    /// <summary>From the first to the last token.</summary>
    public TextSpan Span => Tokens.Count > 1 ? TextSpan.Cover(Tokens[0].Span, Tokens[^2].Span) : Tokens[0].Span;
}
