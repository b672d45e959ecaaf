#:property PublishAot=false
#:property RestorePackagesWithLockFile=false
#:property EnforceCodeStyleInBuild=false

// Writes archives anew, smaller and always alike: entries by name, with the time of the last change to the source instead of that of the
// build, and packed as small as the SDK can. Libraries for Linux lose the symbols that only debuggers read, where strip knows the machine.
// Usage: dotnet run .release/repack.cs SECONDS FILE...    SECONDS since 1970; FILE is a .nupkg or .zip.
using System.Diagnostics;
using System.Globalization;
using System.IO.Compression;

var time = DateTimeOffset.FromUnixTimeSeconds(long.Parse(args[0], CultureInfo.InvariantCulture));
foreach (var path in args[1..])
{
    var packed = path + ".part";
    using (var from = ZipFile.OpenRead(path))
    using (var to = ZipFile.Open(packed, ZipArchiveMode.Create))
    {
        foreach (var entry in from.Entries.OrderBy(e => e.FullName, StringComparer.Ordinal))
        {
            var written = to.CreateEntry(entry.FullName, CompressionLevel.SmallestSize);
            (written.LastWriteTime, written.ExternalAttributes) = (time, entry.ExternalAttributes);
            using var content = new MemoryStream();
            using (var stream = entry.Open())
            {
                stream.CopyTo(content);
            }

            using var target = written.Open();
            target.Write(entry.FullName.Contains(".so", StringComparison.Ordinal) ? Stripped(content.ToArray()) : content.ToArray());
        }
    }

    File.Move(packed, path, overwrite: true);
}

static byte[] Stripped(byte[] library)
{
    var file = Path.GetTempFileName();
    try
    {
        File.WriteAllBytes(file, library);
        using var strip = Process.Start(new ProcessStartInfo("strip", ["--strip-unneeded", file]) { RedirectStandardError = true })!;
        strip.StandardError.ReadToEnd();
        strip.WaitForExit();
        return strip.ExitCode == 0 ? File.ReadAllBytes(file) : library;
    }
    catch (System.ComponentModel.Win32Exception)
    {
        return library;
    }
    finally
    {
        File.Delete(file);
    }
}
