using Seedfall.Engine.Weather;

namespace Seedfall.Weather.Merging;

/// <summary>All files of one reading must be of one station; weather of two places in one history is refused by name.</summary>
internal static class StationCheck
{
    /// <summary>Farther apart than this, two files are not of one place.</summary>
    internal const double OnePlaceKm = 20.0;

    private const double EarthRadiusKm = 6371.0;

    internal static StationDraft Check(IReadOnlyList<FileDraft> files, ProblemList problems)
    {
        var result = new StationDraft();
        FileDraft? named = null;
        FileDraft? placed = null;
        foreach (var file in files)
        {
            var station = file.Station;
            if (station.Id is not null)
            {
                named ??= file;
                SameId(file, named, problems);
            }

            if (station.LatitudeDeg is not null && station.LongitudeDeg is not null)
            {
                placed ??= file;
                SamePlace(file, placed, problems);
            }

            (result.Id, result.Name) = (result.Id ?? station.Id, result.Name ?? station.Name);
            result.LatitudeDeg ??= station.LatitudeDeg;
            result.LongitudeDeg ??= station.LongitudeDeg;
            result.ElevationM ??= station.ElevationM;
        }

        return result;
    }

    /// <summary>Great-circle distance, km (haversine).</summary>
    internal static double DistanceKm(double latitude1Deg, double longitude1Deg, double latitude2Deg, double longitude2Deg)
    {
        var (lat1, lat2) = (double.DegreesToRadians(latitude1Deg), double.DegreesToRadians(latitude2Deg));
        var halfLat = Math.Sin(0.5 * (lat2 - lat1));
        var halfLon = Math.Sin(0.5 * double.DegreesToRadians(longitude2Deg - longitude1Deg));
        var h = halfLat * halfLat + Math.Cos(lat1) * Math.Cos(lat2) * halfLon * halfLon;
        return 2.0 * EarthRadiusKm * Math.Asin(Math.Min(1.0, Math.Sqrt(h)));
    }

    /// <summary>Distance from station to lawn, km, where both are known.</summary>
    internal static double? LawnDistanceKm(StationDraft station, Place? lawn) =>
        lawn is not null && station.LatitudeDeg is { } latitude && station.LongitudeDeg is { } longitude
            ? DistanceKm(latitude, longitude, lawn.LatitudeDeg, lawn.LongitudeDeg)
            : null;

    private static void SameId(FileDraft file, FileDraft first, ProblemList problems)
    {
        if (!string.Equals(file.Station.Id, first.Station.Id, StringComparison.OrdinalIgnoreCase))
        {
            problems.Add(file, 0, 0, $"one station: {Label(first.Station)}, as in {first.Name}", Label(file.Station));
        }
    }

    private static void SamePlace(FileDraft file, FileDraft first, ProblemList problems)
    {
        var (a, b) = (first.Station, file.Station);
        var km = DistanceKm(a.LatitudeDeg!.Value, a.LongitudeDeg!.Value, b.LatitudeDeg!.Value, b.LongitudeDeg!.Value);
        if (km > OnePlaceKm)
        {
            problems.Add(
                file, 0, 0, FormattableString.Invariant($"one place: {Label(a)}, as in {first.Name}"), FormattableString.Invariant($"{Label(b)}, {km:0} km away"));
        }
    }

    private static string Label(StationDraft s) => s.Name is not null && s.Id is not null && !s.Name.Contains(s.Id, StringComparison.OrdinalIgnoreCase)
        ? $"{s.Id} ({s.Name})"
        : s.Name ?? s.Id ?? FormattableString.Invariant($"{s.LatitudeDeg:0.##}, {s.LongitudeDeg:0.##}");
}
