using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Plan;

public enum TaskKind
{
    Water,
    Mow,
    Prepare,
    Seed,
    Feed,
    Spray,
    Cover,
    Look,
    Photo,
    Buy,
}

/// <summary>A task the log shows done.</summary>
/// <param name="EntryId">The entry that shows it; the last of several.</param>
/// <param name="Day">The day it was done, by the lawn's own clock.</param>
/// <param name="Note">What is to be said of it; null for nothing.</param>
public sealed record TaskDone(Guid EntryId, DateOnly Day, string? Note);

/// <summary>One dated piece of work.</summary>
public sealed record PlanTask
{
    /// <summary>Stable within lawn and season, for example <c>feed.starter-2</c>; calendar ids are made from it.</summary>
    public required string Id { get; init; }

    public required TaskKind Kind { get; init; }

    public required string Title { get; init; }

    public required DateOnly Date { get; init; }

    /// <summary>Last day of a task that lasts several days; equal to <see cref="Date"/> otherwise.</summary>
    public required DateOnly LastDate { get; init; }

    /// <summary>Local start time; null means any time that day.</summary>
    public TimeOnly? Start { get; init; }

    /// <summary>Expected working minutes; null where it takes no attention.</summary>
    public int? Minutes { get; init; }

    public IReadOnlyList<string> Steps { get; init; } = [];

    /// <summary>What must be true before it is done, for example wind of 5 mph or less.</summary>
    public IReadOnlyList<string> Conditions { get; init; } = [];

    /// <summary>Ids of the plan's <see cref="Caution"/>s that apply.</summary>
    public IReadOnlyList<string> CautionIds { get; init; } = [];

    public IReadOnlyList<Figure> Figures { get; init; } = [];

    /// <summary>Set where the log shows it done.</summary>
    public TaskDone? Done { get; init; }
}
