using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>Seed-down day in the order of work: mow, seed, starter, spray, cover, first water.</summary>
internal static class SeedDownTasks
{
    private static readonly TimeOnly Begin = new(8, 0);

    /// <summary>One after the other from eight in the morning, each beginning on a quarter hour.</summary>
    internal static IEnumerable<PlanTask> For(TaskFacts facts, DateOnly day)
    {
        var start = Begin;
        foreach (var task in InOrder(facts, day))
        {
            yield return task with { Start = start };
            start = start.AddMinutes(15.0 * Math.Ceiling((task.Minutes ?? 0) / 15.0));
        }
    }

    private static IEnumerable<PlanTask> InOrder(TaskFacts facts, DateOnly day)
    {
        yield return Mow(day);
        if (facts.Seed is { } seed)
        {
            yield return Seed(facts, seed, day);
        }

        if (facts.Feed?.Feedings.FirstOrDefault(f => f.Id == "starter-1") is { } starter)
        {
            yield return FeedTask.For(starter, day, facts) with { LastDate = day };
        }

        foreach (var trip in facts.Spray?.Trips ?? [])
        {
            yield return SprayTask.For(trip, day, facts);
        }

        if (facts.Cover is { } cover)
        {
            yield return CoverTask(facts, cover, day);
        }

        yield return FirstWater(facts, day);
    }

    private static PlanTask Mow(DateOnly day) => new()
    {
        Id = "mow.seed-down",
        Kind = TaskKind.Mow,
        Title = "Mow two notches lower",
        Date = day,
        LastDate = day,
        Minutes = 45,
        Steps =
        [
            "Set the mower two notches down, to just under 3 in, and collect the clippings.",
            "Take off no more than a third of the blade; if the grass is taller, mow once now and once tomorrow's notch lower instead of scalping.",
            "Rake the thin spots until soil shows.",
        ],
        Conditions = ["The soil is soft from the evenings' watering but does not smear under a boot."],
        CautionIds = [Cautions.MachineId],
    };

    private static PlanTask Seed(TaskFacts facts, SeedPlan seed, DateOnly day) => new()
    {
        Id = "seed.down",
        Kind = TaskKind.Seed,
        Title = "Seed in two halves at right angles",
        Date = day,
        LastDate = day,
        Minutes = 90,
        Steps =
        [
            $"Weigh out {FigureText.Both(seed.TotalBulk)} of seed: {seed.MixSentence}",
            .. seed.Mixes.Count < 2 ? [] : seed.Mixes.Select(m => $"Keep the mixes apart. {Words.List(m.PatchIds.Select(id => BeforeTasks.Name(facts, id)))}: {FigureText.Both(m.HalfPass)} for each pass."),
            "Set aside the part for the thin spots, then halve the rest.",
            $"Spread the first half, {FigureText.Both(seed.HalfPass)}, in one direction. Start with a small opening: nobody prints a setting for this seed in this spreader.",
            "Weigh what is left, correct the opening, spread the second half at right angles to the first.",
            .. seed.Patches.Where(p => p.ThinExtra.Value > 0.0).Select(p => $"{BeforeTasks.Name(facts, p.PatchId)}: hand-spread {FigureText.Both(p.ThinExtra)} more on the thin spots."),
            "Rake lightly so that most seed lies in the top quarter inch.",
        ],
        Conditions = ["Wind below 8 mph, or the light seed drifts.", "Keep the spreader's guard on along beds and paving."],
        Figures = [seed.TotalBulk, seed.HalfPass, .. seed.Patches.Select(p => p.Bulk)],
    };

    private static PlanTask CoverTask(TaskFacts facts, CoverPlan cover, DateOnly day) => new()
    {
        Id = "cover.thin",
        Kind = TaskKind.Cover,
        Title = "Cover the thin and sloping places",
        Date = day,
        LastDate = day,
        Minutes = 60,
        Steps = [cover.Sentence, .. cover.Patches.Select(p => $"{BeforeTasks.Name(facts, p.PatchId)}: {FigureText.Both(p.Amount)} on {FigureText.Both(p.Area)}.")],
        Figures = [cover.Total],
    };

    private static PlanTask FirstWater(TaskFacts facts, DateOnly day) => new()
    {
        Id = "water.first",
        Kind = TaskKind.Water,
        Title = "First water",
        Date = day,
        LastDate = day,
        Minutes = 30,
        Steps = ["Water at once, gently, until the top half inch is wet and before anything puddles or runs.", .. WaterLines.For(facts, "seedbed")],
        Conditions = facts.Spray is null ? [] : ["Where something was sprayed, wait until it has dried, or as its label says."],
    };
}
