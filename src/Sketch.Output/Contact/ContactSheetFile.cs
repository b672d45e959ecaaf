using System.Text;
using Sketch.Output.Rendering;
using Sketch.Variants;

namespace Sketch.Output.Contact;

/// <summary>Writes contact sheets as SVG, PNG and PDF, row by row.</summary>
/// <param name="sheet">The sheet.</param>
/// <param name="progress">Receives the number of finished rows after each row.</param>
/// <param name="cancellation">Stops the writing between rows.</param>
public sealed class ContactSheetFile(ContactSheet sheet, Action<int> progress, CancellationToken cancellation)
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>The most pixels per inch of pictured papers in a sheet for printing.</summary>
    private const double PrintDotsPerInch = 200;

    /// <summary>Writes one SVG.</summary>
    /// <param name="output">Receives it.</param>
    /// <param name="mark">A comment that names its maker.</param>
    public void WriteSvg(Stream output, string mark)
    {
        using var text = new StreamWriter(output, new UTF8Encoding(false), leaveOpen: true);
        text.Write(sheet.Start(sheet.Height));
        text.Write(mark);
        text.Write(sheet.HeadingStrip());
        var done = 0;
        InOrder.Run(sheet.Rows, row => sheet.RowStrip(row, ContactSheet.Heading + row * sheet.RowHeight, PrintDotsPerInch), strip =>
        {
            text.Write(strip);
            progress(++done);
        }, cancellation);
        text.Write(ContactSheet.End);
    }

    /// <summary>Writes one PNG of any length; only some rows of it are held at a time.</summary>
    /// <param name="output">Receives it.</param>
    /// <param name="dpi">Pixels per inch of the sheet.</param>
    public void WritePng(Stream output, int dpi)
    {
        var width = Pixels(sheet.Width);
        var (heading, row) = (Pixels(ContactSheet.Heading), Pixels(sheet.RowHeight));
        using var png = new PngStream(output, width, heading + sheet.Rows * row, dpi);
        png.Write(SvgRenderer.Pixels(Drawing(ContactSheet.Heading, sheet.HeadingStrip()), width, heading));
        var done = 0;
        InOrder.Run(sheet.Rows, i => SvgRenderer.Pixels(Drawing(sheet.RowHeight, sheet.RowStrip(i, 0, dpi)), width, row), pixels =>
        {
            png.Write(pixels);
            progress(++done);
        }, cancellation);
        png.End();

        int Pixels(double millimetres) => (int)Math.Round(millimetres / MillimetresPerInch * dpi);
    }

    /// <summary>Writes a PDF of as many pages as needed, letter or, for a metric card, A4; no row is split.</summary>
    public void WritePdf(Stream output)
    {
        var page = sheet.Width > 212 ? 11 * MillimetresPerInch : 297;
        var first = Math.Max(1, (int)((page - ContactSheet.Heading) / sheet.RowHeight));
        var later = Math.Max(1, (int)((page - ContactSheet.Margin) / sheet.RowHeight));
        var pages = new List<string>();
        for (int row = 0; row < sheet.Rows || row == 0;)
        {
            var strips = new StringBuilder(row == 0 ? sheet.HeadingStrip() : "");
            var top = row == 0 ? ContactSheet.Heading : ContactSheet.Margin;
            for (var end = Math.Min(sheet.Rows, row + (row == 0 ? first : later)); row < end; row++, top += sheet.RowHeight)
            {
                cancellation.ThrowIfCancellationRequested();
                strips.Append(sheet.RowStrip(row, top, PrintDotsPerInch));
                progress(row + 1);
            }

            pages.Add(Drawing(Math.Max(page, top), strips.ToString()));
        }

        SvgRenderer.WritePdf(pages, sheet.Title, output);
    }

    private string Drawing(double height, string strips) => sheet.Start(height) + strips + ContactSheet.End;
}
