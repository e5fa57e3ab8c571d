using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Atmosphere;

/// <summary>The sun's day at a place, in hours of local standard time.</summary>
internal readonly struct SunDay
{
    // Polar days and nights are held to between 1 and 23 h of sun so that a day always has a rise and a set.
    private const double ShortestHours = 1.0;
    private const double LongestHours = 23.0;

    private readonly double _noonHour;
    private readonly double _sunsetRad;
    private readonly double _vertical;
    private readonly double _horizontal;

    private SunDay(double noonHour, double latitudeRad, double declinationRad)
    {
        _noonHour = noonHour;
        _sunsetRad = SolarGeometry.SunsetHourAngleRad(latitudeRad, declinationRad);
        _vertical = Math.Sin(latitudeRad) * Math.Sin(declinationRad);
        _horizontal = Math.Cos(latitudeRad) * Math.Cos(declinationRad);
        DayLength = Math.Clamp(24.0 / Math.PI * _sunsetRad, ShortestHours, LongestHours);
        SunriseHour = noonHour - (0.5 * DayLength);
        SunsetHour = noonHour + (0.5 * DayLength);
    }

    internal double DayLength { get; }

    internal double SunriseHour { get; }

    internal double SunsetHour { get; }

    internal static SunDay At(Place place, double standardOffsetHours, DateOnly date)
    {
        var day = date.DayOfYear;
        return new SunDay(
            SolarGeometry.SolarNoonHour(place.LongitudeDeg, standardOffsetHours, day),
            SolarGeometry.Radians(place.LatitudeDeg),
            SolarGeometry.DeclinationRad(day));
    }

    /// <summary>Sun on the horizontal from noon up to an hour, in relative units; its differences share out a day's sum.</summary>
    internal double ShareUpTo(double hour)
    {
        var angle = Math.Clamp(SolarGeometry.HourAngleRad(hour, _noonHour), -_sunsetRad, _sunsetRad);
        return (angle * _vertical) + (_horizontal * Math.Sin(angle));
    }
}
