using System.Globalization;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Water;

/// <summary>Why today's rounds are what they are.</summary>
internal static class DailyReasons
{
    internal static IReadOnlyList<string> Of(DailyScene scene, WaterKnown known, ThirstLearned thirst, BedRecord record, BedWeather ahead, double[] givenMm)
    {
        var (today, yesterday) = (known.Today, known.Today - 1);
        var given = known.GivenMm.AsSpan(24 * yesterday, 24).ToArray().Sum();
        List<string> reasons =
        [
            $"Yesterday brought {In(known.Sky.DayRainMm(yesterday))} of rain and {In(given)} of watering; the air asked for {In(known.Sky.DayDemandMm(yesterday))}.",
            string.Create(CultureInfo.InvariantCulture, $"The ground at the seed stands at {-1000.0 * record.Bed.ZoneMPa:0} kPa of suction."),
            $"Today {(24 * (today + 1) <= known.Sky.Hours ? "is forecast" : "is expected, by what is usual and by yesterday,")} to ask for {In(ahead.DayDemandMm(today))} and to bring {In(ahead.DayRainMm(today))} of rain.",
        ];
        if (record.Bed.Copy().DriesAt(ahead, 24 * today, ahead.Hours, new Hold(Engine.Simulation.PatchConditions.DryMPa, false)) is { } dry)
        {
            reasons.Add(dry <= 24 * today ? "It is dry at the seed now." : string.Create(CultureInfo.InvariantCulture, $"Left alone it would be dry at the seed on {scene.Today.AddDays((dry / 24) - today):ddd, MMM d} at {dry % 24}:00."));
        }

        if (givenMm.All(mm => mm <= 0.0) && known.Sky.DayRainMm(yesterday) > 0.0)
        {
            reasons.Add("Rain has done today's watering.");
        }

        if (thirst.Tests > 0)
        {
            reasons.Add(string.Create(CultureInfo.InvariantCulture, $"By {thirst.Tests} finger test{(thirst.Tests == 1 ? "" : "s")} this seedbed is taken to dry {thirst.Factor:0.00} times as fast as computed."));
        }

        return reasons;
    }

    private static string In(double mm) => string.Create(CultureInfo.InvariantCulture, $"{new Depth(mm).Inches:0.00} in ({mm:0.0} mm)");
}
