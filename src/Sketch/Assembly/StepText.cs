using System.Collections.Immutable;
using System.Globalization;
using Sketch.Kinds;
using Sketch.Panels;
using Sketch.Units;

namespace Sketch.Assembly;

/// <summary>A step of the assembly as a sentence.</summary>
public static class StepText
{
    /// <summary>Places listed one by one; more are easier to see than to read.</summary>
    private const int MostPlaces = 8;

    private const string From = " from the ";

    /// <summary>Closer than this, two distances look alike: a quarter of a ruler mark.</summary>
    private static readonly Length Unseen = Length.Inch(0, 1, 64);

    /// <summary>The sentence.</summary>
    /// <param name="card">The card.</param>
    /// <param name="step">One of its steps.</param>
    public static string Of(LaidOutCard card, AssemblyStep step)
    {
        var lengths = card.Units.Format();
        if (step.Action == AssemblyAction.Score)
        {
            return Score(card.Base, lengths);
        }

        var what = What(step.Pieces) is { Length: > 0 } named ? named + " " : "";
        var where = Place(card, step);
        return step.Action switch
        {
            AssemblyAction.Ink when step.Pieces[0].Kind == PieceKind.Ruled => $"Rule the writing lines {what}{where}.",
            AssemblyAction.Ink => $"Stamp or print {what}{where}.",
            AssemblyAction.Wrap => $"Glue {what}{where}, and fold what is too long to the back.",
            AssemblyAction.Raise => $"Attach {what}on {LengthFormat.Millimetres(step.Foam)} foam ({Foam(step, lengths)}) {where}.",
            AssemblyAction.Stick => $"Stick {what}{where}.",
            _ => $"Glue {what}{where}.",
        };
    }

    /// <summary>Where a step attaches it, such as <c>on sky, 1/4 from the left edge and 1/2 from the top edge</c>.</summary>
    public static string Place(LaidOutCard card, AssemblyStep step) => $"on {Ground(step)}, {Where(step.Places, card.Units.Format())}";

    /// <summary>What a step attaches, such as <c>lamp (star, gold)</c>.</summary>
    public static string What(ImmutableArray<Piece> pieces)
    {
        var piece = pieces[0];
        List<string> details = [];
        if (!piece.Kind.Traits.IsLayer && !IsUnnamed(piece))
        {
            details.Add(piece.Kind.Name);
        }

        if (piece.Words is { } words)
        {
            details.Add($"“{words.Text.ReplaceLineEndings(" ")}”");
        }

        if (piece.Matter != PieceMatter.Ink && (piece.Paint.Paper ?? piece.Paint.Role) is { } paper)
        {
            details.Add(paper);
        }

        var count = pieces.Length > 1 ? string.Create(CultureInfo.InvariantCulture, $", {pieces.Length} times,") : "";
        if (piece.Matter == PieceMatter.Ink && IsUnnamed(piece))
        {
            return string.Join(", ", details) + count;
        }

        return NameOf(piece) + (details.Count > 0 ? $" ({string.Join(", ", details)})" : "") + count;
    }

    private static bool IsUnnamed(Piece piece) => piece.Path.Name.StartsWith(piece.Kind.Name, StringComparison.OrdinalIgnoreCase);

    private static string Score(CardBase card, LengthFormat lengths)
    {
        var sheet = card.Sheet;
        return $"Score the base, {lengths.About(sheet.Size)}, {string.Join(" and ", sheet.Scores.Select(lengths.About))} from the "
            + $"{(sheet.HasUprightScores ? "left" : "top")} edge. Fold it with the ridge of the score inside.";
    }

    private static string Foam(AssemblyStep step, LengthFormat lengths) =>
        $"{(step.FoamPads == 1 ? "1 pad" : string.Create(CultureInfo.InvariantCulture, $"{step.FoamPads} pads"))} "
            + $"or {lengths.About(step.FoamStrips)} of strip";

    private static string Ground(AssemblyStep step) => step.Places[0].On is { } on ? NameOf(on) : step.Face switch
    {
        FaceKind.Front => "the front",
        FaceKind.Inside => "the inside",
        FaceKind.InsideLeft => "the inside of the front",
        FaceKind.InsideTop => "the inside of the front",
        FaceKind.Back => "the back",
        FaceKind.Envelope => "the front of the envelope",
        _ => "the back of the envelope",
    };

    /// <summary>The name without the number of the copy; a mat or shadow is named by what it lies behind.</summary>
    private static string NameOf(Piece piece)
    {
        var (kind, name) = (piece.Kind.Name, piece.Path.Name);
        return piece is { Kind.Traits.IsLayer: true, Path.Parent: { } behind }
            ? $"the {kind}{(name.Length > kind.Length ? " " + name[kind.Length..] : "")} behind {behind.Name}" : name;
    }

    private static string Where(ImmutableArray<PiecePlace> places, LengthFormat lengths)
    {
        var turn = places[0].Turn == 0 ? "" : string.Create(CultureInfo.InvariantCulture,
            $", turned {Math.Abs(places[0].Turn):0.##}° to the {(places[0].Turn < 0 ? "left" : "right")}");
        var words = places.Select(p => Whole(p, lengths) ?? $"{Across(p, lengths)} and {Down(p, lengths)}").Distinct().ToList();
        if (words.Count == 1)
        {
            return words[0] + turn;
        }

        var across = places.Select(p => Across(p, lengths)).Distinct().ToList();
        var down = places.Select(p => Down(p, lengths)).Distinct().ToList();
        return (words.Count > MostPlaces ? "as the placement guide shows"
            : down.Count == 1 ? $"{down[0]}: {Listed(across)}"
            : across.Count == 1 ? $"{across[0]}: {Listed(down)}"
            : string.Join("; ", words)) + turn;
    }

    /// <summary>A place that is the same from all sides; null for others.</summary>
    private static string? Whole(PiecePlace place, LengthFormat lengths) =>
        !AreAlike(place.Left, place.Right) || !AreAlike(place.Top, place.Bottom) ? null
        : !AreAlike(place.Left, place.Top) ? place.Left == Length.Zero || place.Top == Length.Zero ? null : "in the middle"
        : place.Left == Length.Zero ? "edge on edge"
        : place.Left < Length.Zero ? $"{lengths.About(-place.Left)} past every edge"
        : $"{lengths.About(place.Left)} from every edge";

    private static string Across(PiecePlace place, LengthFormat lengths) =>
        Along(place.Left, place.Right, "left", "right", "from side to side", lengths);

    private static string Down(PiecePlace place, LengthFormat lengths) =>
        Along(place.Top, place.Bottom, "top", "bottom", "from top to bottom", lengths);

    private static string Along(Length near, Length far, string nearEdge, string farEdge, string whole, LengthFormat lengths)
    {
        if (AreAlike(near, far))
        {
            return near == Length.Zero ? whole : $"centred {whole}";
        }

        var (distance, edge) = near < far ? (near, nearEdge) : (far, farEdge);
        return distance == Length.Zero ? $"flush with the {edge} edge"
            : distance < Length.Zero ? $"{lengths.About(-distance)} past the {edge} edge"
            : $"{lengths.About(distance)}{From}{edge} edge";
    }

    private static bool AreAlike(Length one, Length other) => (one - other).Abs() < Unseen;

    /// <summary>The words as a list; an edge that all are measured from is named once.</summary>
    private static string Listed(List<string> words)
    {
        var from = words[0].IndexOf(From, StringComparison.Ordinal) is var at and >= 0 ? words[0][at..] : "";
        var shared = words.TrueForAll(w => w.EndsWith(from, StringComparison.Ordinal)) ? from : "";
        var each = words.ConvertAll(w => w[..^shared.Length]);
        return $"{string.Join(", ", each[..^1])} and {each[^1]}{shared}";
    }
}
