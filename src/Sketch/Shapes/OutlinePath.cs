using System.Text;

namespace Sketch.Shapes;

public sealed partial record Outline
{
    /// <summary>
    /// The outline as the data of an SVG path in millimetres, with the commands M, L, C and Z only; empty for an empty outline.
    /// </summary>
    /// <param name="decimals">The most decimals of a number.</param>
    public string ToSvgPath(int decimals = 4)
    {
        var path = new StringBuilder();
        AppendSvgPath(path, decimals);
        return path.ToString();
    }

    /// <summary>The contours as open lines, which do not return to their starts.</summary>
    public string ToOpenSvgPath(int decimals = 4) =>
        string.Concat(Contours.Select(c => new Outline([c]).ToSvgPath(decimals).TrimEnd('Z')));

    /// <summary>Appends the same data to a longer text.</summary>
    public void AppendSvgPath(StringBuilder path, int decimals = 4)
    {
        var smallest = Math.Pow(10, -decimals);
        foreach (var contour in Contours)
        {
            path.Append('M');
            Write(contour.Start);
            for (var i = 0; i < contour.Segments.Length; i++)
            {
                var segment = contour.Segments[i];
                if (!segment.IsLine)
                {
                    path.Append('C');
                    Write(segment.Control1);
                    Space(segment.Control2.X);
                    Write(segment.Control2);
                    Space(segment.End.X);
                    Write(segment.End);
                }
                else if (i < contour.Segments.Length - 1 || segment.End != contour.Start)
                {
                    path.Append('L');
                    Write(segment.End);
                }
            }

            path.Append('Z');
        }

        void Write(Point point)
        {
            path.AppendNumber(point.X, decimals);
            Space(point.Y);
            path.AppendNumber(point.Y, decimals);
        }

        // A minus sign separates two numbers by itself; a number that may round to zero may have no sign.
        void Space(double next)
        {
            if (next > -smallest)
            {
                path.Append(' ');
            }
        }
    }
}
