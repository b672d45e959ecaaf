using System.Globalization;
using System.Text;
using Sketch.Drawing;
using Sketch.Output.Files;
using Sketch.Output.Rendering;
using Sketch.Planning.Diagrams;
using Sketch.Planning.Plans;
using Sketch.Planning.Remainder;
using Sketch.Planning.Reports;
using Sketch.World;

namespace Sketch.Cli.Verbs;

/// <summary>
/// Writes a plan into a folder: a workbook to read and one to print, a diagram of each stack of sheets, the cut list, and the stash that is
/// left.
/// </summary>
/// <param name="plan">The plan.</param>
/// <param name="stem">The beginning of the names of the files.</param>
/// <param name="folder">The folder; created if needed.</param>
/// <param name="stop">Ends the writing before the next file or page.</param>
internal sealed class PlanFiles(BatchPlan plan, string stem, string folder, CancellationToken stop)
{
    // More files than that help nobody, and take longer to write than all the rest.
    private const int MostDiagrams = 100;

    private static readonly byte[] SvgMark = "<!-- Drawn by Sketch -->"u8.ToArray();

    private readonly HashSet<string> _read = [.. plan.Files.Files.Select(f => Path.GetFullPath(f.Path))];
    private readonly List<string> _written = [];

    /// <summary>Why the diagrams have no files of their own, as a sentence; null where they have.</summary>
    public string? Note { get; private set; }

    /// <summary>Writes all files and returns their paths.</summary>
    /// <exception cref="OperationCanceledException">It is stopped.</exception>
    /// <exception cref="FileWriteException">The folder or the disk does not allow it, or a file not made by Sketch is there.</exception>
    public IReadOnlyList<string> Write(IWorld world)
    {
        stop.ThrowIfCancellationRequested();
        var pages = new PlanPages(plan, world);
        Write($"{stem}.html", Encoding.UTF8.GetBytes(PlanHtml.Write(plan, pages)));
        Note = pages.Work.Length <= MostDiagrams ? null
            : $"The {pages.Work.Length} diagrams are in the workbook only: files of their own are written for at most {MostDiagrams}.";
        for (var i = 0; i < pages.Work.Length && Note is null; i++)
        {
            stop.ThrowIfCancellationRequested();
            Write(DiagramName(i, pages.Work[i].Paper), Marked(pages.Sheet(pages.Work[i]).Svg));
        }

        RemoveOlderDiagrams();
        WritePages($"{stem}.pdf", pages.Workbook());
        WriteMessages(pages.Messages());
        Write($"{stem}-cuts.csv", Encoding.UTF8.GetBytes(CutListCsv.Write(plan, pages)));
        Write("left.stash", Encoding.UTF8.GetBytes(StashAfter.Write(plan)));
        return _written;
    }

    private string DiagramName(int index, string paper)
    {
        var safe = string.Concat(paper.Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' ? c : '-'));
        var number = (index + 1).ToString("00", CultureInfo.InvariantCulture);
        return $"{stem}-sheet-{number}-{safe}.svg";
    }

    private static byte[] Marked(string svg) => Encoding.UTF8.GetBytes(svg.Insert(svg.IndexOf('>') + 1, Encoding.UTF8.GetString(SvgMark)));

    private void WriteMessages(IReadOnlyList<DrawnPage> pages)
    {
        var name = $"{stem}-messages.pdf";
        if (pages.Count > 0)
        {
            WritePages(name, pages);
        }
        else
        {
            // Messages of an earlier plan could be printed by mistake.
            PictureFile.Remove(Path.Combine(folder, name));
        }
    }

    private void WritePages(string name, IReadOnlyList<DrawnPage> pages)
    {
        using var content = new MemoryStream();
        if (SvgRenderer.WritePdf(pages, plan.Files.Batch.Title, content, stop) is null)
        {
            Write(name, content.ToArray());
        }
    }

    private void Write(string name, byte[] content)
    {
        stop.ThrowIfCancellationRequested();
        var path = Path.Combine(folder, name);
        if (_read.Contains(Path.GetFullPath(path)) || !PictureFile.MayReplace(path))
        {
            throw new FileWriteException(
                path, $"\"{path}\" exists and was not written by Sketch: move it, or plan into another folder.",
                    new IOException("foreign file"));
        }

        SafeFile.Write(path, file => file.Write(content));
        _written.Add(path);
    }

    // Extra diagrams of an earlier plan with more sheets could be cut by mistake.
    private void RemoveOlderDiagrams()
    {
        foreach (var path in Directory.GetFiles(folder, $"{stem}-sheet-*.svg").Except(_written))
        {
            PictureFile.Remove(path);
        }
    }
}
