namespace Sketch.Kinds;

/// <summary>The kinds of piece; <see cref="PieceKinds"/> holds their words and traits.</summary>
public enum PieceKind
{
    /// <summary>A rectangle of paper.</summary>
    Panel,

    /// <summary>A layer under a piece that shows a border.</summary>
    Mat,

    /// <summary>A copy of the outline of a piece or mat beneath it, set off to the right and down.</summary>
    Shadow,

    /// <summary>A long rectangle of paper.</summary>
    Strip,

    /// <summary>A thin line of paper or foil, bought by its thickness if the stash has it.</summary>
    Line,

    /// <summary>A border of even thickness with an open middle.</summary>
    Frame,

    /// <summary>Pieces that are placed together.</summary>
    Group,

    /// <summary>Words cut out of paper.</summary>
    Word,

    /// <summary>Words stamped or printed on paper that is cut round them.</summary>
    Sentiment,

    /// <summary>Words in ink on what lies beneath.</summary>
    Text,

    /// <summary>A drawing in ink on what lies beneath.</summary>
    Stamp,

    /// <summary>Lines to write on.</summary>
    Ruled,

    /// <summary>A stick-on gem.</summary>
    Gem,

    /// <summary>A round, domed dot of enamel.</summary>
    Dot,

    /// <summary>A paper fastener with a domed head.</summary>
    Brad,

    /// <summary>A button with holes.</summary>
    Button,

    /// <summary>A tied bow.</summary>
    Bow,

    /// <summary>A printed sticker.</summary>
    Sticker,

    /// <summary>A length of ribbon.</summary>
    Ribbon,

    /// <summary>A length of twisted cord.</summary>
    Twine,

    /// <summary>A length of decorative tape.</summary>
    Tape,

    /// <summary>A hole in what it lies on.</summary>
    Window,

    /// <summary>As wide as high.</summary>
    Square,

    /// <summary>A rectangle with rounded corners.</summary>
    Rounded,

    /// <summary>A circle.</summary>
    Circle,

    /// <summary>An ellipse.</summary>
    Oval,

    /// <summary>A star.</summary>
    Star,

    /// <summary>A heart.</summary>
    Heart,

    /// <summary>A hexagon that lies on a side.</summary>
    Hexagon,

    /// <summary>A hexagon that stands on a corner.</summary>
    Tile,

    /// <summary>A circle with a scalloped edge.</summary>
    Scallop,

    /// <summary>A rectangle with a round top.</summary>
    Arch,

    /// <summary>A tag with cut corners.</summary>
    Tag,

    /// <summary>A strip that may end in swallowtails.</summary>
    Banner,

    /// <summary>A rectangle whose corners are cut out round.</summary>
    Ticket,

    /// <summary>A rectangle whose corners are cut out square.</summary>
    Notched,

    /// <summary>Four overlapping circles.</summary>
    Quatrefoil,

    /// <summary>A triangle that hangs point downwards.</summary>
    Pennant,

    /// <summary>A rectangle with a thumb notch in its upper edge.</summary>
    Pocket,

    /// <summary>A drop with its point upwards.</summary>
    Drop,

    /// <summary>A shape cut from a drawing in a file.</summary>
    Outline,
}
