using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Field;

/// <summary>One trip with the sprayer: jar test where two share a tank, then mixing and spraying.</summary>
internal static class SpraySteps
{
    private const double JarMinutes = 15.0;

    private const double DryMinutes = 60.0;

    internal static IEnumerable<DayStep> Of(DayFacts facts, SprayTrip trip)
    {
        if (facts.Task($"spray.{trip.Id}") is not { } task)
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
            .. trip.Tanks.Select(t => $"Tank {t.Number}: {FigureText.Both(t.Carrier)} of water with {string.Join(", ", t.Products.Select(p => $"{p.Label} {FigureText.Both(p)}"))}."),
            "Mix the next tank only when the last is empty.",
        ],
        OnlyWhen = task.Conditions,
        Wear = WhatToWear.Spraying,
        CautionIds = [Cautions.LabelId, Cautions.MixId],
        Tools = [DayTool.Tank, DayTool.SprayWindow],
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
        Tools = [DayTool.SprayWindow, DayTool.Sprayer],
        Timers =
        [
            new($"{task.Id}.dry", "Until the spray has dried", DayFacts.Minutes(
                $"day.{task.Id}.dry", "Drying", DryMinutes, "about an hour in moving air", "from memory, no source read", Sureness.CommonPractice, "The label's words and a dry leaf decide, not this clock.")),
        ],
        Records = [.. trip.Products.Select((p, i) => new DayRecord(FormattableString.Invariant($"{task.Id}.applied-{i + 1}"), p.Name, new LogEntry.Applied(Put(facts, trip, p)) { Id = Guid.Empty, At = DayRecord.Later }))],
        Troubles = Trouble.Spraying(facts.Lawn.PreEmergent?.MaximumWind),
    }.Ticked("People and pets are off and stay off until it has dried, or longer where the label says so.", "Nobody stands downwind; windows there are closed.");

    private static Application Put(DayFacts facts, SprayTrip trip, SprayProduct product)
    {
        var label = facts.Lawn.PreEmergent is { } pre && pre.ActiveIngredient == product.Name ? pre : null;
        var liquid = product.Total.Kind is QuantityKind.Dose or QuantityKind.Volume;
        return new()
        {
            Kind = label is null ? ApplicationKind.Other : ApplicationKind.Pesticide,
            Product = label is null ? product.Name : $"{label.ActiveIngredient}{(label.StrengthKgPerLiter is { } strong ? FormattableString.Invariant($" {strong * KgPerLiterToPoundsPerGallon:0.##} lb/gal") : "")}",
            Amount = liquid ? new(null, Volume.FromLiters(product.Total.Value)) : new(Mass.FromKilograms(product.Total.Value), null),
            Area = facts.Whole,
            RegistrationNumber = label?.RegistrationNumber,
            Actives = label?.StrengthKgPerLiter is { } strength && liquid ? [new(label.ActiveIngredient, Mass.FromKilograms(strength * product.Total.Value))] : [],
            Carrier = Volume.FromLiters(trip.CarrierTotal.Value),
            Target = label is null ? "soil" : "weeds from seed, before they come up",
            Method = facts.Lawn.Sprayer?.Kind switch
            {
                SprayerKind.HandCan => "hand can",
                SprayerKind.PushTank => "push tank sprayer",
                SprayerKind.Boom => "boom sprayer",
                SprayerKind.HoseEnd => "hose-end sprayer",
                _ => "backpack sprayer",
            },
            Reentry = label is null ? null : label.Reentry ?? "until the spray has dried: check your label",
        };
    }

    private const double KgPerLiterToPoundsPerGallon = 8.345404;
}
