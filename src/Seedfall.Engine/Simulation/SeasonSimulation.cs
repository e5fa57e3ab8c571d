using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Engine.Simulation.Seedbed;
using Seedfall.Engine.Soil;

namespace Seedfall.Engine.Simulation;

/// <summary>
/// One patch through one season, hour by hour: forcing, water, heat, plant, in that order. Buffers are kept from season to
/// season; the hour loop allocates nothing.
/// </summary>
public sealed class SeasonSimulation
{
    /// <summary>Evaporation of wet bare ground over reference evapotranspiration (FAO-56 range 1.05 to 1.2).</summary>
    private const double WetSoilFactor = 1.15;

    /// <summary>Transpiration of full turf over reference evapotranspiration (FAO-56 K_cb mid-season).</summary>
    private const double TurfFactor = 0.90;

    private const double TurfRootsMm = 150.0;
    private const double MulchConductivityWmK = 0.08;
    private const double MulchKgM2PerM = 40.0;
    private const int MoistureEveryHours = 3;
    private const double MoistureStep = 0.01;
    private const int RainWindowHours = 6;

    private readonly PatchConditions _patch;
    private readonly HeatParameters _parameters;
    private readonly SeedbedSoil _soil;
    private readonly SoilThermal _thermal;
    private readonly SeedbedSurface _surface;
    private readonly PlantRecord[] _plants;
    private readonly double[] _upperLayers = new double[HeatColumn.RootLayers];

    /// <summary>A patch and the grasses sown on it.</summary>
    /// <param name="patch">The ground.</param>
    /// <param name="parameters">The column's fitted numbers.</param>
    /// <param name="grasses">At least one.</param>
    /// <param name="days">Most days a season holds, spin-up included.</param>
    public SeasonSimulation(PatchConditions patch, HeatParameters parameters, IReadOnlyList<GerminationTraits> grasses, int days)
    {
        ArgumentNullException.ThrowIfNull(patch);
        ArgumentOutOfRangeException.ThrowIfZero(grasses.Count);
        (_patch, _parameters) = (patch.Sound(), parameters);
        var typical = TextureTable.For(patch.Texture);
        _soil = SeedbedSoil.For(patch.Texture);
        _thermal = new SoilThermal(typical.Sand, typical.Clay, Units.Fraction.Of(0.025));
        _surface = patch.Surface;
        _plants = [.. grasses.Select(g => new PlantRecord(g, 24 * days))];
    }

    /// <summary>The season's running sums, one per grass.</summary>
    public IReadOnlyList<PlantRecord> Plants => _plants;

    /// <summary>Water given from the first watered day on, mm.</summary>
    public double IrrigationMm { get; private set; }

    /// <summary>Hours after the first watered day in which the seed's layer was drier than -0.5 MPa.</summary>
    public int DryHours { get; private set; }

    /// <summary>Runs the season from its first day.</summary>
    /// <param name="season">Weather, spin-up included.</param>
    /// <param name="climate">The usual year, for the start.</param>
    /// <param name="latitudeDeg">Degrees north.</param>
    /// <param name="watering">Rounds given every day from <paramref name="firstWateredDay"/> on.</param>
    /// <param name="firstWateredDay">Index of a day.</param>
    public void Run(SeasonForcing season, PlaceClimate climate, double latitudeDeg, WateringRounds watering, int firstWateredDay)
    {
        var weather = season.Column.Weather;
        var rounds = watering.ByHour();
        var column = HeatColumn.AtUsualYear(_parameters, _thermal, climate, SeasonAngle.Rad(weather.FirstDay, latitudeDeg));
        var water = new SeedbedState(_soil.Hydraulics.FieldCapacity);
        Clear();
        var recentRain = 0.0;
        for (var day = 0; day < season.Days; day++)
        {
            var watered = day >= firstWateredDay;
            for (var hour = 24 * day; hour < 24 * (day + 1); hour++)
            {
                recentRain += weather.RainMm[hour] - (hour >= RainWindowHours ? weather.RainMm[hour - RainWindowHours] : 0.0);
                var irrigation = watered && recentRain < watering.SkipAfterRainMm ? rounds[hour % 24] : 0.0;
                Wet(water, weather.RainMm[hour], irrigation, season.DemandMm[hour]);
                Warm(column, water, season.Column, hour, watered);
                Grow(column, water, season, hour);
                Count(water, irrigation, watered);
            }
        }
    }

    private void Clear()
    {
        (IrrigationMm, DryHours) = (0.0, 0);
        Array.Clear(_upperLayers);
        foreach (var plant in _plants)
        {
            plant.Clear();
        }
    }

    private void Wet(SeedbedState water, double rainMm, double irrigationMm, double demandMm)
    {
        var shaded = demandMm * (1.0 - (0.7 * _patch.ShadeShare));
        var soilDemand = WetSoilFactor * shaded * (1.0 - (0.7 * _patch.TurfShare));
        SeedbedWater.Step(_soil, water, _surface, new SeedbedHour(rainMm, irrigationMm, soilDemand, TurfFactor * shaded * _patch.TurfShare, TurfRootsMm));
    }

    private void Warm(HeatColumn column, SeedbedState water, ColumnForcing forcing, int hour, bool watered)
    {
        if (hour % MoistureEveryHours == 0 && ToColumn(water.WaterContent))
        {
            column.SetMoisture(_upperLayers);
        }

        column.Step(forcing.At(hour, _parameters), Ground(water, watered));
    }

    private GroundSurface Ground(SeedbedState water, bool watered)
    {
        var filled = Math.Clamp(water.WaterContent[0] / _soil.EvaporationOnset, 0.0, 1.0);
        return new GroundSurface
        {
            CanopyShare = _patch.TurfShare,
            ShadeShare = _patch.ShadeShare,
            WaterSupply = watered ? 1.0 : Math.Clamp((water.WaterContent[4] - _soil.Hydraulics.WiltingPoint) / (_parameters.StressRange * _soil.Hydraulics.AvailableWater), 0.02, 1.0),
            SoilResistanceSm = 10.0 * Math.Exp(5.34 * (1.0 - filled)),
            SoilAlbedo = 0.20 - (0.10 * filled),
            CoverResistanceM2KW = _patch.MulchCover * _patch.MulchKgM2 / MulchKgM2PerM / MulchConductivityWmK,
        };
    }

    private void Grow(HeatColumn column, SeedbedState water, SeasonForcing season, int hour)
    {
        var weather = season.Column.Weather;
        var layers = water.WaterContent;
        var (top, shallow, middle, deep) = (_soil.PotentialMPa(layers[0]), _soil.PotentialMPa(layers[1]), _soil.PotentialMPa(layers[2]), _soil.PotentialMPa(layers[3]));
        var seedLayer = _patch.SeedDepthMm < 3.0 ? top : _patch.SeedDepthMm < 8.0 ? shallow : middle;
        var seen = Seen(seedLayer, weather.VaporKPa[hour], weather.AirC[hour]);
        var seedC = column.At1CmC + season.CorrectionC[hour / 24];
        foreach (var plant in _plants)
        {
            plant.Add(seedC, seen, shallow, middle, deep, weather.AirC[hour]);
        }
    }

    private double Seen(double layerMPa, double vaporKPa, double airC)
    {
        if (!_patch.OnSurface && layerMPa > -0.05)
        {
            return layerMPa;
        }

        var humidity = vaporKPa / Atmosphere.Humidity.SaturationVaporPressureCore(airC);
        var air = SeedPotential.OfAirMPa(humidity, airC);
        return _patch.OnSurface
            ? SeedPotential.SeenMPa(layerMPa, Math.Max(air, layerMPa - 1.0), SeedPotential.SurfaceWeight)
            : SeedPotential.SeenMPa(layerMPa, Math.Max(air, layerMPa - 1.0), SeedPotential.RakedWeight);
    }

    private void Count(SeedbedState water, double irrigationMm, bool watered)
    {
        IrrigationMm += irrigationMm;
        if (watered && _soil.PotentialMPa(water.WaterContent[_patch.SeedDepthMm < 3.0 ? 0 : 1]) < -0.5)
        {
            DryHours++;
        }
    }

    /// <summary>Seedbed layers (3, 8, 20, 60, 150, 300 mm deep) onto the column's upper eight; false where none moved enough to matter.</summary>
    private bool ToColumn(double[] layers)
    {
        ReadOnlySpan<int> from = [1, 2, 3, 3, 4, 4, 5, 5];
        var moved = false;
        for (var i = 0; i < _upperLayers.Length; i++)
        {
            moved |= Math.Abs(_upperLayers[i] - layers[from[i]]) > MoistureStep;
        }

        for (var i = 0; moved && i < _upperLayers.Length; i++)
        {
            _upperLayers[i] = layers[from[i]];
        }

        return moved;
    }
}
