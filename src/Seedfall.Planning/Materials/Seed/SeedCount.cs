using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>Seeds as counts on the ground and as weight in the hopper.</summary>
public static class SeedCount
{
    private const double KilogramsPerPound = 0.45359237;
    private const double SquareFeetPerSquareMeter = 1.0 / 0.09290304;
    private const double SquareInchesPerSquareFoot = 144.0;

    /// <summary>Seeds per kilogram from seeds per pound.</summary>
    public static double PerKilogram(double seedsPerPound) => seedsPerPound / KilogramsPerPound;

    /// <summary>Seeds per m2 at a seeding rate: <c>n = rate x seeds per kg</c>.</summary>
    public static double PerSquareMeter(MassPerArea rate, double seedsPerKilogram) => rate.KilogramsPerSquareMeter * seedsPerKilogram;

    /// <summary>Seeds per in2 at a seeding rate: <c>n = lb per 1,000 sq ft x seeds per lb / 144,000</c>.</summary>
    public static double PerSquareInch(MassPerArea rate, double seedsPerPound) => rate.PoundsPerThousandSquareFeet * seedsPerPound / (1000.0 * SquareInchesPerSquareFoot);

    /// <summary>Seeding rate that gives a wanted count: <c>rate = n / seeds per kg</c>.</summary>
    /// <param name="perSquareMeter">Wanted seeds per m2.</param>
    /// <param name="seedsPerKilogram">Seeds in a kilogram, above 0.</param>
    public static MassPerArea RateFor(double perSquareMeter, double seedsPerKilogram) =>
        seedsPerKilogram > 0.0
            ? MassPerArea.FromKilogramsPerSquareMeter(perSquareMeter / seedsPerKilogram)
            : throw new ArgumentOutOfRangeException(nameof(seedsPerKilogram), seedsPerKilogram, "more than 0 seeds in a kilogram are needed");

    /// <summary>Per m2 from per ft2.</summary>
    public static double FromPerSquareFoot(double perSquareFoot) => perSquareFoot * SquareFeetPerSquareMeter;

    /// <summary>Per in2 from per m2.</summary>
    public static double ToPerSquareInch(double perSquareMeter) => perSquareMeter / (SquareFeetPerSquareMeter * SquareInchesPerSquareFoot);
}
