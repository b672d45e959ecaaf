using System.Text;
using Sketch.Diagnostics;

namespace Sketch.Output.Files;

/// <summary>
/// A text file to which several programs append lines at once. Who appends holds the file alone, writes the line with its end in one go,
/// and flushes it to the disk. So a line without an end was cut off; whoever writes next marks it and begins a new line.
/// </summary>
public static class SharedLog
{
    private const int MostTries = 3;
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(10);

    // What .NET reports for a file that another program holds: ERROR_SHARING_VIOLATION and ERROR_LOCK_VIOLATION of Windows, EWOULDBLOCK of
    // Linux and macOS.
    private static readonly int[] Busy = [unchecked((int)0x80070020), unchecked((int)0x80070021), 11, 35];

    /// <summary>
    /// The content; empty if there is no such file. Bytes that are no UTF-8, as a cut character leaves them, become replacement characters.
    /// A problem reads as the end of a sentence after a colon.
    /// </summary>
    public static Result<string> Read(string path)
    {
        try
        {
            return File.Exists(path)
                ? Patiently(() => FileContent.ReadUpTo(path, TextContent.Limit)).Map(content => Decode(content)) : Result.Of("");
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return new Failure($"{FileTrouble.Reason(exception, path)}.");
        }
    }

    /// <summary>Appends a line; when this returns null, the line is on the disk.</summary>
    /// <param name="path">The file; created if needed, in a folder that exists.</param>
    /// <param name="tornMark">What to put at the end of a line that was cut off.</param>
    /// <param name="compose">
    /// Gives the line for the present content, empty if it is there already; or why it cannot be added, as a whole sentence.
    /// </param>
    /// <returns>Why the line is not added, as a whole sentence, or null.</returns>
    public static Failure? Append(string path, string tornMark, Func<string, Result<string>> compose)
    {
        try
        {
            // A program that saves the file as a whole may have replaced it meanwhile, so the line is looked for afterwards.
            for (var attempt = 0; attempt < MostTries; attempt++)
            {
                var line = AppendOnce(path, tornMark, compose);
                if (line.Problem is { } problem)
                {
                    return new(problem);
                }

                if (line.Value.Length == 0 || Read(path).ValueOrDefault?.Contains(line.Value + "\n", StringComparison.Ordinal) == true)
                {
                    return null;
                }
            }

            return new($"\"{path}\" cannot be written: another program keeps replacing it.");
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return new($"\"{path}\" cannot be written: {FileTrouble.Reason(exception, path)}.");
        }
    }

    private static Result<string> AppendOnce(string path, string tornMark, Func<string, Result<string>> compose)
    {
        if (OrdinaryFile.IsOtherwise(path))
        {
            return new Failure($"\"{path}\" cannot be written: {OrdinaryFile.Problem}");
        }

        using var file = Patiently(() => new RefusableFile(path, FileMode.OpenOrCreate, bufferSize: 0));
        var length = file.Length;
        if (length > TextContent.Limit)
        {
            return new Failure($"\"{path}\" cannot be written: it is too large.");
        }

        var content = new byte[length];
        file.ReadExactly(content);
        var line = compose(Decode(content));
        if (line.Problem is null)
        {
            var start = content is [] or [.., (byte)'\n'] ? "" : tornMark + "\n";
            Write(file, line.Value.Length == 0 ? [] : Encoding.UTF8.GetBytes($"{start}{line.Value}\n"));
        }

        return line;
    }

    private static void Write(FileStream file, byte[] bytes)
    {
        var length = file.Length;
        try
        {
            file.Write(bytes);

            // Also without new bytes: whoever wrote the line may have been killed before it was on the disk.
            file.Flush(flushToDisk: true);
        }
        catch (IOException)
        {
            file.SetLength(length);
            throw;
        }
    }

    private static T Patiently<T>(Func<T> open)
    {
        var end = Environment.TickCount64 + (long)Patience.TotalMilliseconds;
        while (true)
        {
            try
            {
                return open();
            }
            catch (IOException busy) when (Busy.Contains(busy.HResult) && Environment.TickCount64 < end)
            {
                Thread.Sleep(Random.Shared.Next(1, 12));
            }
        }
    }

    private static string Decode(byte[] content) => Encoding.UTF8.GetString(content).TrimStart('\uFEFF');
}
