using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;

namespace Seedfall.Engine.Soil;

/// <summary>A class and the chance that it is the right one.</summary>
public readonly record struct TextureChance(SoilTexture Texture, double Chance);

/// <summary>What a jar of settled soil says, with what one can read from it.</summary>
/// <param name="Sand">Share of sand by height.</param>
/// <param name="Silt">Share of silt.</param>
/// <param name="Clay">Share of clay.</param>
/// <param name="SandSpread">Standard deviation of the share of sand from reading the marks.</param>
/// <param name="ClaySpread">The same of clay.</param>
/// <param name="Chances">Every class with a chance above a half percent, likeliest first.</param>
public sealed record JarReading(Fraction Sand, Fraction Silt, Fraction Clay, double SandSpread, double ClaySpread, IReadOnlyList<TextureChance> Chances);

/// <summary>Three marks on a jar: top of the sand, of the silt, of the clay, each from the bottom.</summary>
/// <param name="Sand">Top of the sand.</param>
/// <param name="Silt">Top of the silt.</param>
/// <param name="Clay">Top of the clay, the whole depth of soil.</param>
public readonly record struct JarLayers(Length Sand, Length Silt, Length Clay)
{
    // Each mark's error is cut into this many equal chances: 31^3 jars are read, the same on every machine.
    private const int Cells = 31;

    private const double LeastChance = 0.005;

    /// <summary>True where the marks stand in order and there is soil in the jar.</summary>
    public bool InOrder => Sand.Meters >= 0.0 && Silt >= Sand && Clay >= Silt && Clay.Meters > 0.0;

    /// <summary>
    /// Shares and classes with the marks wrong independently and normally, nine in ten within the error. The chances are those of
    /// the reading alone: how the layers pack is not in them. Throws where the marks are not in order.
    /// </summary>
    /// <param name="error">A mark is this well read, nine times in ten.</param>
    public JarReading Read(Length error)
    {
        if (!InOrder)
        {
            throw new ArgumentException("the marks must rise from sand to silt to clay, and there must be soil", nameof(error));
        }

        var (sand, silt, clay) = (Sand.Meters, Silt.Meters, Clay.Meters);
        var shifts = Shifts(error.Meters);
        var counts = new int[Enum.GetValues<SoilTexture>().Length];
        var (n, sums) = (0, (Sand: 0.0, SandSquared: 0.0, Clay: 0.0, ClaySquared: 0.0));
        foreach (var a in shifts)
        {
            foreach (var b in shifts)
            {
                foreach (var c in shifts)
                {
                    var (sandShare, clayShare) = Shares(sand + a, silt + b, clay + c);
                    counts[(int)TextureTriangle.ClassOf(Fraction.Of(sandShare), Fraction.Of(clayShare))]++;
                    sums = (sums.Sand + sandShare, sums.SandSquared + (sandShare * sandShare), sums.Clay + clayShare, sums.ClaySquared + (clayShare * clayShare));
                    n++;
                }
            }
        }

        var (atSand, atClay) = Shares(sand, silt, clay);
        return new JarReading(
            Fraction.Of(atSand), Fraction.Of(Math.Max(0.0, 1.0 - atSand - atClay)), Fraction.Of(atClay),
            Spread(sums.Sand, sums.SandSquared, n), Spread(sums.Clay, sums.ClaySquared, n),
            [.. counts.Select((k, i) => new TextureChance((SoilTexture)i, (double)k / n)).Where(t => t.Chance >= LeastChance).OrderByDescending(t => t.Chance).ThenBy(t => t.Texture)]);
    }

    /// <summary>Shares of sand and clay; marks that a reading error puts out of order are put back onto each other.</summary>
    private static (double Sand, double Clay) Shares(double sand, double silt, double clay)
    {
        var top = Math.Max(clay, 1e-6);
        var first = Math.Clamp(sand, 0.0, top);
        var second = Math.Clamp(silt, first, top);
        return (first / top, (top - second) / top);
    }

    private static double[] Shifts(double errorM)
    {
        var deviation = errorM / NormalDistribution.Inverse(0.95);
        return [.. Enumerable.Range(0, Cells).Select(i => deviation * NormalDistribution.Inverse((i + 0.5) / Cells))];
    }

    private static double Spread(double sum, double squares, int n)
    {
        var mean = sum / n;
        return Math.Sqrt(Math.Max(0.0, (squares / n) - (mean * mean)));
    }
}
