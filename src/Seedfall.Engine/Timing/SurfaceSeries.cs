using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Timing;

/// <summary>The surface's daily forcing over consecutive calendar days, gaps bridged in a straight line.</summary>
internal static class SurfaceSeries
{
    private const double WattsPerMJPerDay = 1e6 / 86400.0;

    internal static SurfaceForcing[] Compute(IReadOnlyList<WeatherDay> days, Place place, double cover)
    {
        var series = new SurfaceForcing[days[^1].Date.DayNumber - days[0].Date.DayNumber + 1];
        var pressureKPa = Humidity.AtmosphericPressureCore(place.ElevationM);
        var filled = -1;
        for (var i = 0; i < days.Count; i++)
        {
            var at = days[i].Date.DayNumber - days[0].Date.DayNumber;
            if (at <= filled)
            {
                throw new ArgumentException($"days must ascend: {days[i].Date:yyyy-MM-dd}", nameof(days));
            }

            series[at] = OfDay(days[i], i + 1 < days.Count ? days[i + 1].TminC : days[i].TminC, place, pressureKPa, cover);
            Bridge(series, filled, at);
            filled = at;
        }

        return series;
    }

    private static SurfaceForcing OfDay(WeatherDay day, double nextTminC, Place place, double pressureKPa, double cover)
    {
        var extraterrestrialMJ = SolarGeometry.ExtraterrestrialDailyMJ(place.LatitudeDeg, day.Date.DayOfYear);
        var solarMJ = EstimatedSolar.ForDayMJ(day, nextTminC, place.LatitudeDeg);
        var netMJ = ReferenceEvapotranspiration.NetRadiationDailyMJ(
            day.TmaxC, day.TminC, ActualVapor.ForDayKPa(day), solarMJ, ClearSky.RsoMJ(extraterrestrialMJ, place.ElevationM));
        return SurfaceTemperature.Forcing(day.AverageC, netMJ * WattsPerMJPerDay, day.WindMs ?? Wind.UnknownMs, pressureKPa, cover);
    }

    private static void Bridge(SurfaceForcing[] series, int from, int to)
    {
        for (var i = from + 1; i < to; i++)
        {
            var share = (double)(i - from) / (to - from);
            series[i] = new SurfaceForcing(
                series[from].OuterC + (share * (series[to].OuterC - series[from].OuterC)),
                series[from].ConductanceWm2K + (share * (series[to].ConductanceWm2K - series[from].ConductanceWm2K)));
        }
    }
}
