namespace Sketch.Kinds;

/// <summary>What a piece physically is.</summary>
public enum PieceMatter
{
    /// <summary>Cut from paper or cardstock.</summary>
    Paper,

    /// <summary>Inked on what lies beneath: text, stamps, writing lines.</summary>
    Ink,

    /// <summary>A ready-made thing that is stuck on: gems, stickers, tape, ribbon.</summary>
    Ready,

    /// <summary>A hole; it cuts its parent.</summary>
    Hole,

    /// <summary>Nothing visible: a group.</summary>
    Unseen,
}
