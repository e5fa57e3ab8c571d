using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field;

/// <summary>
/// Seed-down day in its order: soft soil, mow, seed in two halves, thin spots, starter, spray, cover, first water, close.
/// </summary>
internal static class SeedDownDay
{
    internal static IEnumerable<DayStep> Steps(DayFacts facts) =>
    [
        Begin(facts),
        .. facts.Open("mow.seed-down") is { } mow ? [Mow(mow)] : Array.Empty<DayStep>(),
        .. SeedSteps.Of(facts),
        .. facts.Plan.Feed?.Feedings.FirstOrDefault(f => f.Id == "starter-1") is { } starter && facts.Open("feed.starter-1") is { } feed ? [FeedStepOfDay.Of(facts, starter, feed)] : Refusals.Feeding(facts),
        .. Refusals.Spraying(facts),
        .. (facts.Plan.Spray?.Trips ?? []).SelectMany(trip => SpraySteps.Of(facts, trip)),
        .. CoverStep.Of(facts),
        RoundSteps.First(facts),
        Close(facts),
    ];

    private static DayStep Begin(DayFacts facts) => new DayStep
    {
        Id = "begin",
        Kind = TaskKind.Look,
        Title = "Before you start",
        Start = facts.Task("mow.seed-down")?.Start,
        Lines =
        [
            SoakSteps.Softness,
            "If the top 3 in stop it, water now, wait an hour for it to sink in, and begin later. If it smears under a boot, wait until it does not.",
            "Look at the hours of wind and rain left today before anything is mixed.",
        ],
        PhotoPatches = facts.AllPatches,
        Records = [SoakSteps.Felt("begin.finger", facts)],
        Troubles = [new("Rain is sure within the label's hours", "Seed, feed and cover today; leave the spraying to the next day the label and the seed allow. If it will pour, leave the seeding too: seed washes off.")],
        Tools = facts.Plan.Spray is null ? [] : [DayTool.SprayWindow],
    }.Ticked([
        "Sprinkler heads, cables and invisible fences are flagged.",
        "People and pets know to keep off until the spray is dry and the seed is up.",
        "Scale, buckets, rake, flags and a watch are here; every label is in hand.",
        .. facts.Hired ? new[] { "The customer has the notice the state asks, and the lawn signs are here." } : [],
    ]);

    private static DayStep Mow(PlanTask task) => new DayStep
    {
        Id = task.Id,
        Kind = task.Kind,
        Title = task.Title,
        Start = task.Start,
        Lines = ["Measure how tall the grass stands in three places and take the middle one.", "Collect the clippings, then rake the thin spots until soil shows."],
        OnlyWhen = task.Conditions,
        Wear = WhatToWear.Machine,
        CautionIds = task.CautionIds,
        Cuts = MowingHeight.Table,
        Records = [new("mow.seed-down.mowed", "Mowed", new LogEntry.Mowed { Id = Guid.Empty, At = DayRecord.Later, To = MowingHeight.JustUnderThree })],
        Troubles = [new("The mower leaves ruts or pulls plants", "Stop: the ground is too soft. Mow what bears, rake the rest, and seed it as it is.")],
    }.Ticked("Blade is sharp.", "Clippings are off the lawn.", "Thin spots are raked open.");

    private static DayStep Close(DayFacts facts) => new DayStep
    {
        Id = "close",
        Kind = TaskKind.Photo,
        Title = "Close the day",
        Lines =
        [
            "Photograph every patch from its spot.",
            "Weigh or measure what is left over and write it in a note: the next opening is set from it.",
            "Set the timer for tomorrow's first round.",
            .. facts.Plan.Spray is null ? [] : new[] { "Rinse the sprayer and put the rinse water on the treated lawn within the label's rate; wash hands, face and clothing, clothing apart." },
        ],
        PhotoPatches = facts.AllPatches,
    }.Ticked([
        "Granules and seed are swept off paving back onto the lawn.",
        "Products are locked away in their own containers.",
        .. facts.Hired && facts.Plan.Spray is not null ? new[] { "Lawn signs stand at every way in; the written statement is left with the customer." } : [],
        "The timer is set, or someone knows when to water.",
    ]);
}
