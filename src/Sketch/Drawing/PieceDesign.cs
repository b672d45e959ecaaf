using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Shapes;

namespace Sketch.Drawing;

/// <summary>How a piece is drawn.</summary>
internal enum Appearance
{
    Paper,
    Ink,
    Gem,
    Dot,
    Brad,
    Button,
    Bow,
    Sticker,
    Tape,
    Ribbon,
    Twine,
}

/// <summary>
/// All that determines what a piece looks like, from the top left of its own box; pieces of the same design are drawn once and repeated.
/// </summary>
/// <param name="Appearance">How it is drawn.</param>
/// <param name="Look">Its paper, or its ink.</param>
/// <param name="Cut">The outline as SVG path data.</param>
/// <param name="Width">Width of its box in millimetres.</param>
/// <param name="Height">Height of its box in millimetres.</param>
/// <param name="Seed">Which part of its sheet it is cut from.</param>
internal readonly record struct PieceDesign(Appearance Appearance, PaperLook Look, string Cut, double Width, double Height, ulong Seed)
{
    /// <summary>The outline of words inked on it; empty for none.</summary>
    internal string Ink { get; init; } = "";

    /// <summary>How that ink looks.</summary>
    internal PaperLook? InkLook { get; init; }

    /// <summary>Its stitches as SVG path data; empty for none.</summary>
    internal string Stitches { get; init; } = "";

    /// <summary>Its score lines as SVG path data; empty for none.</summary>
    internal string Scores { get; init; } = "";

    /// <summary>The corners of a gem that is not round; none for anything else.</summary>
    internal Rim Rim { get; init; }

    /// <summary>Millimetres of each of two ends that hang loose from the middle.</summary>
    internal double Tails { get; init; }

    /// <summary>Millimetres of its upper side above what lies beneath it.</summary>
    internal double Lift { get; init; }

    /// <summary>Its turn, clockwise, so that the light falls from the same side on all.</summary>
    internal int Degrees { get; init; }

    /// <summary>How many parts of a sheet the pieces of one shape are cut from in turn, so that copies do not look identical.</summary>
    internal const int Cuts = 3;

    /// <summary>Whether copies differ by the part of the sheet they are cut from.</summary>
    internal bool IsScattered =>
        Appearance != Appearance.Ink
            && (Look.Pictured is not null || Look.Pattern is PaperPattern.Stars or PaperPattern.Woodgrain or PaperPattern.Kraft);

    /// <summary>The design of a piece, or null if it is not visible.</summary>
    internal static PieceDesign? Of(Piece piece)
    {
        Appearance? appearance = (piece.Matter, piece.Kind) switch
        {
            (PieceMatter.Paper, _) => Appearance.Paper,
            (PieceMatter.Ink, _) => Appearance.Ink,
            (PieceMatter.Ready, PieceKind.Gem) => Appearance.Gem,
            (PieceMatter.Ready, PieceKind.Dot) => Appearance.Dot,
            (PieceMatter.Ready, PieceKind.Brad) => Appearance.Brad,
            (PieceMatter.Ready, PieceKind.Button) => Appearance.Button,
            (PieceMatter.Ready, PieceKind.Bow) => Appearance.Bow,
            (PieceMatter.Ready, PieceKind.Sticker) => Appearance.Sticker,
            (PieceMatter.Ready, PieceKind.Ribbon) => Appearance.Ribbon,
            (PieceMatter.Ready, PieceKind.Twine) => Appearance.Twine,
            (PieceMatter.Ready, _) => Appearance.Tape,
            _ => null,
        };
        if (appearance is not { } how)
        {
            return null;
        }

        var origin = Affine.Shift(-piece.Box.Left.Millimetres, -piece.Box.Top.Millimetres);
        var cut = piece.Outline.Transform(origin).ToSvgPath();
        var ink = piece.Words is { Ink.IsEmpty: false } words ? words.Ink.Transform(origin).ToSvgPath() : "";
        return new(
            how,
            piece.Paint.Look,
            cut,
            piece.Box.Width.Millimetres,
            piece.Box.Height.Millimetres,
            Seeded.SeedOf(PieceTitle.Paint(piece.Paint), piece.Box.Size))
        {
            Ink = how == Appearance.Ink && ink == cut ? "" : ink,
            InkLook = ink.Length > 0 ? piece.Words?.InkPaint.Look : null,
            Stitches = new Outline(piece.Stitches).Transform(origin).ToOpenSvgPath(),
            Scores = new Outline([.. piece.Scores.Select(s => new Contour(s.From, [Segment.Line(s.To)]))]).Transform(origin)
                .ToOpenSvgPath(),
            Rim = how == Appearance.Gem && piece.Shape != PieceKind.Gem ? Rim.Of(piece.Outline.Transform(origin)) : Rim.None,
            Tails = piece.Tails.Millimetres,
            Lift = piece.Foam.Millimetres + Shadow.FlatHeight,
            Degrees = (int)Math.Round(Math.Atan2(piece.Turning.B, piece.Turning.A) * 180 / Math.PI),
        };
    }

    /// <summary>The same design cut from another part of the sheet.</summary>
    internal PieceDesign CutFrom(int part) => this with { Seed = Seed + (ulong)part };
}
