using Seedfall.Engine.Units;

namespace Seedfall.Engine.Soil;

/// <summary>
/// Settling of soil grains in still water by Stokes' law, <c>v = (rho_s - rho_w) g d^2 / (18 mu)</c>, grains as balls of
/// 2,650 kg/m3. Holds for grains up to about 0.06 mm; coarser ones fall more slowly than it says.
/// </summary>
public static class StokesSettling
{
    /// <summary>Finest sand of the U.S. Department of Agriculture, m.</summary>
    public const double FinestSandM = 50e-6;

    /// <summary>Finest silt, m.</summary>
    public const double FinestSiltM = 2e-6;

    private const double GrainKgM3 = 2650.0;
    private const double GravityMs2 = 9.80665;

    /// <summary>Viscosity of water, Pa s, within 1 percent from 0 to 40 degC. Kestin, Sokolov and Wakeham 1978, J. Phys. Chem. Ref. Data 7:941, eq. 15.</summary>
    public static double ViscosityPaS(Temperature water)
    {
        var below = 20.0 - water.Celsius;
        var log = below / (water.Celsius + 96.0) * (1.2364 - (1.37e-3 * below) + (5.7e-6 * below * below));
        return 1.002e-3 * Math.Pow(10.0, log);
    }

    /// <summary>Density of water, kg/m3, within 0.05 from 0 to 30 degC. Kell 1975, shortened to its cubic terms about 4 degC (common practice, no source read).</summary>
    public static double WaterKgM3(Temperature water)
    {
        var above = water.Celsius - 3.98;
        return 999.97 - (above * above * (0.00771 - (0.0000497 * above)));
    }

    /// <summary>Speed of fall, m/s.</summary>
    /// <param name="diameterM">Diameter of the grain, m.</param>
    /// <param name="water">Temperature of the water.</param>
    public static double SpeedMs(double diameterM, Temperature water) => PerSquareMeter(water) * diameterM * diameterM;

    /// <summary>Time in which every grain of a size has fallen through a height, s.</summary>
    public static double Seconds(double diameterM, Length fall, Temperature water) => fall.Meters / SpeedMs(diameterM, water);

    /// <summary>Smallest grain that has all fallen through a height after a time, m.</summary>
    public static double CutM(double seconds, Length fall, Temperature water) => seconds > 0.0
        ? Math.Sqrt(fall.Meters / seconds / PerSquareMeter(water))
        : throw new ArgumentOutOfRangeException(nameof(seconds), seconds, "a time above 0 s is needed");

    private static double PerSquareMeter(Temperature water) => (GrainKgM3 - WaterKgM3(water)) * GravityMs2 / (18.0 * ViscosityPaS(water));
}
