using System.Globalization;
using Sketch.Colours;
using Sketch.Editors.Documents;
using Sketch.Editors.Protocol;
using Sketch.Names;
using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Syntax;

namespace Sketch.Editors.Answers;

/// <summary>The colours in a text: hex digits, colour words, papers, and roles in the colour of their paper.</summary>
internal static class Colouring
{
    private const double Most = 255;

    /// <summary>All of them, in the order of the text.</summary>
    /// <param name="document">The text.</param>
    /// <param name="stashes">The stashes beside it.</param>
    public static ColourPlace[] Of(OpenDocument document, IReadOnlyList<Stash> stashes)
    {
        var roles = WrittenNames.Of(document.Syntax).All.Where(n => n.Kind == NameKind.Role && !n.IsDeclaration)
            .ToLookup(n => n.Span, n => n.Declaration);
        return [.. Painted(document.Syntax.Lines).DistinctBy(p => p.Span).OrderBy(p => p.Span.Start)
            .Select(p => (p.Span, Colour: roles[p.Span].FirstOrDefault() is RoleLine role ? OfRole(role, stashes) : OfPaint(p, stashes)))
            .Where(p => p.Colour is not null)
            .Select(p => new ColourPlace(document.Lines.RangeOf(p.Span), Shown(p.Colour!.Value)))];
    }

    /// <summary>
    /// How another colour is written in place of a colour or a colour word: in hex digits. A role or paper stays: its colour is
    /// changed where it is declared.
    /// </summary>
    public static ColourWriting[] Written(OpenDocument document, EditorColour colour, EditorRange range)
    {
        var span = document.Lines.SpanOf(range);
        var text = document.Source.Content[span.Start..span.End];
        var isColour = text.StartsWith('#') || (ColourWords.TryGet(text, out _)
            && !WrittenNames.Of(document.Syntax).All.Any(n => n.Kind == NameKind.Role && n.Span == span));
        return [new(isColour ? $"#{Hex(colour.Red)}{Hex(colour.Green)}{Hex(colour.Blue)}" : text)];
    }

    private static Rgb? OfRole(RoleLine role, IReadOnlyList<Stash> stashes) =>
        role.Colours is [var ground, ..] ? OfPaint(ground, stashes)
            : role.Paper is { } paper ? OfPaint(new(paper.Text, false, paper.Span), stashes) : null;

    private static Rgb? OfPaint(PaintSyntax paint, IReadOnlyList<Stash> stashes) =>
        paint.IsHex ? Rgb.FromHex(paint.Text)
            : stashes.Select(s => s.Find(paint.Text)).FirstOrDefault(p => p is { Front.IsDescribed: true })?.Front.Look.Ground
                ?? BuiltIn.Find(paint.Text, [])?.Ground;

    private static IEnumerable<PaintSyntax> Painted(IEnumerable<LineSyntax> lines) => lines.SelectMany(line => line.Clauses
        .SelectMany(c => c switch
        {
            OfClause of => of.Paints,
            InkClause ink => [ink.Paint],
            ShadowClause shadow => [shadow.Paint],
            WithClause with => [with.Paint],
            SideClause side => side.Colours,
            _ => Enumerable.Empty<PaintSyntax>(),
        })
        .Concat(line is RoleLine role
            ? role.Paper is { } paper ? role.Colours.Prepend(new(paper.Text, false, paper.Span)) : role.Colours : [])
        .Concat(Painted(line.Children)));

    private static EditorColour Shown(Rgb colour) => new(colour.Red / Most, colour.Green / Most, colour.Blue / Most, 1);

    private static string Hex(double part) =>
        ((int)Math.Round(Math.Clamp(double.IsNaN(part) ? 0 : part, 0, 1) * Most)).ToString("x2", CultureInfo.InvariantCulture);
}
