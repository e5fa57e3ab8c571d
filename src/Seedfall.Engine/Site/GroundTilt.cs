using Seedfall.Engine.Atmosphere;

namespace Seedfall.Engine.Site;

/// <summary>How the ground leans.</summary>
/// <param name="SlopePercent">Rise over run in percent; 0 is level.</param>
/// <param name="AspectDeg">Direction the slope faces (downhill), degrees clockwise from true north.</param>
public readonly record struct GroundTilt(double SlopePercent, double AspectDeg)
{
    public static GroundTilt Level => default;

    /// <summary>Angle of the slope, rad.</summary>
    public double SlopeRad => Math.Atan(SlopePercent / 100.0);

    /// <summary>
    /// Cosine of the angle between the sun's beam and the upright on the ground; 0 or less where the slope hides the sun.
    /// <c>cos i = sin a cos s + cos a sin s cos(A - f)</c> (Duffie and Beckman 2013, Solar Engineering of Thermal Processes, eq. 1.6.3).
    /// </summary>
    public double CosineIncidence(double altitudeDeg, double azimuthDeg)
    {
        var (altitude, slope) = (SolarGeometry.Radians(altitudeDeg), SlopeRad);
        return (Math.Sin(altitude) * Math.Cos(slope)) + (Math.Cos(altitude) * Math.Sin(slope) * Math.Cos(SolarGeometry.Radians(azimuthDeg - AspectDeg)));
    }
}
