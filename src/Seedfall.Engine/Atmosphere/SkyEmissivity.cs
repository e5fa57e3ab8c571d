namespace Seedfall.Engine.Atmosphere;

/// <summary>
/// Emissivity of a cloudless sky from air temperature (degC) and vapor pressure (kPa) near the ground, 0 to 1, after several
/// authors. Accuracy of the longwave that follows is about 10 W m-2 (common practice, no source read).
/// </summary>
public static class SkyEmissivity
{
    /// <summary>Brutsaert 1975, Water Resour. Res. 11:742.</summary>
    public static double Brutsaert(double airC, double vaporKPa) => 1.24 * Math.Pow(10.0 * vaporKPa / Kelvin(airC), 1.0 / 7.0);

    /// <summary>Prata 1996, Q. J. R. Meteorol. Soc. 122:1127.</summary>
    public static double Prata(double airC, double vaporKPa)
    {
        var water = 46.5 * 10.0 * vaporKPa / Kelvin(airC);
        return 1.0 - ((1.0 + water) * Math.Exp(-Math.Sqrt(1.2 + (3.0 * water))));
    }

    /// <summary>Idso and Jackson 1969, J. Geophys. Res. 74:5397; from temperature alone.</summary>
    public static double IdsoJackson(double airC) => 1.0 - (0.261 * Math.Exp(-7.77e-4 * Square(273.0 - Kelvin(airC))));

    /// <summary>Idso 1981, Water Resour. Res. 17:295.</summary>
    public static double Idso(double airC, double vaporKPa) => 0.70 + (5.95e-5 * 10.0 * vaporKPa * Math.Exp(1500.0 / Kelvin(airC)));

    /// <summary>Swinbank 1963, Q. J. R. Meteorol. Soc. 89:339; from temperature alone.</summary>
    public static double Swinbank(double airC) => 9.365e-6 * Square(Kelvin(airC));

    /// <summary>Brunt 1932 with its usual constants.</summary>
    public static double Brunt(double vaporKPa) => 0.52 + (0.065 * Math.Sqrt(10.0 * vaporKPa));

    /// <summary>Angstrom 1915 with its usual constants.</summary>
    public static double Angstrom(double vaporKPa) => 0.83 - (0.18 * Math.Pow(10.0, -0.067 * 10.0 * vaporKPa));

    /// <summary>Dilley and O'Brien 1998, Q. J. R. Meteorol. Soc. 124:1391: clear-sky longwave itself, W m-2.</summary>
    public static double DilleyOBrienWm2(double airC, double vaporKPa)
    {
        var waterMm = 465.0 * 10.0 * vaporKPa / Kelvin(airC);
        return 59.38 + (113.7 * Math.Pow(Kelvin(airC) / 273.16, 6.0)) + (96.96 * Math.Sqrt(waterMm / 25.0));
    }

    private static double Kelvin(double celsius) => celsius + 273.15;

    private static double Square(double x) => x * x;
}
