using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Supply;

/// <summary>What several taps give when all are open.</summary>
public static class SharedMain
{
    /// <summary>
    /// Flow of all taps together: as measured with all open, never more than the sum of each alone. Not measured, it is taken to be no
    /// more than the strongest tap, for they mostly hang on one pipe.
    /// </summary>
    /// <param name="alone">Flow of each tap with the others shut; at least one.</param>
    /// <param name="together">Sum of the flows measured with all open; null where that was not tried.</param>
    public static Figure Flow(IReadOnlyList<FlowRate> alone, FlowRate? together)
    {
        ArgumentNullException.ThrowIfNull(alone);
        if (alone.Count == 0)
        {
            throw new ArgumentException("at least one tap is needed", nameof(alone));
        }

        foreach (var flow in alone.Append(together ?? alone[0]))
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(flow.LitersPerMinute, nameof(alone));
        }

        var sum = alone.Sum(flow => flow.LitersPerMinute);
        var strongest = alone.Max(flow => flow.LitersPerMinute);
        WorkingInput[] inputs = [new("n", "taps", alone.Count, ""), new("sum", "each alone, added", new FlowRate(sum).GallonsPerMinute, "gpm"), new("best", "strongest alone", new FlowRate(strongest).GallonsPerMinute, "gpm")];
        return together is { } measured
            ? new Figure("water.main", "Flow of all taps together", QuantityKind.FlowRate, Math.Min(sum, measured.LitersPerMinute), new Working("least of the flows with all open and their sum alone", inputs, "bucket tests on this lawn", Sureness.Measured))
            : new Figure("water.main", "Flow of all taps together", QuantityKind.FlowRate, strongest, new Working(
                alone.Count == 1 ? "the tap's flow" : "the strongest tap's flow", inputs, alone.Count == 1 ? "bucket test on this lawn" : "taps taken to share one pipe", alone.Count == 1 ? Sureness.Measured : Sureness.Assumed, alone.Count == 1 ? null : "Fill buckets at all taps at once: what they give together decides."));
    }
}
