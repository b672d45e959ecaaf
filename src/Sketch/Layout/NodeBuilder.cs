using System.Collections.Immutable;
using Sketch.Binding;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Syntax;
using Sketch.Units;

namespace Sketch.Layout;

/// <summary>Makes a node for every piece of a bound card: parts, repeats and items are expanded.</summary>
internal sealed class NodeBuilder(FindingBag findings)
{
    private readonly PieceCount _count = new(Limits.DepthWithParts);
    private Amount _amount;
    private bool _full;
    private bool _deep;

    public ImmutableArray<FaceScope> Build(BoundCard card, Size closed, Func<BoundFace, Size?> envelopeSize)
    {
        var scopes = ImmutableArray.CreateBuilder<FaceScope>();
        foreach (var face in card.Faces.OrderBy(f => f.Kind))
        {
            var size = face.Kind is FaceKind.Envelope or FaceKind.EnvelopeBack ? envelopeSize(face) : closed;
            if (size is null)
            {
                continue;
            }

            // Both sides of an envelope share its flap, whichever line specifies its depth.
            var flap = face.Kind == FaceKind.EnvelopeBack ? face.Flap ?? card.Faces.FirstOrDefault(f => f.Flap is not null)?.Flap : null;
            var scope = new FaceScope(face.Kind, size.Value, face.Location) { Flap = flap };
            scope.Units.AddRange(BuildSets(face.Pieces, null, scope, 0));
            scopes.Add(scope);
        }

        return scopes.ToImmutable();
    }

    private List<CopySet> BuildSets(ImmutableArray<BoundPiece> pieces, Node? parent, FaceScope face, int depth)
    {
        if (depth >= Limits.DepthWithParts && pieces is [var deep, ..])
        {
            if (!_deep)
            {
                _deep = true;
                findings.Add(FindingCatalogue.TooDeep, deep.Location,
                    $"With its parts spelt out, the card has pieces more than {Limits.DepthWithParts} deep here.",
                        "Nest fewer parts in parts.");
            }

            return [];
        }

        var names = pieces.Select(d => d.Name).OfType<string>().ToHashSet(StringComparer.OrdinalIgnoreCase);
        var given = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var mats = parent?.Bound.Mats.Length ?? 0;
        var numbers = new Dictionary<string, int>();
        var sets = new List<CopySet>(pieces.Length);
        foreach (var bound in pieces)
        {
            // A line that makes too many pieces is left out as a whole; this is known before they are expanded.
            if (_full || (depth == 0 && !HasRoomFor(bound, _count.Of(bound))))
            {
                break;
            }

            // Paths are unique, even where a name is given twice, which is reported.
            var isOwn = bound.Name is { } name && !RepeatedNames.IsMat(name, mats) && given.Add(name);
            sets.Add(BuildSet(bound, parent, face, isOwn ? bound.Name! : NextKey(bound.Name ?? bound.Kind.Name, numbers, names), depth));
        }

        return sets;
    }

    private static string NextKey(string kind, Dictionary<string, int> numbers, HashSet<string> taken)
    {
        while (true)
        {
            var number = numbers[kind] = numbers.GetValueOrDefault(kind) + 1;
            var key = number == 1 ? kind : $"{kind}{number}";
            if (taken.Add(key))
            {
                return key;
            }
        }
    }

    private CopySet BuildSet(BoundPiece bound, Node? parent, FaceScope face, string key, int depth)
    {
        var set = new CopySet(bound, parent, face, key);
        if (bound.Name is { } name)
        {
            if (!face.ByName.TryGetValue(name, out var list))
            {
                face.ByName[name] = list = [];
            }

            list.Add(set);
        }

        var count = Arrange(set);
        CheckTexts(bound, count);
        var items = bound.Items.SelectMany(item => item.Items.Select(i => i.Value).Distinct(), (item, copy) => (Copy: copy, Item: item))
            .ToLookup(i => i.Copy, i => i.Item);
        var copies = new Node[count];
        for (var i = 0; i < count; i++)
        {
            if (!Take(bound))
            {
                copies = copies[..i];
                break;
            }

            copies[i] = new(set, i, CopyOf(bound, items[i + 1]));
        }

        set.Copies = copies;
        foreach (var copy in copies)
        {
            copy.Children.AddRange(BuildSets(copy.Bound.Children, copy, face, depth + 1));
        }

        return set;
    }

    private bool Take(BoundPiece bound)
    {
        var one = PieceCount.OneCopy(bound);
        var fits = HasRoomFor(bound, one);
        _amount += one;
        return fits;
    }

    private bool HasRoomFor(BoundPiece bound, Amount more)
    {
        var (total, here) = (_amount + more, more);
        var (limit, all, added, what) =
            total.Pieces > Limits.Pieces ? (Limits.Pieces, total.Pieces, here.Pieces, "pieces with mats")
            : total.Letters > Limits.Letters ? (Limits.Letters, total.Letters, here.Letters, "letters")
            : total.CutOut > Limits.CutOutLetters ? (Limits.CutOutLetters, total.CutOut, here.CutOut, "letters cut out as words")
            : default;
        if (what is null)
        {
            return true;
        }

        if (!_full)
        {
            _full = true;
            var fitting = (limit - (all - added)) * PieceCount.CopiesOf(bound) / added;
            findings.Add(FindingCatalogue.TooManyPieces, bound.Location,
                $"Here the card has more than {limit:N0} {what}; this line and the rest are left out.",
                bound.Count > 1 && fitting > 1 ? $"Make at most {fitting:N0} copies."
                : what == "pieces with mats" ? "Make fewer copies, or divide the pieces between several cards."
                : "Write fewer words, or make fewer copies.");
        }

        return false;
    }

    private static BoundPiece CopyOf(BoundPiece bound, IEnumerable<BoundItem> items)
    {
        foreach (var item in items)
        {
            bound = bound with
            {
                Size = item.Size ?? bound.Size,
                Texts = item.Texts.IsEmpty ? bound.Texts : item.Texts,
                Clauses = ClauseFamilies.Replace(bound.Clauses, item.Clauses),
                Children = bound.Children.AddRange(item.Children),
            };
        }

        return bound;
    }

    /// <summary>Determines how many copies there are and how they are arranged.</summary>
    private int Arrange(CopySet set)
    {
        var bound = set.Bound;
        var arrange = bound.Rules.Arrange;
        var clause = arrange?.Clause;
        var count = PieceCount.CopiesOf(bound);
        if (clause is { Down: { } down } && (long)clause.Across * down < count)
        {
            findings.Add(FindingCatalogue.GridTooSmall, arrange!.Value.Location,
                $"A {Word(clause)} of {clause.Across} x {down} does not hold {count} copies.",
                    $"Write in a {Word(clause)} {clause.Across} across, and it gets as many rows as it needs.");
        }

        var across = clause?.Arrangement switch
        {
            ArrangementKind.Column => 1,
            ArrangementKind.Grid or ArrangementKind.Honeycomb => (int)Math.Min(clause.Across, count),
            // A step up or down without an arrangement means one below the other.
            null when bound.Rules.StepsUpOrDown => 1,
            _ => (int)count,
        };
        set.Arrangement = new(across, (int)((count + across - 1) / across))
        {
            Interlocks = clause is { Arrangement: ArrangementKind.Honeycomb },
        };
        return (int)count;
    }

    private static string Word(ArrangeClause clause) => clause.Arrangement == ArrangementKind.Honeycomb ? "honeycomb" : "grid";

    private void CheckTexts(BoundPiece bound, int count)
    {
        if (count > 1 && bound.Texts.Length > 1 && bound.Texts.Length != count)
        {
            findings.Add(FindingCatalogue.TextCount, bound.Location, $"There are {bound.Texts.Length} texts for {count} copies.",
                "Write one text for all, or one for each copy.");
        }
    }
}
