namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>Where in the year a day stands, the same for both hemispheres.</summary>
internal static class SeasonAngle
{
    internal const double DaysPerYear = 365.25;

    /// <summary>2 pi (day of year) / 365.25, rad; half a year on south of the equator, so that autumn is autumn.</summary>
    internal static double Rad(DateOnly date, double latitudeDeg) =>
        2.0 * Math.PI / DaysPerYear * (latitudeDeg < 0.0 ? date.DayOfYear + (0.5 * DaysPerYear) : date.DayOfYear);

    /// <summary>1 to 12, the month of the northern season: south of the equator January counts as July.</summary>
    internal static int Month(DateOnly date, double latitudeDeg) =>
        latitudeDeg < 0.0 ? ((date.Month + 5) % 12) + 1 : date.Month;
}
