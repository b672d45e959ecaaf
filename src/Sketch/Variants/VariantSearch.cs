using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Stashes;

namespace Sketch.Variants;

/// <summary>Finds the papers of a stash that go together in a card.</summary>
public sealed class VariantSearch
{
    /// <summary>The most roles to vary at once; roles that the card declares later keep their papers.</summary>
    public const int RoleLimit = 30;

    /// <summary>The most variants to try; if there would be more, some papers are left out.</summary>
    private const int Most = 400_000;

    /// <summary>How many of the best are kept, from which the most different are chosen.</summary>
    private const int PoolSize = 3000;

    private readonly Stash _stash;
    private readonly ImmutableArray<RoleUse> _uses;
    private readonly ImmutableArray<ImmutableArray<Candidate>> _candidates;
    private readonly ImmutableArray<double> _weights;
    private readonly VariantWorth _worth;
    private readonly Dictionary<(StockPaper, int), bool> _enough = [];
    private readonly PriorityQueue<(double Score, int[] Chosen), (double, int)> _pool = new();
    private readonly int[] _chosen;
    private int _found;
    private int _lacking;

    private VariantSearch(Stash stash, ImmutableArray<RoleUse> uses, ImmutableArray<ImmutableArray<Candidate>> candidates,
        Neighbours neighbours)
    {
        _stash = stash;
        _uses = uses;
        _candidates = candidates;
        _weights = [.. uses.Select(u => u.Weight)];
        _worth = new(neighbours, candidates, _weights.IndexOf(_weights.Max()));
        _chosen = new int[uses.Length];
    }

    /// <summary>
    /// The variants of a card, the most different and most legible first. One in which a layer vanishes on the next is excluded; one whose
    /// papers do not suffice for one card is only counted.
    /// </summary>
    /// <param name="card">The card, laid out.</param>
    /// <param name="stash">The stash.</param>
    /// <param name="options">Roles that the card declares, and papers that the stash has.</param>
    public static VariantList Find(LaidOutCard card, Stash stash, VariantOptions options)
    {
        var uses = card.Roles.Select(r => RoleUse.Of(card, r.Name))
            .Where(u => options.Roles.IsEmpty ? u.IsCut : options.Roles.Contains(u.Role, StringComparer.OrdinalIgnoreCase))
            .Take(RoleLimit).ToImmutableArray();
        var candidates = uses.Select(u => Candidate.For(u, stash, options.Papers)).ToImmutableArray();
        if (uses.IsEmpty || candidates.Any(c => c.IsEmpty))
        {
            return new([], 0, 0);
        }

        var tried = Fewer(candidates);
        var search = new VariantSearch(stash, uses, tried, Neighbours.Of(card, [.. uses.Select(u => u.Role)]));
        search.Fill(0);
        return new(search.Different(options.Limit), search._found, search._lacking)
        {
            Tried = tried.Aggregate(1L, (product, c) => product * c.Length),
            Notes = VariantNotes.Of(card, stash, options, uses, candidates, tried),
        };
    }

    /// <summary>Limits the papers of each role so that all variants can be tried: an even selection if there are too many.</summary>
    private static ImmutableArray<ImmutableArray<Candidate>> Fewer(ImmutableArray<ImmutableArray<Candidate>> candidates)
    {
        var most = candidates.Max(c => c.Length);
        while (most > 1 && candidates.Aggregate(1.0, (product, c) => product * Math.Min(c.Length, most)) > Most)
        {
            most--;
        }

        return [.. candidates.Select(c => c.Length <= most ? c : [.. Enumerable.Range(0, most).Select(i => c[i * c.Length / most])])];
    }

    private void Fill(int role)
    {
        if (role == _chosen.Length)
        {
            Weigh();
            return;
        }

        for (var i = 0; i < _candidates[role].Length; i++)
        {
            _chosen[role] = i;
            Fill(role + 1);
        }
    }

    private void Weigh()
    {
        if (_worth.Of(_chosen, Different()) is not (> 0 and var score))
        {
            return;
        }

        if (!IsEnough())
        {
            _lacking++;
            return;
        }

        _found++;
        _pool.Enqueue((score, [.. _chosen]), (score, -_found));
        if (_pool.Count > PoolSize)
        {
            _pool.Dequeue();
        }
    }

    private Candidate Chosen(int role) => _candidates[role][_chosen[role]];

    private int Different()
    {
        var different = 0;
        for (var role = 0; role < _chosen.Length; role++)
        {
            var isNew = true;
            for (var before = 0; before < role && isNew; before++)
            {
                isNew = !ReferenceEquals(Chosen(before).Paper, Chosen(role).Paper) || Chosen(before).Side != Chosen(role).Side;
            }

            different += isNew ? 1 : 0;
        }

        return different;
    }

    private bool IsEnough()
    {
        for (var role = 0; role < _chosen.Length; role++)
        {
            var paper = Chosen(role).Paper;
            var roles = 0;
            for (var other = 0; other < _chosen.Length; other++)
            {
                roles |= ReferenceEquals(Chosen(other).Paper, paper) ? 1 << other : 0;
            }

            if (!_enough.TryGetValue((paper, roles), out var isEnough))
            {
                isEnough = _enough[(paper, roles)] =
                    OneCard.IsEnough(_stash, paper, [.. _uses.Where((_, i) => (roles & (1 << i)) != 0).SelectMany(u => u.Cuts)]);
            }

            if (!isEnough)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The best first, then always one that is good and differs from those already chosen.</summary>
    private ImmutableArray<PaperVariant> Different(int limit)
    {
        var pool = new List<(double Score, int[] Chosen)>();
        while (_pool.TryDequeue(out var variant, out _))
        {
            pool.Add(variant);
        }

        pool.Reverse();
        var unlike = Enumerable.Repeat(1.0, pool.Count).ToArray();
        var best = ImmutableArray.CreateBuilder<PaperVariant>();
        while (best.Count < Math.Min(limit, pool.Count))
        {
            var next = 0;
            for (var i = 1; i < pool.Count; i++)
            {
                next = pool[i].Score * unlike[i] > pool[next].Score * unlike[next] ? i : next;
            }

            var (score, chosen) = pool[next];
            best.Add(new([.. chosen.Select(
                (c, role) => new PaperChoice(_uses[role].Role, _candidates[role][c].Paper.Name, _candidates[role][c].Side))], score));
            for (var i = 0; i < pool.Count; i++)
            {
                unlike[i] = Math.Min(unlike[i], Unlike(pool[i].Chosen, chosen));
            }

            unlike[next] = -1;
        }

        return best.ToImmutable();
    }

    private double Unlike(int[] a, int[] b)
    {
        var sum = 0.0;
        for (var role = 0; role < a.Length; role++)
        {
            sum += _weights[role] * _candidates[role][a[role]].Unlike(_candidates[role][b[role]]);
        }

        return sum / _weights.Sum();
    }
}
