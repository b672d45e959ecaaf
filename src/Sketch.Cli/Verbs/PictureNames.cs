using Sketch.Diagnostics;
using Sketch.Panels;

namespace Sketch.Cli.Verbs;

/// <summary>
/// The names of a run's pictures. No two cards draw to one name: the back of <c>x-envelope.card</c> and the back of the envelope of
/// <c>x.card</c> would. Names that differ only in case are one name, as they are on many disks.
/// </summary>
internal sealed class PictureNames
{
    private readonly Dictionary<string, string> _takenBy = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The name of a card's picture without its ending.</summary>
    public static string Of(Compilation file, FaceKind face) => $"{Path.GetFileNameWithoutExtension(file.Source.Path)}-{Face.NameOf(face)}";

    /// <summary>Takes the paths of a card's pictures, all of them or none.</summary>
    /// <param name="file">The card's file.</param>
    /// <param name="paths">Where its pictures go.</param>
    /// <returns>Null, or a finding where a card before it has one of the paths; the card is not drawn then.</returns>
    public Finding? Take(Compilation file, IReadOnlyCollection<string> paths)
    {
        if (paths.FirstOrDefault(_takenBy.ContainsKey) is { } taken)
        {
            return new(
                FindingCatalogue.SamePicture,
                file.Card!.Location,
                $"\"{_takenBy[taken]}\" and \"{file.Source.Path}\" would both be drawn as \"{taken}\"; the second is left out.",
                "Draw it separately into another folder, or rename one of the files.");
        }

        foreach (var path in paths)
        {
            _takenBy.Add(path, file.Source.Path);
        }

        return null;
    }
}
