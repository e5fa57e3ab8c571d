using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Atmosphere;

/// <summary>
/// Hours from days. The sum of the hours' rain and sun is the day's; the warmest hour is Tmax and the coolest Tmin. Sun by
/// the solar share of each hour (FAO-56 eq. 28), temperature by Parton and Logan 1981, vapor held constant within the day
/// up to saturation.
/// </summary>
public static class Disaggregation
{
    // Parton and Logan 1981 for air at 1.5 m: lag of the maximum (h), lag of the minimum after sunrise (h).
    private const double MaximumLagHours = 1.86;
    private const double MinimumLagHours = -0.17;

    private const double JoulesPerHourPerMJ = 1e6 / 3600.0;

    /// <summary>Hourly weather for consecutive days.</summary>
    /// <param name="days">One or more days, each the day after the one before; throws otherwise.</param>
    /// <param name="place">Where; latitude and longitude in range or it throws.</param>
    /// <param name="settings">What to assume where days do not say; null for <see cref="DisaggregationSettings.Default"/>.</param>
    public static HourlyWeather FromDaily(IReadOnlyList<WeatherDay> days, Place place, DisaggregationSettings? settings = null)
    {
        settings ??= DisaggregationSettings.Default;
        var offset = settings.StandardOffsetHours ?? SolarGeometry.NominalOffsetHours(place.LongitudeDeg);
        Require(days, place, settings, offset);
        var hours = days.Count * 24;
        var weather = new HourlyWeather(days[0].Date, new double[hours], new double[hours], new double[hours], new double[hours], new double[hours]);
        var evening = Evening.Before(days[0], SunDay.At(place, offset, days[0].Date));
        for (var d = 0; d < days.Count; d++)
        {
            var day = days[d];
            var next = d + 1 < days.Count ? days[d + 1] : day;
            var sun = SunDay.At(place, offset, day.Date);
            var start = d * 24;
            evening = FillAir(weather.AirC.AsSpan(start, 24), day, next.TminC, sun, evening);
            FillVapor(weather.VaporKPa.AsSpan(start, 24), weather.AirC.AsSpan(start, 24), VaporKPa(day, settings));
            FillSolar(weather.SolarWm2.AsSpan(start, 24), EstimatedSolar.ForDayMJ(day, next.TminC, place.LatitudeDeg), sun);
            FillWind(weather.WindMs.AsSpan(start, 24), day.WindMs ?? settings.UnknownWindMs, settings.DayNightWindRatio, sun);
            RainSpread.Fill(weather.RainMm.AsSpan(start, 24), day.RainMm, RainSpread.IsWarmSeason(day.Date.Month, place.LatitudeDeg));
        }

        return weather;
    }

    private static double VaporKPa(WeatherDay day, DisaggregationSettings settings) =>
        ActualVapor.RouteFor(day) == VaporRoute.LowestTemperature
            ? Humidity.SaturationVaporPressureCore(day.TminC - settings.DewPointBelowTminC)
            : ActualVapor.ForDayKPa(day);

    /// <summary>The falling limb left over from the day before: from sunset toward this day's minimum.</summary>
    private readonly record struct Evening(double SunsetHour, double SunsetC)
    {
        /// <summary>The evening before the first day, taken to be like the first day.</summary>
        public static Evening Before(WeatherDay day, SunDay sun) => new(sun.SunsetHour - 24.0, SunsetTemperature(day, sun));
    }

    private static double SunsetTemperature(WeatherDay day, SunDay sun) =>
        day.TminC + ((day.TmaxC - day.TminC) * Math.Sin(Math.PI * (sun.DayLength - MinimumLagHours) / (sun.DayLength + (2.0 * MaximumLagHours))));

    private static Evening FillAir(Span<double> airC, WeatherDay day, double nextTminC, SunDay sun, Evening before)
    {
        var minimumHour = sun.SunriseHour + MinimumLagHours;
        var sunset = new Evening(sun.SunsetHour, SunsetTemperature(day, sun));
        var turn = Math.PI / (sun.DayLength + (2.0 * MaximumLagHours));
        var firstDayHour = Math.Clamp((int)Math.Ceiling(minimumHour - 0.5), 0, 24);
        var firstNightHour = Math.Clamp((int)Math.Floor(sunset.SunsetHour - 0.5) + 1, firstDayHour, 24);
        var morning = new NightLimb(before.SunsetHour, before.SunsetC, minimumHour, day.TminC, 0.5);
        FillNight(airC[..firstDayHour], day, ref morning);
        FillDay(airC[firstDayHour..firstNightHour], day, new HourRotation(turn * (firstDayHour + 0.5 - minimumHour), turn));
        var night = new NightLimb(sunset.SunsetHour, sunset.SunsetC, minimumHour + 24.0, nextTminC, firstNightHour + 0.5);
        FillNight(airC[firstNightHour..], day, ref night);
        airC[HourOf(minimumHour)] = day.TminC;
        airC[HourOf(minimumHour + (0.5 * Math.PI / turn))] = day.TmaxC;
        return sunset with { SunsetHour = sunset.SunsetHour - 24.0 };
    }

    private static void FillNight(Span<double> airC, WeatherDay day, ref NightLimb limb)
    {
        for (var i = 0; i < airC.Length; i++)
        {
            airC[i] = Math.Clamp(limb.Next(), day.TminC, day.TmaxC);
        }
    }

    private static void FillDay(Span<double> airC, WeatherDay day, HourRotation rotation)
    {
        var rangeC = day.TmaxC - day.TminC;
        for (var i = 0; i < airC.Length; i++)
        {
            airC[i] = Math.Clamp(day.TminC + (rangeC * rotation.Sine), day.TminC, day.TmaxC);
            rotation.Next();
        }
    }

    private static int HourOf(double hour) => Math.Clamp((int)Math.Floor(hour), 0, 23);

    private static void FillVapor(Span<double> vaporKPa, ReadOnlySpan<double> airC, double dayKPa)
    {
        var dewPointC = dayKPa > 0.0 ? Humidity.DewPointCore(dayKPa) : double.NegativeInfinity;
        for (var h = 0; h < 24; h++)
        {
            vaporKPa[h] = airC[h] >= dewPointC ? dayKPa : Humidity.SaturationVaporPressureCore(airC[h]);
        }
    }

    private static void FillSolar(Span<double> solarWm2, double dayMJ, SunDay sun)
    {
        var total = sun.FillShares(solarWm2);
        if (total <= 0.0)
        {
            // Sun never up by the geometry: what was measured is twilight or instrument offset.
            solarWm2.Fill(dayMJ * JoulesPerHourPerMJ / 24.0);
            return;
        }

        var scale = dayMJ * JoulesPerHourPerMJ / total;
        for (var h = 0; h < 24; h++)
        {
            solarWm2[h] *= scale;
        }
    }

    private static void FillWind(Span<double> windMs, double meanMs, double ratio, SunDay sun)
    {
        var first = HourOf(sun.SunriseHour);
        var last = HourOf(sun.SunsetHour);
        var dayHours = last - first + 1;
        var nightMs = meanMs * 24.0 / ((ratio * dayHours) + (24 - dayHours));
        for (var h = 0; h < 24; h++)
        {
            windMs[h] = h >= first && h <= last ? ratio * nightMs : nightMs;
        }
    }

    private static void Require(IReadOnlyList<WeatherDay> days, Place place, DisaggregationSettings settings, double offset)
    {
        if (days.Count == 0)
        {
            throw new ArgumentException("at least one day is needed", nameof(days));
        }

        for (var d = 1; d < days.Count; d++)
        {
            if (days[d].Date.DayNumber != days[d - 1].Date.DayNumber + 1)
            {
                throw new ArgumentException($"days must follow one another: {days[d].Date:yyyy-MM-dd} comes after {days[d - 1].Date:yyyy-MM-dd}", nameof(days));
            }
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(Math.Abs(place.LatitudeDeg), 90.0, nameof(place));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(Math.Abs(place.LongitudeDeg), 180.0, nameof(place));
        if (Math.Abs((place.LongitudeDeg / 15.0) - offset) > 4.0)
        {
            throw new ArgumentOutOfRangeException(nameof(settings), offset, $"standard time must lie within 4 h of the sun at longitude {place.LongitudeDeg}");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(settings.DayNightWindRatio, 1.0, nameof(settings));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(settings.UnknownWindMs, nameof(settings));
    }
}
