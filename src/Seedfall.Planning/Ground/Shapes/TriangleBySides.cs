using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground.Shapes;

/// <summary>A triangle by its three sides.</summary>
public static class TriangleBySides
{
    /// <summary>
    /// m2. Heron's formula <c>A = sqrt(s (s-a)(s-b)(s-c))</c>, arranged so that needle-thin triangles lose no digits
    /// (W. Kahan, Miscalculating area and angles of a needle-like triangle, 2014); null where the sides close no triangle.
    /// </summary>
    public static Area? Area(Length first, Length second, Length third)
    {
        Span<double> sidesM = [first.Meters, second.Meters, third.Meters];
        sidesM.Sort();
        var (shortM, middleM, longM) = (sidesM[0], sidesM[1], sidesM[2]);
        var slackM = shortM - (longM - middleM);
        return shortM > 0.0 && slackM > 0.0
            ? Engine.Units.Area.FromSquareMeters(0.25 * Math.Sqrt((longM + (middleM + shortM)) * slackM * (shortM + (longM - middleM)) * (longM + (middleM - shortM))))
            : null;
    }
}
