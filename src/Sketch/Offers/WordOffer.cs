using System.Collections.Immutable;
using Sketch.Stashes;
using Sketch.Text;

namespace Sketch.Offers;

/// <summary>What an offered word is.</summary>
public enum OfferKind
{
    /// <summary>A kind of piece.</summary>
    Piece,

    /// <summary>A word that begins another line.</summary>
    Line,

    /// <summary>A word that begins a clause.</summary>
    Clause,

    /// <summary>A role of the card.</summary>
    Role,

    /// <summary>A paper of a stash beside the file.</summary>
    Paper,

    /// <summary>A colour word.</summary>
    Colour,

    /// <summary>A pattern word.</summary>
    Pattern,

    /// <summary>A kind of lettering.</summary>
    Lettering,

    /// <summary>The name of a piece or part of the card.</summary>
    Name,

    /// <summary>A named size of a card, an envelope or a sheet.</summary>
    Size,

    /// <summary>Something ready-made or a tool in a stash beside the file.</summary>
    Supply,

    /// <summary>A file beside this one.</summary>
    File,

    /// <summary>A word that completes what stands before it.</summary>
    Word,
}

/// <summary>Something that can be written at a place.</summary>
/// <param name="Text">What is written.</param>
/// <param name="Kind">What it is.</param>
public sealed record WordOffer(string Text, OfferKind Kind);

/// <summary>All that can be written at a place.</summary>
/// <param name="Typed">What is typed of it already: the part of the text that an offer replaces.</param>
/// <param name="Offers">The offers, the likeliest first; none where nothing is known.</param>
public sealed record OfferedWords(TextSpan Typed, ImmutableArray<WordOffer> Offers);

/// <summary>What is beside a file and can be named in it.</summary>
/// <param name="Stashes">The stashes.</param>
/// <param name="Files">The names of the files.</param>
public sealed record FilesBeside(ImmutableArray<Stash> Stashes, ImmutableArray<string> Files)
{
    /// <summary>Nothing.</summary>
    public static FilesBeside None { get; } = new([], []);
}
