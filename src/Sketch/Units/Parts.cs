namespace Sketch.Units;

/// <summary>Divides a length into equal parts without losing a nanometre.</summary>
public static class Parts
{
    /// <summary>
    /// The part with the given <paramref name="index"/> (from 0) when <paramref name="whole"/> is divided into <paramref name="count"/>
    /// parts: whole nanometres, the remainder to the first ones, so that the parts add up to the whole.
    /// </summary>
    public static Length Equal(Length whole, int count, int index)
    {
        var (part, remainder) = Math.DivRem(whole.Nanometres, count);
        return new(part + (index < remainder ? 1 : 0) - (index < -remainder ? 1 : 0));
    }

    /// <summary>Where part <paramref name="index"/> begins: the sum of the parts before it.</summary>
    public static Length Before(Length whole, int count, int index)
    {
        var (part, remainder) = Math.DivRem(whole.Nanometres, count);
        return new(part * index + Math.Sign(remainder) * Math.Min(index, Math.Abs(remainder)));
    }
}
