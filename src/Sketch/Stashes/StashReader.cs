using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Stashes;

/// <summary>Reads the outline of a stash file.</summary>
internal sealed class StashReader
{
    private readonly SourceText _source;
    private readonly FindingBag _findings;
    private readonly ImmutableArray<StockPaper>.Builder _papers = ImmutableArray.CreateBuilder<StockPaper>();
    // A line looks for its name among all papers before it, which takes time with their square in a list.
    private readonly Dictionary<string, StockPaper> _named = new(StringComparer.OrdinalIgnoreCase);
    private readonly ImmutableArray<Offcut>.Builder _offcuts = ImmutableArray.CreateBuilder<Offcut>();
    private readonly List<TextSpan> _offcutNames = [];
    private readonly ImmutableArray<Supply>.Builder _supplies = ImmutableArray.CreateBuilder<Supply>();
    private readonly List<string> _notes = [];
    private readonly SideReader _sides;
    private readonly SupplyReader _supply;
    private UnitSystem _units;

    private StashReader(SourceText source, IWorld world, FindingBag findings)
    {
        _source = source;
        _findings = findings;
        _sides = new(source, world, findings);
        _supply = new(source, _sides, findings);
    }

    /// <summary>The stash that a file describes; what cannot be read is reported and left out.</summary>
    /// <param name="file">A file that begins with <c>stash</c>.</param>
    /// <param name="world">Reads the pictures of papers.</param>
    /// <param name="findings">Receives what is wrong.</param>
    public static Stash Read(FileSyntax file, IWorld world, FindingBag findings) =>
        new StashReader(file.Source, world, findings).Read(file);

    private Stash Read(FileSyntax file)
    {
        var title = (TitleLine)file.Lines[0];
        foreach (var line in title.Children.Concat(file.Lines.Skip(1)))
        {
            ReadLine(line);
        }

        ReportUnknownOffcuts();
        return new(title.Words.Text, _papers.ToImmutable(), _units, At(title.Span))
        {
            Offcuts = _offcuts.ToImmutable(),
            Supplies = _supplies.ToImmutable(),
            Notes = string.Join('\n', _notes),
        };
    }

    private void ReportUnknownOffcuts()
    {
        foreach (var (offcut, name) in _offcuts.Zip(_offcutNames).Where(o => !_named.ContainsKey(o.First.Paper)))
        {
            var near = Nearest.Find(offcut.Paper, _papers.Select(p => p.Name).Order(StringComparer.Ordinal));
            _findings.Add(FindingCatalogue.OffcutOfUnknownPaper, At(name),
                $"No line says how {offcut.Paper}, the paper of these offcuts, looks.",
                near is null ? $"Add a line such as paper {offcut.Paper}: 12 x 12, 0 sheets, front dots navy." : $"Did you mean {near}?",
                    near);
        }
    }

    private void ReadLine(LineSyntax line)
    {
        foreach (var child in line.Children.Where(c => c is not BadLine))
        {
            Report(FindingCatalogue.Misplaced, child.Span, "Lines of a stash have no indented lines.", "Remove the indentation.");
        }

        ReportTwice(line);
        switch (line)
        {
            case UnitsLine units:
                _units = units.Unit switch
                {
                    Unit.Millimetre => UnitSystem.Millimetres,
                    Unit.Centimetre => UnitSystem.Centimetres,
                    _ =>
                    UnitSystem.Inches
                };
                break;
            case StockLine { Stock: "paper" or "cardstock" } paper:
                ReadPaper(paper);
                break;
            case StockLine { Stock: "offcut" } offcut:
                ReadOffcut(offcut);
                break;
            case StockLine supply:
                if (_supply.Read(supply) is { } read)
                {
                    _supplies.Add(read);
                }

                break;
            case WordsLine { Word: "note" } note:
                _notes.AddRange(note.Words.Select(w => w.Text));
                break;
            case BadLine:
                break;
            default:
                Report(FindingCatalogue.Misplaced, line.Span, "This line does not belong in a stash.",
                    "A stash has lines such as paper gulls: 12 x 12, 3 sheets.");
                break;
        }
    }

    private void ReadPaper(StockLine line)
    {
        if (_named.GetValueOrDefault(line.Name.Text) is { } twin)
        {
            Report(FindingCatalogue.GivenTwice, line.Name.Span,
                $"There is already a paper called {twin.Name} in line {twin.Location.Start.Line}.", "Give one of them another name.");
            return;
        }

        if (SheetSize(line) is not { } size)
        {
            return;
        }

        var kind = line.Stock == "cardstock" ? StockKind.Cardstock : StockKind.Patterned;
        var plain = SideReader.Named(line.Name.Text);
        var paper = new StockPaper(line.Name.Text, kind, size, plain, plain, At(line.Span));
        var counted = false;
        foreach (var clause in line.Clauses)
        {
            switch (clause)
            {
                case QuantityClause { Noun: null or "sheets" } quantity:
                    paper = paper with { Sheets = quantity.Count };
                    counted = true;
                    break;
                case FlagClause { Word: "any sheets" }:
                    counted = true;
                    break;
                case FlagClause { Word: "upright" }:
                    paper = paper with { Upright = true };
                    break;
                case TrimClause trim:
                    paper = paper with { Trim = Add(paper.Trim, trim) };
                    break;
                case PriceClause price:
                    paper = paper with { Price = price.Amount };
                    break;
                case WeightClause weight:
                    paper = paper with { Grammage = Grammage(weight) };
                    break;
                case MeasureClause { Word: "thick" } thick:
                    paper = paper with { Thickness = thick.Amount };
                    break;
                case CollectionClause collection:
                    paper = paper with { Collection = collection.Name.Text };
                    break;
                case SideClause:
                    break;
                default:
                    Idle(clause, "a paper", "A paper takes sheets, trim, upright, front, back, collection, weight, thick and price.");
                    break;
            }
        }

        if (!counted && !line.IsDamaged)
        {
            Report(FindingCatalogue.Expected, line.Span, $"The number of sheets of {paper.Name} is missing.",
                "Add 3 sheets, or any sheets.");
        }

        if (paper.Usable is { Width.Nanometres: <= 0 } or { Height.Nanometres: <= 0 })
        {
            Report(FindingCatalogue.BadSize, line.Span, $"Nothing is left of {paper.Name} once its edges are trimmed.",
                "Make the trim smaller.");
            return;
        }

        var listed = WithSides(paper, line) with
        {
            Thickness = paper.Thickness
            ?? (paper.Grammage is { } g ? PaperWeights.EstimatedThickness(g) : null)
        };
        _papers.Add(listed);
        _named.Add(listed.Name, listed);
    }

    /// <summary>The back of cardstock is the same as its front unless given; a patterned paper with one print has a white back.</summary>
    private StockPaper WithSides(StockPaper paper, StockLine line)
    {
        var sides = line.Clauses.OfType<SideClause>().ToList();
        var front = sides.Find(s => !s.IsBack) is { } f ? _sides.Read(f, paper) : null;
        var back = sides.Find(s => s.IsBack) is { } b ? _sides.Read(b, paper) : null;
        return paper with
        {
            Front = front ?? paper.Front,
            Back = back ?? (paper.Kind == StockKind.Cardstock ? front ?? paper.Back : front is null ? paper.Back : SideReader.Unprinted),
        };
    }

    private static Insets Add(Insets trim, TrimClause clause) => clause.Edge switch
    {
        Edge.Left => trim with { Left = clause.Amount },
        Edge.Right => trim with { Right = clause.Amount },
        Edge.Top => trim with { Top = clause.Amount },
        _ => trim with { Bottom = clause.Amount },
    };

    private double? Grammage(WeightClause weight)
    {
        if (!weight.IsPounds)
        {
            return weight.Amount;
        }

        var grades = string.Join(", ", PaperWeights.Grades.Select(g => g.Grade));
        if (weight.Grade is not { } grade)
        {
            Report(FindingCatalogue.Expected, weight.Span, "Pounds need their grade: 110 lb index is lighter than 80 lb cover.",
                $"Add the grade: {grades}.");
            return null;
        }

        var grammage = PaperWeights.Grammage(weight.Amount, grade);
        if (grammage is null)
        {
            Report(FindingCatalogue.Expected, weight.Span, $"'{grade}' is no grade of paper.", $"Grades are {grades}.");
        }

        return grammage;
    }

    private void ReadOffcut(StockLine line)
    {
        if (SheetSize(line) is not { } size)
        {
            return;
        }

        var count = 1;
        foreach (var clause in line.Clauses)
        {
            if (clause is QuantityClause { Noun: null or "pieces" or "sheets" } quantity)
            {
                count = quantity.Count;
            }
            else
            {
                Idle(clause, "an offcut", "An offcut takes a count: offcut gulls: 6 x 4, 2.");
            }
        }

        _offcuts.Add(new(line.Name.Text, size, count, At(line.Span)));
        _offcutNames.Add(line.Name.Span);
    }

    private Size? SheetSize(StockLine line)
    {
        if (line.Measure is { } measure)
        {
            return StockSizes.Of(measure, NamedSizes.FindSheet, "sheet", _source, _findings);
        }

        Report(FindingCatalogue.BadSize, line.Span, $"The size of {line.Name.Text} is missing.",
            $"Write {StockExamples.Of(line.Stock, line.Name.Text)}.");
        return null;
    }

    private void ReportTwice(LineSyntax line)
    {
        var seen = new HashSet<string>();
        foreach (var clause in line.Clauses.Where(c => ClauseFamilies.Of(c).Any(f => !seen.Add(f))))
        {
            Report(FindingCatalogue.GivenTwice, clause.Span, "This line already gives that.", "Keep one of the two.");
        }
    }

    private void Idle(Clause clause, string what, string hint) =>
        Report(FindingCatalogue.IdleClause, clause.Span, $"This clause has no effect on {what}.", hint);

    private Location At(TextSpan span) => new(_source, span);

    private void Report(FindingKind kind, TextSpan span, string message, string hint, string? replacement = null) =>
        _findings.Add(kind, At(span), message, hint, replacement);
}
