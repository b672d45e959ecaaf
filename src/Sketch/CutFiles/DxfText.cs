using System.Globalization;
using System.Text;
using Sketch.Shapes;

namespace Sketch.CutFiles;

/// <summary>
/// Writes the groups that make up a DXF file: a group code and a value, each on its own line.
/// </summary>
internal sealed class DxfText
{
    private readonly StringBuilder _text = new();
    private int _handle;

    /// <summary>A handle that no other object has.</summary>
    public string NewHandle() => (++_handle).ToString("X", CultureInfo.InvariantCulture);

    /// <summary>A group with words.</summary>
    public DxfText Add(int code, string value)
    {
        _text.Append(code.ToString(CultureInfo.InvariantCulture).PadLeft(3)).Append('\n').Append(value).Append('\n');
        return this;
    }

    /// <summary>A group with a whole number.</summary>
    public DxfText Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    /// <summary>A group with a number of millimetres, or a bulge, with six decimals at most.</summary>
    public DxfText Add(int code, double value)
    {
        var number = Math.Round(value, 6);
        return Add(code, (number == 0 ? 0 : number).ToString("0.0#####", CultureInfo.InvariantCulture));
    }

    /// <summary>A point in two dimensions.</summary>
    public DxfText Add(int code, Point point) => Add(code, point.X).Add(code + 10, point.Y);

    /// <summary>The whole text.</summary>
    public override string ToString() => _text.ToString();
}
