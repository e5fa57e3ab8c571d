using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>Everything a timetable has to keep to. All times are whole minutes after the start of its stretch of days.</summary>
public sealed record TimetableProblem
{
    public required IReadOnlyList<TimetableTap> Taps { get; init; }

    public required IReadOnlyList<TimetableSet> Sets { get; init; }

    /// <summary>Rounds every set must be run, in order of time.</summary>
    public required IReadOnlyList<RoundPart> Rounds { get; init; }

    /// <summary>Minutes in which water may run; in order, not overlapping.</summary>
    public required IReadOnlyList<MinuteSpan> Allowed { get; init; }

    /// <summary>Minutes in which somebody is there to open a tap or move a hose.</summary>
    public IReadOnlyList<MinuteSpan> Hands { get; init; } = [];

    public IReadOnlyList<TimetableTimer> Timers { get; init; } = [];

    /// <summary>Flow of the pipe all taps share, household use already taken off; null where each tap stands for itself.</summary>
    public FlowRate? Main { get; init; }

    /// <summary>Minutes of hands for one trip: shut off, carry, set, open again.</summary>
    public int MinutesPerTrip { get; init; } = 3;

    /// <summary>Least minutes from the end of a set's round to the start of its next.</summary>
    public int GapMinutes { get; init; } = 60;

    /// <summary>Days the stretch spans; timers count their starts per day.</summary>
    public int Days { get; init; } = 1;
}

/// <summary>A stretch of minutes, <see cref="To"/> not included.</summary>
public readonly record struct MinuteSpan(int From, int To);

/// <summary>One round's part of the day.</summary>
/// <param name="From">Earliest start of any of its runs.</param>
/// <param name="To">Latest start of any of its runs.</param>
/// <param name="Wish">Minute its water should be centered on.</param>
public sealed record RoundPart(int From, int To, int Wish);

/// <summary>A water source.</summary>
/// <param name="Name">As the adviser calls it.</param>
/// <param name="Flow">What it gives with everything else shut.</param>
public sealed record TimetableTap(string Name, FlowRate Flow)
{
    /// <summary>Flow kept free for the household at all times.</summary>
    public FlowRate Reserved { get; init; }

    /// <summary>Hours of the household's own use, on top of <see cref="Reserved"/>.</summary>
    public IReadOnlyList<HouseholdUse> Household { get; init; } = [];

    /// <summary>The well behind it; null for a main that never runs dry.</summary>
    public WellLimit? Well { get; init; }
}

/// <summary>Water the household draws in a stretch of minutes.</summary>
public sealed record HouseholdUse(MinuteSpan When, FlowRate Flow);

/// <summary>A well: what stands ready above the pump, and how fast it comes back.</summary>
public sealed record WellLimit(Volume Stored, FlowRate Recovery);

/// <summary>A timer or controller: programs run one at a time, each running its sets one after another at every start.</summary>
/// <param name="Name">As the adviser calls it.</param>
/// <param name="Programs">Programs it can hold.</param>
/// <param name="StartsPerDay">Starts a day each program can have.</param>
public sealed record TimetableTimer(string Name, int Programs, int StartsPerDay);

/// <summary>One sprinkler set and what a round asks of it.</summary>
public sealed record TimetableSet
{
    public required string Name { get; init; }

    /// <summary>Patches it waters, named where they cannot be served.</summary>
    public required IReadOnlyList<string> PatchIds { get; init; }

    /// <summary>What it draws while it runs.</summary>
    public required FlowRate Flow { get; init; }

    /// <summary>Whole minutes of one cycle in one position.</summary>
    public required int CycleMinutes { get; init; }

    /// <summary>Cycles a round is split into.</summary>
    public int Cycles { get; init; } = 1;

    /// <summary>Least minutes from the start of one cycle to the start of the next in the same position.</summary>
    public int SoakMinutes { get; init; } = (int)CycleSoak.SoakMinutes;

    /// <summary>Places it is moved through in one round.</summary>
    public int Positions { get; init; } = 1;

    /// <summary>Names of the taps it can stand on; empty means any.</summary>
    public IReadOnlyList<string> Taps { get; init; } = [];

    /// <summary>Name of its timer; null where a hand opens the tap.</summary>
    public string? Timer { get; init; }
}
