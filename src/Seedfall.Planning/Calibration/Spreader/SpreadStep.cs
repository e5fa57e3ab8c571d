using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>Which part of the work a run is.</summary>
public enum SpreadPart
{
    FirstHalf,

    /// <summary>The first half once more, where the first go put on little.</summary>
    MoreOfFirstHalf,

    /// <summary>The rest of a pass that gave out before the end.</summary>
    FinishPass,

    /// <summary>Half of what is lacking, where one run could not be trusted to come close.</summary>
    PartOfSecondHalf,

    SecondHalf,
}

/// <summary>What to do next on a job. Closed: only the kinds below exist.</summary>
public abstract record SpreadStep
{
    private SpreadStep()
    {
    }

    /// <summary>What to do, in words.</summary>
    public required string Sentence { get; init; }

    /// <summary>Figures behind it, the total so far among them.</summary>
    public required IReadOnlyList<Figure> Figures { get; init; }

    /// <summary>Spread at an opening.</summary>
    /// <param name="Part">Which part of the work it is.</param>
    /// <param name="Opening">On the spreader's scale.</param>
    /// <param name="Ground">Ground to cover.</param>
    /// <param name="Aim">Rate this run should put on.</param>
    /// <param name="Expected">What it will put on at that opening, with its range.</param>
    public sealed record Spread(SpreadPart Part, double Opening, Area Ground, MassPerArea Aim, FlowForecast Expected) : SpreadStep;

    /// <summary>Nothing is known of the spreader: the first grains are to be looked for before an opening can be told.</summary>
    public sealed record FirstGrains : SpreadStep;

    /// <summary>The target is met; spread nothing more.</summary>
    public sealed record Enough : SpreadStep;

    /// <summary>More than wanted is down; spread nothing more.</summary>
    public sealed record Over : SpreadStep;

    /// <summary>No opening on the scale does it.</summary>
    /// <param name="Part">Which part of the work it is.</param>
    /// <param name="Aim">Rate the run should put on.</param>
    /// <param name="Instead">What would do it, one sentence each.</param>
    public sealed record NoOpening(SpreadPart Part, MassPerArea Aim, IReadOnlyList<string> Instead) : SpreadStep;
}
