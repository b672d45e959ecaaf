using Sketch.Diagnostics;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Syntax;

/// <summary>Reads the tokens of one line; reports what is missing, once per clause.</summary>
internal sealed class Cursor(ParseState file, LogicalLine line)
{
    // An array is read on each step, much faster than through its interface.
    private readonly Token[] _tokens = line.Tokens as Token[] ?? [.. line.Tokens];
    private readonly List<int> _names = [];
    private readonly List<Unit> _bareUnits = [];

    /// <summary>The file that the line belongs to.</summary>
    public ParseState File => file;

    public int Position { get; private set; }

    public IReadOnlyList<int> NameTokens => _names;

    /// <summary>The units assumed for lengths without a unit, except for zero lengths.</summary>
    public IReadOnlyList<Unit> BareUnits => _bareUnits;

    public Token Current => _tokens[Position];

    public Token Next => _tokens[Math.Min(Position + 1, _tokens.Length - 1)];

    public Token Previous => _tokens[Math.Max(0, Position - 1)];

    public bool AtEnd => Current.Kind == TokenKind.End;

    /// <summary>Set once a clause has failed; suppresses further findings until the next comma.</summary>
    public bool Failed { get; private set; }

    /// <summary>
    /// Whether the line may name a paper and does not yet. The <c>of</c> in <c>left of lamp</c> names none.
    /// </summary>
    public bool LacksPaper => !_tokens.Any(t => t.Is("part") || t.Is("use") || t.Is("role") || t.Is("window") || t.Is("group"))
        && !_tokens.Zip(_tokens.Skip(1)).Any(pair =>
            pair.Second.Is("of") && !(pair.First.Is("left") || pair.First.Is("right") || pair.First.Is("top") || pair.First.Is("bottom")));

    /// <summary>The token that follows a word of the line; null where the line does not have the word.</summary>
    public Token? After(string word) => _tokens.SkipWhile(t => !t.Is(word)).Skip(1).FirstOrDefault();

    /// <summary>Whether anything on the line has failed.</summary>
    public bool EverFailed { get; private set; }

    public Token Peek(int ahead) => _tokens[Math.Clamp(Position + ahead, 0, _tokens.Length - 1)];

    public Token Take()
    {
        var token = Current;
        if (!AtEnd)
        {
            Position++;
        }

        return token;
    }

    public bool TakeWord(string word)
    {
        if (!Current.Is(word))
        {
            return false;
        }

        Position++;
        return true;
    }

    public bool TakeKind(TokenKind kind)
    {
        if (Current.Kind != kind)
        {
            return false;
        }

        Position++;
        return true;
    }

    /// <summary>Takes the x between two measures; "by" is reported and accepted in its place.</summary>
    public bool TakeTimes()
    {
        // No clause begins with a single letter, so a single letter here is a typing error for x.
        if (Current.Kind == TokenKind.Word && (Current.Is("by") || Current.Text.Length == 1)
            && (Next.Kind == TokenKind.Number || Next.Is("full") || Next.Is("fit") || Next.Is("share")))
        {
            Report(FindingCatalogue.LeftOver, Current.Span, $"Separate width and height with x, not {Here}.",
                $"Write {Previous.Text} x {Next.Text}.", "x");
            Position++;
            return true;
        }

        return TakeKind(TokenKind.Times);
    }

    /// <summary>Skips to the next comma or the end, and resets the failure.</summary>
    public void SkipClause()
    {
        while (Current.Kind is not (TokenKind.End or TokenKind.Comma))
        {
            Position++;
        }

        Failed = false;
    }

    public void Begin() => Failed = false;

    public void Fail(FindingKind kind, TextSpan span, string message, string hint, string? replacement = null)
    {
        if (!Failed && Current.Kind != TokenKind.Bad)
        {
            Report(kind, span, message, hint, replacement);
        }

        Failed = true;
        EverFailed = true;
    }

    public void Report(FindingKind kind, TextSpan span, string message, string hint, string? replacement = null) =>
        file.Findings.Add(kind, new(file.Source, span), message, hint, replacement);

    /// <summary>
    /// What a token probably means: what is typed for an everyday word, or the nearest known word; null when there is none, when the
    /// token is a known word itself, or when no more findings of this kind are reported.
    /// </summary>
    public Proposal? Meant(FindingKind kind, Token token, IReadOnlyCollection<string> known)
    {
        if (token.Kind != TokenKind.Word || file.Findings.IsFull(kind))
        {
            return null;
        }

        if (known.Contains(token.Text, StringComparer.OrdinalIgnoreCase))
        {
            return null;
        }

        return EverydayWords.Meant(token.Text, known) is [_, ..] meanings ? new(meanings)
            : Nearest.Find(token.Text, known) is { } near ? new([near]) : null;
    }

    /// <summary>The current token, for a message.</summary>
    public string Here => Current.Kind switch
    {
        TokenKind.End => "the end of the line",
        TokenKind.Quoted => $"\"{Current.Text}\"",
        TokenKind.Colour => $"#{Current.Text}",
        _ => $"'{Current.Text}'",
    };

    public void Missing(string what, string hint) =>
        Fail(FindingCatalogue.Expected, Current.Span, $"Expected {what}, found {Here}.", hint);

    /// <summary>Reports that one of a few words is missing here, and which of them the current token probably means.</summary>
    public void MissingWord(string what, string hint, params string[] words)
    {
        var meant = Meant(FindingCatalogue.Expected, Current, words);
        Fail(FindingCatalogue.Expected, Current.Span, $"Expected {what}, found {Here}.", meant?.Hint ?? hint, meant?.Text);
    }

    /// <summary>The span of a file's name from a token on, in quotes or not: <c>gull.card</c>; null where there is none.</summary>
    public TextSpan? FileName(int ahead)
    {
        if (Peek(ahead) is { Kind: TokenKind.Quoted } quoted)
        {
            return quoted.Span;
        }

        for (var end = Position + ahead; end < _tokens.Length && _tokens[end].Kind is not (TokenKind.End or TokenKind.Comma); end++)
        {
            if (EndsFileName(end))
            {
                return TextSpan.Cover(Peek(ahead).Span, _tokens[end].Span);
            }
        }

        return null;
    }

    /// <summary>Whether a token is the ending of a file's name: a word directly after a dot.</summary>
    private bool EndsFileName(int token) => token > 0 && _tokens[token].Kind == TokenKind.Word && _tokens[token - 1].Kind == TokenKind.Bad
        && _tokens[token - 1].Text == "." && _tokens[token - 1].Span.End == _tokens[token].Span.Start;

    /// <summary>
    /// The span of unquoted words up to the next comma or the end of a file's name; null where there are none, or where some words are
    /// quoted.
    /// </summary>
    public TextSpan? BareWords()
    {
        var end = Position;
        while (_tokens[end].Kind is not (TokenKind.End or TokenKind.Comma or TokenKind.Quoted)
            && !(end > Position && EndsFileName(end - 1)))
        {
            end++;
        }

        return Current.Kind is TokenKind.Word or TokenKind.Number && _tokens[end].Kind != TokenKind.Quoted
            ? TextSpan.Cover(Current.Span, _tokens[end - 1].Span) : null;
    }

    /// <summary>Reports that quoted words are missing, and offers to put quotes around unquoted words here.</summary>
    /// <param name="hint">What to write where there are no words.</param>
    /// <param name="before">What comes before them.</param>
    public void MissingQuotes(string hint, string before)
    {
        if (BareWords() is not { } bare)
        {
            Missing("something in quotes", hint);
            return;
        }

        var quoted = $"\"{file.Source.Content[bare.Start..bare.End]}\"";
        // In quotes every character has a meaning, such as the dot of a file's name.
        file.Findings.Withdraw(FindingCatalogue.StrayCharacter, new(file.Source, bare));
        Fail(FindingCatalogue.Expected, bare, $"Expected something in quotes, found {Here}.", $"Write {before} {quoted}.", quoted);
    }

    public NameSyntax? Name(string what, string hint)
    {
        if (Current.Kind != TokenKind.Word)
        {
            Missing(what, hint);
            return null;
        }

        _names.Add(Position);
        var token = Take();
        return new(token.Text, token.Span);
    }

    public PathSyntax? Path(string hint)
    {
        TakeThe("a name");
        var first = Name("a piece's name", hint);
        if (first is null)
        {
            return null;
        }

        var names = new List<NameSyntax> { first };
        while (TakeKind(TokenKind.Slash))
        {
            if (Name("a name after the slash", hint) is not { } name)
            {
                return null;
            }

            names.Add(name);
        }

        return new([.. names]);
    }

    /// <summary>Takes and reports the word the before a word that stands without it.</summary>
    private void TakeThe(string before)
    {
        if (Current.Is("the") && Next.Kind == TokenKind.Word)
        {
            Report(FindingCatalogue.LeftOver, Current.Span, $"Write {before} without 'the'.", "Remove 'the'.", "");
            Position++;
        }
    }

    public QuotedSyntax? Quoted(string hint)
    {
        if (Current.Kind != TokenKind.Quoted)
        {
            MissingQuotes(hint, Previous.Text);
            return null;
        }

        var token = Take();
        return new(token.Text, token.Span);
    }

    public Edge? TakeEdge()
    {
        Edge? edge = Current.Is("left") ? Edge.Left : Current.Is("right") ? Edge.Right
            : Current.Is("top") ? Edge.Top : Current.Is("bottom") ? Edge.Bottom : null;
        if (edge is not null)
        {
            Position++;
        }

        return edge;
    }

    public Edge? ExpectEdge(string hint)
    {
        TakeThe("a side");
        var edge = TakeEdge();
        if (edge is null)
        {
            MissingWord("left, right, top or bottom", hint, "left", "right", "top", "bottom");
        }

        return edge;
    }

    public Direction? ExpectDirection(string hint)
    {
        Direction? direction = Current.Is("left") ? Direction.Left : Current.Is("right") ? Direction.Right
            : Current.Is("up") ? Direction.Up : Current.Is("down") ? Direction.Down : null;
        if (direction is null)
        {
            MissingWord("left, right, up or down", hint, "left", "right", "up", "down");
        }
        else
        {
            Position++;
        }

        return direction;
    }

    /// <summary>A number of copies: a whole number from 1 to the limit for a line. The hint for a larger number gives the limit.</summary>
    public CountSyntax? Copies(string what, string hint) =>
        Count(what, hint, Limits.Copies, hintForMore: $"Write {Limits.Copies} or less.");

    /// <summary>A whole number from <paramref name="least"/> to <paramref name="most"/>, without a unit.</summary>
    public CountSyntax? Count(string what, string hint, int most = int.MaxValue, int least = 1, string? hintForMore = null)
    {
        if (Current is not { Kind: TokenKind.Number, Number: { IsWhole: true, Unit: null } number })
        {
            var digits = Current.Kind == TokenKind.Word ? Vocabulary.Counts.GetValueOrDefault(Current.Text) : null;
            Fail(FindingCatalogue.Expected, Current.Span, $"Expected {what}, found {Here}.", digits is null
                ? hint : $"Write {digits}, in digits.", digits);
            return null;
        }

        var span = Take().Span;
        if (number.Numerator < least || number.Numerator > most)
        {
            Report(FindingCatalogue.BadCount, span, $"{number.Numerator} is out of range: {what} is from {least} to {most}.",
                number.Numerator > most ? hintForMore ?? hint : hint);
            return new((int)Math.Clamp(number.Numerator, least, most), span, IsCorrected: true);
        }

        return new((int)number.Numerator, span);
    }

    /// <summary>A length; negative only where <paramref name="signed"/> is true.</summary>
    public LengthSyntax? Length(string hint, bool signed = false)
    {
        if (Current.Kind != TokenKind.Number)
        {
            Missing("a length", hint);
            return null;
        }

        var token = Take();
        var unit = UnitOf(token);
        if (token.Number is { Unit: null, Numerator: not 0 })
        {
            _bareUnits.Add(unit);
        }

        return LengthReader.Read(token, unit, signed, out var problem) is { } length
            ? new(length, token.Span)
            : Refuse(token, problem);
    }

    /// <summary>
    /// The unit of a number without one: the file's, but in <c>148 x 105 mm</c> the unit of the second, since nobody means 148 inches.
    /// </summary>
    private Unit UnitOf(Token taken) =>
        file.Units == Unit.Inch && !taken.Number!.IsFraction && Current.Kind == TokenKind.Times
            && Next is { Kind: TokenKind.Number, Number.Unit: Unit.Millimetre or Unit.Centimetre } other
            ? other.Number.Unit.Value
            : file.Units;

    private LengthSyntax? Refuse(Token token, NumberReader.Problem problem)
    {
        Fail(FindingCatalogue.BadNumber, token.Span, problem.Message, problem.Hint, problem.Replacement);
        return null;
    }
}
