using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>What could be shown about a timetable. Closed: only the outcomes below exist.</summary>
public abstract record TimetableProof
{
    private TimetableProof()
    {
    }

    /// <summary>A timetable that keeps to everything.</summary>
    /// <param name="Runs">Every run, in order of start.</param>
    /// <param name="Trips">Times a hand opens a tap or moves a hose.</param>
    /// <param name="MinutesAway">Mean distance of the water from the wished minute, volume-weighted, min.</param>
    /// <param name="Bound">No timetable can come nearer than this on the mean, min.</param>
    /// <param name="BySolver">True where the solver was needed.</param>
    public sealed record Found(IReadOnlyList<TimetableRun> Runs, int Trips, Figure MinutesAway, Figure Bound, bool BySolver) : TimetableProof;

    /// <summary>There is no such timetable.</summary>
    /// <param name="Reason">Why, in one sentence.</param>
    /// <param name="Limits">What binds: each limit that, loosened alone, would make it possible, and by how much.</param>
    /// <param name="Unserved">Sets and their patches left out of the best timetable that was found without them.</param>
    public sealed record Impossible(string Reason, IReadOnlyList<BindingLimit> Limits, IReadOnlyList<UnservedSet> Unserved) : TimetableProof;

    /// <summary>Neither found nor refuted within the work allowed.</summary>
    /// <param name="Reason">What was tried.</param>
    /// <param name="Unserved">Sets left out of the best timetable that was found without them.</param>
    public sealed record NotProven(string Reason, IReadOnlyList<UnservedSet> Unserved) : TimetableProof;
}

/// <summary>One run of one set in one position.</summary>
/// <param name="Set">Name of the set.</param>
/// <param name="Tap">Name of the tap.</param>
/// <param name="Round">Round, 1-based.</param>
/// <param name="Position">Position, 1-based.</param>
/// <param name="Cycle">Cycle, 1-based.</param>
/// <param name="Start">Minute it starts.</param>
/// <param name="Minutes">Whole minutes it runs.</param>
/// <param name="Program">Program of its timer, 1-based; null where a hand opens the tap.</param>
/// <param name="Trip">True where hands are needed in the minutes before it.</param>
public sealed record TimetableRun(string Set, string Tap, int Round, int Position, int Cycle, int Start, int Minutes, int? Program, bool Trip)
{
    public int End => Start + Minutes;
}

/// <summary>A set that found no time, and its patches.</summary>
public sealed record UnservedSet(string Set, IReadOnlyList<string> PatchIds);

/// <summary>The limits a timetable can break on.</summary>
public enum TimetableLimit
{
    /// <summary>Flow of the taps.</summary>
    Flow,

    /// <summary>Allowed hours.</summary>
    Hours,

    /// <summary>Hours somebody is there.</summary>
    Hands,

    /// <summary>Starts a timer can be given.</summary>
    TimerStarts,

    /// <summary>Programs a timer can hold.</summary>
    TimerPrograms,

    /// <summary>What the well gives back.</summary>
    Well,

    /// <summary>Parts of the day the rounds belong to.</summary>
    Parts,

    /// <summary>Days on which water may run.</summary>
    Days,
}

/// <summary>A limit that binds and the least loosening of it alone that is enough.</summary>
/// <param name="Limit">Which.</param>
/// <param name="Sentence">In words.</param>
/// <param name="Enough">An amount shown to be enough.</param>
/// <param name="NotEnough">The largest amount shown not to be; null where none was refuted. The least enough lies between.</param>
public sealed record BindingLimit(TimetableLimit Limit, string Sentence, Figure Enough, Figure? NotEnough);
