using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Simulation.Regression;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>Linear estimates of what a thermometer-and-rain station does not measure, on <see cref="DayEstimates.FeatureNames"/>.</summary>
/// <param name="Clearness">Solar radiation over 0.75 of the extraterrestrial.</param>
/// <param name="MeanLessMidC">Mean of the hours less the middle of the extremes, degC.</param>
/// <param name="TminLessDewC">Lowest temperature less the dew point, degC.</param>
public sealed record DayEstimateModels(LinearModel Clearness, LinearModel MeanLessMidC, LinearModel TminLessDewC);

/// <summary>
/// Fills the mean temperature, sun and humidity of days that were not measured, from the high, the low and the rain of
/// the day and its neighbors. What was measured is left alone.
/// </summary>
public static class DayEstimates
{
    private const double ClearShare = 0.75;
    private const double LeastClearness = 0.08;
    private const double MostClearness = 1.05;
    private const double LeastVaporKPa = 0.05;
    private const double WetDayMm = 1.0;
    private const double TraceMm = 0.2;
    private const double HeavyMm = 15.0;
    private const double HighestM = 1700.0;

    /// <summary>What the estimates look at, in order.</summary>
    public static IReadOnlyList<string> FeatureNames { get; } =
    [
        "rangeOverUsual", "rangeOverUsualSquared", "rootRange", "range", "wet", "trace", "rain", "wetBefore", "wetAfter",
        "seasonCos", "seasonSin", "aridity", "tminBefore", "tminAfter", "tmaxBefore", "tmaxAfter", "tmin", "wetRange",
        "elevation", "rangeDaylight",
    ];

    /// <summary>The days with every absent mean, sun and humidity filled.</summary>
    public static WeatherDay[] Complete(IReadOnlyList<WeatherDay> days, PlaceClimate climate, Place place, DayEstimateModels models)
    {
        var complete = new WeatherDay[days.Count];
        Span<double> features = stackalloc double[FeatureNames.Count];
        for (var d = 0; d < complete.Length; d++)
        {
            var day = days[d];
            if (day.MeanC is null || day.SolarMJ is null || ActualVapor.RouteFor(day) == VaporRoute.LowestTemperature)
            {
                Features(days, d, climate, place, features);
                day = Filled(day, features, place.LatitudeDeg, models);
            }

            complete[d] = day;
        }

        return complete;
    }

    /// <summary>Writes the features of one day, <see cref="FeatureNames"/>.Count of them; at an end or a hole the day is its own neighbor.</summary>
    public static void Features(IReadOnlyList<WeatherDay> days, int index, PlaceClimate climate, Place place, Span<double> values)
    {
        var day = days[index];
        var before = Neighbor(days, index, -1);
        var after = Neighbor(days, index, 1);
        var range = Math.Max(0.0, day.TmaxC - (0.5 * (day.TminC + after.TminC)));
        var relative = Math.Clamp(range / climate.UsualRangeC, 0.0, 2.0);
        var season = SeasonAngle.Rad(day.Date, place.LatitudeDeg);
        var wet = Flag(day.RainMm >= WetDayMm);
        var aridity = Math.Clamp(climate.AridityLog, -1.5, 0.5);
        values[0] = relative;
        values[1] = relative * relative;
        values[2] = Math.Sqrt(range);
        values[3] = range;
        values[4] = wet;
        values[5] = Flag(day.RainMm >= TraceMm);
        values[6] = Math.Min(day.RainMm, HeavyMm) / HeavyMm;
        values[7] = Flag(before.RainMm >= WetDayMm);
        values[8] = Flag(after.RainMm >= WetDayMm);
        values[9] = Math.Cos(season);
        values[10] = Math.Sin(season);
        values[11] = aridity;
        values[12] = before.TminC - day.TminC;
        values[13] = after.TminC - day.TminC;
        values[14] = before.TmaxC - day.TmaxC;
        values[15] = after.TmaxC - day.TmaxC;
        values[16] = day.TminC;
        values[17] = wet * relative;
        values[18] = Math.Clamp(place.ElevationM, 0.0, HighestM) / 1000.0;
        values[19] = (day.TmaxC - day.TminC) * (SolarGeometry.DaylightHours(place.LatitudeDeg, day.Date.DayOfYear) - 12.0);
    }

    private static WeatherDay Filled(WeatherDay day, ReadOnlySpan<double> features, double latitudeDeg, DayEstimateModels models)
    {
        var mean = day.MeanC ?? Math.Clamp(day.MidC + models.MeanLessMidC.At(features), day.TminC, day.TmaxC);
        var clearness = Math.Clamp(models.Clearness.At(features), LeastClearness, MostClearness);
        var sun = day.SolarMJ ?? clearness * ClearShare * SolarGeometry.ExtraterrestrialDailyMJ(latitudeDeg, day.Date.DayOfYear);
        var filled = day with { MeanC = mean, SolarMJ = sun };
        return ActualVapor.RouteFor(day) == VaporRoute.LowestTemperature
            ? filled with { HumidityMeanPct = HumidityPct(day, mean, models.TminLessDewC.At(features)) }
            : filled;
    }

    /// <summary>Mean relative humidity, percent, that gives the estimated dew point by FAO-56 eq. 19.</summary>
    private static double HumidityPct(WeatherDay day, double meanC, double tminLessDewC)
    {
        var dew = Math.Min(day.TminC - tminLessDewC, meanC);
        var vapor = Math.Max(LeastVaporKPa, Humidity.SaturationVaporPressureCore(dew));
        return Math.Min(100.0, 100.0 * vapor / Humidity.MeanSaturationVaporPressureCore(day.TmaxC, day.TminC));
    }

    private static WeatherDay Neighbor(IReadOnlyList<WeatherDay> days, int index, int step)
    {
        var at = index + step;
        return at >= 0 && at < days.Count && days[at].Date.DayNumber - days[index].Date.DayNumber == step ? days[at] : days[index];
    }

    private static double Flag(bool value) => value ? 1.0 : 0.0;
}
