using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Sketch.Diagnostics;
using Sketch.Shapes;

namespace Sketch.Output.Artwork;

/// <summary>
/// Reads the shape to cut or stamp from an SVG file: all filled shapes, united. Strokes have no outline of their own and do not count.
/// Nothing outside the file is ever loaded; document type definitions and scripts are ignored.
/// Lengths are physical if the file gives physical units, else 96 units make an inch, as in CSS.
/// </summary>
public static class ArtworkReader
{
    /// <summary>Largest file read: 5 MB.</summary>
    public const int FileLimit = 5_000_000;

    /// <summary>The most corners and curves that one file may have; uniting more would take minutes.</summary>
    public const int SegmentLimit = 50_000;

    /// <summary>Reads an SVG file.</summary>
    /// <param name="svg">The file's content.</param>
    /// <returns>The outline in millimetres with its box at 0, 0; a problem reads as the end of a sentence after a colon.</returns>
    public static Result<Outline> Read(Stream svg)
    {
        try
        {
            var shapes = new ShapeCollector();
            shapes.Collect(Load(svg));
            return Unite(shapes.Shapes) is { } outline
                ? Result.Of(outline)
                : new Failure(
                    $"it has no filled shapes to cut{(shapes.HasImages ? ", only photographs: trace them in a drawing program" : "")}.");
        }
        catch (XmlException broken)
        {
            return new Failure(string.Create(CultureInfo.InvariantCulture,
                $"it is not a valid SVG file: it cannot be read from line {broken.LineNumber}, column {broken.LinePosition}."));
        }
        catch (ArtworkException fault)
        {
            return new Failure($"it {fault.Message}");
        }
    }

    private static XElement Load(Stream svg)
    {
        var settings = new XmlReaderSettings
        {
            DtdProcessing = DtdProcessing.Ignore,
            XmlResolver = null,
            MaxCharactersInDocument = FileLimit,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
        };
        using var reader = XmlReader.Create(svg, settings);
        var root = XDocument.Load(reader).Root!;
        return root.Name.LocalName == "svg"
            ? root : throw new ArtworkException($"is not an SVG file: it starts with <{root.Name.LocalName}>.");
    }

    /// <summary>
    /// United while the whole is about 100 mm large, so that curves that become chords deviate by a fifty-thousandth of it.
    /// </summary>
    private static Outline? Unite(IReadOnlyList<Outline> shapes)
    {
        var all = shapes.Where(s => !s.IsEmpty).Select(s => s.Bounds).Aggregate((Bounds?)null, (box, next) => box?.With(next) ?? next);
        if (all is not { Width: > 0, Height: > 0 } box)
        {
            return null;
        }

        var scale = 100 / Math.Max(box.Width, box.Height);
        var scaled = shapes.Select(s => s.Transform(Affine.Shift(-box.Left, -box.Top).Then(Affine.Scale(scale, scale)))).ToList();
        Tangle.Refuse(scaled);
        var united = Outline.Union(scaled);
        var corner = united.Bounds;
        return united.IsEmpty ? null : united.Transform(Affine.Shift(-corner.Left, -corner.Top).Then(Affine.Scale(1 / scale, 1 / scale)));
    }
}

/// <summary>An SVG file contains something that no outline can represent; the message continues after "it".</summary>
internal sealed class ArtworkException(string message) : Exception(message);
