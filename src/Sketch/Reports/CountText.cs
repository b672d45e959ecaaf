using System.Globalization;
using Sketch.Counts;

namespace Sketch.Reports;

/// <summary>A count in plain text: sentences, a row for each card, and a row for each recipient.</summary>
public static class CountText
{
    private const int Widest = 100;

    /// <summary>Writes the count.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="count">The count.</param>
    /// <param name="today">The present day.</param>
    public static void Write(TextWriter output, BatchCount count, DateOnly today)
    {
        output.Write(Printable.Line(count.Batch.Title) + "\n");
        foreach (var sentence in CountSummary.Of(count, today))
        {
            output.Write(Printable.Line(sentence) + "\n");
        }

        if (!count.Designs.IsEmpty)
        {
            output.Write("\n");
            var table = new TextTable(
                [new("Card", 30), new("Make"), .. CountStages.OfWork.Select(s => new TextColumn(s.Title())), new("Left")]);
            foreach (var design in count.Designs)
            {
                table.AddRow([design.Card, Text(design.Make), .. CountStages.OfWork.Select(s => Text(design.Of(s))), Text(design.Left)]);
            }

            table.Write(output, Widest);
        }

        if (!count.Recipients.IsEmpty)
        {
            output.Write("\n");
            var table = new TextTable(new("For", 30), new("Cards"), new("Given"), new("Left"));
            foreach (var recipient in count.Recipients)
            {
                table.AddRow(recipient.Name, Text(recipient.Cards), Text(recipient.Given), Text(recipient.Left));
            }

            table.Write(output, Widest);
        }
    }

    private static string Text(long number) => number.ToString(CultureInfo.InvariantCulture);
}
