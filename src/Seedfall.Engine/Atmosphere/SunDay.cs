using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Atmosphere;

/// <summary>The sun's day at a place, in hours of local standard time.</summary>
internal readonly struct SunDay
{
    // Polar days and nights are held to between 1 and 23 h of sun so that a day always has a rise and a set.
    private const double ShortestHours = 1.0;
    private const double LongestHours = 23.0;

    private const double HourRad = Math.PI / 12.0;

    private readonly double _noonHour;
    private readonly double _sunsetRad;
    private readonly double _vertical;
    private readonly double _horizontal;
    private readonly double _upToSunset;

    private SunDay(double noonHour, double latitudeRad, double declinationRad)
    {
        _noonHour = noonHour;
        _sunsetRad = SolarGeometry.SunsetHourAngleRad(latitudeRad, declinationRad);
        _vertical = Math.Sin(latitudeRad) * Math.Sin(declinationRad);
        _horizontal = Math.Cos(latitudeRad) * Math.Cos(declinationRad);
        _upToSunset = (_sunsetRad * _vertical) + (_horizontal * Math.Sin(_sunsetRad));
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

    /// <summary>Each hour's share of the day's sun on the horizontal, in relative units; gives their sum. FAO-56 eq. 28.</summary>
    internal double FillShares(Span<double> shares)
    {
        var rotation = new HourRotation(SolarGeometry.HourAngleRad(0.0, _noonHour), HourRad);
        var angle = SolarGeometry.HourAngleRad(0.0, _noonHour);
        var (total, before) = (0.0, UpTo(angle, rotation.Sine));
        for (var h = 0; h < shares.Length; h++)
        {
            rotation.Next();
            angle += HourRad;
            var upTo = UpTo(angle, rotation.Sine);
            shares[h] = Math.Max(0.0, upTo - before);
            total += shares[h];
            before = upTo;
        }

        return total;
    }

    private double UpTo(double angleRad, double sine) =>
        angleRad <= -_sunsetRad ? -_upToSunset
        : angleRad >= _sunsetRad ? _upToSunset
        : (angleRad * _vertical) + (_horizontal * sine);
}
