using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field;

/// <summary>Something to tick off.</summary>
/// <param name="Id">Stable within the day, for example <c>mow.seed-down.1</c>.</param>
public sealed record DayCheck(string Id, string Text);

/// <summary>A wait or a run by the clock.</summary>
/// <param name="Id">Stable within the day.</param>
/// <param name="Label">What is timed.</param>
/// <param name="Minutes">How long.</param>
public sealed record DayTimer(string Id, string Label, Figure Minutes);

/// <summary>What to do when the day does not go as planned.</summary>
/// <param name="If">What happens, for example <c>Rain begins</c>.</param>
/// <param name="Then">What to do, in one or two sentences.</param>
public sealed record DayTrouble(string If, string Then);

/// <summary>What to write down, filled in as far as it is known.</summary>
/// <param name="Id">Stable within the day.</param>
/// <param name="Label">What the form is headed.</param>
/// <param name="Entry">The entry as planned. Its id and instant are made when it is written.</param>
public sealed record DayRecord(string Id, string Label, LogEntry Entry)
{
    /// <summary>Stands for the instant that is not known yet.</summary>
    internal static DateTimeOffset Later => DateTimeOffset.UnixEpoch;
}

/// <summary>A page of the lawn's that helps with a step.</summary>
public enum DayTool
{
    /// <summary>Spreader opening: half, correct, half.</summary>
    Spreader,

    /// <summary>A beat to walk by.</summary>
    Pace,

    /// <summary>Tank mix.</summary>
    Tank,

    /// <summary>Wind and weather judged on the spot.</summary>
    SprayNow,

    /// <summary>Hours fit for spraying.</summary>
    SprayWindow,
}

/// <summary>One step of a day's work: one screen on the phone.</summary>
public sealed record DayStep
{
    /// <summary>Stable within the day, for example <c>seed.first-half</c>.</summary>
    public required string Id { get; init; }

    public required TaskKind Kind { get; init; }

    public required string Title { get; init; }

    /// <summary>Local start time; null means any time that day.</summary>
    public TimeOnly? Start { get; init; }

    /// <summary>What to do, in short lines.</summary>
    public IReadOnlyList<string> Lines { get; init; } = [];

    /// <summary>The figures to have in hand.</summary>
    public IReadOnlyList<Figure> Big { get; init; } = [];

    /// <summary>What must be true before it is begun.</summary>
    public IReadOnlyList<string> OnlyWhen { get; init; } = [];

    public IReadOnlyList<DayCheck> Checks { get; init; } = [];

    public IReadOnlyList<DayTimer> Timers { get; init; } = [];

    /// <summary>Protective clothing, in one sentence each; the label's list stands above it.</summary>
    public IReadOnlyList<string> Wear { get; init; } = [];

    /// <summary>Ids of the plan's <see cref="Caution"/>s that apply.</summary>
    public IReadOnlyList<string> CautionIds { get; init; } = [];

    public IReadOnlyList<DayTrouble> Troubles { get; init; } = [];

    /// <summary>What to write down at its end.</summary>
    public IReadOnlyList<DayRecord> Records { get; init; } = [];

    /// <summary>Patches to photograph from their spots, by id.</summary>
    public IReadOnlyList<string> PhotoPatches { get; init; } = [];

    /// <summary>Heights of cut by height of the grass; empty where nothing is mowed.</summary>
    public IReadOnlyList<MowingCut> Cuts { get; init; } = [];

    public IReadOnlyList<DayTool> Tools { get; init; } = [];

    /// <summary>Rules of label or law that stop it. Then nothing is put on, and there is no record of it to write.</summary>
    public IReadOnlyList<Wall> Refusals { get; init; } = [];

    /// <summary>The last day it should have been done by, where that is past; else null.</summary>
    public DateOnly? DueBy { get; init; }

    internal DayStep Ticked(params string[] checks) => this with { Checks = [.. checks.Select((text, i) => new DayCheck(FormattableString.Invariant($"{Id}.{i + 1}"), text))] };
}
