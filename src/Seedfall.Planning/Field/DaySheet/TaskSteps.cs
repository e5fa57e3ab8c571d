using Seedfall.Engine.Units;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field;

/// <summary>Other tasks of the plan as steps: the plan's own lines, and what is written down at their end.</summary>
internal static class TaskSteps
{
    private static readonly Depth FirstMowTo = Depth.FromInches(3.0);

    internal static DayStep Of(DayFacts facts, PlanTask task) => new DayStep
    {
        Id = task.Id,
        Kind = task.Kind,
        Title = task.Title,
        Start = task.Start,
        Lines = [.. task.Steps, .. task.LastDate > facts.Date ? [$"It can wait until {Engine.Workings.FigureText.DateText(task.LastDate)}."] : Array.Empty<string>()],
        Big = task.Kind == TaskKind.Buy ? [] : [.. task.Figures.Where(f => f.Kind != Engine.Workings.QuantityKind.Date)],
        OnlyWhen = task.Conditions,
        Wear = task.Kind == TaskKind.Mow ? WhatToWear.Machine : [],
        CautionIds = task.CautionIds,
        PhotoPatches = task.Kind == TaskKind.Photo ? facts.AllPatches : [],
        Records = [.. Records(facts, task)],
        Refusals = task.Id == "look.weeds" ? Refusals.Repeating(facts.Plan) : [],
    };

    private static IEnumerable<DayRecord> Records(DayFacts facts, PlanTask task)
    {
        switch (task.Id)
        {
            case "look.emergence":
                yield return new("look.emergence.green", "First green", new LogEntry.FirstGreen { Id = Guid.Empty, At = DayRecord.Later });
                break;
            case "mow.first":
                yield return new("mow.first.mowed", "Mowed", new LogEntry.Mowed { Id = Guid.Empty, At = DayRecord.Later, To = FirstMowTo });
                break;
            case "mow.last":
                yield return new("mow.last.mowed", "Mowed", new LogEntry.Mowed { Id = Guid.Empty, At = DayRecord.Later, To = FirstMowTo });
                break;
            case "look.thin" or "look.again":
                foreach (var patch in facts.Plan.Patches)
                {
                    yield return new($"{task.Id}.cover.{patch.Id}", $"Cover seen: {patch.Name}", new LogEntry.CoverSeen(Fraction.Of(patch.LivingCover.Value), CoverJudged.ByEye) { Id = Guid.Empty, At = DayRecord.Later, PatchId = patch.Id });
                }

                break;
        }
    }
}
