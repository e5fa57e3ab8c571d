using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Field;

/// <summary>Covering the thin and sloping places.</summary>
internal static class CoverStep
{
    internal static IReadOnlyList<DayStep> Of(DayFacts facts) => facts.Plan.Cover is { } cover && facts.Task("cover.thin") is { } task ? [One(facts, cover, task)] : [];

    private static DayStep One(DayFacts facts, CoverPlan cover, PlanTask task) => new DayStep
    {
        Id = task.Id,
        Kind = task.Kind,
        Title = task.Title,
        Start = task.Start,
        Big = [cover.Total],
        Lines = [cover.Sentence, .. cover.Patches.Select(p => $"{facts.Name(p.PatchId)}: {FigureText.Both(p.Amount)} on {FigureText.Both(p.Area)}.")],
        OnlyWhen = facts.Plan.Spray is null ? [] : ["What was sprayed has dried, unless its label says otherwise."],
        Wear = ["Gloves; a dust mask for straw, peat and pellets."],
        Records = cover.Total.Kind is QuantityKind.Mass or QuantityKind.BulkVolume
            ? [new("cover.thin.applied", "Cover put on", new LogEntry.Applied(Put(cover)) { Id = Guid.Empty, At = DayRecord.Later })]
            : [],
        Troubles =
        [
            new("A bale or bag runs out", "Cover the steepest and barest first; what is left bare gets a light round of water more often."),
            new("The wind rises", "Wet each strip as you go, so that it lies."),
        ],
    }.Ticked("Soil still shows through, about half of it.");

    private static Application Put(CoverPlan cover) => new()
    {
        Kind = ApplicationKind.Other,
        Product = CoverPlanning.Words(cover.Kind),
        Amount = cover.Total.Kind == QuantityKind.Mass ? new(Mass.FromKilograms(cover.Total.Value), null) : new(null, Volume.FromLiters(cover.Total.Value)),
        Area = Area.FromSquareMeters(cover.Patches.Sum(p => p.Area.Value)),
        Target = "cover of the seedbed",
        Method = "by hand",
    };
}
