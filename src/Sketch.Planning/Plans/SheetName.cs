using Sketch.Stationery;
using Sketch.Units;

namespace Sketch.Planning.Plans;

/// <summary>What a sheet is called.</summary>
internal static class SheetName
{
    /// <summary>Its trade name, such as <c>letter</c>, or its size.</summary>
    public static string Of(Size size, LengthFormat lengths) =>
        NamedSizes.Sheets.FirstOrDefault(s => s.Size == size || s.Size == size.Turned())?.Name is { } name
            && !name.Contains('x', StringComparison.Ordinal) ? name : lengths.Text(size);
}
