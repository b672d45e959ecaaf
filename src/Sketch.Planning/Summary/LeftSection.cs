using Sketch.Counts;
using Sketch.Planning.Demand;
using Sketch.Text;

namespace Sketch.Planning.Summary;

/// <summary>What is left of a batch, in words.</summary>
internal static class LeftSection
{
    /// <summary>How many cards are still to cut, to put together and to put into envelopes.</summary>
    public static string Sentence(BatchFiles files, BatchCount count)
    {
        var all = count.Designs.Sum(d => (long)d.Make);
        var spoilt = count.Spoilt == 0 ? "" : $", {count.Spoilt} of them for spoilt ones";
        return $"{files.Cards} of {Counted.Of(all, "card")} are left to cut{spoilt}; {files.Designs.Sum(d => (long)d.ToGlue)} to put "
            + $"together; {files.Designs.Sum(d => (long)d.ToEnclose)} to put into envelopes.";
    }
}
