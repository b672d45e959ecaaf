using System.Text;
using Sketch.Cli.Commands;
using Sketch.Diagnostics;
using Sketch.Drawing;
using Sketch.Output.Files;
using Sketch.Output.Rendering;

namespace Sketch.Cli.Verbs;

/// <summary>Pictures on disk: each is complete or absent, and no file that Sketch did not make is replaced.</summary>
internal static class PictureFile
{
    /// <summary>The file formats of pictures, by extension.</summary>
    public static readonly string[] Forms = ["svg", "png", "pdf"];

    /// <summary>The comment in SVG and HTML that marks them as made by Sketch.</summary>
    public const string TextMark = "<!-- Drawn by Sketch -->";
    private const int MarkedPart = 4096;

    // The comment of an SVG, the text chunk of a PNG, the creator of a PDF, the comment of a page or stash, the header of a cut list.
    private static readonly byte[][] Marks =
        ["Drawn by Sketch"u8.ToArray(), "Software\0Sketch"u8.ToArray(), "/Creator (Sketch)"u8.ToArray(), "Written by Sketch"u8.ToArray(),
            "paper,stack,sheets,offcut,step,"u8.ToArray()];

    /// <summary>Writes a picture.</summary>
    /// <param name="path">The file; missing folders are made.</param>
    /// <param name="svg">The picture.</param>
    /// <param name="title">Its title, for a PDF.</param>
    /// <param name="dpi">Pixels per inch, for a PNG.</param>
    /// <returns>Why it cannot be drawn in this form, in a plain sentence; null when it is written.</returns>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it, or a file that Sketch did not make is
    /// there.</exception>
    public static Failure? Write(string path, string svg, string title, int dpi) => Write(path, new DrawnPage(svg), title, dpi);

    /// <summary>Writes a page to print as a picture; see <see cref="Write(string, string, string, int)"/>.</summary>
    public static Failure? Write(string path, DrawnPage page, string title, int dpi) => Write(path, [page], title, dpi);

    /// <summary>Writes pages to print as one PDF.</summary>
    /// <param name="path">The file, which ends in .pdf; missing folders are made.</param>
    /// <param name="pages">The pages.</param>
    /// <param name="title">The title of the whole.</param>
    /// <returns>Why it cannot be made, in a plain sentence; null when it is written.</returns>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it, or a file that Sketch did not make is
    /// there.</exception>
    public static Failure? WritePages(string path, IReadOnlyList<DrawnPage> pages, string title) => Write(path, pages, title, 0);

    /// <summary>Deletes a picture of an earlier run; a file that Sketch did not make is kept.</summary>
    /// <returns>Whether there was one.</returns>
    public static bool Remove(string path)
    {
        if (!File.Exists(path) || !MayReplace(path))
        {
            return false;
        }

        try
        {
            File.Delete(path);
            return true;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>Removes the numbered files of an earlier run that wrote more, up to the first that is not there or not by Sketch.</summary>
    /// <param name="first">The first number that this run did not write.</param>
    /// <param name="pathOf">The file of a number.</param>
    public static void RemoveFrom(int first, Func<int, string> pathOf)
    {
        for (var number = first; Remove(pathOf(number)); number++)
        {
        }
    }

    /// <summary>Sends a picture to standard output.</summary>
    /// <param name="name">A name with the extension of its form.</param>
    /// <param name="svg">The picture.</param>
    /// <param name="title">Its title, for a PDF.</param>
    /// <param name="dpi">Pixels per inch, for a PNG.</param>
    /// <param name="session">The run.</param>
    /// <returns>Why it cannot be drawn in this form, in a plain sentence; null when it is sent.</returns>
    public static Failure? Send(string name, string svg, string title, int dpi, Session session) =>
        Send(name, [new DrawnPage(svg)], title, dpi, session);

    /// <summary>Sends pages to print to standard output as one PDF.</summary>
    public static Failure? SendPages(IReadOnlyList<DrawnPage> pages, string title, Session session) =>
        Send(".pdf", pages, title, 0, session);

    private static Failure? Send(string name, IReadOnlyList<DrawnPage> pages, string title, int dpi, Session session)
    {
        using var content = new MemoryStream();
        if (Render(name, pages, title, dpi, content) is { } failure)
        {
            return failure;
        }

        session.Output.Flush();
        session.Bytes.Write(content.GetBuffer().AsSpan(0, (int)content.Length));
        session.Bytes.Flush();
        return null;
    }

    private static Failure? Render(string path, IReadOnlyList<DrawnPage> pages, string title, int dpi, MemoryStream content) =>
        Path.GetExtension(path) switch
        {
            ".png" => SvgRenderer.WritePng(pages[0].Svg, dpi, content),
            ".pdf" => SvgRenderer.WritePdf(pages, title, content),
            _ => WriteSvg(pages[0].Svg, content),
        };

    private static Failure? Write(string path, IReadOnlyList<DrawnPage> pages, string title, int dpi)
    {
        RefuseForeign(path);
        using var content = new MemoryStream();
        var failure = Render(path, pages, title, dpi, content);
        if (failure is null)
        {
            SafeFile.Write(path, file => file.Write(content.GetBuffer().AsSpan(0, (int)content.Length)));
        }

        return failure;
    }

    /// <summary>Writes a file part by part; it carries the mark of its kind in its first 4096 bytes.</summary>
    /// <param name="path">The file; missing folders are made.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it, or a file that Sketch did not make is
    /// there.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        RefuseForeign(path);
        SafeFile.Write(path, write);
    }

    private static void RefuseForeign(string path)
    {
        if (!MayReplace(path))
        {
            throw new FileWriteException(
                path, $"\"{path}\" exists and was not drawn by Sketch: move it, or draw into another folder.",
                    new IOException("foreign file"));
        }
    }

    private static Failure? WriteSvg(string svg, MemoryStream content)
    {
        // Programs recognize a file by its first characters, so the mark comes after the opening tag of the outermost element.
        var inside = svg.IndexOf('>', svg.IndexOf("<svg", StringComparison.Ordinal)) + 1;
        content.Write(Encoding.UTF8.GetBytes(svg.Insert(inside, TextMark)));
        return null;
    }

    /// <summary>Whether there is no file at a path, or only an earlier output of the tool.</summary>
    public static bool MayReplace(string path)
    {
        if (OrdinaryFile.IsOtherwise(path))
        {
            return false;
        }

        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            var start = new byte[MarkedPart];
            var length = file.ReadAtLeast(start, start.Length, throwOnEndOfStream: false);
            return length == 0 || Marks.Any(m => start.AsSpan(0, length).IndexOf(m) >= 0);
        }
        catch (Exception exception)
            when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            // There is nothing readable; whether the path is writable shows when writing.
            return true;
        }
    }
}
