using System.Globalization;
using System.Text;

namespace Sketch.Drawing;

/// <summary>Gives the elements of one picture ids that a person can read and that are never used twice.</summary>
/// <param name="prefix">Precedes every id, to distinguish the pictures of one drawing; begins with a letter.</param>
public sealed class SvgIds(string prefix = "")
{
    private readonly HashSet<string> _taken = [];
    private readonly Dictionary<string, int> _repeats = [];

    /// <summary>
    /// An id made of a piece's path or another name: letters and digits stay, and everything between them becomes one hyphen
    /// (<c>front/gem[1]/mat</c> gives <c>front-gem-1-mat</c>); a number is added if another element has that id. The name may be another
    /// id with more after it, which has the prefix already.
    /// </summary>
    public string Claim(string name)
    {
        var plain = Plain(name);
        var id = plain.StartsWith(prefix, StringComparison.Ordinal) ? plain : prefix + plain;
        if (_taken.Add(id))
        {
            return id;
        }

        var number = _repeats.GetValueOrDefault(id, 1);
        string next;
        do
        {
            number++;
            next = string.Create(CultureInfo.InvariantCulture, $"{id}-{number}");
        }
        while (!_taken.Add(next));

        _repeats[id] = number;
        return next;
    }

    private static string Plain(string name)
    {
        var id = new StringBuilder(name.Length);
        foreach (var c in name)
        {
            if (char.IsLetterOrDigit(c))
            {
                id.Append(c);
            }
            else if (id.Length > 0 && id[^1] != '-')
            {
                id.Append('-');
            }
        }

        while (id.Length > 0 && id[^1] == '-')
        {
            id.Length--;
        }

        // In XML an id must not begin with a digit.
        return id.Length == 0 || char.IsDigit(id[0]) ? $"x{id}" : id.ToString();
    }
}
