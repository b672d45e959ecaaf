using System.Buffers;
using System.Buffers.Text;
using System.Globalization;
using System.Text;
using Sketch.Shapes;

namespace Sketch.Output.Rendering;

/// <summary>
/// The drawing of a page with the points of its outlines rounded, so that none moves by more than half a hundredth of a point on the page.
/// </summary>
internal static class RoundedDrawing
{
    private const int Decimals = 2;
    private const int MostDecimals = 5;

    private static readonly SearchValues<byte> Numbers = SearchValues.Create("-.0123456789 "u8);

    /// <summary>The drawing, as Skia writes it: a line for each operator, or for several that set colours.</summary>
    public static byte[] Of(ReadOnlySpan<byte> drawing)
    {
        var result = new byte[drawing.Length];
        var length = 0;
        var (scale, outer) = (1.0, new Stack<double>());
        foreach (var range in drawing.Split((byte)'\n'))
        {
            var line = drawing[range];
            if (line.SequenceEqual("q"u8))
            {
                outer.Push(scale);
            }
            else if (line.SequenceEqual("Q"u8) && outer.Count > 0)
            {
                scale = outer.Pop();
            }
            else if (line.EndsWith(" cm"u8))
            {
                scale *= Scale(line);
            }

            if (IsOutline(line))
            {
                length += Rounded(line, scale, result.AsSpan(length));
            }
            else
            {
                line.CopyTo(result.AsSpan(length));
                length += line.Length;
            }

            // The last line has no end.
            if (range.End.Value < drawing.Length)
            {
                result[length++] = (byte)'\n';
            }
        }

        return result[..length];
    }

    // The largest factor by which a matrix makes a point's coordinates grow.
    private static double Scale(ReadOnlySpan<byte> line)
    {
        Span<double> matrix = stackalloc double[4];
        var i = 0;
        foreach (var part in line.Split((byte)' '))
        {
            if (i == matrix.Length)
            {
                break;
            }

            matrix[i++] = Math.Abs(double.Parse(line[part], CultureInfo.InvariantCulture));
        }

        return Math.Max(matrix[0] + matrix[2], matrix[1] + matrix[3]);
    }

    // Numbers, then the operator of a line, a curve or a rectangle.
    private static bool IsOutline(ReadOnlySpan<byte> line)
    {
        var last = line.LastIndexOf((byte)' ');
        if (last <= 0)
        {
            return false;
        }

        var name = line[(last + 1)..];
        return (name.SequenceEqual("re"u8) || (name.Length == 1 && "mlcvy"u8.Contains(name[0])))
            && !line[..last].ContainsAnyExcept(Numbers);
    }

    private static int Rounded(ReadOnlySpan<byte> line, double scale, Span<byte> result)
    {
        var decimals = Math.Clamp(Decimals + (int)Math.Ceiling(Math.Log10(Math.Max(scale, 1e-3))), 0, MostDecimals);
        Span<char> room = stackalloc char[DecimalText.Longest];
        var length = 0;
        foreach (var range in line.Split((byte)' '))
        {
            var part = line[range];
            if (length > 0)
            {
                result[length++] = (byte)' ';
            }

            if (part.Contains((byte)'.') && Utf8Parser.TryParse(part, out double number, out var read) && read == part.Length)
            {
                // Never longer than what Skia writes.
                length += Encoding.ASCII.GetBytes(DecimalText.Of(number, decimals, room), result[length..]);
            }
            else
            {
                part.CopyTo(result[length..]);
                length += part.Length;
            }
        }

        return length;
    }
}
