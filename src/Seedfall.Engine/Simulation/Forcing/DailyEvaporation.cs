using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>Reference evapotranspiration of a day from its temperatures alone, for moisture bookkeeping.</summary>
internal static class DailyEvaporation
{
    private const double MmPerMJ = 0.408;

    /// <summary>mm/d, never below 0: 0.0023 (T + 17.8) sqrt(Tmax - Tmin) Ra 0.408. FAO-56 eq. 52 (Hargreaves and Samani 1985).</summary>
    internal static double HargreavesMm(WeatherDay day, double latitudeDeg)
    {
        var extraterrestrial = SolarGeometry.ExtraterrestrialDailyMJ(latitudeDeg, day.Date.DayOfYear);
        return Math.Max(0.0, 0.0023 * (day.MidC + 17.8) * Math.Sqrt(Math.Max(0.0, day.TmaxC - day.TminC)) * extraterrestrial * MmPerMJ);
    }
}
