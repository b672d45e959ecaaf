using System.Collections.Immutable;
using System.Text.Json;
using Sketch.Batches;
using Sketch.Cutting.Model;
using Sketch.Diagnostics;
using Sketch.Panels;
using Sketch.Planning.Advice;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Demand;
using Sketch.Planning.Plans;
using Sketch.Planning.Supplies;
using Sketch.Reports;
using Sketch.Units;

namespace Sketch.Planning.Reports;

/// <summary>A plan as JSON.</summary>
public static class PlanJson
{
    /// <summary>
    /// Writes the plan's object. A text that is no batch has null for the batch and its numbers; without a plan there are no papers.
    /// </summary>
    /// <param name="json">Where to.</param>
    /// <param name="batch">The batch, or null.</param>
    /// <param name="plan">Its plan, or null.</param>
    /// <param name="findings">All findings.</param>
    public static void Write(Utf8JsonWriter json, Batch? batch, BatchPlan? plan, ImmutableArray<Finding> findings)
    {
        json.WriteStartObject();
        json.WriteString("batch", batch?.Title);
        WriteNumber(json, "recipients", batch?.Recipients);
        WriteNumber(json, "needed", batch?.Needed);
        json.WriteNumber("cards", plan?.Cards ?? 0);
        json.WriteStartArray("papers");
        foreach (var paper in plan?.Papers ?? [])
        {
            WritePaper(json, plan!, paper);
        }

        json.WriteEndArray();
        json.WriteStartArray("supplies");
        foreach (var need in plan?.Supplies ?? [])
        {
            WriteSupply(json, need, plan!.Files.Batch.Units != UnitSystem.Inches);
        }

        json.WriteEndArray();
        WriteAdvice(json, plan);
        FindingsJson.Write(json, findings);
        json.WriteEndObject();
    }

    private static void WriteAdvice(Utf8JsonWriter json, BatchPlan? plan)
    {
        json.WriteStartArray("makeable");
        foreach (var cards in plan?.Advice.Makeable ?? [])
        {
            json.WriteStartObject();
            json.WriteString("card", cards.Design.Card.Title);
            json.WriteNumber("line", cards.Design.Order.Location.Start.Line);
            json.WriteNumber("count", cards.Count);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("suggestions");
        foreach (var suggestion in plan?.Advice.Suggestions ?? [])
        {
            json.WriteStartObject();
            json.WriteString("paper", suggestion.Paper);
            json.WriteString("text", suggestion.Text);
            json.WriteNumber("before", suggestion.Before);
            json.WriteNumber("after", suggestion.After);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("costs");
        foreach (var cost in plan is null ? [] : CardCost.Of(plan).Costs)
        {
            json.WriteStartObject();
            json.WriteString("card", cost.Design.Card.Title);
            json.WriteNumber("amount", Math.Round(cost.Amount, 4));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePaper(Utf8JsonWriter json, BatchPlan plan, PaperPlan paper)
    {
        json.WriteStartObject();
        json.WriteString("paper", paper.Order.Paper);
        json.WriteNumber("sheets", paper.Plan.Sheets);
        json.WriteNumber("lowerBound", paper.Plan.LowerBound);
        json.WriteBoolean("proved", paper.Plan.IsProved);
        WriteNumber(json, "onHand", paper.Order.Sheet.OnHand);
        json.WriteNumber("short", paper.Short);
        json.WriteStartArray("layouts");
        foreach (var layout in paper.Plan.Layouts)
        {
            json.WriteStartObject();
            json.WriteSize("stock", layout.Stock);
            json.WriteBoolean("offcut", layout.IsOffcut);
            json.WriteNumber("times", layout.Times);
            json.WriteStartArray("pieces");
            foreach (var piece in layout.Pieces)
            {
                WritePiece(json, plan.Pieces[piece.Id], piece);
            }

            json.WriteEndArray();
            json.WriteStartArray("cuts");
            foreach (var cut in CutSequence.InOrder(layout))
            {
                json.WriteStartObject();
                json.WriteLength("x1", cut.From.Left);
                json.WriteLength("y1", cut.From.Top);
                json.WriteLength("x2", cut.To.Left);
                json.WriteLength("y2", cut.To.Top);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("leftovers");
            foreach (var leftover in layout.Leftovers)
            {
                json.WriteStartObject();
                WriteRect(json, leftover);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WritePiece(Utf8JsonWriter json, PieceOrder order, PlacedPiece piece)
    {
        json.WriteStartObject();
        json.WriteString("name", order.Name);
        json.WriteString("card", order.Design?.Card.Title);
        json.WriteString("path", order.Path);
        json.WriteString("file", order.Location.Source.Path);
        json.WriteNumber("line", order.Location.Start.Line);
        json.WriteString("side", order.Side switch { PaperSide.Front => "front", PaperSide.Back => "back", _ => null });
        WriteRect(json, piece.Place);
        json.WriteBoolean("turned", piece.Turned);
        json.WriteNumber("parts", order.Parts);
        json.WriteEndObject();
    }

    private static void WriteRect(Utf8JsonWriter json, Rect rect)
    {
        json.WriteLength("left", rect.Left);
        json.WriteLength("top", rect.Top);
        json.WriteLength("width", rect.Width);
        json.WriteLength("height", rect.Height);
    }

    private static void WriteSupply(Utf8JsonWriter json, SupplyNeed need, bool metric)
    {
        json.WriteStartObject();
        json.WriteString("name", need.Name);
        json.WriteString("kind", need.Kind.ToString().ToLowerInvariant());
        json.WriteLength("measure", need.Measure);
        json.WriteString("unit", !need.ByLength ? "pieces" : metric ? "mm" : "in");
        WriteAmount("needed", need.Needed);
        WriteAmount("onHand", need.OnHand);
        WriteAmount("short", need.Short);
        json.WriteBoolean("estimate", need.IsEstimate);
        if (need.Kind == NeedKind.Foam)
        {
            json.WriteLength("strips", need.Strips);
            json.WriteNumber("areaInSquareMillimetres", Math.Round(need.StripArea, 2));
        }

        json.WriteEndObject();

        void WriteAmount(string name, long? amount)
        {
            if (amount is not { } known)
            {
                json.WriteNull(name);
            }
            else if (need.ByLength)
            {
                json.WriteNumber(name, Math.Round(
                    (decimal)known / (metric ? Length.NanometresPerMillimetre : Length.NanometresPerInch), 6));
            }
            else
            {
                json.WriteNumber(name, known);
            }
        }
    }

    private static void WriteNumber(Utf8JsonWriter json, string name, int? number)
    {
        if (number is { } known)
        {
            json.WriteNumber(name, known);
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
