using Seedfall.Engine.Atmosphere;

namespace Seedfall.Engine.Simulation.Heat;

/// <summary>
/// The energy balance of the radiating skin, linearized about its last temperature: heat into the ground is
/// <see cref="FluxWm2"/> + <see cref="SlopeWm2K"/> (Ts - <see cref="AboutC"/>). Fluxes toward the skin positive, W m-2.
/// </summary>
internal readonly struct SurfaceBalance
{
    private const double Emissivity = 0.97;
    private const double AirHeatJm3K = 1.2 * 1010.0;
    private const double SeaLevelKPa = 101.3;
    private const double LeastWindMs = 0.5;
    private const double ReferenceHeightM = 2.0;
    private const double NightResistanceSm = 250.0;
    private const double SnowAlbedo = 0.7;
    private const double TreeSkyShare = 0.8;

    private readonly double _canopyVaporWm2KPa;
    private readonly double _soilVaporWm2KPa;
    private readonly double _vaporDeficitKPa;
    private readonly double _vaporSlopeKPaK;

    /// <summary>Linearizes at a skin temperature.</summary>
    /// <param name="weather">The hour.</param>
    /// <param name="ground">The ground.</param>
    /// <param name="parameters">Fitted numbers.</param>
    /// <param name="aboutC">Skin temperature to linearize about.</param>
    /// <param name="soilC">Soil temperature at 5 cm, for the roots.</param>
    internal SurfaceBalance(in SurfaceWeather weather, in GroundSurface ground, HeatParameters parameters, double aboutC, double soilC)
    {
        AboutC = aboutC;
        var absorbed = (1.0 - ReflectedShare(ground, parameters)) * (1.0 - ground.ShadeShare) * weather.SolarWm2;
        PenetratingWm2 = absorbed * parameters.SunThrough * ground.CanopyShare * (1.0 - ground.SnowShare);
        var sky = weather.LongwaveWm2 + (TreeSkyShare * ground.ShadeShare * (Longwave.BlackBodyWm2(weather.AirC) - weather.LongwaveWm2));

        var airHeat = AirHeatJm3K * weather.PressureKPa / SeaLevelKPa;
        var aerodynamic = AerodynamicResistance(weather, parameters, aboutC);
        var sensible = airHeat / aerodynamic;
        var vapor = airHeat / Humidity.PsychrometricConstantKPaPerC(weather.PressureKPa);
        var saturated = Humidity.SaturationVaporPressureCore(aboutC);
        var dew = saturated < weather.VaporKPa;
        _canopyVaporWm2KPa = ground.CanopyShare * vapor / (aerodynamic + (dew ? 0.0 : CanopyResistance(weather.SolarWm2, ground, parameters, soilC)));
        _soilVaporWm2KPa = (1.0 - ground.CanopyShare) * vapor / (aerodynamic + (dew ? 0.0 : ground.SoilResistanceSm));
        _vaporDeficitKPa = saturated - weather.VaporKPa;
        _vaporSlopeKPaK = 4098.0 * saturated / ((aboutC + 237.3) * (aboutC + 237.3));

        var kelvin = aboutC + 273.15;
        var cubed = Emissivity * Longwave.StefanBoltzmannWm2K4 * kelvin * kelvin * kelvin;
        var latent = _canopyVaporWm2KPa + _soilVaporWm2KPa;
        FluxWm2 = absorbed - PenetratingWm2 + (Emissivity * sky) - (cubed * kelvin)
            - (sensible * (aboutC - weather.AirC)) - (latent * _vaporDeficitKPa);
        SlopeWm2K = -((4.0 * cubed) + sensible + (latent * _vaporSlopeKPaK));
    }

    /// <summary>Temperature the balance is linear about, degC.</summary>
    internal double AboutC { get; }

    /// <summary>Net gain of the skin at <see cref="AboutC"/>.</summary>
    internal double FluxWm2 { get; }

    /// <summary>Change of that gain per degree of skin, below 0.</summary>
    internal double SlopeWm2K { get; }

    /// <summary>Sun that reaches the soil through the canopy.</summary>
    internal double PenetratingWm2 { get; }

    /// <summary>Latent heat given off by the grass at a skin temperature.</summary>
    internal double CanopyLatentWm2(double skinC) => _canopyVaporWm2KPa * (_vaporDeficitKPa + (_vaporSlopeKPaK * (skinC - AboutC)));

    /// <summary>Latent heat given off by bare soil at a skin temperature.</summary>
    internal double SoilLatentWm2(double skinC) => _soilVaporWm2KPa * (_vaporDeficitKPa + (_vaporSlopeKPaK * (skinC - AboutC)));

    private static double ReflectedShare(in GroundSurface ground, HeatParameters parameters)
    {
        var bareToCanopy = (ground.CanopyShare * parameters.Albedo) + ((1.0 - ground.CanopyShare) * ground.SoilAlbedo);
        return bareToCanopy + (ground.SnowShare * (SnowAlbedo - bareToCanopy));
    }

    /// <summary>s m-1; stability after the bulk Richardson number, correction held within 0.15 to 4.</summary>
    private static double AerodynamicResistance(in SurfaceWeather weather, HeatParameters parameters, double skinC)
    {
        var wind = Math.Max(LeastWindMs, weather.WindMs);
        var neutral = parameters.AerodynamicResistance / wind;
        var richardson = 9.81 * ReferenceHeightM * (weather.AirC - skinC) / ((weather.AirC + 273.15) * wind * wind);
        if (richardson < 0.0)
        {
            return neutral * Math.Max(0.15, 1.0 / Math.Sqrt(1.0 - (16.0 * richardson)));
        }

        var damping = 1.0 - (5.0 * Math.Min(richardson, 0.19));
        return neutral * Math.Min(4.0, 1.0 / (damping * damping));
    }

    private static double CanopyResistance(double solarWm2, in GroundSurface ground, HeatParameters parameters, double soilC)
    {
        var cold = 27.0 - Math.Min(27.0, soilC);
        var warmth = Math.Max(0.08, 1.0 - (1.0e-3 * cold * cold));
        var open = 1.0 - ground.ShadeShare;
        var least = parameters.LeastResistanceSm / (ground.WaterSupply * warmth);
        return solarWm2 > 5.0 ? least * (1.0 + (60.0 / ((open * solarWm2) + 20.0))) : NightResistanceSm + least;
    }
}
