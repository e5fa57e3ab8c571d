namespace Seedfall.Engine.Site;

/// <summary>Something between the ground and the sky, as it stands on one day.</summary>
/// <param name="FromDeg">Left edge, degrees clockwise from true north.</param>
/// <param name="ToDeg">Right edge, degrees; the screen runs clockwise from left to right, 0 to 360 is all around.</param>
/// <param name="HeightDeg">Upper edge above the horizon, degrees.</param>
/// <param name="Through">Share of direct sun that comes through, 0 for a wall.</param>
public readonly record struct SkyScreen(double FromDeg, double ToDeg, double HeightDeg, double Through)
{
    /// <summary>Degrees of the horizon covered, above 0 and up to 360.</summary>
    public double WidthDeg => ToDeg > FromDeg ? ToDeg - FromDeg : ToDeg - FromDeg + 360.0;

    /// <summary>True where the direction lies behind the screen.</summary>
    public bool Covers(double azimuthDeg)
    {
        var right = (azimuthDeg - FromDeg) % 360.0;
        return (right < 0.0 ? right + 360.0 : right) <= WidthDeg;
    }

    /// <summary>Share of the sun's beam that all screens together let through from one point of the sky; screens one behind the other multiply.</summary>
    public static double ThroughAll(IReadOnlyList<SkyScreen> screens, double altitudeDeg, double azimuthDeg)
    {
        var through = 1.0;
        for (var i = 0; i < screens.Count; i++)
        {
            if (altitudeDeg < screens[i].HeightDeg && screens[i].Covers(azimuthDeg))
            {
                through *= screens[i].Through;
            }
        }

        return through;
    }
}
