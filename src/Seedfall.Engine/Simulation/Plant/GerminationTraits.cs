using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Plant;

/// <summary>
/// How one grass germinates, after the hydrothermal time model of Gummerson 1986 and Bradford 2002:
/// theta_HT = (psi - psi_b(g)) (T - T_b) t, with psi_b(g) = psi_b50 + sigma probit(g).
/// </summary>
/// <param name="BaseC">Base temperature, degC.</param>
/// <param name="OptimumLowC">Temperature from which the rate no longer rises, degC.</param>
/// <param name="OptimumHighC">Temperature above which the rate falls, degC.</param>
/// <param name="CeilingC">Temperature at which it reaches zero, degC.</param>
/// <param name="HydrothermalTimeMPaCd">theta_HT, MPa degC d.</param>
/// <param name="BasePotential50MPa">psi_b of the median seed, MPa, negative.</param>
/// <param name="BasePotentialSpreadMPa">sigma of psi_b, MPa.</param>
/// <param name="PhyllochronCd">Degree-days above 0 degC per leaf.</param>
public sealed record GerminationTraits(
    double BaseC,
    double OptimumLowC,
    double OptimumHighC,
    double CeilingC,
    double HydrothermalTimeMPaCd,
    double BasePotential50MPa,
    double BasePotentialSpreadMPa,
    double PhyllochronCd)
{
    /// <summary>Factor on the degree-days from germination to first green; 1 unless the field said otherwise.</summary>
    public double EmergenceLagFactor { get; init; } = 1.0;

    /// <summary>The same grass where seed and shoot take so many times as long.</summary>
    /// <param name="pace">Factor on theta_HT and on the lag to first green, above 0.</param>
    public GerminationTraits At(double pace) => this with { HydrothermalTimeMPaCd = pace * HydrothermalTimeMPaCd, EmergenceLagFactor = pace * EmergenceLagFactor };

    /// <summary>Degrees above base that count toward germination at a temperature: capped over the optimum, falling to zero at the ceiling.</summary>
    public double EffectiveDegrees(double temperatureC)
    {
        if (temperatureC <= BaseC || temperatureC >= CeilingC)
        {
            return 0.0;
        }

        var degrees = Math.Min(temperatureC, OptimumLowC) - BaseC;
        return temperatureC <= OptimumHighC ? degrees : degrees * (CeilingC - temperatureC) / (CeilingC - OptimumHighC);
    }

    /// <summary>The same for four temperatures.</summary>
    internal Lanes EffectiveDegrees(Lanes temperatureC)
    {
        var degrees = LaneMath.Min(temperatureC, Vector256.Create(OptimumLowC)) - Vector256.Create(BaseC);
        var falling = degrees * (Vector256.Create(CeilingC) - temperatureC) / (CeilingC - OptimumHighC);
        var rate = Vector256.ConditionalSelect(Vector256.LessThanOrEqual(temperatureC, Vector256.Create(OptimumHighC)), degrees, falling);
        return LaneMath.Max(Lanes.Zero, rate);
    }

    /// <summary>Base potential of the seed that is the g-th to germinate, MPa.</summary>
    /// <param name="share">g, above 0 and below 1.</param>
    public double BasePotentialMPa(double share) => BasePotential50MPa + (BasePotentialSpreadMPa * NormalDistribution.Inverse(share));

    /// <summary>Share germinated after a time at constant temperature and potential, 0 to 1.</summary>
    public double GerminatedShare(double temperatureC, double potentialMPa, double days)
    {
        var degreeDays = EffectiveDegrees(temperatureC) * days;
        return degreeDays <= 0.0
            ? 0.0
            : NormalDistribution.Cumulative((potentialMPa - (HydrothermalTimeMPaCd / degreeDays) - BasePotential50MPa) / BasePotentialSpreadMPa);
    }

    /// <summary>Laboratory days to half germination at constant conditions; null where it never comes. Never shown as an emergence date.</summary>
    public double? MedianLabDays(double temperatureC, double potentialMPa)
    {
        var speed = (potentialMPa - BasePotential50MPa) * EffectiveDegrees(temperatureC);
        return potentialMPa > BasePotential50MPa && speed > 0.0 ? HydrothermalTimeMPaCd / speed : null;
    }
}
