namespace Sketch.Output.Files;

/// <summary>Reads whole files up to a limit; failure to read a file gives a sentence, never an exception.</summary>
public static class FileContent
{
    /// <summary>A file's bytes, or null with a problem.</summary>
    /// <param name="path">The file.</param>
    /// <param name="limit">The most bytes to read; a larger file is a problem.</param>
    /// <param name="problem">Why it cannot be read, as the end of a sentence after a colon; empty when it was read.</param>
    public static byte[]? Read(string path, int limit, out string problem)
    {
        try
        {
            return ReadUpTo(path, limit, out problem);
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            problem = $"{FileTrouble.Reason(exception, path)}.";
            return null;
        }
    }

    /// <summary>A file's bytes, or null with a problem if it is too large or not an ordinary file.</summary>
    /// <exception cref="IOException">The operating system refuses the file; also the other exceptions of
    /// <see cref="FileTrouble.Is"/>.</exception>
    public static byte[]? ReadUpTo(string path, int limit, out string problem)
    {
        if (OrdinaryFile.IsOtherwise(path) && !IsOpenedByShell(path))
        {
            problem = OrdinaryFile.Problem;
            return null;
        }

        // The length is not read first: a file may grow meanwhile.
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var content = new MemoryStream();
        var part = new byte[81920];
        for (var count = file.Read(part); count > 0; count = file.Read(part))
        {
            if (content.Length + count > limit)
            {
                problem = $"it is larger than {limit / 1_000_000} MB, too large.";
                return null;
            }

            content.Write(part, 0, count);
        }

        problem = "";
        return content.ToArray();
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
