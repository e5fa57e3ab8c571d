using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Water;

public enum ProofResult
{
    /// <summary>The water can be put on.</summary>
    Holds,

    /// <summary>It cannot; the shortfall and the remedies say why and what would help.</summary>
    Refused,

    /// <summary>Flow or sprinklers were not entered: holds only if the assumptions do.</summary>
    Assumed,

    /// <summary>Neither a timetable was found nor was it shown that there is none.</summary>
    NotProven,
}

/// <summary>Minutes for one set in one round of one phase.</summary>
public sealed record SetRun(string SetName, Figure MinutesPerRound, Figure Depth, int Cycles, Figure? SoakMinutes);

/// <summary>How a phase of the season is watered.</summary>
/// <param name="PhaseId">Id of the <see cref="Timing.Phase"/>.</param>
/// <param name="Sentence">The watering in one sentence.</param>
/// <param name="RoundsPerDay">Rounds a day; below 1 means every few days.</param>
/// <param name="Starts">Suggested start times of the rounds.</param>
/// <param name="Runs">Minutes per set.</param>
/// <param name="Totals">What each patch needs, minutes per day, gallons per day, hours available and the like.</param>
public sealed record PhaseWatering(
    string PhaseId,
    string Sentence,
    double RoundsPerDay,
    IReadOnlyList<TimeOnly> Starts,
    IReadOnlyList<SetRun> Runs,
    IReadOnlyList<Figure> Totals)
{
    /// <summary>Run by run, where a timetable was found; what forbids one else.</summary>
    public required PhaseTimetables Timetables { get; init; }
}

/// <summary>Something that would make the water enough, with the number it yields.</summary>
public sealed record Remedy(string Id, string Sentence, Figure? Effect);

/// <summary>The statement that the water can, or cannot, be put on.</summary>
public sealed record WaterProof(
    ProofResult Result,
    string Sentence,
    IReadOnlyList<Figure> Figures,
    IReadOnlyList<PhaseWatering> Phases,
    Figure? Shortfall,
    IReadOnlyList<Remedy> Remedies,
    Figure? SeasonVolume,
    Figure? SeasonCost)
{
    /// <summary>What to know about the watering: permit to ask for, last round forced into the evening, too few cans.</summary>
    public IReadOnlyList<Advice> Advice { get; init; } = [];

    /// <summary>What binds in the worst phase: each limit that, loosened alone, would be enough, and by how much.</summary>
    public IReadOnlyList<BindingLimit> Limits { get; init; } = [];

    /// <summary>Sets, with their patches, left out of the best timetable of the worst phase.</summary>
    public IReadOnlyList<UnservedSet> Unserved { get; init; } = [];
}
