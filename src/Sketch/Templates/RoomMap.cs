using System.Collections.Immutable;
using Sketch.Shapes;

namespace Sketch.Templates;

/// <summary>A map of which piece is visible in each small square, to find room for a number or a label.</summary>
internal sealed class RoomMap
{
    private const double MostSquares = 500_000;
    private const int Line = -2;
    private const int Nothing = -1;

    private readonly Bounds _box;
    private readonly double _square;
    private readonly int _across;
    private readonly int _down;
    private readonly int[] _seen;
    private readonly ImmutableArray<Outline> _pieces;

    /// <summary>The map of pieces, later ones on top.</summary>
    /// <param name="pieces">The pieces; their edges are lines too.</param>
    /// <param name="lines">Other lines to keep clear of.</param>
    /// <param name="square">Side of a square in millimetres; larger for a very large piece.</param>
    public RoomMap(ImmutableArray<Outline> pieces, ImmutableArray<Outline> lines, double square)
    {
        var drawn = pieces.AddRange(lines);
        _box = drawn.Skip(1).Aggregate(drawn[0].Bounds, (all, p) => all.With(p.Bounds));
        _square = Math.Max(square, Math.Sqrt(_box.Width * _box.Height / MostSquares));
        (_across, _down) = ((int)Math.Ceiling(_box.Width / _square) + 1, (int)Math.Ceiling(_box.Height / _square) + 1);
        _seen = new int[_across * _down];
        Array.Fill(_seen, Nothing);
        _pieces = pieces;
        for (var i = 0; i < pieces.Length; i++)
        {
            Fill(pieces[i], i);
        }

        foreach (var outline in drawn)
        {
            Trace(outline);
        }
    }

    /// <summary>
    /// The middle of a free box of that size in which only the piece is visible and no line runs, as near to the piece's middle as
    /// possible; null when there is none.
    /// </summary>
    public Point? RoomFor(int piece, double width, double height)
    {
        var (wide, high) = ((int)Math.Ceiling(width / _square), (int)Math.Ceiling(height / _square));
        var (left, top, right, bottom) = Squares(_pieces[piece].Bounds);
        var sums = Sums(piece, left, top, right, bottom);
        var middle = _pieces[piece].Bounds.Centre;
        Point? best = null;
        var nearest = double.MaxValue;
        for (var y = top; y + high <= bottom + 1; y++)
        {
            for (var x = left; x + wide <= right + 1; x++)
            {
                if (Sum(x - left, y - top) != wide * high)
                {
                    continue;
                }

                var centre = new Point(_box.Left + (x + wide / 2.0) * _square, _box.Top + (y + high / 2.0) * _square);
                var (dx, dy) = (centre.X - middle.X, centre.Y - middle.Y);
                if (dx * dx + dy * dy < nearest)
                {
                    nearest = dx * dx + dy * dy;
                    best = centre;
                }
            }
        }

        return best;

        int Sum(int x, int y) => sums[y + high, x + wide] - sums[y, x + wide] - sums[y + high, x] + sums[y, x];
    }

    /// <summary>
    /// A point where the piece is visible, at the height of its middle if possible, well to one side; null if it is hidden.
    /// </summary>
    public Point? Seen(int piece)
    {
        var (left, top, right, bottom) = Squares(_pieces[piece].Bounds);
        var middle = _pieces[piece].Bounds.Centre;
        Point? best = null;
        var nearest = double.MaxValue;
        for (var y = top; y <= bottom; y++)
        {
            for (var x = left; x <= right; x++)
            {
                var at = new Point(_box.Left + (x + 0.5) * _square, _box.Top + (y + 0.5) * _square);
                var fromSide = Math.Min(at.X - _box.Left, _box.Right - at.X);
                var far = Math.Abs(at.Y - middle.Y) + fromSide / 4;
                if (_seen[y * _across + x] == piece && far < nearest)
                {
                    (nearest, best) = (far, at);
                }
            }
        }

        return best;
    }

    private int[,] Sums(int piece, int left, int top, int right, int bottom)
    {
        var sums = new int[bottom - top + 2, right - left + 2];
        for (var y = top; y <= bottom; y++)
        {
            for (var x = left; x <= right; x++)
            {
                sums[y - top + 1, x - left + 1] = sums[y - top, x - left + 1] + sums[y - top + 1, x - left] - sums[y - top, x - left]
                    + (_seen[y * _across + x] == piece ? 1 : 0);
            }
        }

        return sums;
    }

    private (int Left, int Top, int Right, int Bottom) Squares(Bounds box) => (
        Square(box.Left - _box.Left, _across), Square(box.Top - _box.Top, _down),
        Square(box.Right - _box.Left, _across), Square(box.Bottom - _box.Top, _down));

    private int Square(double distance, int count) => Math.Clamp((int)Math.Floor(distance / _square), 0, count - 1);

    /// <summary>Every square whose middle lies inside, by the winding rule row by row.</summary>
    private void Fill(Outline outline, int value)
    {
        var (_, top, _, bottom) = Squares(outline.Bounds);
        var rows = new List<(double X, int Turn)>?[bottom - top + 1];
        foreach (var contour in outline.Contours)
        {
            AddCrossings(contour.Flatten(0.05), top, rows);
        }

        for (var row = top; row <= bottom; row++)
        {
            if (rows[row - top] is not { } found)
            {
                continue;
            }

            var crossings = found.OrderBy(c => c.X).ToList();
            var winding = 0;
            for (var i = 0; i + 1 < crossings.Count; i++)
            {
                winding += crossings[i].Turn;
                if (winding == 0)
                {
                    continue;
                }

                var first = Math.Max(0, (int)Math.Ceiling((crossings[i].X - _box.Left) / _square - 0.5));
                var last = Math.Min(_across - 1, (int)Math.Floor((crossings[i + 1].X - _box.Left) / _square - 0.5));
                if (last >= first)
                {
                    Array.Fill(_seen, value, row * _across + first, last - first + 1);
                }
            }
        }
    }

    /// <summary>
    /// Where the sides of a polygon cross the middles of the rows; each side is examined only in the rows that it reaches.
    /// </summary>
    private void AddCrossings(List<Point> polygon, int top, List<(double X, int Turn)>?[] rows)
    {
        for (var i = 0; i < polygon.Count; i++)
        {
            var (a, b) = (polygon[i], polygon[(i + 1) % polygon.Count]);
            var (first, last) = (Square(Math.Min(a.Y, b.Y) - _box.Top, _down), Square(Math.Max(a.Y, b.Y) - _box.Top, _down));
            for (var row = Math.Max(first, top); row <= last && row - top < rows.Length; row++)
            {
                var y = _box.Top + (row + 0.5) * _square;
                if (a.Y <= y != b.Y <= y)
                {
                    (rows[row - top] ??= []).Add((a.X + (y - a.Y) / (b.Y - a.Y) * (b.X - a.X), a.Y <= y ? 1 : -1));
                }
            }
        }
    }

    private void Trace(Outline outline)
    {
        foreach (var contour in outline.Contours)
        {
            var points = contour.Flatten(0.05);
            for (var i = 0; i < points.Count; i++)
            {
                var (a, b) = (points[i], points[(i + 1) % points.Count]);
                var steps = Math.Max(1, (int)Math.Ceiling(2 * Math.Max(Math.Abs(b.X - a.X), Math.Abs(b.Y - a.Y)) / _square));
                for (var step = 0; step <= steps; step++)
                {
                    var share = (double)step / steps;
                    var (x, y) = (a.X + share * (b.X - a.X), a.Y + share * (b.Y - a.Y));
                    _seen[Square(y - _box.Top, _down) * _across + Square(x - _box.Left, _across)] = Line;
                }
            }
        }
    }
}
