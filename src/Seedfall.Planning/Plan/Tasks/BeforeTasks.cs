using Seedfall.Engine.Workings;
using Seedfall.Planning.Judgment;

namespace Seedfall.Planning.Plan.Tasks;

/// <summary>Work before seed-down day: buying, clearing, photographs, the evenings' watering.</summary>
internal static class BeforeTasks
{
    private const double ThatchToThinMm = 12.7;

    internal static IEnumerable<PlanTask> For(TaskFacts facts, DateOnly seedDown)
    {
        yield return Buy(facts, seedDown);
        if (facts.Verdict.Patches.Any(p => p.Kind == VerdictKind.StartOver))
        {
            yield return ClearOld(facts, seedDown);
        }

        if (facts.Lawn.Patches.Any(p => p.Thatch is { } thatch && thatch.Millimeters > ThatchToThinMm))
        {
            yield return Dethatch(seedDown);
        }

        yield return Photograph(facts, seedDown);
        yield return Soak(facts, seedDown);
    }

    private static PlanTask Buy(TaskFacts facts, DateOnly seedDown) => new()
    {
        Id = "buy.materials",
        Kind = TaskKind.Buy,
        Title = "Buy the materials",
        Date = seedDown.AddDays(-14),
        LastDate = seedDown.AddDays(-4),
        Minutes = 60,
        Steps = [.. facts.Materials.Select(line => line.Buy.Length > 0 ? $"{line.Name}: {line.Buy}" : $"{line.Name}: {FigureText.Both(line.Need)}")],
        Conditions = ["Check that each seed tag shows the species, the test date and no noxious weeds.", "Check that every label names this use before you pay."],
        CautionIds = facts.Spray is null ? [] : [Cautions.LabelId],
        Figures = [.. facts.Materials.Select(line => line.Need)],
    };

    private static PlanTask ClearOld(TaskFacts facts, DateOnly seedDown) => new()
    {
        Id = "prepare.clear",
        Kind = TaskKind.Prepare,
        Title = "Clear the patches that start over",
        Date = seedDown.AddDays(-21),
        LastDate = seedDown.AddDays(-7),
        Minutes = 120,
        Steps =
        [
            $"Patches: {string.Join(", ", facts.Verdict.Patches.Where(p => p.Kind == VerdictKind.StartOver).Select(p => Name(facts, p.PatchId)))}.",
            "Take the old turf and weeds off with a sod cutter, or have them killed with a non-selective herbicide by its label and wait the days the label asks before seeding.",
            "Rake off what is dead, loosen the top half inch, level the dips.",
        ],
        CautionIds = [Cautions.LabelId, Cautions.SprayId, Cautions.MachineId],
    };

    private static PlanTask Dethatch(DateOnly seedDown) => new()
    {
        Id = "prepare.thatch",
        Kind = TaskKind.Prepare,
        Title = "Thin the thatch",
        Date = seedDown.AddDays(-5),
        LastDate = seedDown.AddDays(-2),
        Minutes = 90,
        Steps = ["Rake or power-rake where thatch is over half an inch until soil shows between the crowns.", "Take the debris off the lawn."],
        Conditions = ["The soil is moist, not wet, and the turf is not dormant."],
        CautionIds = [Cautions.MachineId],
    };

    private static PlanTask Photograph(TaskFacts facts, DateOnly seedDown) => new()
    {
        Id = "photo.before",
        Kind = TaskKind.Photo,
        Title = "Photograph every patch from its spot",
        Date = seedDown.AddDays(-2),
        LastDate = seedDown.AddDays(-1),
        Minutes = 10,
        Steps = [.. facts.Lawn.Patches.Select(p => $"{p.Name}: one picture from the edge, one straight down."), "Mark the spots: every later picture is taken from them."],
    };

    private static PlanTask Soak(TaskFacts facts, DateOnly seedDown) => new()
    {
        Id = "water.soak",
        Kind = TaskKind.Water,
        Title = "Water the evenings before",
        Date = seedDown.AddDays(-3),
        LastDate = seedDown.AddDays(-1),
        Start = new TimeOnly(18, 30),
        Minutes = 20,
        Steps =
        [
            "Water each set long enough that the top inches give under a thumb by morning.",
            .. WaterLines.For(facts, "soak"),
            "Next morning push a screwdriver in: it should slide 6 in with one hand. If it stops short, water again this evening.",
        ],
        Conditions = ["Skip an evening on which half an inch of rain has fallen."],
    };

    internal static string Name(TaskFacts facts, string patchId) => facts.Lawn.Patches.First(p => p.Id == patchId).Name;
}
