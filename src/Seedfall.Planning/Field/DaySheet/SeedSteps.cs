using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field;

/// <summary>Weighing out, two halves at right angles, thin spots by hand.</summary>
internal static class SeedSteps
{
    internal static IEnumerable<DayStep> Of(DayFacts facts)
    {
        if (facts.Plan.Seed is not { } seed || facts.Task("seed.down") is not { } task)
        {
            return [];
        }

        var extraKg = seed.Patches.Sum(p => p.ThinExtra.Value);
        return
        [
            Weigh(facts, seed, task, extraKg),
            Half(facts, seed, task, first: true),
            Half(facts, seed, task, first: false),
            Finish(facts, seed, task, extraKg),
        ];
    }

    private static DayStep Weigh(DayFacts facts, SeedPlan seed, PlanTask task, double extraKg) => new DayStep
    {
        Id = "seed.weigh",
        Kind = TaskKind.Seed,
        Title = "Weigh out the seed",
        Start = task.Start,
        Big = [seed.TotalBulk],
        Lines =
        [
            seed.MixSentence,
            .. seed.Lots.Count < 2 ? [] : seed.Lots.Select(l => $"{l.Name}: {FigureText.Both(l.Bulk)}."),
            .. seed.Patches.Select(p => $"{facts.Name(p.PatchId)}: {FigureText.Both(HalfOf(p))} each way{(p.ThinExtra.Value > 0.0 ? $", {FigureText.Both(p.ThinExtra)} kept apart for its thin spots" : "")}."),
        ],
        Wear = ["Gloves where the tag says the seed is treated."],
        Troubles = [new("There is less seed than the plan asks", "Halve what there is all the same, seed the thinnest patch first and leave the best one. Write down what went on.")],
    }.Ticked([
        "Tag checked: species, test date, no noxious weeds.",
        .. extraKg > 0.0 ? new[] { "The thin-spot part stands apart, marked." } : [],
        "The rest is in two equal halves.",
    ]);

    private static DayStep Half(DayFacts facts, SeedPlan seed, PlanTask task, bool first)
    {
        var perArea = PerArea(facts, seed);
        return new DayStep
        {
            Id = first ? "seed.first-half" : "seed.second-half",
            Kind = TaskKind.Seed,
            Title = first ? "First half, one way" : "Second half, across",
            Big = [seed.HalfPass, perArea],
            Lines =
            [
                .. first
                    ? new[] { "Start with a small opening: nobody prints a setting for this seed in this spreader.", "Once round the edge with the guard on, then up and down in one direction." }
                    : ["Weigh what the first half left over, or pace off what it did not reach, and correct the opening.", "Walk at right angles to the first half."],
                .. seed.Mixes.Count < 2 ? [] : seed.Mixes.Select(m => $"{Words.List(m.PatchIds.Select(facts.Name))}: {FigureText.Both(m.HalfPass)}. Keep the mixes apart."),
                .. seed.Patches.Count < 2 ? [] : seed.Patches.Select(p => $"{facts.Name(p.PatchId)}: {FigureText.Both(HalfOf(p))}."),
            ],
            OnlyWhen = task.Conditions,
            Tools = [DayTool.Spreader],
            Troubles = Trouble.Seeding(perArea),
        }.Ticked("The guard is on along beds and paving.", first ? "The opening it was spread at is written down." : "The new opening is written down.");
    }

    private static DayStep Finish(DayFacts facts, SeedPlan seed, PlanTask task, double extraKg)
    {
        IReadOnlyList<PatchSeed> thin = [.. seed.Patches.Where(p => p.ThinExtra.Value > 0.0)];
        return new DayStep
        {
            Id = "seed.thin",
            Kind = TaskKind.Seed,
            Title = thin.Count > 0 ? "Thin spots by hand, then rake" : "Rake the seed in",
            Big = thin.Count > 0 ? [Extra(thin, extraKg)] : [],
            Lines =
            [
                .. thin.Select(p => $"{facts.Name(p.PatchId)}: {FigureText.Both(p.ThinExtra)} more on its thin spots."),
                "Rake lightly with the back of the rake, so that most seed lies in the top quarter inch.",
                "Sweep seed out of beds and off paving.",
            ],
            Records =
            [
                new("seed.down.day", "Seed is down", new LogEntry.SeededDown { Id = Guid.Empty, At = DayRecord.Later }),
                .. facts.Applied("seed.down").Select(r => r with { Label = "Seed put on" }),
            ],
            Troubles = [new("Seed is left over", "Do not thicken what is well covered: crowded seedlings damp off. Keep it dry for the judging of the thin spots in three weeks.")],
        }.Ticked("Boots and wheels brushed off before leaving the seedbed.");
    }

    private static Figure HalfOf(PatchSeed patch) => new($"day.seed.{patch.PatchId}.half", "seed for one of two passes on the patch", QuantityKind.Mass, 0.5 * (patch.Bulk.Value - patch.ThinExtra.Value), new Working(
        "half = (bulk - extra) / 2",
        [new("bulk", "bulk seed of the patch", Mass.FromKilograms(patch.Bulk.Value).Pounds, "lb"), new("extra", "kept for its thin spots", Mass.FromKilograms(patch.ThinExtra.Value).Pounds, "lb")],
        Worked.Arithmetic,
        Sureness.Computed));

    private static Figure PerArea(DayFacts facts, SeedPlan seed) => new("day.seed.half.rate", "one pass, over all the ground", QuantityKind.MassPerArea, seed.HalfPass.Value / facts.Whole.SquareMeters, new Working(
        "rate = half / A",
        [new("half", "seed for one pass", Mass.FromKilograms(seed.HalfPass.Value).Pounds, "lb"), new("A", "ground", facts.Whole.SquareFeet, "sq ft")],
        Worked.Arithmetic,
        Sureness.Computed,
        "A mean over the lawn; each patch has its own part."));

    private static Figure Extra(IReadOnlyList<PatchSeed> thin, double extraKg) => Worked.Computed(
        "day.seed.extra", "for all thin spots", QuantityKind.Mass, extraKg, "sum over the patches", null,
        [.. thin.Select(p => new WorkingInput(p.PatchId, p.ThinExtra.Label, Mass.FromKilograms(p.ThinExtra.Value).Pounds, "lb"))]);
}
