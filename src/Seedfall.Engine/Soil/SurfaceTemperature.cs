using Seedfall.Engine.Atmosphere;

namespace Seedfall.Engine.Soil;

/// <summary>Highest, lowest and mean temperature of a soil surface over a day, degC.</summary>
public readonly record struct SurfaceDay(double MaxC, double MinC, double MeanC);

/// <summary>The temperature the soil feels from above: an outer temperature and the conductance to it.</summary>
/// <param name="OuterC">Temperature of air and sun together, degC.</param>
/// <param name="ConductanceWm2K">Conductance from there to the soil surface, W m-2 K-1.</param>
public readonly record struct SurfaceForcing(double OuterC, double ConductanceWm2K);

/// <summary>Daily temperature at and above the soil surface from air, sun and cover.</summary>
public static class SurfaceTemperature
{
    /// <summary>Conductance between the skin of low vegetation and the soil, W m-2 K-1, by day (Moene and van Dam 2014).</summary>
    public const double CanopyConductanceWm2K = 5.0;

    /// <summary>The same for bare soil, whose skin is nearly the soil itself, W m-2 K-1 (assumed, 40 to 60).</summary>
    public const double BareConductanceWm2K = 50.0;

    /// <summary>Priestley and Taylor 1972: evaporation of a moist cover over its equilibrium value.</summary>
    private const double CoverEvaporation = 1.26;

    /// <summary>The same for bare soil between wettings (assumed).</summary>
    private const double BareEvaporation = 0.7;

    private const double AirHeatCapacityJm3K = 1212.0;
    private const double SeaLevelKPa = 101.3;
    private const double SmallestSensibleShare = 0.02;
    private const double GrassHeightM = 0.12;

    /// <summary>
    /// Surface extremes and mean. Parton 1984, Soil Sci. 138:93, in the form of later grassland models.
    /// </summary>
    /// <param name="tmaxC">Highest air temperature, degC.</param>
    /// <param name="tminC">Lowest air temperature, degC.</param>
    /// <param name="solarMJ">Solar radiation, MJ m-2 d-1.</param>
    /// <param name="biomassKgM2">Standing plant matter above ground, dry, kg/m2, 0 or more; turf is about 0.15 to 0.3.</param>
    public static SurfaceDay Parton(double tmaxC, double tminC, double solarMJ, double biomassKgM2)
    {
        var warmthC = (24.0 * (1.0 - Math.Exp(-0.038 * solarMJ))) + (0.35 * tmaxC);
        var maxC = tmaxC + (warmthC * (Math.Exp(-4.8 * biomassKgM2) - 0.13));
        var minC = tminC + (6.0 * biomassKgM2) - 1.82;
        return new SurfaceDay(maxC, minC, (0.41 * maxC) + (0.59 * minC));
    }

    /// <summary>
    /// Outer temperature and conductance of a day: air warmed by the part of the net radiation that does not evaporate water
    /// (Priestley and Taylor 1972), against the air's resistance over short grass (FAO-56 eq. 4), then through canopy and
    /// bare ground side by side. No constant is fitted.
    /// </summary>
    /// <param name="airC">Mean air temperature, degC.</param>
    /// <param name="netRadiationWm2">Net radiation, mean over the day, W m-2.</param>
    /// <param name="windMs">Wind at 2 m, m/s; held at 0.5 or more.</param>
    /// <param name="pressureKPa">Air pressure, kPa.</param>
    /// <param name="cover">Share of the ground under living grass, 0 to 1.</param>
    public static SurfaceForcing Forcing(double airC, double netRadiationWm2, double windMs, double pressureKPa, double cover)
    {
        var slope = Humidity.SlopeKPaPerC(airC);
        var evaporating = ((cover * CoverEvaporation) + ((1.0 - cover) * BareEvaporation))
            * slope / (slope + Humidity.PsychrometricConstantKPaPerC(pressureKPa));
        var sensible = Math.Max(SmallestSensibleShare, 1.0 - evaporating);
        var toAirWm2K = AirHeatCapacityJm3K * (pressureKPa / SeaLevelKPa) / Wind.AerodynamicResistanceSm(GrassHeightM, 2.0, Math.Max(0.5, windMs));
        var toSoilWm2K = (cover * CanopyConductanceWm2K) + ((1.0 - cover) * BareConductanceWm2K);
        return new SurfaceForcing(airC + (sensible * netRadiationWm2 / toAirWm2K), 1.0 / ((1.0 / toSoilWm2K) + (sensible / toAirWm2K)));
    }
}
