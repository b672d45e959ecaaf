using Sketch.Diagnostics;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Binding;

/// <summary>Binds the base line.</summary>
internal sealed class BaseBinder(SourceText source, PieceBinder pieces, FindingBag findings)
{
    /// <summary>The base with what a line changes of it.</summary>
    /// <param name="old">The base of the card that this one is like, or null.</param>
    /// <param name="line">The line.</param>
    public BoundBase Bind(BoundBase? old, BaseLine line)
    {
        pieces.RejectChildren(line);
        if (old is not null && ReferenceEquals(old.Location.Source, source))
        {
            Report(FindingCatalogue.GivenTwice, line.Span, $"The base is given twice, first in line {old.Location.Start.Line}.",
                "Keep one base line.");
        }

        var next = (old ?? new(null, null, false, null, null, At(line.Span))) with { Location = At(line.Span) };
        if (line.Measure is { } measure)
        {
            var written = new MeasureBinder(source, findings).Bind(measure, NamedSizes.FindCard, "card");
            next = next with
            {
                Written = written.Size,
                SizeName = written.Name,
                Landscape = next.Landscape && measure.Size is null
            };
        }
        else if (old?.Written is null && !line.IsDamaged)
        {
            Report(FindingCatalogue.Expected, line.Span, "The base has no size.", "Write base A2, fold left, of white.");
        }

        foreach (var clause in line.Clauses)
        {
            next = clause switch
            {
                FlagClause { Word: "landscape" } => next with { Landscape = true },
                FlagClause { Word: "upright" } => next with { Landscape = false },
                FoldClause fold => next with { Fold = fold.Fold },
                OfClause { Paints: [var paint] } => next with { Paint = paint },
                _ => Unused(next, clause),
            };
        }

        return next;
    }

    private BoundBase Unused(BoundBase unchanged, Clause clause)
    {
        pieces.ReportUnused(clause, "the base", "A base takes fold left, top, gate or z, landscape and of.");
        return unchanged;
    }

    private Location At(TextSpan span) => new(source, span);

    private void Report(FindingKind kind, TextSpan span, string message, string hint) => findings.Add(kind, At(span), message, hint);
}
