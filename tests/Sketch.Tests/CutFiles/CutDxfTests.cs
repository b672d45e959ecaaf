using System.ComponentModel;
using System.Diagnostics;
using System.Text.Json;
using Sketch.CutFiles;
using Sketch.Shapes;
using Sketch.Tests.Project;
using Xunit;

namespace Sketch.Tests.CutFiles;

/// <summary>The files are read by another library, which runs in Node.js.</summary>
public sealed class CutDxfTests : IDisposable
{
    /// <summary>How far the straight lines by which curves are compared lie from them, in millimetres.</summary>
    private const double Chords = 0.001;

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("sketch-dxf-");

    public void Dispose() => _folder.Delete(recursive: true);

    private sealed record Line(string Layer, bool IsClosed, List<(Point At, double Bulge)> Corners);

    [Fact]
    public async Task Another_library_reads_each_line_in_its_layer_and_at_its_place()
    {
        var sheets = Machine.Samples().SelectMany(s => s.Sheets).ToList();
        var files = await Read(sheets);
        Assert.Equal(sheets.Count, files.Count);
        foreach (var (sheet, file) in sheets.Zip(files))
        {
            Assert.Equal(("AC1015", 4), (file.GetProperty("version").GetString(), file.GetProperty("unit").GetInt32()));
            Assert.Equal(
                CutLayer.All.Select(l => (l.Name, l.Number)).Prepend(("0", 7)),
                file.GetProperty("layers").EnumerateArray()
                    .Select(l => (l.GetProperty("name").GetString()!, l.GetProperty("colour").GetInt32())));
            var lines = file.GetProperty("lines").EnumerateArray().Select(LineOf).ToList();
            Assert.Equal(sheet.Paths.Select(p => (p.Layer.Name, p.IsClosed)), lines.Select(l => (l.Layer, l.IsClosed)));
            Assert.All(sheet.Paths.Zip(lines), pair => AssertAlike(pair.First, pair.Second, sheet.Page.Height.Millimetres));
        }
    }

    private static void AssertAlike(CutPath path, Line line, double height)
    {
        var meant = path.Transform(new(1, 0, 0, -1, 0, height)).Line.Flatten(Chords);
        var found = Points(line).ToList();

        // Both ways: no part of the curve is missing and none is added.
        Assert.InRange(Farthest(found, meant, path.IsClosed), 0, CutDxf.Tolerance + 2 * Chords);
        Assert.InRange(Farthest(meant, found, path.IsClosed), 0, CutDxf.Tolerance + 2 * Chords);
    }

    private static IEnumerable<Point> Points(Line line)
    {
        var corners = line.Corners;
        for (var i = 0; i < corners.Count; i++)
        {
            var (from, bulge) = corners[i];
            yield return from;
            if (bulge == 0 || (i == corners.Count - 1 && !line.IsClosed))
            {
                continue;
            }

            // The centre lies to the left of the chord where the arc turns to the left; the angle is four times that of the bulge.
            var to = corners[(i + 1) % corners.Count].At;
            var (dx, dy, angle) = (to.X - from.X, to.Y - from.Y, 4 * Math.Atan(bulge));
            var away = (1 - bulge * bulge) / (4 * bulge);
            Point centre = new((from.X + to.X) / 2 - dy * away, (from.Y + to.Y) / 2 + dx * away);
            var radius = Math.Sqrt(dx * dx + dy * dy) * (1 + bulge * bulge) / (4 * Math.Abs(bulge));
            var steps = Math.Ceiling(Math.Abs(angle) / 2 / Math.Acos(1 - Math.Min(1, Chords / radius)));
            for (var step = 1; step < steps; step++)
            {
                var (sin, cos) = Math.SinCos(angle * step / steps);
                yield return new(
                    centre.X + (from.X - centre.X) * cos - (from.Y - centre.Y) * sin,
                    centre.Y + (from.X - centre.X) * sin + (from.Y - centre.Y) * cos);
            }
        }
    }

    /// <summary>The distance of the point that lies farthest from a line of straight pieces, or less than the tolerance.</summary>
    private static double Farthest(List<Point> points, List<Point> line, bool isClosed)
    {
        var pieces = isClosed ? line.Count : line.Count - 1;
        var most = 0.0;
        var at = 0;
        foreach (var point in points)
        {
            // Both run alike, so what is nearest lies soon after what was nearest last.
            var nearest = double.MaxValue;
            for (int i = at, left = pieces; left > 0 && nearest > CutDxf.Tolerance; i = (i + 1) % pieces, left--)
            {
                if (Distance(point, line[i], line[(i + 1) % line.Count]) is var distance && distance < nearest)
                {
                    (nearest, at) = (distance, i);
                }
            }

            most = Math.Max(most, nearest);
        }

        return most;
    }

    private static double Distance(Point point, Point from, Point to)
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        var along = Math.Clamp(((point.X - from.X) * dx + (point.Y - from.Y) * dy) / Math.Max(1e-18, dx * dx + dy * dy), 0, 1);
        var (x, y) = (point.X - from.X - along * dx, point.Y - from.Y - along * dy);
        return Math.Sqrt(x * x + y * y);
    }

    private static Line LineOf(JsonElement line)
    {
        Assert.Equal("LWPOLYLINE", line.GetProperty("type").GetString());
        return new(
            line.GetProperty("layer").GetString()!,
            line.GetProperty("isClosed").GetBoolean(),
            [.. line.GetProperty("corners").EnumerateArray()
                .Select(c => (new Point(c[0].GetDouble(), c[1].GetDouble()), c[2].GetDouble()))]);
    }

    private async Task<List<JsonElement>> Read(List<CutSheet> sheets)
    {
        var tests = Repository.PathTo("tests/Sketch.Page.Tests");
        Assert.SkipUnless(Directory.Exists(Path.Combine(tests, "node_modules", "dxf-parser")), "npm ci has not run.");
        var names = sheets.Select((sheet, i) =>
        {
            var name = Path.Combine(_folder.FullName, $"{i}.dxf");
            File.WriteAllText(name, CutDxf.Of(sheet));
            return name;
        });
        using var node = Started(new ProcessStartInfo("node", ["read-dxf.js", .. names])
        {
            WorkingDirectory = tests,
            RedirectStandardOutput = true,
        });
        Assert.SkipWhen(node is null, "Node.js is not installed.");
        var output = await node.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        await node.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(0, node.ExitCode);
        return [.. JsonDocument.Parse(output).RootElement.EnumerateArray()];
    }

    private static Process? Started(ProcessStartInfo start)
    {
        try
        {
            return Process.Start(start);
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}
