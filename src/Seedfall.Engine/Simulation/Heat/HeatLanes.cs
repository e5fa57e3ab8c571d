using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Soil;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Heat;

/// <summary>
/// Four <see cref="HeatColumn"/>s side by side, the same equations. The implicit system is eliminated from the bottom up once
/// per change of moisture, so that an hour costs one division instead of one per layer.
/// </summary>
internal sealed class HeatLanes
{
    private const double BareConductanceWm2K = 50.0;
    private const double FusionJm3 = 334e6;
    private const double LatentJkg = 2.45e6;

    private static readonly double[] ThicknessM = HeatConduction.StandardThicknessM.ToArray();

    private readonly HeatParameters _parameters;
    private readonly SoilThermal _soil;
    private readonly double _pressureKPa;
    private readonly Layer[] _layers = new Layer[ThicknessM.Length];
    private Lanes _topWm2K;
    private bool _cold = true;

    /// <summary>Four columns of one soil; <see cref="Start"/> sets them going.</summary>
    internal HeatLanes(HeatParameters parameters, SoilThermal soil, double pressureKPa)
    {
        (_parameters, _soil, _pressureKPa) = (parameters, soil, pressureKPa);
    }

    /// <summary>Radiating skins, degC.</summary>
    internal Lanes SkinC { get; private set; }

    /// <summary>Soil at 1 cm, degC.</summary>
    internal Lanes At1CmC => _layers[0].C + ((_layers[1].C - _layers[0].C) * 0.4);

    /// <summary>Soil at 5 cm, degC.</summary>
    internal Lanes At5CmC => (0.25 * _layers[2].C) + (0.75 * _layers[3].C);

    /// <summary>Temperature of a layer, counted from the top, degC.</summary>
    internal Lanes LayerC(int layer) => _layers[layer].C;

    /// <summary>Heat the last hour's surface gave to the soil: through the skin, and sun that passed the canopy, W m-2.</summary>
    internal Lanes EnteredWm2 { get; private set; }

    /// <summary>Heat a layer took up per degree in the last hour, freezing included, W m-2 K-1.</summary>
    internal Lanes InertiaWm2K(int layer) => _layers[layer].InertiaWm2K;

    /// <summary>Begins anew from the usual year of the place, every layer at field capacity.</summary>
    /// <param name="climate">The usual year.</param>
    /// <param name="seasonRad">Where in the year each column begins.</param>
    internal void Start(PlaceClimate climate, ReadOnlySpan<double> seasonRad)
    {
        var begin = new HeatColumn[LaneMath.Width];
        for (var lane = 0; lane < begin.Length; lane++)
        {
            begin[lane] = HeatColumn.AtUsualYear(_parameters, _soil, climate, seasonRad[lane]);
        }

        for (var i = 0; i < ThicknessM.Length; i++)
        {
            var layer = i;
            _layers[i].C = LaneMath.Gather(lane => begin[lane].TemperatureC[layer], 0, begin.Length);
            SetLayer(i, Vector256.Create(_soil.FieldCapacity));
        }

        (SkinC, _cold) = (LaneMath.Gather(lane => begin[lane].SkinC, 0, begin.Length), true);
        Conduct();
    }

    /// <summary>Sets the water of the upper layers one by one, top down, m3/m3; deeper layers keep theirs.</summary>
    internal void SetMoisture(ReadOnlySpan<Lanes> upperLayers)
    {
        for (var i = 0; i < upperLayers.Length; i++)
        {
            SetLayer(i, upperLayers[i]);
        }

        Conduct();
    }

    /// <summary>Moves the columns one hour on; returns the water given off by grass and soil, mm.</summary>
    internal Lanes Step(in WeatherLanes weather, in GroundLanes ground)
    {
        var path = 1.0 / ((ground.CanopyShare * _parameters.CanopyConductanceWm2K) + ((1.0 - ground.CanopyShare) * BareConductanceWm2K));
        var conductance = Lanes.One / (Vector256.Create(path) + ground.CoverResistanceM2KW + (0.5 * _layers[0].ResistanceM2KW));
        if (_cold || Vector256.LessThanAny(_layers[0].C, Lanes.Zero))
        {
            Freeze();
        }

        var soilC = At5CmC;
        var about = SkinC;
        var balance = new SurfaceLanes(weather, ground, _parameters, _pressureKPa, about, soilC);
        var skin = Skin(balance, about, conductance);
        for (var turn = 0; turn < HeatColumn.MostLinearizations && Far(skin, about) is var far && Vector256.ExtractMostSignificantBits(far) != 0; turn++)
        {
            about = Vector256.ConditionalSelect(far, turn == 0 ? skin : 0.5 * (about + skin), about);
            balance = new SurfaceLanes(weather, ground, _parameters, _pressureKPa, about, soilC);
            skin = Skin(balance, about, conductance);
        }

        var drive = balance.FluxWm2 + (balance.SlopeWm2K * about);
        var through = conductance / (conductance + balance.SlopeWm2K);
        Solve((through * drive) + balance.PenetratingWm2, through * balance.SlopeWm2K);
        SkinC = (drive + (conductance * _layers[0].C)) / (conductance + balance.SlopeWm2K);
        EnteredWm2 = drive - (balance.SlopeWm2K * SkinC) + balance.PenetratingWm2;
        return balance.LatentWm2(SkinC - about) * (HeatColumn.StepS / LatentJkg);
    }

    private static Lanes Far(Lanes skin, Lanes about) => Vector256.GreaterThan(Vector256.Abs(skin - about), Vector256.Create(HeatColumn.LargestSkinStepC));

    private Lanes Skin(in SurfaceLanes balance, Lanes about, Lanes conductance) =>
        (balance.FluxWm2 + (balance.SlopeWm2K * about) + (conductance * _layers[0].C)) / (conductance + balance.SlopeWm2K);

    private void SetLayer(int i, Lanes water)
    {
        var thickness = ThicknessM[i];
        var held = LaneMath.Clamp(water, _soil.DriestWater, _soil.Porosity);
        var wetness = held * (1.0 / _soil.Porosity);
        var below = Lanes.One + ((_soil.Kappa - 1.0) * wetness);
        ref var layer = ref _layers[i];
        layer.Water = water;
        layer.ResistanceM2KW = thickness * below / ((_soil.DryWmK * below) + ((_soil.SaturatedWmK - _soil.DryWmK) * _soil.Kappa * wetness));
        layer.CapacityWm2K = (Vector256.Create(_soil.DryCapacityJm3K) + (ThermalProperties.WaterJm3K * held)) * (_parameters.Inertia * thickness / HeatColumn.StepS);
    }

    private void Conduct()
    {
        var layers = _layers;
        for (var i = 0; i < layers.Length; i++)
        {
            ref var layer = ref layers[i];
            layer.InertiaWm2K = layer.CapacityWm2K;
            layer.BelowWm2K = i + 1 < layers.Length ? Vector256.Create(2.0) / (layer.ResistanceM2KW + layers[i + 1].ResistanceM2KW) : Lanes.Zero;
        }

        Eliminate();
    }

    /// <summary>Water freezing between 0 and -1 degC adds to the capacity of the layers there.</summary>
    private void Freeze()
    {
        var below = Lanes.Zero;
        for (var i = 0; i < _layers.Length; i++)
        {
            ref var layer = ref _layers[i];
            var cold = Vector256.LessThan(layer.C, Lanes.Zero);
            var freezing = cold & Vector256.GreaterThan(layer.C, Vector256.Create(-1.0));
            layer.InertiaWm2K = layer.CapacityWm2K + (freezing & (layer.Water * (FusionJm3 * ThicknessM[i] / HeatColumn.StepS)));
            below |= cold;
        }

        _cold = Vector256.ExtractMostSignificantBits(below) != 0;
        Eliminate();
    }

    /// <summary>From the bottom up: layer i follows its upper neighbor by a factor, and what hangs below is carried by the layer above.</summary>
    private void Eliminate()
    {
        var layers = _layers;
        var carried = Lanes.Zero;
        for (var i = layers.Length - 1; i >= 1; i--)
        {
            ref var layer = ref layers[i];
            var above = layers[i - 1].BelowWm2K;
            layer.Inverse = Lanes.One / (layer.InertiaWm2K + above + carried);
            layer.Factor = above * layer.Inverse;
            carried = above - (above * layer.Factor);
        }

        _topWm2K = layers[0].InertiaWm2K + carried;
    }

    private void Solve(Lanes intoTopWm2, Lanes outerWm2K)
    {
        var layers = _layers;
        var (right, factor) = (Lanes.Zero, Lanes.Zero);
        for (var i = layers.Length - 1; i >= 0; i--)
        {
            ref var layer = ref layers[i];
            right = (layer.InertiaWm2K * layer.C) + (factor * right);
            layer.RightWm2 = right;
            factor = layer.Factor;
        }

        var temperature = (right + intoTopWm2) / (_topWm2K + outerWm2K);
        layers[0].C = temperature;
        for (var i = 1; i < layers.Length; i++)
        {
            ref var layer = ref layers[i];
            temperature = (layer.RightWm2 * layer.Inverse) + (layer.Factor * temperature);
            layer.C = temperature;
        }
    }

    /// <summary>One layer of the four columns.</summary>
    private struct Layer
    {
        internal Lanes C;
        internal Lanes InertiaWm2K;
        internal Lanes Factor;
        internal Lanes Inverse;
        internal Lanes RightWm2;
        internal Lanes BelowWm2K;
        internal Lanes ResistanceM2KW;
        internal Lanes CapacityWm2K;
        internal Lanes Water;
    }
}
