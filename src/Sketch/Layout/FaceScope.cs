using Sketch.Panels;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>A face with the piece lines on it.</summary>
internal sealed class FaceScope(FaceKind kind, Size size, Location location)
{
    public FaceKind Kind { get; } = kind;

    public Size Size { get; } = size;

    public Location Location { get; } = location;

    public List<CopySet> Units { get; } = [];

    /// <summary>All named sets of the face, however deep.</summary>
    public Dictionary<string, List<CopySet>> ByName { get; } = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The height of the flap of an envelope, which other pieces may refer to; it is not a piece.</summary>
    public Length? Flap { get; init; }
}
