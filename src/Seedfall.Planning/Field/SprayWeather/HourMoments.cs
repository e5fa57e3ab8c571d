using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>Hours of a forecast at the heights of the rules, with what came before and comes after them.</summary>
internal sealed class HourMoments(HourlyForecast forecast, Place place, SprayLimits limits)
{
    /// <summary>Rain of an hour from which it counts as one, mm: the least most gauges tell (common practice, no source read).</summary>
    internal const double RainMm = 0.2;

    /// <summary>Chance from which an hour counts as one with rain, percent (common practice, no source read).</summary>
    internal const double RainChancePct = 50.0;

    // Hours leaves stay wet after rain or dew (common practice, no source read), and hours back in which the morning's low is sought.
    private const int WetHours = 2;
    private const int LowHours = 12;

    private readonly double _toTwoMeters = Wind.TwoMeterFactor(forecast.WindHeightM);

    internal SprayMoment At(int i)
    {
        var hour = forecast.Hours[i];
        var (end, sun) = (hour.Start.AddHours(1.0), DaySun.At(place, hour.Start));
        var (wind, gust) = (hour.WindMs * _toTwoMeters, hour.GustMs * _toTwoMeters);
        var (rainIn, rainKnown) = RainAfter(i);
        return new SprayMoment
        {
            WallMs = wind,
            NozzleMs = wind * limits.NozzleShare,
            StillMs = wind,
            GustWallMs = gust,
            GustNozzleMs = gust * limits.NozzleShare,
            AirC = hour.AirC,
            HumidityPct = hour.HumidityPct,
            CloudPct = hour.CloudPct,
            AfterSunriseMinutes = Math.Min(sun.AfterSunriseMinutes(hour.Start), sun.AfterSunriseMinutes(end)),
            BeforeSunsetMinutes = Math.Min(sun.BeforeSunsetMinutes(hour.Start), sun.BeforeSunsetMinutes(end)),
            WarmedC = sun.HoursFromNoon(hour.Start) < 0.0 ? Warmed(i) : null,
            WetLeaves = Wet(i),
            RainInMinutes = rainIn,
            RainKnown = rainKnown,
        };
    }

    private static bool? Rains(ForecastHour hour) => hour switch
    {
        { RainMm: >= RainMm } or { RainChancePct: >= RainChancePct } => true,
        { RainMm: null, RainChancePct: null } => null,
        _ => false,
    };

    /// <summary>Minutes from the end of the hour until rain, and whether the dry time asked for is known throughout.</summary>
    private (double? Minutes, bool Known) RainAfter(int i)
    {
        var known = Rains(forecast.Hours[i]);
        if (known == true)
        {
            return (0.0, true);
        }

        var isKnown = known is not null;
        var needed = (int)Math.Ceiling(limits.RainFreeMinutes / 60.0);
        for (var ahead = 1; ahead <= needed; ahead++)
        {
            var there = Find(i, ahead) is { } hour ? Rains(hour) : null;
            if (there == true)
            {
                // Rain in the very next hour is rain at the end of the work.
                return (Math.Max(1.0, 60.0 * (ahead - 1)), true);
            }

            isKnown &= there is not null;
        }

        return (null, isKnown);
    }

    private bool? Wet(int i)
    {
        bool? wet = null;
        for (var back = 0; back <= WetHours; back++)
        {
            if (Find(i, -back) is not { } hour)
            {
                continue;
            }

            if (Rains(hour) == true || (back < WetHours && hour.HumidityPct >= limits.WetHumidityPct))
            {
                return true;
            }

            wet = hour.HumidityPct is null && wet is null ? null : false;
        }

        return wet;
    }

    private double? Warmed(int i)
    {
        double? low = null;
        for (var back = 0; back <= LowHours; back++)
        {
            low = Find(i, -back)?.AirC is { } air ? Math.Min(low ?? air, air) : low;
        }

        return forecast.Hours[i].AirC - low;
    }

    /// <summary>The hour so many hours on; null where the forecast lacks it.</summary>
    private ForecastHour? Find(int i, int step)
    {
        var wanted = forecast.Hours[i].Start.AddHours(step);
        for (var k = i; k >= 0 && k < forecast.Hours.Count; k += step < 0 ? -1 : 1)
        {
            var start = forecast.Hours[k].Start;
            if (start == wanted)
            {
                return forecast.Hours[k];
            }

            if (step < 0 ? start < wanted : start > wanted)
            {
                break;
            }
        }

        return null;
    }
}
