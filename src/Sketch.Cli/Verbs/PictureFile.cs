using System.Text;
using Sketch.Output.Files;
using Sketch.Output.Rendering;

namespace Sketch.Cli.Verbs;

/// <summary>Pictures on disk: each is complete or absent, and no file is replaced that somebody else made.</summary>
internal static class PictureFile
{
    /// <summary>The kinds of files a picture can be written as, by the ends of their names.</summary>
    public static readonly string[] Forms = ["svg", "png", "pdf"];

    /// <summary>The comment in SVG and HTML that tells that Sketch made them.</summary>
    public const string TextMark = "<!-- Drawn by Sketch -->";
    private const int MarkedPart = 4096;

    // The comment of an SVG, the text chunk of a PNG, the creator of a PDF, the comment of a page or stash, the head of a cut list.
    private static readonly byte[][] Marks =
        ["Drawn by Sketch"u8.ToArray(), "Software\0Sketch"u8.ToArray(), "/Creator (Sketch)"u8.ToArray(), "Written by Sketch"u8.ToArray(),
            "paper,stack,sheets,offcut,step,"u8.ToArray()];

    /// <summary>Writes a picture.</summary>
    /// <param name="path">The file; missing folders are made.</param>
    /// <param name="svg">The picture.</param>
    /// <param name="title">Its title, for a PDF.</param>
    /// <param name="dpi">Pixels an inch, for a PNG.</param>
    /// <param name="problem">Why it cannot be drawn so, in a plain sentence; empty when it is.</param>
    /// <returns>Whether it is written.</returns>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it, or a file of somebody else stands
    /// there.</exception>
    public static bool Write(string path, string svg, string title, int dpi, out string problem) =>
        Write(path, [svg], title, dpi, out problem);

    /// <summary>Writes pictures as the pages of one PDF.</summary>
    /// <param name="path">The file, which ends in .pdf; missing folders are made.</param>
    /// <param name="pages">The pictures.</param>
    /// <param name="title">The title of the whole.</param>
    /// <param name="problem">Why it cannot be made, in a plain sentence; empty when it is.</param>
    /// <returns>Whether it is written.</returns>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it, or a file of somebody else stands
    /// there.</exception>
    public static bool WritePages(string path, IReadOnlyList<string> pages, string title, out string problem) =>
        Write(path, pages, title, 0, out problem);

    /// <summary>Takes away a picture of an earlier run; a file of somebody else stays.</summary>
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

    private static bool Write(string path, IReadOnlyList<string> pages, string title, int dpi, out string problem)
    {
        RefuseForeign(path);
        using var content = new MemoryStream();
        problem = "";
        var isDrawn = Path.GetExtension(path) switch
        {
            ".png" => SvgRenderer.WritePng(pages[0], dpi, content, out problem),
            ".pdf" => SvgRenderer.WritePdf(pages, title, content, out problem),
            _ => WriteSvg(pages[0], content),
        };
        if (isDrawn)
        {
            SafeFile.Write(path, file => file.Write(content.GetBuffer().AsSpan(0, (int)content.Length)));
        }

        return isDrawn;
    }

    /// <summary>Writes a file part by part; it carries the mark of its kind in its first 4096 bytes.</summary>
    /// <param name="path">The file; missing folders are made.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="FileWriteException">The folder, the name or the disk does not allow it, or a file of somebody else stands
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

    private static bool WriteSvg(string svg, MemoryStream content)
    {
        // Programs tell what a file is by its first characters, so the mark comes after the outermost element has begun.
        var inside = svg.IndexOf('>', svg.IndexOf("<svg", StringComparison.Ordinal)) + 1;
        content.Write(Encoding.UTF8.GetBytes(svg.Insert(inside, TextMark)));
        return true;
    }

    /// <summary>Whether nothing stands at a place, or only an earlier output of the tool.</summary>
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
            // Nothing readable stands there; whether the place can be written to shows when writing.
            return true;
        }
    }
}
