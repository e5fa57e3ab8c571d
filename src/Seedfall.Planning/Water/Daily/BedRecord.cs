using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Water;

/// <summary>What the seedbed went through to the beginning of today.</summary>
/// <param name="Bed">As it is now.</param>
/// <param name="DryNow">Hours on end it has been dry, 0 where it is not.</param>
/// <param name="DryHours">Dry hours since seed-down.</param>
/// <param name="TooWetHours">Hours of the last day in which it was too wet.</param>
/// <param name="FirstSeed">How far the quickest tenth of the seed got toward its root, 1 where it is out.</param>
/// <param name="HalfSeed">The same of half the seed.</param>
internal sealed record BedRecord(WateredBed Bed, int DryNow, int DryHours, int TooWetHours, double FirstSeed, double HalfSeed)
{
    private const double QuickShare = 0.1;

    internal static BedRecord Of(DailyScene scene, WaterKnown known, BedWeather sky, int? layer)
    {
        var bed = new WateredBed(scene.Ground, layer);
        var down = (24 * (scene.SeedDown.DayNumber - scene.Place.FirstDay.DayNumber)) + 13;
        var (dryNow, dry, wet, first, half) = (0, 0, 0, 0.0, 0.0);
        for (var hour = 0; hour < 24 * known.Today; hour++)
        {
            bed.Step(sky, hour, known.GivenMm[hour]);
            dryNow = bed.Dry ? dryNow + 1 : 0;
            if (hour < down)
            {
                continue;
            }

            var airC = MeanC(scene, hour);
            dry += bed.Dry ? 1 : 0;
            wet += bed.TooWet && hour >= 24 * (known.Today - 1) ? 1 : 0;
            (first, half) = (first + Progress(scene.Grass, airC, bed, scene.Ground, QuickShare), half + Progress(scene.Grass, airC, bed, scene.Ground, 0.5));
        }

        return new BedRecord(bed, dryNow, dry, wet, Math.Min(1.0, first), Math.Min(1.0, half));
    }

    /// <summary>Hydrothermal progress of an hour over what is needed; the day's air stands for the soil at the seed.</summary>
    private static double Progress(GerminationTraits grass, double soilC, WateredBed bed, PatchConditions ground, double share) =>
        Math.Max(0.0, bed.LayerMPa(ground.SeedLayer) - grass.BasePotentialMPa(share)) * grass.EffectiveDegrees(soilC) / 24.0 / grass.HydrothermalTimeMPaCd;

    private static double MeanC(DailyScene scene, int hour) =>
        scene.Weather.Day(scene.Place.FirstDay.AddDays(hour / 24)) is WeatherDay day ? day.AverageC : 15.0;
}
