namespace Sketch.Cutting.Layouts;

/// <summary>
/// All pieces that are equal for cutting: one size, in nanometres with the kerf of one cut added to each side length, so that a row of
/// pieces fits a sheet (with the same added) exactly when it can be cut.
/// </summary>
internal sealed record Kind(int Index, long Width, long Height, bool MayTurn, int Demand)
{
    public double Area => (double)Width * Height;

    /// <summary>Its possible orientations: one for squares and upright pieces, else two.</summary>
    public IEnumerable<(long Width, long Height)> Ways()
    {
        yield return (Width, Height);
        if (MayTurn && Width != Height)
        {
            yield return (Height, Width);
        }
    }

    public bool Fits(long width, long height) =>
        (Width <= width && Height <= height) || (MayTurn && Height <= width && Width <= height);
}
