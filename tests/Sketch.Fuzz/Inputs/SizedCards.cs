using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Sketch.Fuzz.Inputs;

/// <summary>One way of several in which the same card can be written.</summary>
/// <param name="Head">The lines above the base, after the title.</param>
/// <param name="Length">Writes a length given in sixteenths of an inch.</param>
internal sealed record CardWriting(string Head, Func<int, string> Length)
{
    public static readonly CardWriting Inches = new("", sixteenths => $"{sixteenths}/16");

    public static readonly CardWriting Millimetres = new(
        "units mm\n", sixteenths => (sixteenths * 1.5875m).ToString(CultureInfo.InvariantCulture));

    /// <summary>Each length twice as long.</summary>
    public static readonly CardWriting Twice = new("", sixteenths => $"{2 * sixteenths}/16");

    /// <summary>Whether the pieces have names.</summary>
    public bool HasNames { get; init; }

    /// <summary>Whether mats give both borders together, as <c>+1/8</c>, and not each, as <c>border 1/16</c>.</summary>
    public bool WritesTotals { get; init; }

    /// <summary>Whether pieces that lie on the same piece are written last to first.</summary>
    public bool IsReversed { get; init; }
}

/// <summary>
/// A random card whose sizes and places follow from written lengths alone: no words, named sizes or unwritten borders. So it is known how
/// they change when the card is written in another way.
/// </summary>
internal sealed class SizedCards
{
    private const int Deepest = 3;

    private const int Row = 5, Grid = 6;

    private static readonly string[] Round = ["circle", "star", "heart", "hexagon", "scallop", "arch", "tag", "tile", "quatrefoil", "drop"];

    private static readonly string[] Boxes = ["panel", "strip", "oval", "banner", "ticket", "rounded", "notched"];

    private readonly Draws _draws;
    private readonly (int Width, int Height) _base;
    private readonly ImmutableArray<Drawn> _pieces;

    public SizedCards(int number)
    {
        _draws = new((ulong)number);
        _base = (_draws.From(48, 100), _draws.From(64, 120));
        _pieces = Pieces(1);
    }

    /// <summary>The text of the card, written in some way.</summary>
    public string Text(CardWriting way)
    {
        var (width, height) = (way.Length(_base.Width), way.Length(_base.Height));
        var text = new StringBuilder($"card \"Test\"\n{way.Head}base {width} x {height}, fold left, of white\nfront\n");
        var names = 0;
        Write(_pieces, 1);
        return text.ToString();

        void Write(ImmutableArray<Drawn> pieces, int depth)
        {
            foreach (var piece in way.IsReversed ? pieces.Reverse() : pieces)
            {
                var name = way.HasNames ? $"p{++names}: " : "";
                text.Append(' ', 2 * depth).Append(name).Append(piece.Line(way.Length)).Append('\n');
                foreach (var border in piece.Borders)
                {
                    var written = way.WritesTotals ? $"+{way.Length(2 * border)}" : $"border {way.Length(border)}";
                    text.Append(' ', 2 * depth + 2).Append($"mat {written}, of navy\n");
                }

                Write(piece.On, depth + 1);
            }
        }
    }

    private ImmutableArray<Drawn> Pieces(int depth) =>
        [.. Enumerable.Range(0, _draws.From(1, depth == 1 ? 3 : 2)).Select(_ => Piece(depth))];

    private Drawn Piece(int depth)
    {
        var (width, height) = (_draws.From(4, 64 >> depth), _draws.From(4, 80 >> depth));
        var (left, top, gap) = (_draws.From(0, 32 >> depth), _draws.From(0, 48 >> depth), _draws.From(0, 6));
        var (round, box) = (_draws.Any(Round), _draws.Any(Boxes));
        var form = _draws.Below(9);
        Func<Func<int, string>, string> line = form switch
        {
            0 => l => $"{round} {l(width)}, left {l(left)}, top {l(top)}, of red",
            1 => l => $"{round} {l(width)}, right {l(left)}, of red",
            2 => l => $"{box} {l(width)} x {l(height)}, bottom {l(top)}, of red",
            3 => l => $"panel full x {l(height)}, left {l(left)}, of red",
            4 => l => $"panel, showing {l(Math.Min(left, 4))}, of red",
            Row => l => $"3 {box} {l(width / 3 + 1)} x {l(height)}, in a row, gap {l(gap)}, of red",
            Grid => l => $"4 {round} {l(width / 2 + 1)}, in a grid 2 across, gap {l(gap)}, top {l(top)}, of red",
            7 => l => $"{box} {l(width)} x {l(height)}, shift right {l(left)}, turn 30, of red",
            _ => l => $"{box} {l(width)} x {l(height)}, of red",
        };
        var isPlain = _draws.OnceIn(2);
        return new(line, isPlain ? [] : [.. Enumerable.Range(0, _draws.From(1, 2)).Select(_ => _draws.From(1, 4))],
            depth < Deepest && form is not (Row or Grid) && _draws.OnceIn(2) ? Pieces(depth + 1) : []);
    }

    /// <summary>A piece, its mats and what lies on it.</summary>
    private sealed record Drawn(Func<Func<int, string>, string> Line, ImmutableArray<int> Borders, ImmutableArray<Drawn> On);
}
