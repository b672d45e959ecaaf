using Sketch.Diagnostics;
using Sketch.Edits;
using Sketch.Kinds;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Starts;

/// <summary>
/// Writes the text of a new card from a layout: its title, size and fold, and each length as that size asks for. Lengths along a
/// direction grow as the card does in that direction, those of both as the smaller; borders, what shows and the thickness of lines stay.
/// All are rounded to marks of a ruler or to millimetres.
/// </summary>
public sealed class BegunCard
{
    private static readonly Length Large = Length.Inch(2);
    private static readonly Length HalfMillimetre = Length.Millimetre(0.5m);
    private static readonly Length FewMillimetres = Length.Millimetre(5);

    private readonly SourceText _text;
    private readonly Size _from;
    private readonly CardSize _to;
    private readonly LengthFormat _format;
    private readonly List<TextEdit> _edits = [];

    private BegunCard(StartingLayout layout, CardSize size)
    {
        (_text, _from, _to) = (layout.Text, layout.Sizes[0].Closed, size);
        _format = new(size.IsMetric);
    }

    /// <summary>The text of a new card.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="title">The title of the card.</param>
    /// <param name="size">One of the sizes of the layout.</param>
    /// <param name="fold">One of the folds of the layout.</param>
    public static string Write(StartingLayout layout, string title, CardSize size, Fold fold)
    {
        var writer = new BegunCard(layout, size);
        var file = Parser.Parse(writer._text, new FindingBag());
        foreach (var line in file.Lines)
        {
            writer.Fit(line, title, fold);
        }

        return TextEdit.Apply(writer._text.Content, writer._edits.OrderBy(e => e.Span.Start));
    }

    private void Fit(LineSyntax line, string title, Fold fold)
    {
        switch (line)
        {
            case TitleLine named:
                _edits.Add(new(named.Words.Span, StartingText.Quoted(title)));
                break;
            case BaseLine { Measure: not null } written:
                var paper = written.Clauses.OfType<OfClause>().First().Span;
                var units = _to.IsMetric ? "units mm\n" : "";
                _edits.Add(new(new(written.Span.Start, paper.Start),
                    $"{units}base {_to.Written}, fold {fold.ToString().ToLowerInvariant()}, "));
                break;
            case PieceLine piece:
                Fit(piece);
                break;
        }

        foreach (var child in line.Children)
        {
            Fit(child, title, fold);
        }
    }

    private void Fit(PieceLine piece)
    {
        var traits = piece.Head.Kind.Traits;
        switch (piece.Head.Size)
        {
            case BoxSize box:
                Fit(box.Width, Axis.Across);
                Fit(box.Height, Axis.Down);
                break;
            case SingleSize single:
                Write(piece, single.Span, traits.IsSizedByThickness ? Thin(single.Value) : Fitted(single.Value, null));
                break;
            case AddedSize added:
                Write(piece, added.Span, Thin(added.Across));
                break;
        }

        foreach (var clause in piece.Clauses)
        {
            if (Fitted(clause) is { } length)
            {
                Write(piece, clause.Span, length);
            }
        }
    }

    private void Fit(ExtentSyntax extent, Axis axis)
    {
        if (extent is LengthExtent length)
        {
            Write(extent.Span, Fitted(length.Value, axis));
        }
    }

    /// <summary>The length of a clause in the new size; null for one without a length that follows the size.</summary>
    private Length? Fitted(Clause clause) => clause switch
    {
        EdgeClause edge => Fitted(edge.Distance, edge.Edge.Axis()),
        CornerClause corner => Fitted(corner.Distance, null),
        ShiftClause shift => Fitted(shift.Distance, shift.Direction.Axis()),
        MeasureClause { Word: "letters" } letters => Fitted(letters.Amount, null),
        MeasureClause measure => Thin(measure.Amount),
        ShowingClause showing => Thin(showing.Amount),
        BorderClause border => Thin(border.Amount),
        GapClause gap => Thin(gap.Across),
        BesideClause beside => Thin(beside.Distance),
        _ => null,
    };

    /// <summary>Writes a length in place of the only one within a span.</summary>
    private void Write(PieceLine piece, TextSpan within, Length length)
    {
        if (piece.Tokens.Tokens.FirstOrDefault(t => t.Kind == TokenKind.Number && t.Span.Start >= within.Start && t.Span.End <= within.End)
            is { } number)
        {
            Write(number.Span, length);
        }
    }

    private void Write(TextSpan span, Length length)
    {
        var written = _format.Written(length);
        if (_text.Content[span.Start..span.End] != written)
        {
            _edits.Add(new(span, written));
        }
    }

    /// <summary>A length along a direction, or in both if that is null.</summary>
    private Length Fitted(Length length, Axis? axis)
    {
        var across = length.Scale(_to.Closed.Width.Nanometres, _from.Width.Nanometres);
        var down = length.Scale(_to.Closed.Height.Nanometres, _from.Height.Nanometres);
        var fitted = axis switch
        {
            Axis.Across => across,
            Axis.Down => down,
            _ => across.Abs() < down.Abs() ? across : down,
        };
        return _to.Closed == _from ? length : Rounded(fitted);
    }

    /// <summary>A length that does not follow the size of the card: in millimetres, a round number of them.</summary>
    private Length Thin(Length length) => _to.IsMetric ? Rounded(length) : length;

    private Length Rounded(Length length)
    {
        var step = !_to.IsMetric ? (length.Abs() < Large ? _format.Step : _format.Step * 2)
            : length.Abs() < FewMillimetres ? HalfMillimetre : _format.Step;
        var half = new Length(Math.Sign(length.Nanometres) * step.Nanometres / 2);
        var steps = (length.Nanometres + half.Nanometres) / step.Nanometres;
        return new(steps * step.Nanometres);
    }
}
