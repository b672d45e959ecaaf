using System.Collections.Immutable;
using Sketch.Drawing;
using Sketch.Panels;
using Sketch.Planning.CutSteps;
using Sketch.Planning.Plans;
using Sketch.Planning.Summary;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;
using Sketch.World;

namespace Sketch.Planning.Diagrams;

/// <summary>A plan as pages to print: letter for a batch in inches, A4 for a metric one.</summary>
public sealed class PlanPages
{
    private const double StepsWidth = 92;
    private const double SmallestDrawing = 120;
    private const double LargestScale = 1;

    private readonly BatchPlan _plan;
    private readonly Lettering _lettering;
    private readonly LengthFormat _lengths;
    private readonly bool _inInches;

    /// <summary>Pages of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="world">Shapes the words.</param>
    public PlanPages(BatchPlan plan, IWorld world)
    {
        (_plan, _lettering) = (plan, new(world));
        _inInches = plan.Files.Batch.Units == UnitSystem.Inches;
        _lengths = plan.Files.Batch.Units.Format();
        var papers = PaperWork.Of(plan);
        Work = [.. papers.SelectMany(p => p.Stacks)];
        Content = PlanSummary.Of(plan, papers, _lengths);
    }

    /// <summary>All stacks of sheets, paper by paper.</summary>
    public ImmutableArray<SheetWork> Work { get; }

    /// <summary>What the summary says.</summary>
    public PlanSummary Content { get; }

    /// <summary>The whole workbook: the summary, the sheets to cut, and how the cards of each design are put together.</summary>
    public IReadOnlyList<DrawnPage> Workbook() => [.. Summary(), .. Sheets(), .. Designs()];

    /// <summary>The summary: one page, or as many as needed.</summary>
    public IReadOnlyList<DrawnPage> Summary()
    {
        var flow = Flow(Content.Title);
        flow.Heading(Content.Title, isTitle: true);
        foreach (var section in Content.Sections)
        {
            flow.Section(section);
        }

        return flow.Finish();
    }

    /// <summary>All stacks of sheets, two to a page where they are simple.</summary>
    public IReadOnlyList<DrawnPage> Sheets()
    {
        var flow = Flow(_plan.Files.Batch.Title);
        if (Work.IsEmpty)
        {
            return [];
        }

        flow.Heading("Cut the sheets");
        flow.Paragraph(CutNotes);
        flow.Gap();
        foreach (var work in Work)
        {
            if (SheetBlock.Of(work, _lengths, _lettering, flow, UprightNote(work)) is { } block)
            {
                flow.Drawing(block.Height, block.Draw);
            }
            else
            {
                flow.EndPage();
                Write(flow, work);
                flow.EndPage();
            }
        }

        return flow.Finish();
    }

    /// <summary>One stack of sheets on a page of its own: the diagram; the steps and what the pieces are for are in the workbook.</summary>
    public DrawnPage Sheet(SheetWork work)
    {
        var flow = Flow(work.Heading(_lengths));
        flow.Heading(work.Heading(_lengths));
        flow.Paragraph($"{Notes(work)} The workbook lists the steps and the pieces.");
        flow.Gap();
        var (stock, scale) = (work.Layout.Stock, ScaleFor(work.Layout.Stock, flow.Width, flow.Left));
        flow.Drawing(stock.Height.Millimetres * scale, svg => SheetDrawing.Draw(work, _lengths, _lettering, svg, scale));
        return flow.Finish()[0];
    }

    private void Write(PageFlow flow, SheetWork work)
    {
        flow.Heading(work.Heading(_lengths));
        flow.Paragraph(Notes(work));
        flow.Gap();
        var steps = work.Steps.SelectMany(s => flow.Wrapped($"{s.Number}. {s.ShortText(_lengths)}", StepsWidth)).ToList();
        var legend = work.Pieces.SelectMany(p => flow.Wrapped($"{p.Key} {p.Text(_lengths)}", flow.Width - StepsWidth - PageFlow.ColumnGap))
            .ToList();
        var room = flow.Left - PageFlow.HeightOf(Math.Max(steps.Count, legend.Count) + 1);
        var isOnOnePage = room >= Math.Min(
            SmallestDrawing, flow.Width * work.Layout.Stock.Height.Millimetres / work.Layout.Stock.Width.Millimetres);
        var scale = ScaleFor(work.Layout.Stock, flow.Width, isOnOnePage ? room : flow.Left);
        flow.Drawing(work.Layout.Stock.Height.Millimetres * scale, svg => SheetDrawing.Draw(work, _lengths, _lettering, svg, scale));
        flow.Gap();
        if (!isOnOnePage)
        {
            flow.EndPage();
            flow.Heading(work.Heading(_lengths));
        }

        flow.Columns(work.Heading(_lengths), steps, legend, StepsWidth);
    }

    /// <summary>The pages of all designs: how their cards are put together.</summary>
    public IReadOnlyList<DrawnPage> Designs()
    {
        var flow = Flow(_plan.Files.Batch.Title);
        foreach (var design in DesignInstructions.Of(_plan.Files))
        {
            new DesignPages(design, _lettering, new()).Write(flow);
        }

        Recipients(flow);
        return flow.Finish();
    }

    private void Recipients(PageFlow flow)
    {
        var recipients = _plan.Files.Batch.For;
        if (recipients.IsEmpty)
        {
            return;
        }

        var boxes = new TickBoxes([.. recipients.Select(r => $"{r.Whom}: {Counted.Of(r.Cards, "card")}")], 1, _lettering);
        flow.Together(PageFlow.HeightOf(4) + boxes.HeightFor(flow.Width));
        flow.Section(new("Tick what is given", []));
        flow.Gap();
        flow.Drawing(boxes.HeightFor(flow.Width), svg => boxes.Draw(svg, flow.Width));
    }

    /// <summary>The messages at full size, as strips to cut and guides to write by; no page where no message has a place.</summary>
    public IReadOnlyList<DrawnPage> Messages()
    {
        var flow = Flow(_plan.Files.Batch.Title);
        new MessagePages(_plan.Files, _lengths).Write(flow);
        return flow.Finish();
    }

    /// <summary>The pictures of a design alone: the finished card, and its layers parted and numbered.</summary>
    /// <param name="design">The design.</param>
    /// <param name="prefix">Distinguishes the ids of this picture from those of others in the same document; begins with a letter.</param>
    public string Picture(DesignInstructions design, string prefix) => new DesignPages(design, _lettering, new(prefix)).Picture(_inInches);

    /// <summary>The diagram of a stack alone, within a width and height in millimetres.</summary>
    public string Diagram(SheetWork work, double width, double height)
    {
        var scale = ScaleFor(work.Layout.Stock, width, height);
        Length Drawn(Length length) => Length.NearestMillimetres(length.Millimetres * scale);
        var svg = SvgWriter.Sheet(new(Drawn(work.Layout.Stock.Width), Drawn(work.Layout.Stock.Height)), false, work.Heading(_lengths));
        SheetDrawing.Draw(work, _lengths, _lettering, svg, scale);
        return svg.Close().ToString();
    }

    private string CutNotes => $"Front side up, cut in the order of the numbers. {CutStep.Instruction}"
        + $"{(_lengths.Metric ? ", in millimetres" : "")}.";

    private string Notes(SheetWork work) => string.Join(' ', [$"{_plan.Files.Batch.Title}.", CutNotes, UprightNote(work)]).TrimEnd();

    private string UprightNote(SheetWork work) => _plan.Papers.First(p => p.Order.Paper == work.Paper).Order.Stock is { Upright: true }
        ? "Its print stands upright: lay it with the top of the print up." : "";

    private PageFlow Flow(string title) =>
        new(NamedSizes.FindSheet(null, _inInches ? "letter" : "A4").Found!.Size, _inInches, title, _lettering);

    private static double ScaleFor(Size stock, double width, double height) =>
        Math.Min(LargestScale, Math.Min(width / stock.Width.Millimetres, height / stock.Height.Millimetres));
}
