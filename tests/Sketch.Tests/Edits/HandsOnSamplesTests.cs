using Sketch.Diagnostics;
using Sketch.Edits;
using Sketch.Kinds;
using Sketch.Output.Folders;
using Sketch.Panels;
using Sketch.Tests.Project;
using Sketch.Text;
using Sketch.Units;
using Xunit;

namespace Sketch.Tests.Edits;

/// <summary>Random moves and sizes of pieces of all samples.</summary>
public class HandsOnSamplesTests
{
    /// <summary>How many pieces of each sample are taken: each takes one compilation.</summary>
    private const int PiecesOfSample = 4;

    private static readonly FolderFiles World = new();

    public static TheoryData<string> Samples() =>
        [.. Directory.GetFiles(Repository.PathTo("sketches"), "*.card").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_move_changes_one_line_and_moves_the_piece_by_that_much(string sample)
    {
        var before = Read(sample);
        var random = new Random(sample.Length);
        foreach (var piece in Chosen(before, random))
        {
            var step = before.Card!.Units.Format().Step;
            var change = new MoveChange(step * random.Next(-6, 7), step * random.Next(-6, 7));
            if (PieceEditing.HoldOn(before.Card, before.Source, piece).ValueOrDefault is not { } hold)
            {
                continue;
            }

            var after = Applied(before, hold.Piece, PieceEditing.Of(before.Card, before.Source, piece, change));
            var (here, there) = (hold.Piece, After(after, hold.Piece));
            IsMoved(here.Box.Left, there.Box.Left, change.Across, hold.Across, step, $"{piece.Path} across");
            IsMoved(here.Box.Top, there.Box.Top, change.Down, hold.Down, step, $"{piece.Path} down");
            Assert.Equal(here.Box.Size, there.Box.Size);
            OthersStay(before, after, hold);
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_size_changes_one_line_and_is_what_was_wished(string sample)
    {
        var before = Read(sample);
        var random = new Random(sample.Length);
        foreach (var piece in Chosen(before, random))
        {
            var step = before.Card!.Units.Format().Step;
            var (width, height) = (piece.Box.Width + step * random.Next(1, 4), piece.Box.Height + step * random.Next(1, 4));
            if (PieceEditing.HoldOn(before.Card, before.Source, piece).ValueOrDefault is not { } hold || hold.Piece != piece)
            {
                continue;
            }

            var change = new SizeChange(hold.Across.Size is null ? width : null, hold.Down.Size is null ? height : null);
            var edit = PieceEditing.Of(before.Card, before.Source, piece, change);
            Assert.Empty(edit.Refusals);
            var there = After(Applied(before, piece, edit), piece);
            Assert.True(change.Width is not { } w || there.Box.Width == w, $"{piece.Path} is {there.Box.Width} wide and not {width}");
            var isFree = !piece.Kind.Traits.IsSizedByOneNumber && piece.Written is null;
            Assert.True(!isFree || change.Height is not { } h || there.Box.Height == h,
                $"{piece.Path} is {there.Box.Height} high and not {height}");
        }
    }

    private static Compilation Read(string sample)
    {
        var path = Repository.PathTo("sketches", sample);
        return Compiler.Compile(new SourceText(path, File.ReadAllText(path)), World);
    }

    private static IEnumerable<Piece> Chosen(Compilation card, Random random)
    {
        Piece[] pieces = [.. card.Card!.Pieces.Where(p => p.Location.Source == card.Source)];
        random.Shuffle(pieces);
        return pieces.Take(PiecesOfSample);
    }

    /// <summary>The card after an edit, which lies within the lines of the piece, and whose undoing restores every byte.</summary>
    private static Compilation Applied(Compilation before, Piece piece, PieceEdit edit)
    {
        var content = before.Source.Content;
        Assert.All(edit.Edits, e => Assert.True(e.Span.Start >= piece.Location.Span.Start && e.Span.End <= piece.Location.Span.End,
            $"{piece.Path}: {e} lies beyond its line"));
        var text = TextEdit.Apply(content, edit.Edits);
        var shift = 0;
        var back = edit.Edits.Select(e =>
        {
            var start = e.Span.Start + shift;
            shift += e.Text.Length - e.Span.Length;
            return new TextEdit(new(start, start + e.Text.Length), content[e.Span.Start..e.Span.End]);
        }).ToList();
        Assert.Equal(content, TextEdit.Apply(text, back));
        var after = Compiler.Compile(new SourceText(before.Source.Path, text), World);
        Assert.DoesNotContain(after.Findings, f => f.Severity == Severity.Error);
        return after;
    }

    private static Piece After(Compilation card, Piece piece) => card.Card!.Pieces.Single(p => p.Path == piece.Path);

    private static void IsMoved(Length before, Length after, Length by, AxisHold hold, Length step, string what)
    {
        var moved = after - before;
        var expected = hold.Move is null ? by : Length.Zero;
        // What was centred comes to a mark of the ruler.
        var allowed = hold.IsCentred && expected != Length.Zero ? step / 2 : new Length(2);
        Assert.True((moved - expected).Abs() <= allowed, $"{what}: moved by {moved} and not by {expected}");
    }

    /// <summary>Only the piece, what lies on it and what is placed by it may have moved.</summary>
    private static void OthersStay(Compilation before, Compilation after, PieceHold hold)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        var moved = new HashSet<PiecePath>();
        bool isMore;
        do
        {
            isMore = false;
            foreach (var piece in before.Card!.Pieces)
            {
                var words = before.Source.Content[piece.Location.Span.Start..piece.Location.Span.End]
                    .Split([' ', '/', ',', '\n'], StringSplitOptions.RemoveEmptyEntries);
                if (piece.Location == hold.Piece.Location || (piece.Path.Parent is { } parent && moved.Contains(parent))
                    || (piece.Location.Source == before.Source && words.Any(names.Contains)))
                {
                    isMore |= moved.Add(piece.Path);
                    names.Add(piece.Path.Name);
                }
            }
        }
        while (isMore);

        foreach (var (one, other) in before.Card!.Pieces.Zip(after.Card!.Pieces).Where(p => !moved.Contains(p.First.Path)))
        {
            Assert.Equal((one.Path, one.Box), (other.Path, other.Box));
        }
    }
}
