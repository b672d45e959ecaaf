using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Stationery;
using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Binding;

/// <summary>Binds the lines that open a face.</summary>
internal sealed class FaceBinder(SourceText source, PieceBinder pieces, FindingBag findings)
{
    /// <summary>The card with the face that a line opens, or with more pieces on it.</summary>
    public BoundCard Bind(BoundCard card, FaceLine line)
    {
        var kind = FaceOf(line.Face);
        var more = pieces.ReadAll(line.Children, card.Parts);
        var old = card.Faces.FirstOrDefault(f => f.Kind == kind);
        if (old is not null && ReferenceEquals(old.Location.Source, source))
        {
            Report(FindingCatalogue.GivenTwice, line.Span,
                $"The face {line.Face} is opened twice, first in line {old.Location.Start.Line}.", "Put all its pieces under one line.");
        }

        var face = new BoundFace(kind, old is null ? more : old.Pieces.AddRange(more), At(line.Span))
        {
            EnvelopeSize = old?.EnvelopeSize,
            EnvelopeName = old?.EnvelopeName,
            Flap = old?.Flap,
            ByHand = old?.ByHand ?? false,
            Paint = old?.Paint,
        };
        var isEnvelope = kind is FaceKind.Envelope or FaceKind.EnvelopeBack;
        if (line.Measure is { } measure)
        {
            if (isEnvelope)
            {
                var (size, name) = new MeasureBinder(source, findings).Bind(measure, NamedSizes.FindEnvelope, "envelope");
                // Envelopes are landscape, whichever way their size is written.
                face = face with { EnvelopeSize = size is { } s && s.Width < s.Height ? s.Turned() : size, EnvelopeName = name };
            }
            else
            {
                Report(FindingCatalogue.BadSize, measure.Span, "A face of the card is as large as its base.", "Remove the size.");
            }
        }

        foreach (var clause in line.Clauses)
        {
            face = clause switch
            {
                MeasureClause { Word: "flap" } flap when isEnvelope => face with { Flap = flap.Amount },
                OfClause { Paints: [var paint] } when isEnvelope => face with { Paint = paint },
                FlagClause { Word: "by hand" } when isEnvelope => face with { ByHand = true },
                _ => Unused(face, clause, isEnvelope),
            };
        }

        return card with { Faces = [.. card.Faces.Where(f => f.Kind != kind), face] };
    }

    private BoundFace Unused(BoundFace unchanged, Clause clause, bool isEnvelope)
    {
        pieces.ReportUnused(clause, isEnvelope ? "an envelope" : "a face",
            isEnvelope ? "An envelope takes flap, of and by hand." : "Only an envelope takes clauses; write of after base.");
        return unchanged;
    }

    private static FaceKind FaceOf(string word) => word switch
    {
        "front" => FaceKind.Front,
        "inside" => FaceKind.Inside,
        "inside-left" => FaceKind.InsideLeft,
        "inside-top" => FaceKind.InsideTop,
        "back" => FaceKind.Back,
        "envelope" => FaceKind.Envelope,
        _ => FaceKind.EnvelopeBack,
    };

    private Location At(TextSpan span) => new(source, span);

    private void Report(FindingKind kind, TextSpan span, string message, string hint) => findings.Add(kind, At(span), message, hint);
}
