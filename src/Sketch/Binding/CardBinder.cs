using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Binding;

/// <summary>
/// Binds the lines of one card file: <see cref="Bind"/> applies them to the card that it is like, if any;
/// <see cref="Change"/> applies its <c>change</c>, <c>leave out</c> and <c>add to</c> lines, which come after the refit.
/// </summary>
internal sealed class CardBinder
{
    private readonly FileSyntax _file;
    private readonly SourceText _source;
    private readonly FindingBag _findings;
    private readonly PieceBinder _pieces;
    private readonly List<LineSyntax> _lines = [];
    private CardMessage? _message;

    /// <summary>Sorts the lines of a file that begins with a card's title.</summary>
    public CardBinder(FileSyntax file, FindingBag findings)
    {
        _file = file;
        _source = file.Source;
        _findings = findings;
        _pieces = new(_source, findings);
        var title = (TitleLine)file.Lines[0];
        _pieces.RejectClauses(title);
        // Lines indented under the title mean the same as lines below it.
        if (title.Children.Length + file.Lines.Length > Limits.Lines)
        {
            var lines = title.Children.Length + file.Lines.Length;
            Report(FindingCatalogue.BadCount, title.Span,
                $"The card has {lines:N0} lines without indentation, but at most {Limits.Lines:N0} are read.",
                    "Is this the right file? Pieces are indented under their face.");
        }

        foreach (var line in title.Children.Concat(file.Lines.Skip(1)).Take(Limits.Lines))
        {
            switch (line)
            {
                case TitleLine { Word: "like" } like when Like is null:
                    _pieces.RejectClauses(like);
                    _pieces.RejectChildren(like);
                    Like = like;
                    break;
                case RefitLine refit:
                    Refit = refit;
                    break;
                case TitleLine second:
                    Report(FindingCatalogue.Misplaced, second.Span,
                        $"A second {second.Word} line begins here, but a file is one {title.Word}.",
                        second.Word == "like" ? "Keep one like line." : "Put it into a file of its own.");
                    break;
                default:
                    _lines.Add(line);
                    break;
            }
        }

        if (Refit is { } last)
        {
            _pieces.RejectClauses(last);
            if (Like is null)
            {
                Report(FindingCatalogue.Misplaced, last.Span, "There is nothing to refit: this card has no like line.",
                    "Write like \"other.card\" above it.");
            }
        }
    }

    /// <summary>The line that names the card that this one is like, or null.</summary>
    public TitleLine? Like { get; }

    /// <summary>The line that asks to fit the other card to this base, or null.</summary>
    public RefitLine? Refit { get; }

    /// <summary>The card before its changes.</summary>
    /// <param name="other">The card that it is like, or null.</param>
    public BoundCard Bind(BoundCard? other)
    {
        var title = (TitleLine)_file.Lines[0];
        var card = new BoundCard { Title = title.Words.Text, Location = At(title.Span) };
        if (other is not null)
        {
            card = card with
            {
                Base = other.Base is { } inherited
                ? inherited with { UndeclaredUnits = null } : null,
                Roles = other.Roles,
                Parts = other.Parts,
                Faces = other.Faces,
                Font = other.Font,
                Message = other.Message,
                Units = other.Units
            };
        }

        foreach (var line in _lines.Where(l => l is not (ChangeLine or LeaveOutLine or AddToLine)))
        {
            card = ReadLine(card, line);
        }

        card = card with { Message = _message ?? card.Message };

        if (_lines.OfType<BaseLine>().LastOrDefault() is { Measure.Size: not null } baseLine && card.Base is { Written: { } size } own)
        {
            card = card with { Base = own with { UndeclaredUnits = BaseUnits.Check(_file, baseLine, size, _findings) } };
        }

        return card;
    }

    /// <summary>The card with the changes of the file applied.</summary>
    public BoundCard Change(BoundCard card)
    {
        foreach (var line in _lines.Where(l => l is ChangeLine or LeaveOutLine or AddToLine))
        {
            card = new PieceChanges(_pieces, _findings, _source).Apply(card, line);
        }

        RepeatedNames.Check(card, _source, _findings);

        // A line that was probably meant as the base has been reported, so a missing base is not.
        var broken = _lines.FirstOrDefault(l => l is BadLine { Meant: "base" });
        return card with
        {
            BrokenNames = _pieces.BrokenNames,
            Base = card.Base ?? (broken is null ? null : new(null, null, false, null, null, At(broken.Span))),
        };
    }

    private BoundCard ReadLine(BoundCard card, LineSyntax line)
    {
        if (line is UnitsLine or WordsLine or FontLine)
        {
            _pieces.RejectChildren(line);
            if (line is not WordsLine { Word: "message" })
            {
                _pieces.RejectClauses(line);
            }
        }

        switch (line)
        {
            case UnitsLine units:
                return card with { Units = UnitsOf(units.Unit) };
            case BaseLine baseLine:
                return card with { Base = new BaseBinder(_source, _pieces, _findings).Bind(card.Base, baseLine) };
            case RoleLine role:
                var read = ReadRole(role);
                return card with { Roles = [.. card.Roles.Where(r => !Same(r.Name, read.Name) || !WasHere(r.Location, read)), read] };
            case PartLine part:
                return ReadPart(card, part);
            case FaceLine face:
                return new FaceBinder(_source, _pieces, _findings).Bind(card, face);
            case WordsLine { Word: "note" } note:
                var text = string.Join('\n', note.Words.Select(w => w.Text));
                return card with { Notes = card.Notes.Length == 0 ? text : card.Notes + "\n" + text };
            case WordsLine { Word: "message" } message:
                _message = new MessageReader(_source, _findings).Read(_message, message);
                return card;
            case FontLine font:
                return card with { Font = new(font.Font.Text, At(font.Font.Span)) };
            case BadLine:
                return card;
            case PieceLine or UseLine:
                Report(FindingCatalogue.Misplaced, line.Span, "This piece is not on a face.",
                    "Indent it under front, inside or another face.");
                return card;
            case ItemLine:
                Report(FindingCatalogue.Misplaced, line.Span, "An item line changes a copy, but there are no copies above it.",
                    "Indent it under a line with a count, such as 3 gem 1/8.");
                return card;
            default:
                Report(FindingCatalogue.Misplaced, line.Span, "This line does not belong in a card.",
                    "It belongs in a batch or stash file.");
                return card;
        }
    }

    /// <summary>Whether a role comes from the card that this one is like, so that it is replaced without a finding.</summary>
    private bool WasHere(Location old, BoundRole read)
    {
        if (ReferenceEquals(old.Source, _source))
        {
            _findings.Add(FindingCatalogue.GivenTwice, read.Location,
                $"The role {read.Name} is declared twice, first in line {old.Start.Line}.", "Remove one of the two, or rename it.");
        }

        return true;
    }

    private static UnitSystem UnitsOf(Unit unit) => unit switch
    {
        Unit.Millimetre => UnitSystem.Millimetres,
        Unit.Centimetre => UnitSystem.Centimetres,
        _ => UnitSystem.Inches,
    };

    private BoundRole ReadRole(RoleLine line)
    {
        _pieces.RejectChildren(line);
        var side = PaperSide.Front;
        foreach (var clause in line.Clauses)
        {
            if (clause is SideClause { Words: null, TrueWidth: null, Colours.IsEmpty: true } s)
            {
                side = s.IsBack ? PaperSide.Back : PaperSide.Front;
            }
            else
            {
                _pieces.ReportUnused(clause, "a role", "A role takes front or back: role sky: gulls, back.");
            }
        }

        foreach (var colour in line.Colours.Where(c => !c.IsHex && !ColourWords.TryGet(c.Text, out _)))
        {
            Report(FindingCatalogue.UnknownRole, colour.Span, $"'{colour.Text}' is no colour.",
                BuiltIn.PatternWords.Contains(colour.Text) && line.Paper is { } first
                    ? $"Write the pattern before its colours: role {line.Name.Text}: {colour.Text} {first.Text}."
                    : Hints.Colour(colour.Text),
                Nearest.Find(colour.Text, ColourWords.All));
        }

        return new(line.Name.Text, line.Paper, line.Colours, line.AnyOffcut, side, At(line.Span)) { OffcutOf = line.OffcutOf };
    }

    private BoundCard ReadPart(BoundCard card, PartLine line)
    {
        _pieces.RejectClauses(line);
        if (card.Parts.TryGetValue(line.Name.Text, out var other) && ReferenceEquals(other.Location.Source, _source))
        {
            Report(FindingCatalogue.GivenTwice, line.Name.Span,
                $"The part {line.Name.Text} is defined twice, first in line {other.Location.Start.Line}.", "Rename one of them.");
        }

        var part = new BoundPart(line.Name.Text, line.Size, _pieces.ReadAll(line.Children, card.Parts), At(line.Span));
        return card with { Parts = card.Parts.SetItem(part.Name, part) };
    }

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);

    private Location At(TextSpan span) => new(_source, span);

    private void Report(FindingKind kind, TextSpan span, string message, string hint, string? replacement = null) =>
        _findings.Add(kind, At(span), message, hint, replacement);
}
