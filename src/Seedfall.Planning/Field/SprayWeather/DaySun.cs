using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;

namespace Seedfall.Planning.Field.SprayWeather;

/// <summary>Where a day's sun stands on the clock. Sun's center, level horizon, no refraction: within about 5 minutes of an almanac.</summary>
/// <param name="NoonUtcHour">Hour of UTC at which the sun is highest.</param>
/// <param name="HalfDayHours">Hours from sunrise to noon; 0 in polar night, 12 in polar day.</param>
public sealed record DaySun(double NoonUtcHour, double HalfDayHours)
{
    /// <summary>The sun's clock at a place on the day of an instant. FAO-56 eq. 25, 32 and 34.</summary>
    public static DaySun At(Place place, DateTimeOffset instant)
    {
        ArgumentNullException.ThrowIfNull(place);
        var day = instant.UtcDateTime.DayOfYear;
        return new DaySun(SolarGeometry.SolarNoonHour(place.LongitudeDeg, 0.0, day), 0.5 * SolarGeometry.DaylightHours(place.LatitudeDeg, day));
    }

    /// <summary>Hours after the nearest noon, -12 to 12; negative in the morning.</summary>
    public double HoursFromNoon(DateTimeOffset instant) => Math.IEEERemainder(instant.UtcDateTime.TimeOfDay.TotalHours - NoonUtcHour, 24.0);

    /// <summary>Minutes since the sun rose; negative before.</summary>
    public double AfterSunriseMinutes(DateTimeOffset instant) => 60.0 * (HalfDayHours + HoursFromNoon(instant));

    /// <summary>Minutes until the sun sets; negative after.</summary>
    public double BeforeSunsetMinutes(DateTimeOffset instant) => 60.0 * (HalfDayHours - HoursFromNoon(instant));
}
