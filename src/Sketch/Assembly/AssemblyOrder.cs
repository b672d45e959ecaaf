using System.Collections.Immutable;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Assembly;

/// <summary>
/// The steps of a card in an order that works (common practice, no source). What must come first: the ink on a piece, what is glued flat on
/// it and what wraps around it come before the piece itself is attached; what lies beneath another piece comes before that. Otherwise ink
/// comes first, then wraps, flat layers, foam, and ready-made things last, so that nothing raised is in the way; what must come before a
/// piece comes as early as that piece. The copies of one line are attached together where nothing must come between them.
/// </summary>
public static class AssemblyOrder
{
    /// <summary>The steps: the base is scored, then face by face everything is attached.</summary>
    public static ImmutableArray<AssemblyStep> Of(LaidOutCard card)
    {
        var steps = ImmutableArray.CreateBuilder<AssemblyStep>();
        steps.Add(new(1, AssemblyAction.Score, [], []));
        foreach (var face in card.Faces)
        {
            foreach (var copies in new FaceOrder(card, face.Kind).Of())
            {
                steps.Add(new(steps.Count + 1, ActionOf(copies[0]), copies, [.. copies.Select(p => PiecePlace.Of(card, p))]));
            }
        }

        return steps.ToImmutable();
    }

    /// <summary>What is done with a piece.</summary>
    private static AssemblyAction ActionOf(Piece piece) => piece switch
    {
        { Matter: PieceMatter.Ink } => AssemblyAction.Ink,
        { Wrap: var wrap } when wrap != default => AssemblyAction.Wrap,
        { IsReadyMade: true } => AssemblyAction.Stick,
        _ => piece.Foam > Length.Zero ? AssemblyAction.Raise : AssemblyAction.Glue,
    };

    /// <summary>The order of one face. Pieces are numbered in drawing order, so that what lies on a piece has a higher number.</summary>
    private sealed class FaceOrder
    {
        private const int Nothing = -1;

        private readonly Piece[] _pieces;
        private readonly AssemblyAction[] _actions;
        private readonly int[] _parents;
        private readonly List<int>[] _later;
        private readonly int[] _waitsFor;
        private readonly AssemblyAction[] _urgencies;

        public FaceOrder(LaidOutCard card, FaceKind face)
        {
            var attached = Enumerable.Range(0, card.Pieces.Length).Where(i => card.Pieces[i].Face == face && IsAttached(card.Pieces[i]))
                .ToList();
            var numbers = attached.Select((index, number) => (index, number)).ToDictionary(p => p.index, p => p.number);
            _pieces = [.. attached.Select(i => card.Pieces[i])];
            _actions = [.. _pieces.Select(ActionOf)];
            _parents = [.. _pieces.Select(p => numbers.GetValueOrDefault(p.LiesOn, Nothing))];
            _later = [.. _pieces.Select(_ => new List<int>())];
            _waitsFor = new int[_pieces.Length];
            FinishPiecesFirst();
            AttachFromBeneath();
            _urgencies = Urgencies();
        }

        /// <summary>The pieces of each step in order.</summary>
        public IEnumerable<ImmutableArray<Piece>> Of()
        {
            var ready = new SortedSet<(AssemblyAction Urgency, int Turn, int Piece)>(
                Enumerable.Range(0, _pieces.Length).Where(i => _waitsFor[i] == 0).Select(Entry));
            var groups = _pieces.Select(p => p.Path.WithoutCopies.ToString()).ToArray();
            var step = new SortedSet<int>();
            var group = "";
            while (ready.Count > 0)
            {
                var next = ready.FirstOrDefault(r => groups[r.Piece] == group, ready.Min);
                if (step.Count > 0 && (groups[next.Piece] != group || _actions[next.Piece] != _actions[step.Min]))
                {
                    yield return [.. step.Select(i => _pieces[i])];
                    step.Clear();
                }

                group = groups[next.Piece];
                step.Add(next.Piece);
                ready.Remove(next);
                ready.UnionWith(_later[next.Piece].Where(later => --_waitsFor[later] == 0).Select(Entry));
            }

            if (step.Count > 0)
            {
                yield return [.. step.Select(i => _pieces[i])];
            }
        }

        private static bool IsAttached(Piece piece) =>
            piece.Matter is not (PieceMatter.Hole or PieceMatter.Unseen) && !piece.Outline.IsEmpty;

        private (AssemblyAction Urgency, int Turn, int Piece) Entry(int piece) => (_urgencies[piece], TurnOf(piece), piece);

        /// <summary>Flat stacks are finished one after the other, from their top down; all else goes in drawing order.</summary>
        private int TurnOf(int piece) =>
            _actions[piece] is AssemblyAction.Wrap or AssemblyAction.Glue ? LastOn(piece) : piece;

        /// <summary>The last piece in the stack on a piece, or itself: what lies on a piece follows it in drawing order.</summary>
        private int LastOn(int piece)
        {
            var last = piece;
            while (last + 1 < _pieces.Length && IsOn(last + 1, piece))
            {
                last++;
            }

            return last;
        }

        private bool IsOn(int piece, int ground)
        {
            while (piece > ground)
            {
                piece = _parents[piece];
            }

            return piece == ground;
        }

        /// <summary>The piece that must wait until this one is attached to it, or <see cref="Nothing"/>.</summary>
        private int GroundToFinish(int piece) =>
            _actions[piece] is AssemblyAction.Ink or AssemblyAction.Wrap or AssemblyAction.Glue ? _parents[piece] : Nothing;

        private void FinishPiecesFirst()
        {
            for (var i = 0; i < _pieces.Length; i++)
            {
                if (GroundToFinish(i) is var ground and not Nothing)
                {
                    First(i, ground);
                }
            }
        }

        private void AttachFromBeneath()
        {
            var boxes = _pieces.Select(p => p.TurnedOutline.Bounds).ToArray();
            for (var upper = 0; upper < _pieces.Length; upper++)
            {
                for (var lower = 0; lower < upper; lower++)
                {
                    if (boxes[lower].Overlaps(boxes[upper]) && !IsOn(upper, lower))
                    {
                        AttachFromBeneath(lower, upper);
                    }
                }
            }
        }

        /// <summary>
        /// The lower piece, and all that it must lie on before it is in its place, come before the step that lays the upper piece over it:
        /// that of the finished stack that the upper piece is part of.
        /// </summary>
        private void AttachFromBeneath(int lower, int upper)
        {
            while (GroundToFinish(upper) is var ground and not Nothing && !IsOn(lower, ground))
            {
                upper = ground;
            }

            for (; lower != Nothing && !IsOn(upper, lower); lower = _parents[lower])
            {
                First(lower, upper);
            }
        }

        /// <summary>The earliest action among that of a piece and those of all pieces that wait for it.</summary>
        private AssemblyAction[] Urgencies()
        {
            var urgencies = _actions.ToArray();
            var waitsFor = _waitsFor.ToArray();
            var order = new List<int>(Enumerable.Range(0, waitsFor.Length).Where(i => waitsFor[i] == 0));
            for (var i = 0; i < order.Count; i++)
            {
                order.AddRange(_later[order[i]].Where(later => --waitsFor[later] == 0));
            }

            for (var i = order.Count - 1; i >= 0; i--)
            {
                urgencies[order[i]] = _later[order[i]].Select(later => urgencies[later]).Append(urgencies[order[i]]).Min();
            }

            return urgencies;
        }

        private void First(int first, int then)
        {
            _later[first].Add(then);
            _waitsFor[then]++;
        }
    }
}
