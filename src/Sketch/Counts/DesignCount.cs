using System.Collections.Immutable;

namespace Sketch.Counts;

/// <summary>How many cards of one title are at which stage.</summary>
/// <param name="Card">The title.</param>
/// <param name="Make">How many the batch makes; zero for a card that it no longer makes.</param>
/// <param name="Stages">How many are counted for each stage of <see cref="CountStages.OfWork"/>; spoilt ones do not count as cut.</param>
/// <param name="Spoilt">How many were spoilt.</param>
public sealed record DesignCount(string Card, int Make, ImmutableArray<long> Stages, long Spoilt)
{
    /// <summary>Nothing done yet.</summary>
    public static DesignCount None(string card, int make) => new(card, make, [.. CountStages.OfWork.Select(_ => 0L)], 0);

    /// <summary>How many are counted for a stage.</summary>
    public long Of(CountStage stage) => stage == CountStage.Spoilt ? Spoilt : Stages[(int)stage];

    /// <summary>How many have reached a stage: a card that is glued is also cut, even if nobody counted that.</summary>
    public long Reached(CountStage stage) => Stages[(int)stage..].Max();

    /// <summary>How many are finished, which is to be in their envelopes or given away.</summary>
    public long Made => Reached(CountStage.Enveloped);

    /// <summary>How many are still to make.</summary>
    public long Left => Math.Max(0, Make - Made);

    /// <summary>How many are still to cut.</summary>
    public long LeftToCut => Math.Max(0, Make - Reached(CountStage.Cut));

    /// <summary>The numbers after an entry; some may be negative.</summary>
    internal DesignCount With(CountStage stage, int number) => stage == CountStage.Spoilt
        ? this with { Spoilt = Spoilt + number, Stages = Stages.SetItem(0, Stages[0] - number) }
        : this with { Stages = Stages.SetItem((int)stage, Of(stage) + number) };

    /// <summary>Why an entry is impossible after these: nothing can be taken back that is not there. Null if it is possible.</summary>
    internal string? ProblemWith(CountStage stage, int number)
    {
        var after = With(stage, number);
        return after.Of(stage) < 0 ? $"Only {Of(stage)} of \"{Card}\" {(Of(stage) == 1 ? "is" : "are")} counted as {stage.Word()}, "
                + $"so {-number} cannot be taken back."
            : after.Stages[0] < 0 ? $"Only {Stages[0]} of \"{Card}\" {(Stages[0] == 1 ? "is" : "are")} counted as cut, "
                + $"so {number} cannot be spoilt."
            : null;
    }
}
