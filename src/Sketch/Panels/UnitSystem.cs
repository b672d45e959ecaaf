using Sketch.Units;

namespace Sketch.Panels;

/// <summary>The units of bare numbers in a file.</summary>
public enum UnitSystem
{
    /// <summary>Inches.</summary>
    Inches,

    /// <summary>Millimetres.</summary>
    Millimetres,

    /// <summary>Centimetres.</summary>
    Centimetres,
}

/// <summary>How lengths of a file are written.</summary>
public static class UnitSystemFormat
{
    /// <summary>Inches for files in inches, millimetres for files in millimetres or centimetres.</summary>
    /// <param name="units">The file's units.</param>
    /// <param name="marks">Marks per inch of the maker's ruler: 16, 32 or 64.</param>
    public static LengthFormat Format(this UnitSystem units, int marks = LengthFormat.RulerMarks) => new(units != UnitSystem.Inches, marks);
}
