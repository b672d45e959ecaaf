namespace Sketch.Text;

/// <summary>A part of one file, to which findings point.</summary>
/// <param name="Source">The file.</param>
/// <param name="Span">The part.</param>
public readonly record struct Location(SourceText Source, TextSpan Span)
{
    /// <summary>Where it begins.</summary>
    public LinePosition Start => Source.PositionOf(Span.Start);

    /// <summary>Where it ends, exclusive.</summary>
    public LinePosition End => Source.PositionOf(Span.End);
}
