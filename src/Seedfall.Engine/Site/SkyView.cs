namespace Seedfall.Engine.Site;

/// <summary>How much of the sky's diffuse light reaches level ground between screens.</summary>
public static class SkyView
{
    private const int Directions = 360;

    /// <summary>
    /// Sky view factor, 0 to 1: cosine-weighted share of an evenly bright sky, <c>mean over azimuth of sum (T (sin^2 h2 - sin^2 h1))</c>.
    /// All around to the height h it is cos^2 h (Oke 1987, Boundary Layer Climates, appendix on view factors, a basin).
    /// </summary>
    public static double Factor(IReadOnlyList<SkyScreen> screens)
    {
        if (screens.Count == 0)
        {
            return 1.0;
        }

        var heights = new double[screens.Count + 1];
        var sum = 0.0;
        for (var direction = 0; direction < Directions; direction++)
        {
            sum += Strip(screens, (direction + 0.5) * (360.0 / Directions), heights);
        }

        return sum / Directions;
    }

    private static double Strip(IReadOnlyList<SkyScreen> screens, double azimuthDeg, double[] heights)
    {
        var count = 0;
        for (var i = 0; i < screens.Count; i++)
        {
            if (screens[i].Covers(azimuthDeg) && screens[i].HeightDeg > 0.0)
            {
                heights[count++] = screens[i].HeightDeg;
            }
        }

        heights[count++] = 90.0;
        Array.Sort(heights, 0, count);
        var (view, below) = (0.0, 0.0);
        for (var i = 0; i < count; i++)
        {
            var middle = 0.5 * (below + heights[i]);
            view += SkyScreen.ThroughAll(screens, middle, azimuthDeg) * (SineSquared(heights[i]) - SineSquared(below));
            below = heights[i];
        }

        return view;
    }

    private static double SineSquared(double degrees)
    {
        var sine = Math.Sin(degrees * (Math.PI / 180.0));
        return sine * sine;
    }
}
