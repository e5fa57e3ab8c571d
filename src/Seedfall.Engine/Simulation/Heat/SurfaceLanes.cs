using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Numerics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Heat;

/// <summary>Weather of one hour over four surfaces, with what follows from it whatever lies below.</summary>
internal struct WeatherLanes
{
    /// <summary>degC.</summary>
    internal Lanes AirC;

    /// <summary>kPa.</summary>
    internal Lanes VaporKPa;

    /// <summary>W m-2.</summary>
    internal Lanes SolarWm2;

    /// <summary>From the sky, W m-2.</summary>
    internal Lanes LongwaveWm2;

    /// <summary>Resistance of neutral air, s m-1.</summary>
    internal Lanes NeutralSM;

    /// <summary>Bulk Richardson number per degree the air is warmer than the skin, 1/K.</summary>
    internal Lanes RichardsonPerK;

    /// <summary>From the weather of one hour at four places; wind at 2 m, already scaled.</summary>
    internal static WeatherLanes Of(Lanes airC, Lanes vaporKPa, Lanes solarWm2, Lanes longwaveWm2, Lanes windMs, HeatParameters parameters)
    {
        const double LeastWindMs = 0.5;
        const double ReferenceHeightM = 2.0;
        var wind = LaneMath.Max(Vector256.Create(LeastWindMs), windMs);
        return new WeatherLanes
        {
            AirC = airC,
            VaporKPa = vaporKPa,
            SolarWm2 = solarWm2,
            LongwaveWm2 = longwaveWm2,
            NeutralSM = Vector256.Create(parameters.AerodynamicResistance) / wind,
            RichardsonPerK = Vector256.Create(9.81 * ReferenceHeightM) / ((airC + Vector256.Create(273.15)) * wind * wind),
        };
    }
}

/// <summary>What lies on and over four soils for one hour; as <see cref="GroundSurface"/>.</summary>
internal struct GroundLanes
{
    internal double CanopyShare;
    internal double ShadeShare;
    internal Lanes WaterSupply;
    internal Lanes SoilResistanceSM;
    internal Lanes SoilAlbedo;
    internal Lanes CoverResistanceM2KW;
    internal Lanes SnowShare;
}

/// <summary>
/// The energy balance of four radiating skins, linearized about given temperatures: the same equations as
/// <see cref="SurfaceBalance"/>, four at a time.
/// </summary>
internal readonly struct SurfaceLanes
{
    private const double Emissivity = 0.97;
    private const double AirHeatJm3K = 1.2 * 1010.0;
    private const double SeaLevelKPa = 101.3;
    private const double NightResistanceSm = 250.0;
    private const double SnowAlbedo = 0.7;
    private const double TreeSkyShare = 0.8;
    private const double DaylightWm2 = 5.0;

    internal readonly Lanes FluxWm2;
    internal readonly Lanes SlopeWm2K;
    internal readonly Lanes PenetratingWm2;
    private readonly Lanes _latentWm2KPa;
    private readonly Lanes _deficitKPa;
    private readonly Lanes _vaporSlopeKPaK;

    internal SurfaceLanes(in WeatherLanes weather, in GroundLanes ground, HeatParameters parameters, double pressureKPa, Lanes aboutC, Lanes soilC)
    {
        var absorbed = (Lanes.One - Reflected(ground, parameters)) * (1.0 - ground.ShadeShare) * weather.SolarWm2;
        PenetratingWm2 = absorbed * (parameters.SunThrough * ground.CanopyShare) * (Lanes.One - ground.SnowShare);
        var airKelvin = weather.AirC + Vector256.Create(273.15);
        var black = Longwave.StefanBoltzmannWm2K4 * (airKelvin * airKelvin) * (airKelvin * airKelvin);
        var sky = weather.LongwaveWm2 + (TreeSkyShare * ground.ShadeShare * (black - weather.LongwaveWm2));

        var airHeat = AirHeatJm3K * pressureKPa / SeaLevelKPa;
        var vapor = airHeat / Humidity.PsychrometricConstantKPaPerC(pressureKPa);
        var aerodynamic = Aerodynamic(weather, aboutC);
        var sensible = Vector256.Create(airHeat) / aerodynamic;
        var (saturated, slope) = LaneMath.Saturation(aboutC);
        var dry = Vector256.GreaterThanOrEqual(saturated, weather.VaporKPa);
        var canopy = (ground.CanopyShare * vapor) * (Lanes.One / (aerodynamic + (dry & CanopyResistance(weather.SolarWm2, ground, parameters, soilC))));
        var soil = ((1.0 - ground.CanopyShare) * vapor) * (Lanes.One / (aerodynamic + (dry & ground.SoilResistanceSM)));
        (_latentWm2KPa, _deficitKPa, _vaporSlopeKPaK) = (canopy + soil, saturated - weather.VaporKPa, slope);

        var kelvin = aboutC + Vector256.Create(273.15);
        var cubed = (Emissivity * Longwave.StefanBoltzmannWm2K4) * kelvin * kelvin * kelvin;
        FluxWm2 = absorbed - PenetratingWm2 + (Emissivity * sky) - (cubed * kelvin) - (sensible * (aboutC - weather.AirC)) - (_latentWm2KPa * _deficitKPa);
        SlopeWm2K = (4.0 * cubed) + sensible + (_latentWm2KPa * slope);
    }

    /// <summary>Latent heat given off by grass and soil when the skin is warmer than it was linearized about.</summary>
    internal Lanes LatentWm2(Lanes warmerC) => _latentWm2KPa * (_deficitKPa + (_vaporSlopeKPaK * warmerC));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lanes Reflected(in GroundLanes ground, HeatParameters parameters)
    {
        var summer = Vector256.Create(ground.CanopyShare * parameters.Albedo) + ((1.0 - ground.CanopyShare) * ground.SoilAlbedo);
        return summer + (ground.SnowShare * (Vector256.Create(SnowAlbedo) - summer));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lanes Aerodynamic(in WeatherLanes weather, Lanes skinC)
    {
        var richardson = weather.RichardsonPerK * (weather.AirC - skinC);
        var rising = LaneMath.Max(Vector256.Create(0.15), Lanes.One / Vector256.Sqrt(Lanes.One - (16.0 * LaneMath.Min(Lanes.Zero, richardson))));
        var damping = Lanes.One - (5.0 * LaneMath.Clamp(richardson, 0.0, 0.19));
        var settled = LaneMath.Min(Vector256.Create(4.0), Lanes.One / (damping * damping));
        return weather.NeutralSM * Vector256.ConditionalSelect(Vector256.LessThan(richardson, Lanes.Zero), rising, settled);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lanes CanopyResistance(Lanes solarWm2, in GroundLanes ground, HeatParameters parameters, Lanes soilC)
    {
        var cold = Vector256.Create(27.0) - LaneMath.Min(Vector256.Create(27.0), soilC);
        var warmth = LaneMath.Max(Vector256.Create(0.08), Lanes.One - (1.0e-3 * cold * cold));
        var least = Vector256.Create(parameters.LeastResistanceSm) / (ground.WaterSupply * warmth);
        var lit = least * (Lanes.One + (Vector256.Create(60.0) / (((1.0 - ground.ShadeShare) * solarWm2) + Vector256.Create(20.0))));
        return Vector256.ConditionalSelect(Vector256.GreaterThan(solarWm2, Vector256.Create(DaylightWm2)), lit, least + Vector256.Create(NightResistanceSm));
    }
}
