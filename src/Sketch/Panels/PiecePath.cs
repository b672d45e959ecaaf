using System.Collections.Immutable;

namespace Sketch.Panels;

/// <summary>
/// The path of a piece: its face, then the names of what it lies on from the face upwards, and its own name, such as
/// <c>front/sky/lamp</c> or <c>front/gem[1]/mat</c>. The base has a path without names, <c>base</c>.
/// </summary>
public sealed class PiecePath : IEquatable<PiecePath>
{
    private const string BaseName = "base";

    private readonly string? _step;
    private string? _text;

    private PiecePath(FaceKind face, PiecePath? parent, string? name, int? copy)
    {
        (Face, Parent, Name, Copy) = (face, parent, name ?? BaseName, copy);
        _step = name is not null && copy is { } number ? $"{name}[{number}]" : name;
    }

    /// <summary>The path of the card itself.</summary>
    public static PiecePath Base { get; } = new(FaceKind.Front, null, null, null);

    /// <summary>The face that the piece belongs to.</summary>
    public FaceKind Face { get; }

    /// <summary>The path of what the piece lies on; null if that is the face, and for the base.</summary>
    public PiecePath? Parent { get; }

    /// <summary>The piece's own name.</summary>
    public string Name { get; }

    /// <summary>Which copy of a repeat it is, from 1; null for a single piece.</summary>
    public int? Copy { get; }

    /// <summary>The names from the face to the piece, without the numbers of copies; none for the base.</summary>
    public ImmutableArray<string> Names => _step is null ? [] : Parent is null ? [Name] : Parent.Names.Add(Name);

    /// <summary>The path within its face, such as <c>sky/lamp</c>.</summary>
    public string WithinFace => _step is null ? BaseName : Parent is null ? _step : $"{Parent.WithinFace}/{_step}";

    /// <summary>The path that all copies share: without their numbers, such as <c>front/gem/mat</c>.</summary>
    public PiecePath WithoutCopies => _step is null ? Base : new(Face, Parent?.WithoutCopies, Name, null);

    /// <summary>A piece that lies directly on a face.</summary>
    /// <param name="face">The face.</param>
    /// <param name="name">The piece's name.</param>
    /// <param name="copy">Which copy, from 1, or null.</param>
    public static PiecePath On(FaceKind face, string name, int? copy = null) => new(face, null, name, copy);

    /// <summary>A piece that lies on this one, or a mat of it.</summary>
    public PiecePath Then(string name, int? copy = null) => new(Face, this, name, copy);

    /// <inheritdoc/>
    public bool Equals(PiecePath? other) => other is not null && (ReferenceEquals(this, other) || ToString() == other.ToString());

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as PiecePath);

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>The path as written.</summary>
    public override string ToString() => _text ??= _step is null ? BaseName
        : Parent is null ? $"{Sketch.Panels.Face.NameOf(Face)}/{_step}" : $"{Parent}/{_step}";

    /// <summary>Whether two paths lead to the same piece.</summary>
    public static bool operator ==(PiecePath? left, PiecePath? right) => left is null ? right is null : left.Equals(right);

    /// <summary>Whether two paths lead to different pieces.</summary>
    public static bool operator !=(PiecePath? left, PiecePath? right) => !(left == right);
}
