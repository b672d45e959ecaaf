using System.Security;

namespace Sketch.Output.Files;

/// <summary>Explains in plain words why the operating system refuses a file.</summary>
public static class FileTrouble
{
    // ERROR_HANDLE_DISK_FULL and ERROR_DISK_FULL of Windows; ENOSPC and EDQUOT as .NET reports them on Linux and macOS.
    private static readonly int[] DiskFull = [unchecked((int)0x80070027), unchecked((int)0x80070070), 28, 122, 69];

    // ERROR_FILE_TOO_LARGE of Windows.
    private const int TooLargeOnWindows = unchecked((int)0x800700DF);

    /// <summary>EFBIG on Linux and macOS: the file system, or the limit of the process, allows no file of that size.</summary>
    internal const int TooLarge = 27;

    /// <summary>
    /// Whether an exception is the operating system's refusal, or an impossible path, rather than a fault of the tool.
    /// </summary>
    public static bool Is(Exception exception) =>
        exception is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException;

    /// <summary>Why a file could not be read or written, as the end of a sentence without its full stop.</summary>
    /// <param name="exception">The refusal.</param>
    /// <param name="path">The file; empty for a stream that has no name.</param>
    public static string Reason(Exception exception, string path) => exception switch
    {
        _ when path.Length > 0 && Directory.Exists(path) => "it is a folder",
        ArgumentException or NotSupportedException => "a file cannot have that name",
        FileNotFoundException => "there is no such file",
        _ when path.Length > 0 && File.Exists(Path.GetDirectoryName(Path.GetFullPath(path))) => "its folder is a file",
        DirectoryNotFoundException => "there is no such folder",
        PathTooLongException => "its name is too long",
        UnauthorizedAccessException or SecurityException => "access to it is not allowed",
        IOException when DiskFull.Contains(exception.HResult) => "the disk is full",
        IOException { HResult: TooLarge or TooLargeOnWindows } => "it would be larger than the system allows a file to be",
        _ => "the operating system does not allow it (" + exception.Message.TrimEnd('.') + ")",
    };
}
