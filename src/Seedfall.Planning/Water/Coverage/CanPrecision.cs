using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>How sure a mean depth is, given the cans it rests on.</summary>
/// <param name="HalfWidth">Half the width of the 90 % interval over the mean; null with fewer than two cans.</param>
/// <param name="More">Cans to set out besides, so that the mean is good to a quarter; null where the readings cannot say.</param>
public sealed record CanPrecision(Figure? HalfWidth, Figure? More)
{
    private const double Chance = 0.95;

    /// <summary>Good to a quarter in 90 of 100 tests.</summary>
    private const double Wanted = 0.25;

    private const int MostCans = 500;

    private const string Source =
        "Student's t on the cans' own spread, taken as independent; for +-25 % in 90 of 100 tests hose-moved sprinklers need 6 to more than 50 cans, in-ground heads 2 to 8 (Journal of the American Water Resources Association 2007)";

    /// <summary>Half-width t s / (mean sqrt(n)); cans wanted: the least n with t V / sqrt(n) no more than 0.25, V the coefficient of variation.</summary>
    /// <param name="cans">Depths caught; none negative.</param>
    public static CanPrecision Of(IReadOnlyList<Depth> cans)
    {
        ArgumentNullException.ThrowIfNull(cans);
        foreach (var can in cans)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(can.Millimeters, nameof(cans));
        }

        var mean = cans.Count == 0 ? 0.0 : cans.Average(can => can.Millimeters);
        if (cans.Count < 2 || mean <= 0.0)
        {
            return new CanPrecision(null, null);
        }

        var variation = Math.Sqrt(cans.Sum(can => (can.Millimeters - mean) * (can.Millimeters - mean)) / (cans.Count - 1)) / mean;
        var wanted = CansFor(variation);
        WorkingInput[] inputs = [new("n", "cans", cans.Count, ""), new("V", "coefficient of variation", variation, "")];
        return new CanPrecision(
            new Figure("water.cans.half-width", "How far off the mean may be, nine times in ten", QuantityKind.Share, HalfWidthOf(cans.Count, variation), new Working("t V / sqrt(n)", inputs, Source, Sureness.Computed)),
            new Figure("water.cans.more", "More cans to set out for a mean good to a quarter", QuantityKind.Count, Math.Max(0, wanted - cans.Count), new Working("least n with t V / sqrt(n) <= 0.25, less those set out", inputs, Source, Sureness.Computed)));
    }

    /// <summary>Least cans for +-25 % nine times in ten; at least 2, at most 500.</summary>
    internal static int CansFor(double variation)
    {
        var n = 2;
        while (n < MostCans && HalfWidthOf(n, variation) > Wanted)
        {
            n++;
        }

        return n;
    }

    private static double HalfWidthOf(int cans, double variation) => StudentT(cans - 1) * variation / Math.Sqrt(cans);

    /// <summary>Student's t at 0.95 one-sided: closed forms for 1 and 2 degrees of freedom, else Cornish and Fisher's expansion (Abramowitz and Stegun 26.7.5).</summary>
    internal static double StudentT(int freedom)
    {
        if (freedom == 1)
        {
            return Math.Tan(Math.PI * (Chance - 0.5));
        }

        if (freedom == 2)
        {
            var a = (2.0 * Chance) - 1.0;
            return a * Math.Sqrt(2.0 / (1.0 - (a * a)));
        }

        var (z, v) = (NormalDistribution.Inverse(Chance), (double)freedom);
        var (z3, z5, z7, z9) = (Math.Pow(z, 3), Math.Pow(z, 5), Math.Pow(z, 7), Math.Pow(z, 9));
        return z
            + ((z3 + z) / (4.0 * v))
            + (((5.0 * z5) + (16.0 * z3) + (3.0 * z)) / (96.0 * v * v))
            + (((3.0 * z7) + (19.0 * z5) + (17.0 * z3) - (15.0 * z)) / (384.0 * v * v * v))
            + (((79.0 * z9) + (776.0 * z7) + (1482.0 * z5) - (1920.0 * z3) - (945.0 * z)) / (92160.0 * v * v * v * v));
    }
}
