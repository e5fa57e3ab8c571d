using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Weather;

namespace Seedfall.Exchange.Demo;

/// <summary>
/// Daily weather that never happened: a seasonal cycle, memory of temperature from day to day and from month to month (two
/// first-order autoregressions), wet and dry spells (two-state Markov chain), many small falls of rain and few heavy ones,
/// and sun, humidity and wind that go with them. The structure follows Richardson 1981, Water Resources Research
/// 17:182-190; the numbers are made up for a climate of humid summers and cold winters. The same seed gives the same days,
/// rounded as a station would report them.
/// </summary>
internal sealed class InventedClimate(ulong seed, double latitudeDeg)
{
    private const double YearMeanC = 10.2;
    private const double HalfSwingC = 14.0;
    private const double Memory = 0.72;
    private const double LongMemory = 0.97;
    private const double LongSpreadC = 1.6;
    private readonly SplitMix64 _random = new(seed);
    private double _anomaly;
    private double _spell;
    private bool _wet;

    /// <summary>Every day from first to last.</summary>
    public WeatherDay[] Days(DateOnly first, DateOnly last) =>
        [.. Enumerable.Range(first.DayNumber, last.DayNumber - first.DayNumber + 1).Select(n => Day(DateOnly.FromDayNumber(n)))];

    private WeatherDay Day(DateOnly date)
    {
        var summer = Math.Cos(2.0 * Math.PI * (date.DayOfYear - 201) / 365.25);
        _wet = _random.NextDouble() < (_wet ? 0.46 + (0.02 * summer) : 0.25 + (0.05 * summer));
        _anomaly = (Memory * _anomaly) + (Math.Sqrt(1.0 - (Memory * Memory)) * (4.2 - (1.5 * summer)) * _random.NextNormal());
        _spell = (LongMemory * _spell) + (Math.Sqrt(1.0 - (LongMemory * LongMemory)) * LongSpreadC * _random.NextNormal());
        var mean = YearMeanC + (HalfSwingC * summer) + _anomaly + _spell - (_wet ? 0.8 : 0.0);
        var range = Math.Max(2.5, (10.6 + (1.6 * summer) - (_wet ? 3.4 : 0.0)) + (2.1 * _random.NextNormal()));
        var (tmax, tmin) = (Math.Round(mean + (0.5 * range), 1), Math.Round(mean - (0.5 * range), 1));
        var rain = _wet ? Rain(summer) : 0.0;
        var clear = Math.Clamp((_wet ? 0.34 : 0.61) + (0.12 * _random.NextNormal()), 0.12, 0.76);
        var (dampest, driest) = Damp(tmax, tmin);
        return new WeatherDay(date, tmax, tmin, rain)
        {
            SolarMJ = Math.Round(clear * SolarGeometry.ExtraterrestrialDailyMJ(latitudeDeg, date.DayOfYear), 1),
            HumidityMaxPct = dampest,
            HumidityMinPct = driest,
            WindMs = Math.Round(Math.Clamp((2.9 - (0.6 * summer)) * Math.Exp(0.38 * _random.NextNormal()), 0.4, 11.0), 1),
        };
    }

    /// <summary>Sum of two exponentials: many small falls, a few heavy ones.</summary>
    private double Rain(double summer)
    {
        var scale = 4.3 + (1.9 * summer);
        var fall = -scale * (Math.Log(1.0 - _random.NextDouble()) + (0.5 * Math.Log(1.0 - _random.NextDouble())));
        return Math.Max(0.3, Math.Round(fall, 1));
    }

    /// <summary>Highest and lowest humidity from a dew point near the night's low, percent.</summary>
    private (double Most, double Least) Damp(double tmax, double tmin)
    {
        var dew = tmin - (_wet ? 0.3 : 1.6) + (0.9 * _random.NextNormal());
        var vapor = Humidity.SaturationVaporPressureCore(Math.Min(dew, tmin));
        var most = 100.0 * vapor / Humidity.SaturationVaporPressureCore(tmin);
        var least = 100.0 * vapor / Humidity.SaturationVaporPressureCore(tmax);
        return (Math.Round(Math.Clamp(most, 20.0, 100.0)), Math.Round(Math.Clamp(least, 12.0, 100.0)));
    }
}
