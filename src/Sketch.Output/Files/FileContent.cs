using Sketch.Diagnostics;

namespace Sketch.Output.Files;

/// <summary>Reads whole files up to a limit; failure to read a file gives a sentence, never an exception.</summary>
public static class FileContent
{
    /// <summary>A file's bytes; a problem reads as the end of a sentence after a colon.</summary>
    /// <param name="path">The file.</param>
    /// <param name="limit">The most bytes to read; a larger file is a problem.</param>
    public static Result<byte[]> Read(string path, int limit)
    {
        try
        {
            return ReadUpTo(path, limit);
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return new Failure($"{FileTrouble.Reason(exception, path)}.");
        }
    }

    /// <summary>A file's bytes, or a problem if it is too large or not an ordinary file.</summary>
    /// <exception cref="IOException">The operating system refuses the file; also the other exceptions of
    /// <see cref="FileTrouble.Is"/>.</exception>
    public static Result<byte[]> ReadUpTo(string path, int limit)
    {
        if (OrdinaryFile.IsOtherwise(path) && !IsOpenedByShell(path))
        {
            return new Failure(OrdinaryFile.Problem);
        }

        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        return ReadUpTo(file, limit);
    }

    /// <summary>A stream's bytes up to its end, or a problem if they are too many.</summary>
    /// <exception cref="IOException">The operating system refuses to read on.</exception>
    public static Result<byte[]> ReadUpTo(Stream file, int limit)
    {
        // The length is not read first: a file may grow meanwhile.
        using var content = new MemoryStream();
        var part = new byte[81920];
        for (var count = file.Read(part); count > 0; count = file.Read(part))
        {
            if (content.Length + count > limit)
            {
                return new Failure($"it is larger than {limit / 1_000_000} MB, too large.");
            }

            content.Write(part, 0, count);
        }

        return Result.Of(content.ToArray());
    }

    /// <summary>The first bytes of a file, up to a number; null if it cannot be read.</summary>
    public static byte[]? ReadStart(string path, int length)
    {
        try
        {
            if (OrdinaryFile.IsOtherwise(path))
            {
                return null;
            }

            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            var start = new byte[length];
            return start[..file.ReadAtLeast(start, length, throwOnEndOfStream: false)];
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return null;
        }
    }

    // A stream from a shell, such as /dev/stdin, is open already and waits only for the program that writes it.
    private static bool IsOpenedByShell(string path) => path.StartsWith("/dev/", StringComparison.Ordinal);

    /// <summary>When a file was last written; a fixed time long ago if that is unknown.</summary>
    public static DateTime WrittenAt(string path)
    {
        try
        {
            return File.GetLastWriteTimeUtc(path);
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return DateTime.UnixEpoch;
        }
    }
}
