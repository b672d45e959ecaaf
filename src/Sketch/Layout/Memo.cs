
namespace Sketch.Layout;

/// <summary>A value that is computed once; if it is asked for again while it is being computed, it is circular.</summary>
internal sealed class Memo<T>
{
    public bool IsOpen { get; set; }

    public bool IsDone { get; private set; }

    /// <summary>The value; default when it could not be computed.</summary>
    public T? Value { get; private set; }

    public bool HasValue { get; private set; }

    public void Settle(T? value, bool hasValue)
    {
        IsOpen = false;
        IsDone = true;
        Value = value;
        HasValue = hasValue;
    }
}
