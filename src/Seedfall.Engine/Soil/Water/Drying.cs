namespace Seedfall.Engine.Soil.Water;

/// <summary>Two-stage drying of bare soil: as fast as the air asks until U, then with the root of time. Ritchie 1972, Water Resour. Res. 8:1204.</summary>
/// <param name="FirstStageMm">U, mm.</param>
/// <param name="AlphaMmRootD">mm d^-1/2.</param>
public sealed record RitchieDrying(double FirstStageMm, double AlphaMmRootD)
{
    /// <summary>Evaporated since the last wetting under a steady demand, mm.</summary>
    public double CumulativeMm(double days, double demandMmD)
    {
        var firstStageDays = FirstStageMm / demandMmD;
        return days <= firstStageDays ? demandMmD * days : FirstStageMm + (AlphaMmRootD * Math.Sqrt(days - firstStageDays));
    }
}

/// <summary>The evaporation layer of the dual crop coefficient. FAO Irrigation and Drainage Paper 56, chapter 7.</summary>
/// <param name="TotalMm">TEW: all that can evaporate, mm.</param>
/// <param name="ReadilyMm">REW: what evaporates at full rate, mm, below <paramref name="TotalMm"/>.</param>
public sealed record EvaporationLayer(double TotalMm, double ReadilyMm)
{
    /// <summary>TEW = 1000 (theta_FC - 0.5 theta_WP) Z_e, mm. FAO-56 eq. 73.</summary>
    public static double TotalEvaporableMm(double fieldCapacity, double wiltingPoint, double layerM) =>
        1000.0 * (fieldCapacity - (0.5 * wiltingPoint)) * layerM;

    /// <summary>Kr = (TEW - D) / (TEW - REW), 0 to 1, at a depletion in mm. FAO-56 eq. 74.</summary>
    public double Reduction(double depletedMm) => Math.Clamp((TotalMm - depletedMm) / (TotalMm - ReadilyMm), 0.0, 1.0);

    /// <summary>Depletion at the end of a day without water, mm, with the coefficient of that day's beginning.</summary>
    public double AfterDryDayMm(double depletedMm, double referenceMm, double coefficient) =>
        Math.Min(TotalMm, depletedMm + (Reduction(depletedMm) * coefficient * referenceMm));
}
