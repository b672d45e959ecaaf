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
        AppendSvgPath(path, Affine.Identity, decimals);
        return path.ToString();
    }

    /// <summary>The contours as open lines, which do not return to their starts.</summary>
    public string ToOpenSvgPath(int decimals = 4) =>
        string.Concat(Contours.Select(c => new Outline([c]).ToSvgPath(decimals).TrimEnd('Z')));

    /// <summary>Appends the data of the outline under a map to a longer text; no mapped outline is made.</summary>
    public void AppendSvgPath(StringBuilder path, Affine by, int decimals)
    {
        var smallest = Math.Pow(10, -decimals);
        foreach (var contour in Contours)
        {
            path.Append('M');
            Write(by.Apply(contour.Start));
            for (var i = 0; i < contour.Segments.Length; i++)
            {
                var segment = contour.Segments[i];
                if (!segment.IsLine)
                {
                    var (second, end) = (by.Apply(segment.Control2), by.Apply(segment.End));
                    path.Append('C');
                    Write(by.Apply(segment.Control1));
                    Space(second.X);
                    Write(second);
                    Space(end.X);
                    Write(end);
                }
                else if (i < contour.Segments.Length - 1 || segment.End != contour.Start)
                {
                    path.Append('L');
                    Write(by.Apply(segment.End));
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
