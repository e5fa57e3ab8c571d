using Seedfall.Planning.Judgment;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>What to do on a lawn that should not be seeded now.</summary>
internal static class WaitingTasks
{
    internal static IEnumerable<PlanTask> For(TaskFacts facts, DateOnly from)
    {
        yield return new()
        {
            Id = "look.cause",
            Kind = TaskKind.Look,
            Title = facts.Verdict.Kind == VerdictKind.CureFirst ? "Cure the cause first" : "Why it waits",
            Date = from,
            LastDate = from.AddDays(14),
            Minutes = 30,
            Steps = [facts.Verdict.Sentence, .. facts.Verdict.Reasons.Select(r => r.Sentence)],
            CautionIds = [Cautions.LabelId],
        };
        yield return Photograph(facts, from);
        var again = facts.Verdict.WaitUntil ?? from.AddDays(21);
        yield return new()
        {
            Id = "look.again",
            Kind = TaskKind.Look,
            Title = facts.Verdict.WaitFor is { } what ? $"Judge again: {what}" : "Judge the lawn again",
            Date = again,
            LastDate = again.AddDays(3),
            Minutes = 30,
            Steps = ["Count the living cover on every patch again, tug the turf, look at what was treated.", "Enter what you find: the plan is computed anew."],
        };
        var mow = facts.Late.LastMow.AsDate();
        if (mow > from)
        {
            yield return new()
            {
                Id = "mow.last",
                Kind = TaskKind.Mow,
                Title = "Last mowing",
                Date = mow,
                LastDate = mow.AddDays(14),
                Minutes = 45,
                Steps = ["Mow what lives to 2.5 to 3 in for the winter."],
                CautionIds = [Cautions.MachineId],
                Figures = [facts.Late.LastMow],
            };
        }
    }

    private static PlanTask Photograph(TaskFacts facts, DateOnly from) => new()
    {
        Id = "photo.before",
        Kind = TaskKind.Photo,
        Title = "Photograph every patch from its spot",
        Date = from,
        LastDate = from.AddDays(3),
        Minutes = 10,
        Steps = [.. facts.Lawn.Patches.Select(p => $"{p.Name}: one picture from the edge, one straight down.")],
    };
}
