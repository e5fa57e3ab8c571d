namespace Seedfall.Engine.Numerics;

/// <summary>The standard normal distribution: density, chance below, and its inverse.</summary>
public static class NormalDistribution
{
    private const double InverseRootTwoPi = 0.3989422804014326779;

    /// <summary>Density at <paramref name="z"/>.</summary>
    public static double Density(double z) => InverseRootTwoPi * Math.Exp(-0.5 * z * z);

    /// <summary>
    /// Chance of a value at or below <paramref name="z"/>, relative error below 1e-12 in the lower tail. Rational
    /// approximation of Hart et al. 1968 (algorithm 5666) as given by West 2005, Better approximations to cumulative normal functions.
    /// </summary>
    public static double Cumulative(double z)
    {
        var tail = UpperTail(Math.Abs(z));
        return z > 0.0 ? 1.0 - tail : tail;
    }

    /// <summary>The value with chance <paramref name="probability"/> (0 to 1, both excluded; throws outside) at or below it.</summary>
    public static double Inverse(double probability)
    {
        if (!(probability > 0.0 && probability < 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(probability), probability, "a chance above 0 and below 1 is needed");
        }

        return probability <= 0.5 ? LowerQuantile(probability) : -LowerQuantile(1.0 - probability);
    }

    /// <summary>Starting value of Abramowitz and Stegun 26.2.23, then Halley steps on <see cref="Cumulative"/>.</summary>
    private static double LowerQuantile(double probability)
    {
        var t = Math.Sqrt(-2.0 * Math.Log(probability));
        var z = ((2.515517 + (t * (0.802853 + (t * 0.010328)))) / (1.0 + (t * (1.432788 + (t * (0.189269 + (t * 0.001308))))))) - t;
        for (var step = 0; step < 3; step++)
        {
            var newton = (UpperTailSigned(z) - probability) / Density(z);
            z -= newton / (1.0 + (0.5 * z * newton));
        }

        return z;
    }

    private static double UpperTailSigned(double z) => z > 0.0 ? 1.0 - UpperTail(z) : UpperTail(-z);

    /// <summary>Continued fraction of Abramowitz and Stegun 26.2.14, converged for arguments above 7.</summary>
    private static double FarTailFraction(double a)
    {
        var fraction = a;
        for (var k = 24; k >= 1; k--)
        {
            fraction = a + (k / fraction);
        }

        return fraction;
    }

    private static double UpperTail(double a)
    {
        if (a > 37.0)
        {
            return 0.0;
        }

        var bell = Math.Exp(-0.5 * a * a);
        if (a >= 7.07106781186547)
        {
            return bell * InverseRootTwoPi / FarTailFraction(a);
        }

        var above = 0.0352624965998911;
        above = (above * a) + 0.700383064443688;
        above = (above * a) + 6.37396220353165;
        above = (above * a) + 33.912866078383;
        above = (above * a) + 112.079291497871;
        above = (above * a) + 221.213596169931;
        above = (above * a) + 220.206867912376;
        var below = 0.0883883476483184;
        below = (below * a) + 1.75566716318264;
        below = (below * a) + 16.064177579207;
        below = (below * a) + 86.7807322029461;
        below = (below * a) + 296.564248779674;
        below = (below * a) + 637.333633378831;
        below = (below * a) + 793.826512519948;
        below = (below * a) + 440.413735824752;
        return bell * above / below;
    }
}
