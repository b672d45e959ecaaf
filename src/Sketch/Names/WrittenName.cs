using Sketch.Syntax;
using Sketch.Text;

namespace Sketch.Names;

/// <summary>What a name names.</summary>
public enum NameKind
{
    /// <summary>A piece of a card.</summary>
    Piece,

    /// <summary>A role of a card.</summary>
    Role,

    /// <summary>A part of a card, which its <c>use</c> lines repeat.</summary>
    Part,

    /// <summary>A paper of a stash.</summary>
    Paper,

    /// <summary>What else a stash lists.</summary>
    Supply,
}

/// <summary>A name where it is written.</summary>
/// <param name="Kind">What it names.</param>
/// <param name="Text">The name as written here.</param>
/// <param name="Span">Its place.</param>
/// <param name="Declaration">The line that declares it; the same object wherever the same thing is named.</param>
/// <param name="IsDeclaration">Whether it is declared here.</param>
public sealed record WrittenName(NameKind Kind, string Text, TextSpan Span, LineSyntax Declaration, bool IsDeclaration);
