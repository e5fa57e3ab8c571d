using Seedfall.Engine.Weather;

namespace Seedfall.Web.Features.Weather;

/// <summary>How far a station stands from a lawn.</summary>
internal static class GroundDistance
{
    private const double EarthRadiusKm = 6371.0088;

    /// <summary>Great-circle distance, km (haversine on the mean radius of the Earth, IUGG); null where the station's place is not known.</summary>
    public static double? Km(Place lawn, double? latitudeDeg, double? longitudeDeg)
    {
        if (latitudeDeg is not { } latitude || longitudeDeg is not { } longitude)
        {
            return null;
        }

        var (phi1, phi2) = (double.DegreesToRadians(lawn.LatitudeDeg), double.DegreesToRadians(latitude));
        var (dPhi, dLambda) = (phi2 - phi1, double.DegreesToRadians(longitude - lawn.LongitudeDeg));
        var h = Math.Pow(Math.Sin(dPhi / 2.0), 2.0) + Math.Cos(phi1) * Math.Cos(phi2) * Math.Pow(Math.Sin(dLambda / 2.0), 2.0);
        return 2.0 * EarthRadiusKm * Math.Asin(Math.Min(1.0, Math.Sqrt(h)));
    }
}
