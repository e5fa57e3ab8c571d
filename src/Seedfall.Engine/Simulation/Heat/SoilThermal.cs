using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Engine.Simulation.Heat;

/// <summary>Heat capacity and conductivity of one soil at any water content, with the water contents that bound it.</summary>
public sealed class SoilThermal
{
    private const double DriestShare = 0.35;
    private const double OrganicDensityMgM3 = 1.3;

    /// <summary>From texture; throws outside the range of Saxton and Rawls 2006.</summary>
    public SoilThermal(Fraction sand, Fraction clay, Fraction organicMatter)
    {
        var hydraulics = SaxtonRawls.Of(sand, clay, organicMatter);
        (WiltingPoint, FieldCapacity, Porosity) = (hydraulics.WiltingPoint, hydraulics.FieldCapacity, hydraulics.Saturation);
        DriestWater = DriestShare * WiltingPoint;
        var organicVolume = organicMatter.Value * hydraulics.BulkDensityMgM3 / OrganicDensityMgM3;
        DryCapacityJm3K = ThermalProperties.HeatCapacityJm3K(Porosity, 0.0, organicVolume);
        var grain = sand.Value > 0.5 ? ThermalGrain.Sandy : ThermalGrain.Fine;
        DryWmK = ThermalProperties.CoteKonradWmK(Porosity, 0.0, sand.Value, grain);
        SaturatedWmK = ThermalProperties.SaturatedWmK(Porosity, sand.Value);
        Kappa = ThermalProperties.CoteKonradKappa(grain);
    }

    /// <summary>m3/m3 at 1500 kPa.</summary>
    public double WiltingPoint { get; }

    /// <summary>m3/m3 at 33 kPa.</summary>
    public double FieldCapacity { get; }

    /// <summary>m3/m3 with every pore full.</summary>
    public double Porosity { get; }

    /// <summary>m3/m3 below which the soil is taken to be no drier.</summary>
    internal double DriestWater { get; }

    /// <summary>Heat capacity without water, J m-3 K-1.</summary>
    internal double DryCapacityJm3K { get; }

    /// <summary>Conductivity without water, W m-1 K-1.</summary>
    internal double DryWmK { get; }

    /// <summary>Conductivity with every pore full, W m-1 K-1.</summary>
    internal double SaturatedWmK { get; }

    /// <summary>How early in wetting the conductivity rises.</summary>
    internal double Kappa { get; }

    /// <summary>
    /// Capacity (J m-3 K-1) and conductivity (W m-1 K-1, Cote and Konrad 2005; quartz taken as the share of sand, common
    /// practice) at a water content, held between about air-dry and saturation.
    /// </summary>
    public (double CapacityJm3K, double ConductivityWmK) At(double water)
    {
        var held = Math.Clamp(water, DriestWater, Porosity);
        var wetness = held / Porosity;
        return (
            DryCapacityJm3K + (ThermalProperties.WaterJm3K * held),
            DryWmK + ((SaturatedWmK - DryWmK) * Kappa * wetness / (1.0 + ((Kappa - 1.0) * wetness))));
    }
}
