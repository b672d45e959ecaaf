namespace Sketch.Colours;

/// <summary>A colour of the sRGB space, 8 bits a channel.</summary>
public readonly record struct Rgb(byte Red, byte Green, byte Blue)
{
    /// <summary>The colour as SVG and the language write it, such as #9fc9e8.</summary>
    public string Hex => $"#{Red:x2}{Green:x2}{Blue:x2}";

    /// <summary>Reads three or six hex digits, without the sign in front.</summary>
    /// <exception cref="FormatException">There are not three or six hex digits.</exception>
    public static Rgb FromHex(string digits)
    {
        var six = digits.Length == 3 ? string.Concat(digits.Select(d => new string(d, 2))) : digits;
        return six.Length == 6
            ? new(Convert.ToByte(six[..2], 16), Convert.ToByte(six[2..4], 16), Convert.ToByte(six[4..], 16))
            : throw new FormatException($"'{digits}' has neither three nor six hex digits.");
    }

    /// <summary>The colour in hex.</summary>
    public override string ToString() => Hex;
}
