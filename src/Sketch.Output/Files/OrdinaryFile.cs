using System.Runtime.InteropServices;

namespace Sketch.Output.Files;

/// <summary>
/// Distinguishes files from what only looks like them: named pipes, sockets and devices, on which a reader could wait forever.
/// </summary>
public static class OrdinaryFile
{
    /// <summary>Why something that is not an ordinary file is not read, as the end of a sentence after a colon.</summary>
    public const string Problem = "it is not a regular file but a pipe, socket or device.";

    // The kinds of files in the upper four bits of a mode: POSIX, sys/stat.h.
    private const int KindMask = 0xF000;
    private const int FolderKind = 0x4000;
    private const int FileKind = 0x8000;

    // Larger than the structure of any system.
    private const int StateSize = 512;

    /// <summary>
    /// Whether a path is a pipe, a socket or a device, following links. What is missing or cannot be queried is none of these.
    /// </summary>
    public static bool IsOtherwise(string path) => KindOf(path) is not (0 or FolderKind or FileKind);

    // .NET reports everything about a file except this, and opening it to find out would wait.
    private static int KindOf(string path)
    {
        var state = new byte[StateSize];
        try
        {
            return OperatingSystem.IsLinux() && Linux.State(Linux.FromHere, path, 0, Linux.AskKind, state) == 0
                ? BitConverter.ToUInt16(state, Linux.ModeAt) & KindMask
                : OperatingSystem.IsMacOS() && Mac.State(path, state) == 0 ? BitConverter.ToUInt16(state, Mac.ModeAt) & KindMask
                : 0;
        }
        catch (EntryPointNotFoundException)
        {
            return 0;
        }
    }

    // statx(2): its structure is the same on every processor.
    private static class Linux
    {
        public const int FromHere = -100;
        public const uint AskKind = 1;
        public const int ModeAt = 28;

        [DllImport("libc", EntryPoint = "statx")]
        [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
        public static extern int State(int folder, [MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags, uint mask, byte[] state);
    }

    // stat(2) with long file numbers, which has another name on Intel processors.
    private static class Mac
    {
        public const int ModeAt = 4;

        public static int State(string path, byte[] state) =>
            RuntimeInformation.ProcessArchitecture == Architecture.X64 ? IntelState(path, state) : ArmState(path, state);

        [DllImport("libc", EntryPoint = "stat$INODE64")]
        [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
        private static extern int IntelState([MarshalAs(UnmanagedType.LPUTF8Str)] string path, byte[] state);

        [DllImport("libc", EntryPoint = "stat")]
        [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
        private static extern int ArmState([MarshalAs(UnmanagedType.LPUTF8Str)] string path, byte[] state);
    }
}
