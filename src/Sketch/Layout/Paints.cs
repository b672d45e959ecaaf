using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Colours;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Syntax;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Resolves what pieces are made of: roles, colours and the replacements by <c>with … as …</c> in the use of a part.</summary>
internal sealed class Paints
{
    private readonly Dictionary<string, Role> _roles = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _used = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<(SourceText, TextSpan)> _reported = [];
    private readonly RoleFilling _filling;
    private readonly FindingBag _findings;

    public Paints(ImmutableArray<BoundRole> roles, RoleFilling filling, FindingBag findings)
    {
        _filling = filling;
        _findings = findings;
        Roles = [.. roles.Select(r => new Role(r.Name, Fill(r), r.Location))];
        foreach (var role in Roles)
        {
            _roles[role.Name] = role;
        }
    }

    public ImmutableArray<Role> Roles { get; }

    /// <summary>White cardstock without a role.</summary>
    public static Paint Plain => RolePaper.Plain;

    private Paint Fill(BoundRole role)
    {
        var own = RolePaper.Of(role.Name, role.Paper?.Text, role.Colours, role.Side, role.AnyOffcut)
            with
        { OffcutOf = role.OffcutOf?.Text };
        var paint = _filling.Resolve(own);
        if (role.OffcutOf is { } of && _filling.Stash is { } stash && !OffcutKinds.IsKnown(of.Text, stash))
        {
            var near = Nearest.Find(of.Text, stash.Papers.Select(p => p.Name).Concat(OffcutKinds.Words));
            _findings.Add(FindingCatalogue.UnknownPaper, new(role.Location.Source, of.Span),
                $"'{of.Text}' is neither a paper of the stash nor a colour.",
                near is null ? "Write any offcut of patterned, of cardstock, of a colour or of a paper." : $"Did you mean {near}?", near);
        }

        if (paint is { Knowledge: PaperKnowledge.Nothing, Paper: { } missing })
        {
            // There is nothing to replace in the card where the paper was chosen outside it.
            ReportMissing(role, missing, _filling.ChoiceFor(role.Name) is null ? role.Paper?.Span : null);
        }

        return paint;
    }

    private void ReportMissing(BoundRole role, string paper, TextSpan? written)
    {
        var near = Nearest.Find(paper, _filling.Stash?.Papers.Select(p => p.Name) ?? []);
        _findings.Add(FindingCatalogue.UnknownPaper, written is { } span
            ? new(role.Location.Source, span) : role.Location, $"The stash has no paper called {paper} for the role {role.Name}.",
            near is null ? $"Add it to the stash, or give the role a colour: role {role.Name}: {paper} #9fc9e8." : $"Did you mean {near}?",
                written is null ? null : near);
    }

    /// <summary>What a layer of a piece is made of: layer 0 is the piece, the others are its mats.</summary>
    public Paint Of(Node node, int layer)
    {
        var bound = layer == 0 ? node.Bound : node.Bound.Mats[layer - 1];
        if (bound.Rules.Papers is [var (of, source), ..])
        {
            return Resolve(of.Paints[Turn(node, bound, of.Paints.Length)], source, node);
        }

        if (bound.Name is { } name && _roles.TryGetValue(name, out var role))
        {
            _used.Add(name);
            return role.Paint;
        }

        var matter = bound.Kind.Traits.Matter;
        if (matter == PieceMatter.Ink)
        {
            return Paint.BlackInk;
        }

        if (matter is PieceMatter.Paper or PieceMatter.Ready && !bound.IsDamaged
            && _reported.Add((bound.Location.Source, bound.Location.Span)))
        {
            _findings.Add(FindingCatalogue.NoPaper, bound.Location,
                $"No paper is given for {(bound.Name is { } n ? n : "this " + bound.Kind.Name)}, so it is drawn white.",
                    "Add of and a role or colour, such as of navy.");
        }

        return Plain;
    }

    /// <summary>What the shadow of a layer is made of.</summary>
    public Paint OfShadow(Node node, Rule<ShadowClause> shadow) => Resolve(shadow.Clause.Paint, shadow.Source, node);

    /// <summary>The paint of the base or of an envelope.</summary>
    public Paint Of(PaintSyntax? paint, SourceText source) => paint is null ? Plain : Resolve(paint, source, null);

    /// <summary>
    /// The ink that the file names for the words of a piece, or null where it names none. Text can name it like a paper (<c>of navy</c>, or
    /// a role as its own name); a cut-out word has the colour of its paper.
    /// </summary>
    public Paint? NamedInk(Node node)
    {
        var bound = node.Bound;
        if (bound.Rules.Ink is { } ink)
        {
            return Resolve(ink.Clause.Paint, ink.Source, node);
        }

        var isNamed = !bound.Rules.Papers.IsEmpty || (bound.Name is { } name && _roles.ContainsKey(name));
        return bound.Kind == PieceKind.Word || (bound.Kind == PieceKind.Text && isNamed) ? Of(node, 0) : null;
    }

    /// <summary>
    /// Reports the unknown papers and inks of a piece that is not laid out and of all that lies on it: they are separate mistakes, which
    /// would otherwise be reported only once the size or place is fixed.
    /// </summary>
    public void ReportUnknown(Node node)
    {
        foreach (var bound in node.Bound.Mats.Prepend(node.Bound))
        {
            foreach (var (of, source) in bound.Rules.Papers)
            {
                foreach (var paint in of.Paints)
                {
                    Resolve(paint, source, node);
                }
            }

            if (bound.Rules.Ink is { } ink)
            {
                Resolve(ink.Clause.Paint, ink.Source, node);
            }

            if (bound.Rules.Shadow is { } shadow)
            {
                OfShadow(node, shadow);
            }
        }

        foreach (var child in node.Children.SelectMany(c => c.Copies))
        {
            ReportUnknown(child);
        }
    }

    /// <summary>The index of the paint that a copy takes: in reading order, or so that neighbours differ.</summary>
    private static int Turn(Node node, BoundPiece layer, int paints)
    {
        var arrangement = node.Set.Arrangement!;
        return (layer.Rules.Alternates ?? node.Bound.Rules.Alternates) is true
            ? (arrangement.Cell(node.Index, Axis.Across) + arrangement.Cell(node.Index, Axis.Down)) % paints
            : node.Index % paints;
    }

    private Paint Resolve(PaintSyntax paint, SourceText source, Node? node)
    {
        for (var user = node; user is not null; user = user.Set.Parent)
        {
            if (!paint.IsHex && user.Bound.Rules.ReplacementOf(paint.Text) is { } with)
            {
                _used.Add(paint.Text);
                paint = with.Clause.Paint;
                source = with.Source;
            }
        }

        if (paint.IsAnyOffcut)
        {
            ReportAnyOffcut(new(source, paint.Span));
            return new(null, null, PaperSide.Front, BuiltIn.AnyOffcut, true);
        }

        if (paint.IsHex)
        {
            return new(null, null, PaperSide.Front, RolePaper.Cardstock(Rgb.FromHex(paint.Text)));
        }

        if (_roles.TryGetValue(paint.Text, out var role))
        {
            _used.Add(paint.Text);
            return role.Paint;
        }

        var undeclared = _filling.ResolveUndeclared(paint.Text);
        if (undeclared.Knowledge == PaperKnowledge.Nothing && _reported.Add((source, paint.Span)))
        {
            var joined = paint.Text.Replace("-", "", StringComparison.Ordinal);
            var near = ColourWords.TryGet(joined, out _) ? joined
                : Nearest.Find(paint.Text,
                    _roles.Keys.Order(StringComparer.Ordinal).Concat(ColourWords.All).Concat(BuiltIn.PatternWords));
            _findings.Add(FindingCatalogue.UnknownRole, new(source, paint.Span),
                $"'{paint.Text}' is neither a role of this card nor a colour, so it is drawn hatched.",
                near is null ? $"Declare it above the faces: role {paint.Text}: #9fc9e8." : $"Did you mean {near}?", near);
        }

        return undeclared;
    }

    // Only a role can be any offcut, so that a batch can put a paper in its place.
    private void ReportAnyOffcut(Location place)
    {
        if (_reported.Add((place.Source, place.Span)))
        {
            var role = Roles.FirstOrDefault(r => r.Paint.AnyOffcut)?.Name;
            var free = _roles.ContainsKey("scrap") ? "leftover" : "scrap";
            _findings.Add(FindingCatalogue.Misplaced, place, "Only a role can be any offcut.",
                role is null ? $"Write role {free}: any offcut above the faces, and of {free} here." : $"Write of {role}.", role);
        }
    }

    /// <summary>Reports the unused roles of this file.</summary>
    public void ReportUnused(SourceText source)
    {
        // The role may be used in a line that could not be read.
        if (_findings.HasErrors)
        {
            return;
        }

        foreach (var role in Roles.Where(r => !_used.Contains(r.Name) && ReferenceEquals(r.Location.Source, source)))
        {
            _findings.Add(FindingCatalogue.UnusedRole, role.Location, $"No piece is made of {role.Name}.",
                $"Write of {role.Name} on a piece, or remove this line.");
        }
    }
}
