namespace Sketch.Preview.Views;

/// <summary>What came of something done to a piece.</summary>
/// <param name="Text">The text after it; the same text where nothing was done.</param>
/// <param name="Piece">The path of the piece in that text; empty if it is gone.</param>
/// <param name="Said">What was done, in a sentence to be read aloud; empty for nothing.</param>
/// <param name="Refusals">What could not be done.</param>
internal sealed record HandView(string Text, string Piece, string Said, IEnumerable<RefusalView> Refusals);
