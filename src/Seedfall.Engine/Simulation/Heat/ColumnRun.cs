using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Heat;

/// <summary>The column run over consecutive days of weather with its own root-zone water.</summary>
public static class ColumnRun
{
    private delegate void HourSeen(int day, int hour, HeatColumn column);

    /// <summary>Share of the root zone's water a run begins with.</summary>
    internal const double StartFilled = 0.7;
    private const double ThatchConductivityWmK = 0.12;
    private const double MulchConductivityWmK = 0.08;
    private const double SnowResistanceM2KWPerMm = 0.025;
    private const double MostSnowResistanceM2KW = 2.0;

    /// <summary>Daily mean at 5 cm, degC, for each day of the forcing; starts from the usual year of the place.</summary>
    public static void DailyMeanC(
        ColumnForcing forcing, ReadOnlySpan<WeatherDay> days, Place place, PlaceClimate climate, SoilTempSite site, HeatParameters parameters, Span<double> dailyMeanC) =>
        Simulate(forcing, days, place, climate, site, parameters, dailyMeanC, null);

    private static void Simulate(
        ColumnForcing forcing, ReadOnlySpan<WeatherDay> days, Place place, PlaceClimate climate, SoilTempSite site, HeatParameters parameters, Span<double> dailyMeanC, HourSeen? seen)
    {
        var soil = new SoilThermal(site.Sand, site.Clay, site.OrganicMatter);
        var column = HeatColumn.AtUsualYear(parameters, soil, climate, SeasonAngle.Rad(forcing.Weather.FirstDay, place.LatitudeDeg));
        var water = new RootZoneWater(parameters.RootWaterMm, StartFilled);
        var snow = default(SnowStore);
        var bare = BareShare(site, climate, parameters);
        for (var d = 0; d < dailyMeanC.Length; d++)
        {
            snow.Next(days[d].AverageC, days[d].RainMm);
            var ground = Ground(site, bare, parameters, water, snow);
            column.SetMoisture(soil.WiltingPoint + (water.Filled * (soil.FieldCapacity - soil.WiltingPoint)), soil.FieldCapacity);
            var (mean, lost) = Day(column, forcing, d, ground, parameters, seen);
            dailyMeanC[d] = mean;
            water.Next(site.Irrigated ? Math.Max(days[d].RainMm, lost) : days[d].RainMm, lost);
        }
    }

    /// <summary>Daily mean at 5 cm, degC, for each of any ascending days of a place; holes are bridged with the usual year.</summary>
    public static double[] DailyMeanC(IReadOnlyList<WeatherDay> days, Place place, PlaceClimate climate, SoilTempSite site, HeatParameters parameters)
    {
        var values = new double[days.Count];
        foreach (var (run, source) in ConsecutiveDays.Runs(days, climate, place.LatitudeDeg))
        {
            var means = new double[run.Length];
            DailyMeanC(ColumnForcing.FromDaily(run, place), run, place, climate, site, parameters, means);
            for (var d = 0; d < means.Length; d++)
            {
                if (source[d] >= 0)
                {
                    values[source[d]] = means[d];
                }
            }
        }

        return values;
    }

    /// <summary>
    /// Soil temperature at given days, hours and depths, degC, in the order asked; null where a day is not among the days.
    /// </summary>
    public static double?[] AtHourC(
        IReadOnlyList<WeatherDay> days, Place place, PlaceClimate climate, SoilTempSite site, HeatParameters parameters, IReadOnlyList<SoilMoment> moments)
    {
        var answers = new double?[moments.Count];
        foreach (var (run, _) in ConsecutiveDays.Runs(days, climate, place.LatitudeDeg))
        {
            var asked = moments
                .Select((m, i) => (Moment: m, Index: i, Day: m.Date.DayNumber - run[0].Date.DayNumber))
                .Where(a => a.Day >= 0 && a.Day < run.Length)
                .ToLookup(a => a.Day);
            Simulate(ColumnForcing.FromDaily(run, place), run, place, climate, site, parameters, new double[run.Length], (day, hour, column) =>
            {
                foreach (var (moment, index, _) in asked[day])
                {
                    if (hour == Math.Clamp((int)moment.Hour, 0, 23))
                    {
                        answers[index] = column.AtDepthC(moment.DepthM);
                    }
                }
            });
        }

        return answers;
    }

    private static (double MeanC, double LostMm) Day(HeatColumn column, ColumnForcing forcing, int day, in GroundSurface ground, HeatParameters parameters, HourSeen? seen)
    {
        double sum = 0, lost = 0;
        for (var h = 24 * day; h < 24 * (day + 1); h++)
        {
            var before = column.At5CmC;
            var step = column.Step(forcing.At(h, parameters), ground);
            sum += 0.5 * (before + step.At5CmC);
            seen?.Invoke(day, h - (24 * day), column);
            lost += step.TranspirationMm + step.SoilEvaporationMm;
        }

        return (sum / 24.0, lost);
    }

    /// <summary>Share of the ground without cover: as entered, or more the drier the place.</summary>
    internal static double BareShare(SoilTempSite site, PlaceClimate climate, HeatParameters parameters) =>
        site.Bare?.Value ?? Math.Min(1.0, parameters.DryBareness * climate.DrynessDeficit);

    internal static GroundSurface Ground(SoilTempSite site, double bare, HeatParameters parameters, in RootZoneWater water, in SnowStore snow) => new()
    {
        CanopyShare = 1.0 - bare,
        ShadeShare = site.Shade.Value,
        WaterSupply = site.Irrigated ? 1.0 : water.Supply(parameters.StressRange),
        SoilResistanceSm = 10.0 * Math.Exp(5.34 * (1.0 - water.Filled)),
        SoilAlbedo = 0.20 - (0.10 * water.Filled),
        CoverResistanceM2KW = (site.Thatch.Millimeters * 1e-3 / ThatchConductivityWmK)
            + (site.Mulch.Millimeters * 1e-3 / MulchConductivityWmK)
            + Math.Min(MostSnowResistanceM2KW, SnowResistanceM2KWPerMm * snow.WaterMm),
        SnowShare = snow.CoverShare,
    };
}
