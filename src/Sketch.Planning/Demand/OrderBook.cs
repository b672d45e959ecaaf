using System.Collections.Immutable;
using System.Globalization;
using Sketch.Batches;
using Sketch.Cutting.Model;
using Sketch.Diagnostics;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Stationery;
using Sketch.Text;
using Sketch.Units;

namespace Sketch.Planning.Demand;

/// <summary>Everything that a batch needs, sorted by what it is made of.</summary>
/// <param name="Papers">What to cut from each paper, in the order of the batch; papers of the stash that are not needed come last,
/// without pieces.</param>
/// <param name="AnyOffcut">Pieces that may come from any leftover.</param>
/// <param name="Ready">What is stuck on rather than cut from sheets, with the number of its cards.</param>
internal sealed record OrderBook(ImmutableArray<PaperOrder> Papers, ImmutableArray<PieceOrder> AnyOffcut, ImmutableArray<ReadyPiece> Ready)
{
    /// <summary>Sorts what the designs and loose pieces of a batch need.</summary>
    public static OrderBook Of(BatchFiles files, FindingBag findings) => new Sorter(files, findings).Sort();

    private sealed class Sorter(BatchFiles files, FindingBag findings)
    {
        private readonly List<(PaperUse Use, PieceOrder Piece)> _cut = [];
        private readonly ImmutableArray<PieceOrder>.Builder _anyOffcut = ImmutableArray.CreateBuilder<PieceOrder>();
        private readonly ImmutableArray<ReadyPiece>.Builder _ready = ImmutableArray.CreateBuilder<ReadyPiece>();
        private readonly HashSet<(SourceText, TextSpan)> _reported = [];
        private readonly Stash? _stash = files.Stash;

        public OrderBook Sort()
        {
            for (var i = 0; i < files.Designs.Length; i++)
            {
                CheckRoles(files.Designs[i]);
                Sort(files.Designs[i], i);
            }

            for (var i = 0; i < files.Batch.Cuts.Length; i++)
            {
                Sort(files.Batch.Cuts[i], i);
            }

            return new(PapersInOrder(), _anyOffcut.ToImmutable(), _ready.ToImmutable());
        }

        private void CheckRoles(Design design)
        {
            var roles = design.Card.Roles.Select(r => r.Name)
                .Concat(design.Card.Pieces.Select(p => p.Paint.Role).Append(design.Card.Base.Paint.Role).OfType<string>())
                .Distinct(StringComparer.OrdinalIgnoreCase).ToList();
            foreach (var filling in design.Order.Roles.Where(f => !roles.Contains(f.Role, StringComparer.OrdinalIgnoreCase)))
            {
                var near = Nearest.Find(filling.Role, roles);
                findings.Add(FindingCatalogue.NoSuchRole, filling.Location, $"\"{design.Order.Card.Path}\" has no role {filling.Role}.",
                    near is not null ? $"Did you mean {near}?" : $"Its roles are {string.Join(", ", roles)}.", near);
            }
        }

        private void Sort(Design design, int index)
        {
            var card = design.Card;
            var id = index.ToString(CultureInfo.InvariantCulture);
            if (design.Order.Count > 0)
            {
                Add(card.Base.Paint, design, OrderOf(PiecePath.Base, card.Base.Flat, card.Base.Location));
            }

            foreach (var piece in card.Pieces)
            {
                var use = PaperUse.For(piece.Paint, _stash);
                if (piece.Matter == PieceMatter.Ready || (piece.Kind == PieceKind.Line && (use.Stock is null || HasLine(use))))
                {
                    _ready.Add(new(piece, design, use));
                }
                else if (piece.Cut is { } size && design.Order.Count > 0)
                {
                    var isBlank = Blank.IsFor(piece, files.Batch);
                    var order = OrderOf(piece.Path, isBlank ? Blank.Of(size, files.Batch) : size, piece.Location);
                    Add(piece.Paint, design, order with { Parts = piece.CutParts, IsBlank = isBlank });
                }
            }

            PieceOrder OrderOf(PiecePath path, Size size, Location location) =>
                new($"{id}/{path}", path.WithinFace, size, design.Order.Count, location) { Design = design, Path = path };
        }

        private bool HasLine(PaperUse use) =>
            (_stash?.Supplies ?? []).Any(s => s.Kind == SupplyKind.Line && s.Name.Equals(use.Name, StringComparison.OrdinalIgnoreCase));

        private void Add(Paint paint, Design design, PieceOrder piece)
        {
            var use = PaperUse.For(paint, _stash);
            if (use.AnyOffcut)
            {
                _anyOffcut.Add(piece with { IsAnyOffcut = true, OffcutOf = paint.OffcutOf, Role = paint.Role });
                return;
            }

            if (use.IsUnknown && _reported.Add((piece.Location.Source, piece.Location.Span)))
            {
                var names = (_stash?.Papers.Select(p => p.Name) ?? []).Concat(design.Card.Roles.Select(r => r.Name))
                    .Concat(ColourWords.All);
                var near = Nearest.Find(use.Name, names);
                findings.Add(FindingCatalogue.PaperNotGiven, piece.Location,
                    $"Paper {use.Name} is not defined, so {piece.Name} cannot be cut.",
                    near is not null ? $"Did you mean {near}?"
                        : $"Declare it in the card, role {use.Name}: #9fc9e8, or put paper {use.Name} into the stash.");
            }

            _cut.Add((use, piece with { Side = use.Side, Role = paint.Role, Look = use.Look }));
        }

        private void Sort(CutRequest cut, int index)
        {
            var stock = _stash?.Find(cut.Paper);
            var name = stock?.Name ?? cut.Paper;
            _cut.Add((new(name, stock, cut.Side ?? PaperSide.Front),
                new($"cut{index.ToString(CultureInfo.InvariantCulture)}", "loose", cut.Size, cut.Count, cut.Location)
                {
                    Side = cut.Side,
                    Upright = cut.Upright,
                }));
        }

        private ImmutableArray<PaperOrder> PapersInOrder()
        {
            var orders = ImmutableArray.CreateBuilder<PaperOrder>();
            foreach (var paper in _cut.GroupBy(c => c.Use.Name, StringComparer.OrdinalIgnoreCase))
            {
                var stock = paper.First().Use.Stock;
                if (stock is not null)
                {
                    orders.Add(InStash(stock, [.. paper.Select(c => c.Piece)]));
                    continue;
                }

                var looks = paper.GroupBy(c => c.Use.Colours).ToList();
                foreach (var look in looks)
                {
                    var name = looks.Count > 1 && look.Key.Length > 0 ? $"{paper.Key} {look.Key}" : paper.Key;
                    orders.Add(new(name, null, new(UsualSheet(), default, 0), [], [.. look.Select(c => c.Piece)]));
                }
            }

            var asked = orders.Select(o => o.Stock).ToHashSet();
            orders.AddRange((_stash?.Papers ?? []).Where(p => !asked.Contains(p)).Select(p => InStash(p, [])));
            return orders.ToImmutable();
        }

        private PaperOrder InStash(StockPaper stock, ImmutableArray<PieceOrder> pieces) => new(
            stock.Name,
            stock,
            new(stock.Size, stock.Trim, stock.Sheets),
            [.. _stash!.Offcuts.Where(o => o.Paper.Equals(stock.Name, StringComparison.OrdinalIgnoreCase))
                .Select(o => new OffcutStock(o.Size, o.Count))],
            pieces);

        private Size UsualSheet() => NamedSizes.FindSheet(null, files.Batch.Units == UnitSystem.Inches ? "letter" : "A4").Found!.Size;
    }
}

/// <summary>A piece of a design that is not cut from a sheet: a line, a gem, a strip of tape.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Design">Its design.</param>
/// <param name="Use">What it is made of.</param>
internal sealed record ReadyPiece(Piece Piece, Design Design, PaperUse Use);
