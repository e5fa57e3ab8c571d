using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;

namespace Seedfall.Engine.Simulation.Heat;

/// <summary>Heat capacity and conductivity of one soil at any water content, with the water contents that bound it.</summary>
public sealed class SoilThermal
{
    private const double DriestShare = 0.35;

    private readonly double _quartz;
    private readonly double _organicVolume;
    private readonly ThermalGrain _grain;

    /// <summary>From texture; throws outside the range of Saxton and Rawls 2006.</summary>
    public SoilThermal(Fraction sand, Fraction clay, Fraction organicMatter)
    {
        var hydraulics = SaxtonRawls.Of(sand, clay, organicMatter);
        (WiltingPoint, FieldCapacity, Porosity) = (hydraulics.WiltingPoint, hydraulics.FieldCapacity, hydraulics.Saturation);
        _quartz = sand.Value;
        _organicVolume = organicMatter.Value * hydraulics.BulkDensityMgM3 / OrganicDensityMgM3;
        _grain = sand.Value > 0.5 ? ThermalGrain.Sandy : ThermalGrain.Fine;
    }

    private const double OrganicDensityMgM3 = 1.3;

    /// <summary>m3/m3 at 1500 kPa.</summary>
    public double WiltingPoint { get; }

    /// <summary>m3/m3 at 33 kPa.</summary>
    public double FieldCapacity { get; }

    /// <summary>m3/m3 with every pore full.</summary>
    public double Porosity { get; }

    /// <summary>
    /// Capacity (J m-3 K-1) and conductivity (W m-1 K-1, Cote and Konrad 2005; quartz taken as the share of sand, common
    /// practice) at a water content, held between about air-dry and saturation.
    /// </summary>
    public (double CapacityJm3K, double ConductivityWmK) At(double water)
    {
        var held = Math.Clamp(water, DriestShare * WiltingPoint, Porosity);
        return (
            ThermalProperties.HeatCapacityJm3K(Porosity, held, _organicVolume),
            ThermalProperties.CoteKonradWmK(Porosity, held, _quartz, _grain));
    }
}
