using System.Globalization;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Water;

/// <summary>What needs attention: drying out, a watering missed, too much water.</summary>
internal static class DailyWarnings
{
    /// <summary>Rain of a day that washes seed off bare ground, mm: 1 in (common practice).</summary>
    private const double WashingMm = 25.4;

    /// <summary>Hours of a day too wet from which rot is likelier (assumed).</summary>
    private const int LongWetHours = 6;

    private const string Simulated = "hour-by-hour simulation of seedbed water: docs/science/watering.md";

    internal static IReadOnlyList<Advice> Of(DailyScene scene, WaterKnown known, BedRecord record, BedWeather ahead, IReadOnlyList<(double[] GivenMm, int? DryAt)> week)
    {
        var id = $"water.daily.{scene.PatchId}";
        var warnings = new List<Advice>();
        if (record.DryNow > 0)
        {
            warnings.Add(new Advice($"{id}.missed", Missed(record), $"{Simulated}; what drying does by the stage of germination: common practice, no source read", Sureness.CommonPractice));
        }

        if (week[0].DryAt is { } hour && record.DryNow == 0)
        {
            warnings.Add(new Advice(
                $"{id}.drying",
                string.Create(CultureInfo.InvariantCulture, $"Even with today's rounds the ground at the seed will be dry at {hour}:00, before the next. Add a light round then, or cover the seed with straw."),
                Simulated,
                Sureness.Computed));
        }

        var soggy = WaterKnown.Mine<LogEntry.FingerTest>(scene, scene.Today).LastOrDefault() is { Felt: FingerFelt.Soggy } last && last.Day >= scene.Today.AddDays(-1);
        if (record.TooWetHours >= LongWetHours || soggy)
        {
            var warm = scene.Weather.Day(scene.Today.AddDays(-1)) is WeatherDay day && day.AverageC >= SeedlingHazard.DampingOffC - 4.0;
            warnings.Add(new Advice(
                $"{id}.wet",
                $"The seedbed is too wet: leave out rounds until the surface dulls{(warm ? "; in this warmth seedlings rot in wet ground" : "")}, and water in the morning only.",
                "UC IPM: damping-off is commoner above 70 degF in wet ground; WVU Extension: not in the evening",
                Sureness.Published));
        }

        for (var day = known.Today; 24 * (day + 1) <= known.Sky.Hours; day++)
        {
            if (known.Sky.DayRainMm(day) >= WashingMm)
            {
                warnings.Add(new Advice(
                    $"{id}.washing",
                    string.Create(CultureInfo.InvariantCulture, $"Heavy rain is forecast for {scene.Today.AddDays(day - known.Today):ddd, MMM d}: seed may wash. Leave the ground moist, not wet, and pin a cover on slopes."),
                    "common practice, no source read",
                    Sureness.CommonPractice));
                break;
            }
        }

        return warnings;
    }

    /// <summary>Dry seed waits; a root that is out does not.</summary>
    private static string Missed(BedRecord record)
    {
        var dry = string.Create(CultureInfo.InvariantCulture, $"The ground at the seed has been dry for {record.DryNow} hours.");
        return (record.FirstSeed, record.HalfSeed) switch
        {
            ( < 1.0, _) => string.Create(CultureInfo.InvariantCulture, $"{dry} Germination is {100.0 * record.FirstSeed:0} % of the way to the first roots: dry seed waits. Water now in two light rounds an hour apart and go on as planned; it costs days, not seed."),
            (_, < 1.0) => $"{dry} The first roots are out and more are about to come: water now, lightly, and again in two hours. Some of the quickest seed is lost.",
            _ => $"{dry} Most roots are out: water now to the depth of the roots. If seedlings lie flat tomorrow, rake in seed on the worst spots.",
        };
    }
}
