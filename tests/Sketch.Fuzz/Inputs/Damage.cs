using System.Text;

namespace Sketch.Fuzz.Inputs;

/// <summary>Damages a file as slips, broken disks and attackers do: by lines, by words, by characters and by bytes.</summary>
internal static class Damage
{
    private static readonly string[] Scraps = [",", ":", "/", "+", "\"", "#", "\n", "\n    ", "\t", "-", "⅝", " ", "\u00a0", "'", "\r\n",
        "x",
        "999999999", "0", "1000000 m", "1e9", "1/64", "-5", "full", "of", "in a row", "turn 45", "mat +1/8", "front", "\u202e", "\ufeff",
        "500", "\u0001", "</svg>", "&amp;", "like \"first.card\"", "part a 1 x 1", "use a", "item 1:", "on foam", "fit", "share 1/9999"];

    private static readonly byte[] Bytes = [0, 0xFF, 0x80, 0x7F, (byte)'<', (byte)'"', (byte)'\n', (byte)'9', (byte)'-', 1, 0xC0, 0xED];

    /// <summary>A text with one to four changes of lines, words or characters.</summary>
    /// <param name="text">The text.</param>
    /// <param name="others">Texts from which lines come.</param>
    /// <param name="draws">The random numbers.</param>
    public static string OfText(string text, IReadOnlyList<string> others, Draws draws)
    {
        for (var changes = draws.OnceIn(3) ? draws.From(2, 4) : 1; changes > 0; changes--)
        {
            text = draws.Below(6) switch
            {
                0 or 1 => OfParts(text, '\n', () => draws.Any(draws.Any(others).Split('\n')), draws),
                2 or 3 or 4 => OfParts(text, ' ', () => draws.OnceIn(2) ? draws.Any(Scraps) : draws.Any(draws.Any(others).Split(' ',
                    '\n')), draws),
                _ => text.Insert(draws.Below(text.Length + 1), draws.Any(Scraps)),
            };
        }

        return text;
    }

    /// <summary>Content with one to eight changes of bytes.</summary>
    public static byte[] OfBytes(byte[] content, Draws draws)
    {
        var bytes = new List<byte>(content);
        for (var changes = draws.From(1, 8); changes > 0; changes--)
        {
            var at = draws.Below(bytes.Count + 1);
            var count = Math.Min(bytes.Count - at, 1 + draws.Below(draws.OnceIn(4) ? 1 + bytes.Count : 8));
            switch (draws.Below(6))
            {
                case 0:
                    bytes.RemoveRange(at, count);
                    break;
                case 1:
                    bytes.InsertRange(at, bytes.GetRange(at, Math.Min(count, 10_000)));
                    break;
                case 2:
                    bytes.Insert(at, draws.Any(Bytes));
                    break;
                case 3 when at < bytes.Count:
                    bytes[at] ^= (byte)(1 << draws.Below(8));
                    break;
                case 4 when at < bytes.Count:
                    bytes[at] = draws.Any(Bytes);
                    break;
                default:
                    bytes.InsertRange(at, Encoding.UTF8.GetBytes(draws.Any(Scraps)));
                    break;
            }
        }

        return [.. bytes];
    }

    private static string OfParts(string text, char between, Func<string> other, Draws draws)
    {
        var parts = text.Split(between).ToList();
        var (a, b) = (draws.Below(parts.Count), draws.Below(parts.Count));
        switch (draws.Below(5))
        {
            case 0:
                parts.RemoveAt(a);
                break;
            case 1:
                parts.Insert(a, parts[b]);
                break;
            case 2:
                (parts[a], parts[b]) = (parts[b], parts[a]);
                break;
            case 3:
                parts[a] = other();
                break;
            default:
                parts.Insert(a, other());
                break;
        }

        return string.Join(between, parts);
    }
}
