using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Soil;

namespace Seedfall.Engine.Simulation.Heat;

/// <summary>
/// Soil temperature in 14 layers to 4.29 m under a skin whose energy balance is linearized once per hour, implicit in time.
/// One column is the state of one patch of ground; stepping it allocates nothing.
/// </summary>
public sealed class HeatColumn
{
    /// <summary>Length of a step, s.</summary>
    public const double StepS = 3600.0;

    private const double BareConductanceWm2K = 50.0;
    private const double LatentJkg = 2.45e6;
    private const double FusionJm3 = 334e6;

    /// <summary>A balance linear about a skin further than this from its answer is made anew, K.</summary>
    internal const double LargestSkinStepC = 15.0;

    /// <summary>
    /// How often at most in one hour. One is enough in measured weather; from a frozen night straight to a hot sunny hour over
    /// straw one overshoots to 111 degC, because the still, cold air it is linear about hardly cools. From the second on it goes half
    /// the way, because still air turns from stable to unstable and back.
    /// </summary>
    internal const int MostLinearizations = 8;

    private static readonly double[] ThicknessM = HeatConduction.StandardThicknessM.ToArray();

    private readonly HeatParameters _parameters;
    private readonly SoilThermal _soil;
    private readonly double[] _temperatureC;
    private readonly double[] _waterM3M3;
    private readonly double[] _capacityJm2K;
    private readonly double[] _storageJm2K;
    private readonly double[] _conductivityWmK;
    private readonly double[] _conductanceWm2K;
    private readonly double[] _work;

    /// <summary>A column at a temperature profile (one value per layer, top down) with soil of one texture.</summary>
    public HeatColumn(HeatParameters parameters, SoilThermal soil, ReadOnlySpan<double> temperatureC, double skinC)
    {
        var layers = LayerCount;
        if (temperatureC.Length != layers)
        {
            throw new ArgumentException($"{layers} temperatures are needed, got {temperatureC.Length}", nameof(temperatureC));
        }

        (_parameters, _soil, SkinC) = (parameters, soil, skinC);
        _temperatureC = temperatureC.ToArray();
        _waterM3M3 = new double[layers];
        _capacityJm2K = new double[layers];
        _storageJm2K = new double[layers];
        _conductivityWmK = new double[layers];
        _conductanceWm2K = new double[layers];
        _work = new double[HeatConduction.WorkLength(layers)];
        SetMoisture(soil.FieldCapacity, soil.FieldCapacity);
    }

    /// <summary>Number of layers.</summary>
    public static int LayerCount => ThicknessM.Length;

    /// <summary>Layers that lie in the top 30 cm.</summary>
    public const int RootLayers = 8;

    /// <summary>Temperature of each layer, degC, top down.</summary>
    public ReadOnlySpan<double> TemperatureC => _temperatureC;

    /// <summary>Heat capacity of each layer in the last step, freezing water included, J m-2 K-1.</summary>
    public ReadOnlySpan<double> StorageJm2K => _storageJm2K;

    /// <summary>Radiating skin, degC.</summary>
    public double SkinC { get; private set; }

    /// <summary>Skin the last hour's balance was linear about, degC.</summary>
    internal double LinearAboutC { get; private set; }

    /// <summary>Soil at 1 cm, degC.</summary>
    public double At1CmC => _temperatureC[0] + ((_temperatureC[1] - _temperatureC[0]) * 0.4);

    /// <summary>Soil at 5 cm, degC.</summary>
    public double At5CmC => 0.25 * _temperatureC[2] + 0.75 * _temperatureC[3];

    /// <summary>Soil at any depth, m, degC.</summary>
    public double AtDepthC(double depthM) => HeatConduction.AtDepthC(_temperatureC, ThicknessM, depthM);

    /// <summary>
    /// A column at the annual wave of a place, as soil under open grass would have it on a day.
    /// </summary>
    public static HeatColumn AtUsualYear(HeatParameters parameters, SoilThermal soil, PlaceClimate climate, double seasonRad)
    {
        const double SoilWarmerC = 1.5;
        const double AnnualDampingM = 2.3;
        var profile = new double[LayerCount];
        var top = 0.0;
        for (var i = 0; i < profile.Length; i++)
        {
            var thickness = ThicknessM[i];
            profile[i] = SoilWarmerC + climate.AtDepthC(seasonRad, top + (0.5 * thickness), AnnualDampingM);
            top += thickness;
        }

        return new HeatColumn(parameters, soil, profile, profile[0]);
    }

    /// <summary>Sets the water of the top 30 cm and of the soil below, m3/m3, and with it capacity and conductivity.</summary>
    public void SetMoisture(double rootZone, double below)
    {
        var (rootCapacity, rootConductivity) = _soil.At(rootZone);
        var (deepCapacity, deepConductivity) = _soil.At(below);
        for (var i = 0; i < _waterM3M3.Length; i++)
        {
            var root = i < RootLayers;
            SetLayer(i, root ? rootZone : below, root ? rootCapacity : deepCapacity, root ? rootConductivity : deepConductivity);
        }

        HeatConduction.Conductances(ThicknessM, _conductivityWmK, _conductanceWm2K);
    }

    /// <summary>Sets the water of the upper layers one by one, top down, m3/m3; deeper layers keep theirs.</summary>
    public void SetMoisture(ReadOnlySpan<double> upperLayers)
    {
        for (var i = 0; i < upperLayers.Length; i++)
        {
            var (capacity, conductivity) = _soil.At(upperLayers[i]);
            SetLayer(i, upperLayers[i], capacity, conductivity);
        }

        HeatConduction.Conductances(ThicknessM, _conductivityWmK, _conductanceWm2K);
    }

    /// <summary>Moves the column one hour on.</summary>
    public HeatStep Step(in SurfaceWeather weather, in GroundSurface ground)
    {
        var path = 1.0 / PathWm2K(ground);
        var conductance = 1.0 / (path + ground.CoverResistanceM2KW + (ThicknessM[0] / (2.0 * _conductivityWmK[0])));
        SetFreezing();
        var balance = new SurfaceBalance(weather, ground, _parameters, SkinC, At5CmC);
        var skin = ExpectedSkin(balance, conductance);
        for (var turn = 0; turn < MostLinearizations && Math.Abs(skin - balance.AboutC) > LargestSkinStepC; turn++)
        {
            balance = new SurfaceBalance(weather, ground, _parameters, turn == 0 ? skin : 0.5 * (balance.AboutC + skin), At5CmC);
            skin = ExpectedSkin(balance, conductance);
        }

        return Advance(balance, conductance);
    }

    private HeatStep Advance(in SurfaceBalance balance, double conductance)
    {
        var slope = -balance.SlopeWm2K;
        var drive = balance.FluxWm2 + (slope * balance.AboutC);
        var outerConductance = conductance * slope / (conductance + slope);
        HeatConduction.Step(_temperatureC, _storageJm2K, _conductanceWm2K, drive / slope, outerConductance, balance.PenetratingWm2, StepS, 1.0, _work);
        (LinearAboutC, SkinC) = (balance.AboutC, (drive + (conductance * _temperatureC[0])) / (conductance + slope));
        return new HeatStep(
            SkinC,
            conductance * (SkinC - _temperatureC[0]),
            balance.PenetratingWm2,
            balance.CanopyLatentWm2(SkinC) * StepS / LatentJkg,
            balance.SoilLatentWm2(SkinC) * StepS / LatentJkg,
            At1CmC,
            At5CmC);
    }

    private double ExpectedSkin(in SurfaceBalance balance, double conductance) =>
        (balance.FluxWm2 - (balance.SlopeWm2K * balance.AboutC) + (conductance * _temperatureC[0])) / (conductance - balance.SlopeWm2K);

    /// <summary>Canopy and bare soil side by side.</summary>
    private double PathWm2K(in GroundSurface ground) =>
        (ground.CanopyShare * _parameters.CanopyConductanceWm2K) + ((1.0 - ground.CanopyShare) * BareConductanceWm2K);

    private void SetLayer(int i, double water, double capacity, double conductivity)
    {
        _waterM3M3[i] = water;
        _capacityJm2K[i] = _parameters.Inertia * capacity * ThicknessM[i];
        _storageJm2K[i] = _capacityJm2K[i];
        _conductivityWmK[i] = conductivity;
    }

    /// <summary>Water freezing between 0 and -1 degC adds to the capacity of the layers there (apparent heat capacity).</summary>
    private void SetFreezing()
    {
        for (var i = 0; i < _temperatureC.Length; i++)
        {
            var freezing = _temperatureC[i] is < 0.0 and > -1.0;
            _storageJm2K[i] = _capacityJm2K[i] + (freezing ? FusionJm3 * _waterM3M3[i] * ThicknessM[i] : 0.0);
        }
    }
}
