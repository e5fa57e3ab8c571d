namespace Seedfall.Planning.Ground;

/// <summary>How much direct sun trees let through.</summary>
internal static class SunThrough
{
    /// <summary>Through a tree in full leaf.</summary>
    internal const double InLeaf = 0.15;

    /// <summary>Through an evergreen.</summary>
    internal const double Evergreen = 0.10;

    /// <summary>Through bare branches.</summary>
    internal const double Bare = 0.60;

    internal const string Source = "crowns in leaf let about 10 to 20 % of the beam through, bare ones 40 to 80 %: common practice, no source read";

    // Leaves are taken to be out again by this day (November 1 in the south).
    private static readonly (int Month, int Day) LeafOutNorth = (5, 1);

    /// <summary>Share let through on a day.</summary>
    internal static double On(SkyObstacle obstacle, DateOnly date, double latitudeDeg) => obstacle.Kind switch
    {
        ObstacleKind.Solid => obstacle.Through?.Value ?? 0.0,
        ObstacleKind.Evergreen => obstacle.Through?.Value ?? Evergreen,
        _ => IsBare(date, BareFrom(obstacle, latitudeDeg), latitudeDeg) ? obstacle.ThroughBare?.Value ?? Bare : obstacle.Through?.Value ?? InLeaf,
    };

    /// <summary>The day leaves are down: as entered, else by latitude, later toward the equator (common practice, no source read).</summary>
    internal static DateOnly BareFrom(SkyObstacle obstacle, double latitudeDeg)
    {
        if (obstacle.BareFrom is { } entered)
        {
            return entered;
        }

        var north = Math.Abs(latitudeDeg) switch
        {
            >= 45.0 => new DateOnly(2001, 10, 25),
            >= 40.0 => new DateOnly(2001, 11, 5),
            >= 36.0 => new DateOnly(2001, 11, 15),
            _ => new DateOnly(2001, 11, 25),
        };
        return latitudeDeg >= 0.0 ? north : north.AddMonths(-6);
    }

    private static bool IsBare(DateOnly date, DateOnly bareFrom, double latitudeDeg)
    {
        var leafOut = latitudeDeg >= 0.0 ? Key(LeafOutNorth.Month, LeafOutNorth.Day) : Key((LeafOutNorth.Month + 5) % 12 + 1, LeafOutNorth.Day);
        var (day, from) = (Key(date.Month, date.Day), Key(bareFrom.Month, bareFrom.Day));
        return from > leafOut ? day >= from || day < leafOut : day >= from && day < leafOut;
    }

    private static int Key(int month, int day) => (month * 100) + day;
}
