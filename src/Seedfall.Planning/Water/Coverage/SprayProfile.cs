namespace Seedfall.Planning.Water.Coverage;

/// <summary>How the depth falls off from a head to the end of its throw. Closed: only the profiles below exist.</summary>
public abstract record SprayProfile
{
    private SprayProfile()
    {
    }

    /// <summary>p = 1 - r.</summary>
    public sealed record Triangular : SprayProfile;

    /// <summary>p = 1 - r^2.</summary>
    public sealed record Parabolic : SprayProfile;

    /// <summary>p = sqrt(1 - r^2).</summary>
    public sealed record Elliptic : SprayProfile;

    /// <summary>p = 1.</summary>
    public sealed record Uniform : SprayProfile;

    /// <summary>A leg of cans at equal steps from the head to the end of the throw, straight lines between; only their ratios count.</summary>
    /// <param name="Depths">At least two, none negative, one above zero; the first stands at the head, the last at the end of the throw.</param>
    public sealed record Leg(IReadOnlyList<double> Depths) : SprayProfile;

    /// <summary>Relative depth at a share of the throw; 0 beyond it.</summary>
    /// <param name="share">Distance over throw, not negative.</param>
    public double At(double share) => share > 1.0 ? 0.0 : this switch
    {
        Triangular => 1.0 - share,
        Parabolic => 1.0 - (share * share),
        Elliptic => Math.Sqrt(1.0 - (share * share)),
        Uniform => 1.0,
        Leg leg => Between(leg.Depths, share),
        _ => throw new InvalidOperationException("no such profile"),
    };

    /// <summary>Integral of p(r) r over the throw, dimensionless: 1/6, 1/4, 1/3, 1/2, or by pieces of a leg.</summary>
    public double Moment => this switch
    {
        Triangular => 1.0 / 6.0,
        Parabolic => 1.0 / 4.0,
        Elliptic => 1.0 / 3.0,
        Uniform => 1.0 / 2.0,
        Leg leg => LegMoment(leg.Depths),
        _ => throw new InvalidOperationException("no such profile"),
    };

    private static double Between(IReadOnlyList<double> depths, double share)
    {
        var at = share * (depths.Count - 1);
        var low = Math.Min((int)at, depths.Count - 2);
        return depths[low] + ((depths[low + 1] - depths[low]) * (at - low));
    }

    /// <summary>Exact for straight lines: each piece from a to b integrates (p r) with p linear.</summary>
    private static double LegMoment(IReadOnlyList<double> depths)
    {
        var (sum, step) = (0.0, 1.0 / (depths.Count - 1));
        for (var k = 0; k + 1 < depths.Count; k++)
        {
            var (a, b) = (k * step, (k + 1) * step);
            sum += step / 6.0 * ((depths[k] * ((2.0 * a) + b)) + (depths[k + 1] * (a + (2.0 * b))));
        }

        return sum;
    }
}
