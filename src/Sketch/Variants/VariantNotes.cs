using System.Collections.Immutable;
using Sketch.Panels;
using Sketch.Papers;
using Sketch.Stashes;
using Sketch.Text;

namespace Sketch.Variants;

/// <summary>Says which papers were tried for which role, and what was left out.</summary>
internal static class VariantNotes
{
    public static ImmutableArray<string> Of(
        LaidOutCard card, Stash stash, VariantOptions options, ImmutableArray<RoleUse> uses,
        ImmutableArray<ImmutableArray<Candidate>> suited, ImmutableArray<ImmutableArray<Candidate>> tried)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        for (var i = 0; i < uses.Length; i++)
        {
            notes.Add(NoteOn(uses[i], suited[i], tried[i].Length, options.Papers.IsEmpty));
        }

        var kept = card.Roles.Select(r => r.Name).Except(uses.Select(u => u.Role), StringComparer.OrdinalIgnoreCase).ToList();
        if (kept.Count > 0)
        {
            notes.Add($"{string.Join(", ", kept)}: not varied.");
        }

        var unseen = stash.Papers.Where(p => !p.Front.IsDescribed && !p.Back.IsDescribed).Select(p => p.Name).ToList();
        if (unseen.Count > 0 && options.Papers.IsEmpty)
        {
            notes.Add($"Left out, because the stash does not say what they look like: {string.Join(", ", unseen)}.");
        }

        return notes.ToImmutable();
    }

    private static string NoteOn(RoleUse use, ImmutableArray<Candidate> suited, int tried, bool isWholeStash)
    {
        var sides = Counted.Of(suited.Length, "side");
        var what = !isWholeStash || use.Character is not { } character ? $"{sides} tried"
            : suited.Any(c => c.Character == character) ? $"stays {Word(character)}, {sides} tried"
            : $"the stash has no {Word(character)} paper for it, so any paper was tried, {sides}";
        return tried == suited.Length ? $"{use.Role}: {what}." : $"{use.Role}: {what}, {tried} of them, as all would be too many.";
    }

    private static string Word(PaperCharacter character) => character.ToString().ToLowerInvariant();
}
