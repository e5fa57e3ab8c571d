namespace Seedfall.Engine.Atmosphere;

/// <summary>Solar radiation under a cloudless sky, in the unit of the extraterrestrial radiation given (MJ m-2 per day or hour).</summary>
public static class ClearSky
{
    /// <summary>From elevation alone. FAO-56 eq. 37.</summary>
    public static double RsoMJ(double extraterrestrialMJ, double elevationM) => (0.75 + (2e-5 * elevationM)) * extraterrestrialMJ;

    /// <summary>
    /// Day total from vapor and pressure (beam and diffuse clearness). FAO-56 Box 37 / ASCE standardized equation 2005, appendix D.
    /// </summary>
    public static double RsoDetailedDailyMJ(double extraterrestrialMJ, double vaporKPa, double pressureKPa, double latitudeDeg, int dayOfYear)
    {
        var latitude = SolarGeometry.Radians(latitudeDeg);
        // The hemisphere turns the sign of the seasonal term; the squared term is symmetric.
        var angle = 0.85 + (0.3 * latitude * Math.Sin((2.0 * Math.PI / 365.0 * dayOfYear) - 1.39)) - (0.42 * latitude * latitude);
        return Transmitted(extraterrestrialMJ, vaporKPa, pressureKPa, Math.Max(Math.Sin(angle), 0.1));
    }

    /// <summary>Hour total from vapor, pressure and the sine of the mean solar altitude of the hour. Same source; 0 with the sun down.</summary>
    public static double RsoDetailedHourlyMJ(double extraterrestrialMJ, double vaporKPa, double pressureKPa, double sineAltitude) =>
        sineAltitude <= 0.0 ? 0.0 : Transmitted(extraterrestrialMJ, vaporKPa, pressureKPa, Math.Max(sineAltitude, 0.01));

    /// <summary>Beam and diffuse clearness of a cloudless sky, shares of the extraterrestrial radiation on the horizontal. ASCE standardized equation 2005, appendix D.</summary>
    public static (double Beam, double Diffuse) Parts(double vaporKPa, double pressureKPa, double sineAltitude)
    {
        var waterMm = (0.14 * vaporKPa * pressureKPa) + 2.1;
        var beam = 0.98 * Math.Exp((-0.00146 * pressureKPa / sineAltitude) - (0.075 * Math.Pow(waterMm / sineAltitude, 0.4)));
        var diffuse = beam >= 0.15 ? 0.35 - (0.36 * beam) : 0.18 + (0.82 * beam);
        return (beam, diffuse);
    }

    private static double Transmitted(double extraterrestrialMJ, double vaporKPa, double pressureKPa, double sineAltitude)
    {
        var (beam, diffuse) = Parts(vaporKPa, pressureKPa, sineAltitude);
        return (beam + diffuse) * extraterrestrialMJ;
    }
}
