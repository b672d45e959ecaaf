using System.Globalization;
using System.Text;

namespace Sketch.Output.Files;

/// <summary>
/// A hidden file that is being written and gets its final name when it is complete. Its name identifies the writing process, so that
/// whoever writes into the folder next can delete what a killed process left there.
/// </summary>
internal sealed class PartialFile : IDisposable
{
    private const string Start = ".sketch-";
    private const string End = ".part";

    // The same process can seem to have started a little earlier or later: its start is computed from two clocks.
    private static readonly TimeSpan SameStart = TimeSpan.FromSeconds(2);

    private static readonly EnumerationOptions Hidden = new() { AttributesToSkip = FileAttributes.ReparsePoint | FileAttributes.Directory };

    private readonly string _path;
    private bool _isComplete;

    private PartialFile(string path)
    {
        _path = path;
        Content = new RefusableFile(path, FileMode.CreateNew);
    }

    /// <summary>The content so far; the stream can seek.</summary>
    public FileStream Content { get; }

    /// <summary>Begins a file for a target, and deletes orphans in its folder.</summary>
    /// <param name="target">The full path that the file gets when it is complete; its folder exists.</param>
    public static PartialFile For(string target)
    {
        var folder = Path.GetDirectoryName(target) ?? "";
        DeleteOrphans(folder);
        return new(Path.Combine(folder, $"{Start}{Owner.Here}-{Guid.NewGuid():N}{End}"));
    }

    /// <summary>
    /// Deletes the partial files in a folder whose processes have ended. Files of other programs, or of running processes, stay.
    /// </summary>
    public static void DeleteOrphans(string folder)
    {
        try
        {
            foreach (var path in Directory.EnumerateFiles(folder, $"{Start}*{End}", Hidden).Where(IsOrphan))
            {
                TryDelete(path);
            }
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            // A folder that cannot be listed can still be written into.
        }
    }

    /// <summary>Gives the file its name, replacing any existing file.</summary>
    /// <param name="target">The name given when it was begun.</param>
    public void Complete(string target)
    {
        // While it is locked, nobody could read the file under its final name.
        Content.Dispose();
        if (!OperatingSystem.IsWindows() && File.Exists(target))
        {
            File.SetUnixFileMode(_path, File.GetUnixFileMode(target));
        }

        File.Move(_path, target, overwrite: true);
        _isComplete = true;
    }

    /// <summary>Closes the file, and deletes it if it is not complete.</summary>
    public void Dispose()
    {
        try
        {
            Content.Dispose();
        }
        finally
        {
            if (!_isComplete)
            {
                TryDelete(_path);
            }
        }
    }

    private static bool IsOrphan(string path)
    {
        if (Owner.Of(Path.GetFileName(path)) is not { } owner || owner.MayRun() || OrdinaryFile.IsOtherwise(path))
        {
            return false;
        }

        try
        {
            // Where process ids mean different things to two programs, as in containers, the owner's lock still protects the file.
            using var free = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);
            return true;
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
            return false;
        }
    }

    // The first failure is the one to report; a file that cannot be deleted either keeps its hidden name.
    private static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception exception) when (FileTrouble.Is(exception))
        {
        }
    }

    /// <summary>The process that writes a partial file, according to the file's name.</summary>
    /// <param name="Machine">A short digest of the machine's name: folders can be shared.</param>
    /// <param name="Process">The process id.</param>
    /// <param name="Started">When it started, in seconds since 1970, since process ids are reused.</param>
    private readonly record struct Owner(string Machine, int Process, long Started)
    {
        /// <summary>This process.</summary>
        public static Owner Here { get; } = OfThisProcess();

        /// <summary>The owner in a name that <see cref="For"/> made; null for any other name.</summary>
        public static Owner? Of(string name)
        {
            var parts = name[Start.Length..^End.Length].Split('-');
            return parts is [var machine, var number, var time, var unique]
                && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var process)
                && long.TryParse(time, NumberStyles.None, CultureInfo.InvariantCulture, out var started)
                && Guid.TryParseExact(unique, "N", out _)
                    ? new(machine, process, started)
                    : null;
        }

        /// <summary>Whether it may still run: it is on another machine, it cannot be queried, or it is running.</summary>
        public bool MayRun()
        {
            if (Machine != Here.Machine)
            {
                return true;
            }

            try
            {
                using var process = System.Diagnostics.Process.GetProcessById(Process);
                return Math.Abs(SecondsOf(process.StartTime) - Started) <= SameStart.TotalSeconds;
            }
            catch (Exception exception) when (exception is ArgumentException or InvalidOperationException)
            {
                return false;
            }
            catch (Exception exception) when (exception is System.ComponentModel.Win32Exception or NotSupportedException)
            {
                return true;
            }
        }

        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Machine}-{Process}-{Started}");

        private static Owner OfThisProcess()
        {
            using var process = System.Diagnostics.Process.GetCurrentProcess();
            var machine = HashOf(Encoding.UTF8.GetBytes(Environment.MachineName)).ToString("x8", CultureInfo.InvariantCulture);
            return new(machine, Environment.ProcessId, SecondsOf(process.StartTime));
        }

        /// <summary>
        /// The 32-bit FNV-1a hash (Fowler, Noll and Vo), which tells machines apart. SHA-256 would need OpenSSL, which takes time to load,
        /// and which a small Linux system does not have.
        /// </summary>
        private static uint HashOf(ReadOnlySpan<byte> name)
        {
            var hash = 2166136261;
            foreach (var part in name)
            {
                hash = unchecked((hash ^ part) * 16777619);
            }

            return hash;
        }

        private static long SecondsOf(DateTime time) => new DateTimeOffset(time).ToUnixTimeSeconds();
    }
}
