namespace Seedfall.Engine.Soil.Water;

/// <summary>Green and Ampt 1911: a sharp wetting front. Depths mm, rates mm/h, hours.</summary>
/// <param name="ConductivityMmH">K behind the front, above 0.</param>
/// <param name="SuctionMm">Suction at the front, above 0.</param>
/// <param name="Deficit">Water the soil still takes, m3/m3, above 0.</param>
public sealed record GreenAmpt(double ConductivityMmH, double SuctionMm, double Deficit)
{
    private double Scale => SuctionMm * Deficit;

    /// <summary>Infiltrated by a time under ponding from the start: F - psi d ln(1 + F / psi d) = K t.</summary>
    public double PondedMm(double hours)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(hours);
        var target = ConductivityMmH * hours;
        var depth = target + Math.Sqrt(2.0 * Scale * target);
        for (var step = 0; step < 60 && depth > 0.0; step++)
        {
            var error = depth - (Scale * Math.Log(1.0 + (depth / Scale))) - target;
            depth -= error * (Scale + depth) / depth;
        }

        return depth;
    }

    /// <summary>Rate at which soil takes water once a depth has gone in: f = K (1 + psi d / F).</summary>
    public double CapacityMmH(double infiltratedMm) => ConductivityMmH * (1.0 + (Scale / infiltratedMm));

    /// <summary>Hours until steady rain ponds, K psi d / (i (i - K)); null where it never does.</summary>
    public double? PondingHours(double rainMmH) =>
        rainMmH > ConductivityMmH ? ConductivityMmH * Scale / (rainMmH * (rainMmH - ConductivityMmH)) : null;
}

/// <summary>Philip 1957: I = S sqrt(t) + A t.</summary>
/// <param name="SorptivityMmRootH">S, mm h^-1/2.</param>
/// <param name="SteadyMmH">A, mm/h, a third to two thirds of the saturated conductivity.</param>
public sealed record Philip(double SorptivityMmRootH, double SteadyMmH)
{
    /// <summary>Infiltrated by a time, mm.</summary>
    public double InfiltratedMm(double hours) => (SorptivityMmRootH * Math.Sqrt(hours)) + (SteadyMmH * hours);

    /// <summary>Rate at a time above 0, mm/h.</summary>
    public double RateMmH(double hours) => (0.5 * SorptivityMmRootH / Math.Sqrt(hours)) + SteadyMmH;
}
