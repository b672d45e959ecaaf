using Sketch.Diagnostics;
using Sketch.Lettering;
using Sketch.Papers;
using Sketch.Shapes;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.World;

/// <summary>
/// All that the engine may request from outside: files and fonts. The host decides which files may be read,
/// so the command line, the page and the tests share one engine. Problems read as the end of a sentence after a colon: "it is not a
/// text file."
/// </summary>
public interface IWorld
{
    /// <summary>Reads a text file that another file names.</summary>
    /// <param name="path">The path as written, relative to the folder of <paramref name="namedIn"/>.</param>
    /// <param name="namedIn">The path of the file that names it.</param>
    /// <returns>The text.</returns>
    Result<SourceText> ReadText(string path, string namedIn);

    /// <summary>Names of the files in a file's own folder, in no particular order; empty if the folder cannot be read.</summary>
    /// <param name="path">The file's path.</param>
    IEnumerable<string> NamesBeside(string path);

    /// <summary>Reads the outline of all filled shapes in an SVG file.</summary>
    /// <param name="path">The path as written, relative to the folder of <paramref name="namedIn"/>.</param>
    /// <param name="namedIn">The path of the file that names it.</param>
    /// <returns>The outline in millimetres with its box at 0, 0.</returns>
    Result<Outline> ReadArtwork(string path, string namedIn);

    /// <summary>Reads a scan or photograph of a paper.</summary>
    /// <param name="path">The path as written, relative to the folder of <paramref name="namedIn"/>.</param>
    /// <param name="namedIn">The path of the file that names it.</param>
    /// <param name="width">The true width of what the picture shows, after it is turned upright.</param>
    /// <returns>The picture.</returns>
    Result<IPaperPicture> ReadPicture(string path, string namedIn, Length width);

    /// <summary>Shapes one line of words into outlines.</summary>
    /// <param name="words">The words, without line breaks.</param>
    /// <param name="font">A font file, relative to <paramref name="namedIn"/>, or the name of an installed font; null for the tool's own
    /// font.</param>
    /// <param name="namedIn">The path of the file that holds the words.</param>
    /// <returns>The shaped words; a problem is one of the font.</returns>
    Result<ShapedWords> ShapeWords(string words, string? font, string namedIn);

    /// <summary>Sets one line of words in the tool's own font, to print on a page beside or about a card.</summary>
    /// <param name="words">The words, without line breaks.</param>
    TextRun SetWords(string words);
}
