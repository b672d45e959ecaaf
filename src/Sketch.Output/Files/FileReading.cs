using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Output.Files;

/// <summary>What came of reading a file that was named on the command line. Exactly one of three cases holds.</summary>
/// <param name="Source">
/// The file's text; an empty text of that name where the content is no text; null when the operating system cannot open the file.
/// </param>
/// <param name="Finding">What is wrong with the content, or null.</param>
/// <param name="Problem">Why the operating system cannot open it, in a plain sentence; empty when it can.</param>
public sealed record FileReading(SourceText? Source, Finding? Finding, string Problem);
