using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Site;

/// <summary>Sunrise and sunset over an open, level horizon.</summary>
/// <param name="Rise">Upper edge of the sun appears.</param>
/// <param name="Set">Upper edge of the sun vanishes; equal to the rise in polar night.</param>
public readonly record struct SunTimes(DateTimeOffset Rise, DateTimeOffset Set)
{
    /// <summary>Geometric altitude of the sun's center at rise and set, degrees: 34' of refraction and 16' of half its width (Meeus 1998, chapter 15).</summary>
    public const double HorizonDeg = -0.8333;

    private const double ToleranceTicks = TimeSpan.TicksPerSecond / 20;

    /// <summary>Hours between rise and set.</summary>
    public double Hours => (Set - Rise).TotalHours;

    /// <summary>Times of the solar day that carries the date at the place, found by halving on <see cref="SunPosition"/>; UTC.</summary>
    public static SunTimes On(Place place, DateOnly date)
    {
        var noon = NoonOn(place, date);
        if (AltitudeDeg(place, noon) <= HorizonDeg)
        {
            return new SunTimes(noon, noon);
        }

        return new SunTimes(Crossing(place, noon.AddHours(-12), noon), Crossing(place, noon.AddHours(12), noon));
    }

    /// <summary>About solar noon, within two minutes. FAO-56 eq. 32 for the equation of time.</summary>
    internal static DateTimeOffset NoonOn(Place place, DateOnly date) =>
        new DateTimeOffset(date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero)
            .AddHours(12.0 - (place.LongitudeDeg / 15.0) - SolarGeometry.SeasonalCorrectionHours(date.DayOfYear));

    /// <summary>Where the sun crosses the horizon between an instant when it is down and one when it is up; the first instant in polar day.</summary>
    private static DateTimeOffset Crossing(Place place, DateTimeOffset down, DateTimeOffset up)
    {
        if (AltitudeDeg(place, down) > HorizonDeg)
        {
            return down;
        }

        while (Math.Abs((up - down).Ticks) > ToleranceTicks)
        {
            var middle = down + ((up - down) / 2);
            (down, up) = AltitudeDeg(place, middle) > HorizonDeg ? (down, middle) : (middle, up);
        }

        return up;
    }

    private static double AltitudeDeg(Place place, DateTimeOffset instant) => SunPosition.At(place, instant).AltitudeDeg;
}
