using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Timing;

/// <summary>Whether the weather was measured near enough to the lawn.</summary>
internal static class StationDistance
{
    private const double EarthRadiusKm = 6371.0;

    private const double FarKm = 40.0;

    private const double HighM = 150.0;

    /// <summary>Great-circle distance, km (haversine).</summary>
    internal static double Kilometers(Place a, Place b)
    {
        var (lat1, lat2) = (double.DegreesToRadians(a.LatitudeDeg), double.DegreesToRadians(b.LatitudeDeg));
        var halfLat = Math.Sin(0.5 * (lat2 - lat1));
        var halfLon = Math.Sin(0.5 * double.DegreesToRadians(b.LongitudeDeg - a.LongitudeDeg));
        var chord = (halfLat * halfLat) + (Math.Cos(lat1) * Math.Cos(lat2) * halfLon * halfLon);
        return 2.0 * EarthRadiusKm * Math.Asin(Math.Min(1.0, Math.Sqrt(chord)));
    }

    /// <summary>A warning where the station is more than 40 km away or 150 m higher or lower; null otherwise.</summary>
    internal static Advice? Warning(Place lawn, Place? station)
    {
        if (station is null)
        {
            return null;
        }

        var (km, rise) = (Kilometers(lawn, station), station.ElevationM - lawn.ElevationM);
        if (km <= FarKm && Math.Abs(rise) <= HighM)
        {
            return null;
        }

        var miles = Length.FromMeters(km * 1000.0).Feet / 5280.0;
        return new Advice(
            "timing.station-far",
            string.Create(
                CultureInfo.InvariantCulture,
                $"The weather was measured {miles:0} mi ({km:0} km) away and {Math.Abs(Length.FromMeters(rise).Feet):0} ft ({Math.Abs(rise):0} m) {(rise < 0 ? "lower" : "higher")} than the lawn: frost and soil dates may be off by days."),
            "distance and height from the weather file; limits of 40 km and 150 m assumed",
            Sureness.Assumed);
    }
}
