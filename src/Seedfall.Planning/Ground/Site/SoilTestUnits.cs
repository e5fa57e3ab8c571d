namespace Seedfall.Planning.Ground;

/// <summary>
/// The two traps of a soil report: pounds per acre read as ppm, and phosphate read as phosphorus. Each is a factor of about two.
/// </summary>
public static class SoilTestUnits
{
    /// <summary>Pounds per acre of a furrow slice 6 2/3 in deep, taken as 2,000,000 lb, for each ppm [lb/acre per ppm]. Common practice, no source read.</summary>
    public const double PoundsPerAcrePerPpm = 2.0;

    /// <summary>Phosphorus in phosphate, by mass: 2 P / P2O5 from the atomic masses of IUPAC.</summary>
    public const double PhosphorusInPhosphate = 2.0 * 30.974 / ((2.0 * 30.974) + (5.0 * 15.999));

    /// <summary>Potassium in potash, by mass: 2 K / K2O.</summary>
    public const double PotassiumInPotash = 2.0 * 39.098 / ((2.0 * 39.098) + 15.999);

    /// <summary>ppm from lb/acre of a furrow slice.</summary>
    public static double PpmFromPoundsPerAcre(double poundsPerAcre) => poundsPerAcre / PoundsPerAcrePerPpm;

    /// <summary>Phosphorus, ppm, from phosphate, ppm.</summary>
    public static double PhosphorusFromPhosphate(double phosphatePpm) => phosphatePpm * PhosphorusInPhosphate;

    /// <summary>Potassium, ppm, from potash, ppm.</summary>
    public static double PotassiumFromPotash(double potashPpm) => potashPpm * PotassiumInPotash;
}
