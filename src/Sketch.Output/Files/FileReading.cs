using Sketch.Diagnostics;
using Sketch.Text;

namespace Sketch.Output.Files;

/// <summary>The result of reading a file named on the command line. Exactly one of three cases holds.</summary>
/// <param name="Source">
/// The file's text; an empty text of that name if the content is not text; null if the operating system cannot open the file.
/// </param>
/// <param name="Finding">What is wrong with the content, or null.</param>
/// <param name="Problem">Why the operating system cannot open it, in a plain sentence; empty if it can.</param>
public sealed record FileReading(SourceText? Source, Finding? Finding, string Problem);
