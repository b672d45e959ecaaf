using Sketch.Cli.Commands;
using Sketch.Diagnostics;
using Sketch.Panels;

namespace Sketch.Cli.Verbs;

/// <summary>
/// The names of the pictures of a run. No two cards may share a name, as the back of <c>x-envelope.card</c> and the back of the envelope of
/// <c>x.card</c> would. Names that differ only in case are one name, as they are on many disks.
/// </summary>
internal sealed class PictureNames
{
    private readonly Dictionary<string, string> _takenBy = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The name of a picture of a card, without its extension.</summary>
    public static string Of(Compilation file, FaceKind face) => $"{InputFiles.StemOf(file.Source.Path)}-{Face.NameOf(face)}";

    /// <summary>Reserves the paths of the pictures of a card, all of them or none.</summary>
    /// <param name="file">The card's file.</param>
    /// <param name="paths">The paths of its pictures.</param>
    /// <returns>Null, or a finding where an earlier card has one of the paths; the card is then not drawn.</returns>
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
