using Sketch.Cutting.Model;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Plans;
using Sketch.Units;

namespace Sketch.Planning.Advice;

/// <summary>Reports a sheet that is cut for one small piece alone, and what would save it.</summary>
/// <param name="plan">The plan.</param>
/// <param name="findings">Where to report.</param>
internal sealed class LonePieces(BatchPlan plan, FindingBag findings)
{
    // A larger piece needs a sheet in any case.
    private const double LargestShare = 0.25;

    private readonly LengthFormat _lengths = plan.Files.Batch.Units.Format();

    /// <summary>Reports them.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="findings">Where to report.</param>
    /// <param name="work">What may be done to find what saves the sheets.</param>
    public static void Report(BatchPlan plan, FindingBag findings, WorkBudget work)
    {
        var lone = plan.Papers.Where(p => p is { Short: 0, Plan.Sheets: > 1 })
            .Select(p => (Paper: p, Sheet: p.Plan.Layouts.FirstOrDefault(IsNearlyEmpty))).Where(p => p.Sheet is not null).ToList();
        for (var i = 0; i < lone.Count; i++)
        {
            var own = work.Part(1.0 / (lone.Count - i));
            new LonePieces(plan, findings).Report(lone[i].Paper, lone[i].Sheet!.Pieces[0], own);
        }
    }

    private static bool IsNearlyEmpty(SheetLayout layout) => layout is { IsOffcut: false, Times: 1, Pieces: [var piece] }
        && Area(piece.Place.Size) < LargestShare * Area(layout.Stock);

    private static double Area(Size size) => size.Width.Millimetres * size.Height.Millimetres;

    private void Report(PaperPlan paper, PlacedPiece placed, WorkBudget work)
    {
        var piece = plan.Pieces[placed.Id];
        findings.Add(FindingCatalogue.LonePiece, piece.Location,
            $"One of {paper.Plan.Sheets} sheets of {paper.Order.Paper} is cut for a single piece: "
                + $"{(piece.Design is null ? "a loose piece" : OrderFindings.Called(piece))}, "
                + $"{_lengths.Text(piece.Size)}.",
            Suggestions.ForPaper(plan, paper, work).FirstOrDefault() is { } saves ? saves.Text
            : piece.Role is { } role && FitsElsewhere(paper, placed)
                ? $"A leftover of another paper is large enough: write role {role}: any offcut under {piece.Design!.Card.Title} in line "
                    + $"{piece.Design.Order.Location.Start.Line}."
            : "The rest of that sheet is a leftover for next time.");
    }

    private bool FitsElsewhere(PaperPlan own, PlacedPiece piece) => plan.Papers.Where(p => p != own).SelectMany(p => p.Plan.Layouts)
        .SelectMany(l => l.Leftovers).Any(l => Holds(l.Size, piece.Place.Size) || Holds(l.Size, piece.Place.Size.Turned()));

    private static bool Holds(Size room, Size piece) => piece.Width <= room.Width && piece.Height <= room.Height;
}
