namespace Seedfall.Engine.Soil;

/// <summary>How fine a soil is, for the conductivity formulas that tell two or three kinds apart.</summary>
public enum ThermalGrain
{
    /// <summary>Gravel and coarse sand.</summary>
    Coarse,

    /// <summary>Medium and fine sand.</summary>
    Sandy,

    /// <summary>Silty and clayey soil.</summary>
    Fine,

    /// <summary>Fibrous organic matter: peat, thatch.</summary>
    OrganicFibrous,
}

/// <summary>
/// Heat capacity and thermal conductivity of unfrozen soil. Water contents and porosities m3/m3, shares 0 to 1, densities
/// as named, capacity J m-3 K-1, conductivity W m-1 K-1. Unless said, constants are from memory (common practice) and
/// checked against recomputed values.
/// </summary>
public static class ThermalProperties
{
    /// <summary>Thermal conductivity of water near 20 degC, W m-1 K-1.</summary>
    public const double WaterConductivityWmK = 0.594;

    private const double MineralJm3K = 2.0e6;
    private const double OrganicJm3K = 2.5e6;
    internal const double WaterJm3K = 4.18e6;

    /// <summary>Volumetric heat capacity, J m-3 K-1: solids 2.0, organic matter 2.5, water 4.18 MJ m-3 K-1. De Vries 1963.</summary>
    public static double HeatCapacityJm3K(double porosity, double water, double organic = 0.0) =>
        (MineralJm3K * (1.0 - porosity - organic)) + (OrganicJm3K * organic) + (WaterJm3K * water);

    /// <summary>Conductivity of the solids from their share of quartz: 7.7^q * o^(1-q), o 2.0, or 3.0 for at most 20 percent quartz. Johansen 1975.</summary>
    public static double SolidsWmK(double quartz) => Math.Pow(7.7, quartz) * Math.Pow(quartz <= 0.2 ? 3.0 : 2.0, 1.0 - quartz);

    /// <summary>Conductivity at saturation, geometric mean of solids and water. Johansen 1975.</summary>
    public static double SaturatedWmK(double porosity, double quartz, double waterWmK = WaterConductivityWmK) =>
        Math.Pow(SolidsWmK(quartz), 1.0 - porosity) * Math.Pow(waterWmK, porosity);

    /// <summary>Conductivity after Cote and Konrad 2005, Can. Geotech. J. 42:443.</summary>
    public static double CoteKonradWmK(double porosity, double water, double quartz, ThermalGrain grain)
    {
        var kappa = CoteKonradKappa(grain);
        var (chi, eta) = grain switch
        {
            ThermalGrain.Coarse => (1.70, 1.80),
            ThermalGrain.Sandy or ThermalGrain.Fine => (0.75, 1.20),
            _ => (0.30, 0.87),
        };
        var dry = chi * Math.Pow(10.0, -eta * porosity);
        var wetness = Wetness(porosity, water);
        return Mix(dry, SaturatedWmK(porosity, quartz), kappa * wetness / (1.0 + ((kappa - 1.0) * wetness)));
    }

    /// <summary>How early in wetting the conductivity of unfrozen soil rises. Cote and Konrad 2005.</summary>
    internal static double CoteKonradKappa(ThermalGrain grain) => grain switch
    {
        ThermalGrain.Coarse => 4.60,
        ThermalGrain.Sandy => 3.55,
        ThermalGrain.Fine => 1.90,
        _ => 0.60,
    };

    /// <summary>Conductivity after Johansen 1975; dry bulk density kg/m3. The logarithm is held at 0 below the driest wetness it is meant for.</summary>
    public static double JohansenWmK(double porosity, double water, double quartz, double bulkDensityKgM3, bool coarse)
    {
        var dry = JohansenDryWmK(bulkDensityKgM3);
        var wetness = Wetness(porosity, water);
        return Mix(dry, SaturatedWmK(porosity, quartz), JohansenKersten(wetness, coarse));
    }

    /// <summary>Conductivity of dry soil from its bulk density in kg/m3. Johansen 1975.</summary>
    public static double JohansenDryWmK(double bulkDensityKgM3) =>
        ((0.135 * bulkDensityKgM3) + 64.7) / (2700.0 - (0.947 * bulkDensityKgM3));

    /// <summary>Kersten number after Johansen 1975, 0 to 1.</summary>
    public static double JohansenKersten(double wetness, bool coarse) =>
        wetness <= 0.0 ? 0.0 : Math.Clamp(((coarse ? 0.7 : 1.0) * Math.Log10(wetness)) + 1.0, 0.0, 1.0);

    /// <summary>Conductivity after Lu et al. 2007, Soil Sci. Soc. Am. J. 71:8; sandy above 40 percent sand.</summary>
    public static double LuWmK(double porosity, double water, double quartz, bool sandy)
    {
        var a = sandy ? 0.96 : 0.27;
        var wetness = Wetness(porosity, water);
        var kersten = wetness <= 0.0 ? 0.0 : Math.Exp(a * (1.0 - Math.Pow(wetness, a - 1.33)));
        return Mix((-0.56 * porosity) + 0.51, SaturatedWmK(porosity, quartz), kersten);
    }

    /// <summary>Conductivity after Campbell 1985, from dry bulk density (Mg/m3) and clay share above 0.</summary>
    public static double CampbellWmK(double bulkDensityMgM3, double water, double clay)
    {
        var dense = bulkDensityMgM3 * bulkDensityMgM3;
        var a = 0.65 - (0.78 * bulkDensityMgM3) + (0.60 * dense);
        var b = 1.06 * bulkDensityMgM3;
        var c = 1.0 + (2.6 / Math.Sqrt(clay));
        var d = 0.03 + (0.1 * dense);
        return a + (b * water) - ((a - d) * Math.Exp(-Math.Pow(c * water, 4.0)));
    }

    /// <summary>Depth at which a wave of a period has fallen to 1/e, m: sqrt(2 k / w).</summary>
    public static double DampingDepthM(double conductivityWmK, double heatCapacityJm3K, double periodS) =>
        Math.Sqrt(conductivityWmK / heatCapacityJm3K * periodS / Math.PI);

    private static double Wetness(double porosity, double water) => Math.Clamp(water / porosity, 0.0, 1.0);

    private static double Mix(double dry, double saturated, double share) => dry + ((saturated - dry) * share);
}
