using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Field;

/// <summary>One trip with the sprayer: jar test where two share a tank, then mixing and spraying.</summary>
internal static class SpraySteps
{
    private const double JarMinutes = 15.0;

    private const double DryMinutes = 60.0;

    internal static IEnumerable<DayStep> Of(DayFacts facts, SprayTrip trip)
    {
        if (facts.Open($"spray.{trip.Id}") is not { } task)
        {
            yield break;
        }

        if (trip.Products.Count > 1)
        {
            yield return Jar(trip, task);
        }

        yield return Mix(trip, task);
        yield return Spray(facts, trip, task);
    }

    private static DayStep Jar(SprayTrip trip, PlanTask task) => new()
    {
        Id = $"{task.Id}.jar",
        Kind = TaskKind.Spray,
        Title = "Jar test",
        Lines = trip.JarTest,
        Wear = WhatToWear.Spraying,
        CautionIds = [Cautions.LabelId, Cautions.MixId],
        Timers =
        [
            new($"{task.Id}.jar.rest", "Let the jar stand", DayFacts.Minutes($"day.{task.Id}.jar", "Jar test", JarMinutes, "15 min", "Utah State University Extension: jar test", Sureness.Published)),
        ],
        Troubles = [new("Heat, layers, flakes or gel", "These do not go together: spray them apart, rinsing between. The label stands above this test.")],
    };

    private static DayStep Mix(SprayTrip trip, PlanTask task) => new DayStep
    {
        Id = $"{task.Id}.mix",
        Kind = TaskKind.Spray,
        Title = trip.Tanks.Count > 1 ? $"Mix tank by tank: {trip.Products[0].Name}" : $"Mix the tank: {trip.Products[0].Name}",
        Start = task.Start,
        Big = [trip.CarrierTotal, .. trip.Products.Select(p => p.Total)],
        Lines =
        [
            $"Into the tank: {string.Join(", then ", trip.MixingOrder)}.",
            .. trip.Tanks.Select(t => $"Tank {t.Number}: {FigureText.Both(t.Carrier)} of water with {string.Join(", ", t.Products.Select(DoseMeasure.Sentence))}."),
            .. trip.IsWeighed ? ["A dry oz is an ounce by weight, read off a scale; it is never measured in a fluid ounce."] : Array.Empty<string>(),
            "Mix the next tank only when the last is empty.",
        ],
        OnlyWhen = task.Conditions,
        Wear = trip.IsWeighed ? [.. WhatToWear.Spraying, .. WhatToWear.Weighing] : WhatToWear.Spraying,
        CautionIds = trip.IsWeighed ? [Cautions.LabelId, Cautions.MixId, Cautions.WeighId] : [Cautions.LabelId, Cautions.MixId],
        Tools = [DayTool.SprayNow, DayTool.Tank, DayTool.SprayWindow],
        Troubles = [new("The wind rises before you mix", "Do not mix. A tank mixed is a tank that must be sprayed today.")],
    }.Ticked("Label read: this use, this grass, this rate, this year's total.", "Air gap between hose and tank.", "Clean water, soap and a towel within reach.");

    private static DayStep Spray(DayFacts facts, SprayTrip trip, PlanTask task) => new DayStep
    {
        Id = task.Id,
        Kind = TaskKind.Spray,
        Title = task.Title,
        Big = [trip.CarrierTotal],
        Lines =
        [
            "Read wind, where it comes from, air and humidity now, and again when you finish.",
            "Begin at the downwind edge, walk the pace you calibrated at, nozzle turned away from you, and shut off at every edge.",
        ],
        OnlyWhen = task.Conditions,
        Wear = WhatToWear.Spraying,
        CautionIds = task.CautionIds,
        Tools = [DayTool.SprayNow, DayTool.Pace, DayTool.Tank],
        Timers =
        [
            new($"{task.Id}.dry", "Until the spray has dried", DayFacts.Minutes(
                $"day.{task.Id}.dry", "Drying", DryMinutes, "about an hour in moving air", "from memory, no source read", Sureness.CommonPractice, "The label's words and a dry leaf decide, not this clock.")),
        ],
        Records = facts.Applied(task.Id),
        Troubles = Trouble.Spraying(facts.Lawn.PreEmergent?.MaximumWind),
    }.Ticked("People and pets are off and stay off until it has dried, or longer where the label says so.", "Nobody stands downwind; windows there are closed.");
}
