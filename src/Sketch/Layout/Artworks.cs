using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Shapes;
using Sketch.World;

namespace Sketch.Layout;

/// <summary>The outlines that <c>outline</c> and <c>stamp</c> pieces take from files, each read once.</summary>
internal sealed class Artworks(IWorld world, FindingBag findings)
{
    private readonly Dictionary<(string File, string NamedIn), Outline?> _read = [];

    /// <summary>The outline in millimetres with its box at 0, 0; null when there is none, which is reported once.</summary>
    public Outline? Of(Node node)
    {
        var bound = node.Bound;
        if (bound.Rules.File is not { } file)
        {
            if (_read.TryAdd(("", bound.Location.ToString()), null))
            {
                findings.Add(FindingCatalogue.Expected, bound.Location, $"A {bound.Kind.Name} needs a file, but none is named.",
                    bound.Kind == PieceKind.Stamp
                        ? "Write stamp 2 wide, file \"boat.svg\", or width x height and its name: stamp 2 x 1, using lighthouse."
                        : $"Write {bound.Kind.Name} 2 wide, file \"boat.svg\".");
            }

            return null;
        }

        var named = file.Clause.File;
        var key = (named.Text, file.Source.Path);
        if (!_read.TryGetValue(key, out var outline))
        {
            var artwork = world.ReadArtwork(key.Text, key.Path);
            outline = artwork.ValueOrDefault;
            if (outline is null || outline.IsEmpty)
            {
                outline = null;
                var near = artwork.Problem is not null ? NearestFile.Find(world, key.Text, key.Path, ".svg") : null;
                var (hint, replacement) = NearestFile.Hint(near, "Name an SVG file with one filled outline, in the same folder.");
                findings.Add(FindingCatalogue.BadFile, new(file.Source, named.Span),
                    $"\"{named.Text}\" cannot be used: {artwork.Problem ?? "there is no filled shape in it."}", hint,
                        replacement);
            }

            _read[key] = outline;
        }

        return outline;
    }
}
