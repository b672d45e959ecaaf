using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Batches;

/// <summary>Reads the outline of a batch file.</summary>
public sealed class BatchReader
{
    private readonly SourceText _source;
    private readonly FindingBag _findings;
    private readonly HashSet<string> _said = [];
    private readonly ImmutableArray<Recipients>.Builder _for = ImmutableArray.CreateBuilder<Recipients>();
    private readonly ImmutableArray<MakeRequest>.Builder _makes = ImmutableArray.CreateBuilder<MakeRequest>();
    private readonly ImmutableArray<CutRequest>.Builder _cuts = ImmutableArray.CreateBuilder<CutRequest>();
    private readonly ImmutableArray<CardsOnHand>.Builder _onHand = ImmutableArray.CreateBuilder<CardsOnHand>();
    private Batch _batch;

    private BatchReader(FileSyntax file, TitleLine title, FindingBag findings)
    {
        (_source, _findings) = (file.Source, findings);
        _batch = new(title.Words.Text, At(title.Span));
    }

    /// <summary>
    /// The batch that a file describes; what cannot be read is reported and left out. Null, without a finding, if it is not a batch.
    /// </summary>
    public static Batch? Read(FileSyntax file, FindingBag findings) =>
        file.Lines is [TitleLine { Word: "batch" } title, ..] ? new BatchReader(file, title, findings).Read(file, title) : null;

    private Batch Read(FileSyntax file, TitleLine title)
    {
        ReadKerf(title);

        // Lines indented under the title mean the same as lines below it.
        foreach (var line in title.Children.Concat(file.Lines.Skip(1)))
        {
            ReadLine(line);
        }

        ReportStrangers();
        ReportUnknownRules();
        var batch = _batch with
        {
            For = _for.ToImmutable(),
            Makes = _makes.ToImmutable(),
            Cuts = _cuts.ToImmutable()
        };
        NamedMakers.ReportUnknown(batch, _findings);
        return CardsOnHand.Used(NamedMakers.Together(batch), _onHand.ToImmutable());
    }

    private void ReportStrangers()
    {
        var names = _for.Select(f => f.Whom).ToList();
        foreach (var whom in _makes.SelectMany(m => m.For).Where(w => !names.Contains(w.Whom, StringComparer.OrdinalIgnoreCase)))
        {
            var near = Nearest.Find(whom.Whom, names);
            _findings.Add(FindingCatalogue.NoSuchRecipient, whom.Location, $"The batch has no recipient \"{whom.Whom}\".",
                near is null ? $"Add a line for \"{whom.Whom}\", 24 cards to the batch." : $"Did you mean \"{near}\"?",
                near is null ? null : $"\"{near}\"");
        }
    }

    private void ReportUnknownRules()
    {
        var names = _batch.RuleSets.Select(s => s.Name).ToList();
        foreach (var rules in _for.SelectMany(f => f.Rules).Where(r => !names.Contains(r.Name, StringComparer.OrdinalIgnoreCase)))
        {
            var near = Nearest.Find(rules.Name, names);
            _findings.Add(FindingCatalogue.NoSuchRules, rules.Location, $"The batch has no rules \"{rules.Name}\".",
                near is null ? $"Add a line rules \"{rules.Name}\" to the batch, with lines rule \"…\" beneath it."
                    : $"Did you mean \"{near}\"?", near is null ? null : $"\"{near}\"");
        }
    }

    private void ReadLine(LineSyntax line)
    {
        if (line is not (MakeLine or ForLine or WordsLine { Word: "rules" }))
        {
            foreach (var child in line.Children.Where(c => c is not BadLine))
            {
                Report(FindingCatalogue.Misplaced, child.Span, "This line of a batch has no indented lines.",
                    "Remove the indentation, or put it under a make line.");
            }
        }

        switch (line)
        {
            case TitleLine { Word: "stash" } stash:
                ReadKerf(stash);
                if (Once(line, "stash"))
                {
                    _batch = _batch with { Stash = new(stash.Words.Text, At(stash.Words.Span)) };
                }

                break;
            case UnitsLine units:
                RejectClauses(units);
                _batch = _batch with
                {
                    Units = units.Unit switch
                    {
                        Unit.Millimetre => UnitSystem.Millimetres,
                        Unit.Centimetre =>
                    UnitSystem.Centimetres,
                        _ => UnitSystem.Inches
                    }
                };
                break;
            case ForLine whom:
                ReadFor(whom);
                break;
            case CountLine count:
                RejectClauses(count);
                if (Once(line, count.Word))
                {
                    _batch = count.Word == "makers"
                        ? _batch with { Makers = count.Count.Value } : _batch with { OwnSpare = count.Count.Value };
                }

                break;
            case WordsLine { Word: "makers" } makers:
                RejectClauses(makers);
                if (Once(line, "makers"))
                {
                    var names = makers.Words.Select(w => w.Text).Distinct(StringComparer.OrdinalIgnoreCase).ToImmutableArray();
                    _batch = _batch with { MakerNames = names, Makers = names.Length };
                }

                break;
            case MakeLine make:
                ReadMake(make);
                break;
            case UseOnHandLine use:
                RejectClauses(use);
                _onHand.Add(new(use.Count.IsCorrected ? 0 : use.Count.Value, new(use.File.Text, At(use.File.Span)), At(use.Span)));
                break;
            case CutLine cut:
                ReadCut(cut);
                break;
            case WordsLine { Word: "rules" } rules:
                ReadRules(rules);
                break;
            case WordsLine { Word: "date" } date:
                RejectClauses(date);
                if (Once(line, "date"))
                {
                    _batch = _batch with { Date = date.Words[0].Text };
                }

                break;
            case WordsLine { Word: "note" } note:
                RejectClauses(note);
                _batch = _batch with { Notes = _batch.Notes + string.Concat(note.Words.Select(w => w.Text + "\n")) };
                break;
            case BadLine bad when bad.Meant == "stash" || bad.Tokens.Tokens[0].Is("stash"):
                _batch = _batch with { IsStashMistaken = true };
                break;
            case BadLine:
                break;
            case RoleLine or WordsLine { Word: "message" }:
                Report(FindingCatalogue.Misplaced, line.Span, "This line belongs to a card, but no make line is above it.",
                    "Indent it under its make line.");
                break;
            default:
                Report(FindingCatalogue.Misplaced, line.Span, "This line does not belong in a batch.",
                    "A batch has lines such as stash \"museum.stash\", for \"Cliff ward\", 24 cards, make 12 of \"fair-winds.card\" "
                        + "and cut 12 of 4 x 5 1/4 from gulls.");
                break;
        }
    }

    // The kerf belongs to the cutting tool, so it may be given in the batch or in its stash. What else is said belongs to the batch.
    private void ReadKerf(TitleLine line)
    {
        foreach (var clause in line.Clauses)
        {
            if (clause is MeasureClause { Word: "kerf" } kerf)
            {
                _batch = _batch with { Kerf = Length.Max(Length.Zero, kerf.Amount) };
            }
            else if (clause is MeasureClause { Word: "blanks" } blanks && line.Word == "batch")
            {
                _batch = _batch with { BlankStep = Length.Max(Length.Zero, blanks.Amount) };
            }
            else if (clause is MeasureClause { Word: "hollow" } hollow && line.Word == "batch")
            {
                _batch = _batch with { Hollow = hollow.Amount };
            }
            else
            {
                Idle(clause, "this line", line.Word == "batch" ? "The title of a batch takes kerf 1/32, blanks 1/8 and hollow."
                    : $"It takes only a kerf: {line.Word} \"{line.Words.Text}\", kerf 1/32.");
            }
        }
    }

    private void ReadFor(ForLine line)
    {
        if (new RecipientReader(_source, _findings).Read(line) is { } recipient)
        {
            _for.Add(recipient);
        }
    }

    private void ReadRules(WordsLine line)
    {
        RejectClauses(line);
        var rules = ImmutableArray.CreateBuilder<WrittenRule>();
        foreach (var child in line.Children)
        {
            if (child is WordsLine { Word: "rule" } rule)
            {
                rules.AddRange(rule.Words.Select(w => new WrittenRule(w.Text, At(w.Span))));
            }
            else if (child is not BadLine)
            {
                Report(FindingCatalogue.Misplaced, child.Span, "This line does not belong under rules.", "Write rule \"no small parts\".");
            }
        }

        _batch = _batch with { RuleSets = _batch.RuleSets.Add(new(line.Words[0].Text, rules.ToImmutable())) };
    }

    private void ReadMake(MakeLine line)
    {
        var makers = line.Clauses.OfType<MadeByClause>().FirstOrDefault();
        foreach (var clause in line.Clauses.Where(c => c != makers))
        {
            Idle(clause, "this line", "It takes only makers: make 6 of \"fair-winds.card\", made by \"Ann\".");
        }

        var roles = ImmutableArray.CreateBuilder<RoleChoice>();
        CardMessage? message = null;
        var whom = ImmutableArray.CreateBuilder<NamedRecipient>();
        var changes = ImmutableArray.CreateBuilder<LineSyntax>();
        foreach (var child in line.Children)
        {
            switch (child)
            {
                case ChangeLine or LeaveOutLine or AddToLine or BaseLine or RefitLine or FontLine:
                    changes.Add(child);
                    break;
                case RoleLine role when roles.FirstOrDefault(
                    r => r.Role.Equals(role.Name.Text, StringComparison.OrdinalIgnoreCase)) is { } twin:
                    Report(FindingCatalogue.GivenTwice, role.Name.Span,
                        $"The role {twin.Role} is already filled in line {twin.Location.Start.Line}.", "Remove one of the two lines.");
                    break;
                case RoleLine role:
                    roles.Add(Filling(role));
                    break;
                case WordsLine { Word: "message" } words:
                    message = new MessageReader(_source, _findings).Read(message, words);
                    break;
                case ForLine named:
                    RejectClauses(named);
                    whom.Add(new(named.Whom.Text, At(named.Whom.Span)));
                    break;
                case BadLine:
                    break;
                default:
                    Report(FindingCatalogue.Misplaced, child.Span, "This line does not belong under a make line.",
                        "Write role sky: gulls, message \"Keep a good light\", or a change such as change words: \"Ahoy\".");
                    break;
            }
        }

        _makes.Add(new(line.Count.IsCorrected
            ? 0 : line.Count.Value, new(line.File.Text, At(line.File.Span)), roles.ToImmutable(), At(line.Span))
        {
            Message = message,
            MadeBy = makers is null ? [] : NamedMaker.Of(makers, _source),
            For = whom.ToImmutable(),
            Changed = changes.Count == 0 ? null : new(_source,
                [new TitleLine(line.Tokens, "card", line.File), new TitleLine(line.Tokens, "like", line.File), .. changes], []),
        });
    }

    private RoleChoice Filling(RoleLine line)
    {
        var side = PaperSide.Front;
        foreach (var clause in line.Clauses)
        {
            if (clause is SideClause { Words: null, TrueWidth: null, Colours.IsEmpty: true } shown)
            {
                side = shown.IsBack ? PaperSide.Back : PaperSide.Front;
            }
            else
            {
                Idle(clause, "a role in a batch", "A paper takes the side that shows: role sky: gulls, back.");
            }
        }

        foreach (var child in line.Children.Where(c => c is not BadLine))
        {
            Report(FindingCatalogue.Misplaced, child.Span, "A role has no indented lines.", "Remove the indentation.");
        }

        var paper = RolePaper.Of(line.Name.Text, line.Paper?.Text, line.Colours, side, line.AnyOffcut);
        return new(paper with { OffcutOf = line.OffcutOf?.Text }, At(line.Name.Span));
    }

    private void ReadCut(CutLine line)
    {
        PaperSide? side = null;
        var upright = false;
        foreach (var clause in line.Clauses)
        {
            switch (clause)
            {
                case SideClause { Words: null, TrueWidth: null, Colours.IsEmpty: true } shown:
                    side = shown.IsBack ? PaperSide.Back : PaperSide.Front;
                    break;
                case FlagClause { Word: "upright" }:
                    upright = true;
                    break;
                default:
                    Idle(clause, "pieces to cut", "They take front or back, and upright: cut 12 of 4 x 5 1/4 from gulls, front, upright.");
                    break;
            }
        }

        if (line.Count.IsCorrected)
        {
            return;
        }

        if (line.Size is BoxSize { Width: LengthExtent { Value: var width }, Height: LengthExtent { Value: var height } }
            && width > Length.Zero && height > Length.Zero)
        {
            _cuts.Add(new(line.Count.Value, new(width, height), line.Paper.Text, side, upright, At(line.Span)));
        }
        else
        {
            Report(FindingCatalogue.BadSize, line.Size.Span, "Pieces to cut need width x height, both greater than zero.",
                "Write cut 12 of 4 x 5 1/4 from gulls.");
        }
    }

    private bool Once(LineSyntax line, string word)
    {
        if (_said.Add(word))
        {
            return true;
        }

        Report(FindingCatalogue.GivenTwice, line.Span, $"A batch has only one {word} line.", "Remove one of the two lines.");
        return false;
    }

    private void RejectClauses(LineSyntax line)
    {
        foreach (var clause in line.Clauses)
        {
            Idle(clause, "this line", "Remove it.");
        }
    }

    private void Idle(Clause clause, string what, string hint) =>
        Report(FindingCatalogue.IdleClause, clause.Span, $"This clause has no effect on {what}.", hint);

    private Location At(TextSpan span) => new(_source, span);

    private void Report(FindingKind kind, TextSpan span, string message, string hint) => _findings.Add(kind, At(span), message, hint);
}
