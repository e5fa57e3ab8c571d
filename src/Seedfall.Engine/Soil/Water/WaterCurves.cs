namespace Seedfall.Engine.Soil.Water;

/// <summary>Water held and conducted by a soil at a pressure head in cm, below 0 where unsaturated.</summary>
public abstract record WaterCurves
{
    /// <summary>Volumetric water, m3/m3.</summary>
    public abstract double WaterContent(double headCm);

    /// <summary>Conductivity, cm/h.</summary>
    public abstract double ConductivityCmH(double headCm);

    /// <summary>Slope of the water content over head, 1/cm; 0 where saturated.</summary>
    public abstract double CapacityPerCm(double headCm);
}

/// <summary>
/// theta = theta_r + a (theta_s - theta_r) / (a + |h|^b), K = Ks A / (A + |h|^g). Haverkamp et al. 1977, as used by Celia,
/// Bouloutas and Zarba 1990, Water Resour. Res. 26:1483.
/// </summary>
public sealed record HaverkampCurves(double Residual, double Saturated, double A, double B, double SaturatedCmH, double ConductivityA, double ConductivityB) : WaterCurves
{
    /// <inheritdoc/>
    public override double WaterContent(double headCm) =>
        headCm >= 0.0 ? Saturated : Residual + (A * (Saturated - Residual) / (A + Math.Pow(-headCm, B)));

    /// <inheritdoc/>
    public override double ConductivityCmH(double headCm) =>
        headCm >= 0.0 ? SaturatedCmH : SaturatedCmH * ConductivityA / (ConductivityA + Math.Pow(-headCm, ConductivityB));

    /// <inheritdoc/>
    public override double CapacityPerCm(double headCm)
    {
        var below = A + Math.Pow(-Math.Min(headCm, 0.0), B);
        return headCm >= 0.0 ? 0.0 : A * (Saturated - Residual) * B * Math.Pow(-headCm, B - 1.0) / (below * below);
    }
}

/// <summary>
/// theta = theta_r + (theta_s - theta_r) [1 + (a|h|)^n]^-m, m = 1 - 1/n, K = Ks sqrt(S) [1 - (1 - S^(1/m))^m]^2. Van Genuchten
/// 1980, Soil Sci. Soc. Am. J. 44:892.
/// </summary>
public sealed record VanGenuchtenCurves(double Residual, double Saturated, double AlphaPerCm, double N, double SaturatedCmH) : WaterCurves
{
    private double M => 1.0 - (1.0 / N);

    /// <inheritdoc/>
    public override double WaterContent(double headCm) => Residual + ((Saturated - Residual) * Filled(headCm));

    /// <inheritdoc/>
    public override double ConductivityCmH(double headCm)
    {
        var filled = Filled(headCm);
        var part = 1.0 - Math.Pow(1.0 - Math.Pow(filled, 1.0 / M), M);
        return SaturatedCmH * Math.Sqrt(filled) * part * part;
    }

    /// <inheritdoc/>
    public override double CapacityPerCm(double headCm)
    {
        var suction = AlphaPerCm * -Math.Min(headCm, 0.0);
        return (Saturated - Residual) * M * N * AlphaPerCm * Math.Pow(suction, N - 1.0) * Math.Pow(1.0 + Math.Pow(suction, N), -M - 1.0);
    }

    private double Filled(double headCm) => Math.Pow(1.0 + Math.Pow(AlphaPerCm * -Math.Min(headCm, 0.0), N), -M);
}

/// <summary>theta = theta_r + (theta_s - theta_r) e^(a h), K = Ks e^(a h). Gardner 1958; Srivastava and Yeh 1991, Water Resour. Res. 27:753.</summary>
public sealed record ExponentialCurves(double Residual, double Saturated, double AlphaPerCm, double SaturatedCmH) : WaterCurves
{
    /// <inheritdoc/>
    public override double WaterContent(double headCm) => Residual + ((Saturated - Residual) * Math.Exp(AlphaPerCm * Math.Min(headCm, 0.0)));

    /// <inheritdoc/>
    public override double ConductivityCmH(double headCm) => SaturatedCmH * Math.Exp(AlphaPerCm * Math.Min(headCm, 0.0));

    /// <inheritdoc/>
    public override double CapacityPerCm(double headCm) =>
        headCm >= 0.0 ? 0.0 : (Saturated - Residual) * AlphaPerCm * Math.Exp(AlphaPerCm * headCm);
}

/// <summary>
/// theta = theta_s (h / h_e)^(-1/B), K = Ks (theta / theta_s)^(2B+3): Saxton and Rawls 2006 with the air entry that makes the
/// curve continuous, as the seedbed takes it.
/// </summary>
public sealed record PowerCurves(double Saturated, double B, double EntryCm, double SaturatedCmH) : WaterCurves
{
    private const double CmPerKPa = 10.2;

    /// <summary>The curves of a soil's hydraulics.</summary>
    public static PowerCurves Of(in SoilHydraulics soil) =>
        new(soil.Saturation, soil.RetentionB, CmPerKPa * soil.RetentionAKPa * Math.Pow(soil.Saturation, -soil.RetentionB), 0.1 * soil.SaturatedConductivityMmH);

    /// <inheritdoc/>
    public override double WaterContent(double headCm) => headCm >= -EntryCm ? Saturated : Saturated * Math.Pow(-headCm / EntryCm, -1.0 / B);

    /// <inheritdoc/>
    public override double ConductivityCmH(double headCm) => SaturatedCmH * Math.Pow(WaterContent(headCm) / Saturated, (2.0 * B) + 3.0);

    /// <inheritdoc/>
    public override double CapacityPerCm(double headCm) => headCm >= -EntryCm ? 0.0 : WaterContent(headCm) / (B * -headCm);

    /// <summary>Head at a water content above 0, cm.</summary>
    public double HeadCm(double waterContent) => waterContent >= Saturated ? -EntryCm : -EntryCm * Math.Pow(waterContent / Saturated, -B);
}
