using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Engine.Simulation.Seedbed;
using Seedfall.Engine.Soil;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation;

/// <summary>
/// One patch through four seasons side by side, hour by hour: forcing, water, heat, plant, in that order. Buffers are kept
/// from seasons to seasons; the hour loop allocates nothing, and no season depends on the three beside it.
/// </summary>
internal sealed class SeasonSimulation
{
    private const double MulchConductivityWmK = 0.08;
    private const double MulchKgM2PerM = 40.0;
    private const int MoistureEveryHours = 6;
    private const double SeedReachMPa = 1.0;

    private readonly PatchConditions _patch;
    private readonly HeatParameters _parameters;
    private readonly SeedbedSoil _soil;
    private readonly SeedbedSurface _surface;
    private readonly SoilThermal _thermal;
    private readonly SeedZoneRecord _zone;
    private readonly PlantRecord[] _plants;
    private readonly Lanes[] _upperLayers = new Lanes[HeatColumn.RootLayers];
    private readonly int _seedLayer;
    private readonly double _seedWeight;

    /// <summary>A patch and the grasses sown on it.</summary>
    /// <param name="patch">The ground.</param>
    /// <param name="parameters">The column's fitted numbers.</param>
    /// <param name="grasses">At least one.</param>
    /// <param name="days">Most days a season holds.</param>
    internal SeasonSimulation(PatchConditions patch, HeatParameters parameters, IReadOnlyList<GerminationTraits> grasses, int days)
    {
        ArgumentOutOfRangeException.ThrowIfZero(grasses.Count);
        (_patch, _parameters) = (patch.Sound(), parameters);
        var typical = TextureTable.For(patch.Texture);
        _soil = SeedbedSoil.For(patch.Texture);
        _thermal = new SoilThermal(typical.Sand, typical.Clay, Units.Fraction.Of(0.025));
        _surface = patch.Surface;
        _zone = new SeedZoneRecord(24 * days);
        _plants = [.. grasses.Select(g => new PlantRecord(g, _zone))];
        _seedLayer = patch.SeedLayer;
        _seedWeight = patch.OnSurface ? SeedPotential.SurfaceWeight : SeedPotential.RakedWeight;
    }

    /// <summary>The seasons' running sums, one record per grass.</summary>
    internal IReadOnlyList<PlantRecord> Plants => _plants;

    /// <summary>Water given on the counted days, mm.</summary>
    internal Lanes IrrigationMm { get; private set; }

    /// <summary>Hours of the counted days in which the seed's layer was drier than -0.5 MPa.</summary>
    internal Lanes DryHours { get; private set; }

    /// <summary>Runs four seasons from their first day.</summary>
    /// <param name="season">Weather.</param>
    /// <param name="climate">The usual year, for the start.</param>
    /// <param name="watering">Rounds given every day from the first watered day on.</param>
    /// <param name="firstWateredDay">Index of a day.</param>
    /// <param name="countedDays">Days from then on over which water and dry hours are counted.</param>
    /// <param name="days">Days to run.</param>
    internal void Run(SeasonLanes season, PlaceClimate climate, WateringRounds watering, int firstWateredDay, int countedDays, int days) =>
        Run(season, climate, watering, default, firstWateredDay, countedDays, days);

    /// <summary>The same with the water of every hour given beforehand.</summary>
    /// <param name="season">Weather.</param>
    /// <param name="climate">The usual year, for the start.</param>
    /// <param name="irrigationMm">Water by the hour from the season's first day, mm; at least as many hours as are run.</param>
    /// <param name="firstWateredDay">Index of a day; before it the water given counts as rain to the soil's heat.</param>
    /// <param name="days">Days to run.</param>
    internal void Run(SeasonLanes season, PlaceClimate climate, ReadOnlySpan<Lanes> irrigationMm, int firstWateredDay, int days) =>
        Run(season, climate, WateringRounds.RainOnly, irrigationMm[..(24 * days)], firstWateredDay, days - firstWateredDay, days);

    private void Run(
        SeasonLanes season, PlaceClimate climate, WateringRounds watering, ReadOnlySpan<Lanes> given, int firstWateredDay, int countedDays, int days)
    {
        var rounds = watering.ByHour();
        var column = new HeatLanes(_parameters, _thermal, season.PressureKPa);
        column.Start(climate, season.SeasonRad);
        var water = new SeedbedState(_soil.Hydraulics.FieldCapacity);
        (IrrigationMm, DryHours) = (Lanes.Zero, Lanes.Zero);
        _zone.Clear();
        var hours = season.Season[..(24 * days)];
        for (var hour = 0; hour < hours.Length; hour++)
        {
            ref readonly var now = ref hours[hour];
            var watered = hour >= 24 * firstWateredDay;
            var irrigation = !given.IsEmpty ? given[hour] : watered ? Round(rounds[hour % 24], now, watering.SkipAfterRainMm) : Lanes.Zero;
            Wet(water, now, irrigation);
            Warm(column, water, now, hour, watered);
            var dry = Grow(column, water, now);
            if (watered && hour < 24 * (firstWateredDay + countedDays))
            {
                (IrrigationMm, DryHours) = (IrrigationMm + irrigation, DryHours + (dry & Lanes.One));
            }
        }
    }

    private static Lanes Round(double depthMm, in HourLanes now, double skipAfterRainMm) =>
        Vector256.LessThan(now.RecentRainMm, Vector256.Create(skipAfterRainMm)) & Vector256.Create(depthMm);

    private void Wet(SeedbedState water, in HourLanes now, Lanes irrigationMm) =>
        SeedbedWater.Step(_soil, water, _surface, _patch.Hour(now.RainMm, irrigationMm, now.DemandMm));

    private void Warm(HeatLanes column, SeedbedState water, in HourLanes now, int hour, bool watered)
    {
        if (hour % MoistureEveryHours == 0)
        {
            ToColumn(water.WaterContent);
            column.SetMoisture(_upperLayers);
        }

        var filled = LaneMath.Clamp(water.WaterContent[0] * (1.0 / _soil.EvaporationOnset), 0.0, 1.0);
        var supply = (water.WaterContent[4] - Vector256.Create(_soil.Hydraulics.WiltingPoint)) * (1.0 / (_parameters.StressRange * _soil.Hydraulics.AvailableWater));
        column.Step(now.Weather, new GroundLanes
        {
            CanopyShare = _patch.TurfShare,
            ShadeShare = _patch.ShadeShare,
            WaterSupply = watered ? Lanes.One : LaneMath.Clamp(supply, 0.02, 1.0),
            SoilResistanceSM = water.SurfaceSM,
            SoilAlbedo = Vector256.Create(0.20) - (0.10 * filled),
            CoverResistanceM2KW = Vector256.Create(_patch.MulchCover * _patch.MulchKgM2 / MulchKgM2PerM / MulchConductivityWmK),
        });
    }

    /// <summary>Adds the hour to the records; says where the seed's layer is dry.</summary>
    private Lanes Grow(HeatLanes column, SeedbedState water, in HourLanes now)
    {
        var layers = water.WaterContent;
        var (shallow, middle, deep) = (_soil.PotentialMPa(layers[1]), _soil.PotentialMPa(layers[2]), _soil.PotentialMPa(layers[3]));
        var layer = _seedLayer switch { 0 => _soil.PotentialMPa(layers[0]), 1 => shallow, _ => middle };
        var seed = Seen(layer, now.AirMPa);
        var seedC = column.At1CmC + now.CorrectionC;
        _zone.Add(seedC, shallow, middle, deep, now.Weather.AirC);
        foreach (var plant in _plants)
        {
            plant.Add(seedC, seed);
        }

        return Vector256.LessThan(layer, Vector256.Create(PatchConditions.DryMPa));
    }

    /// <summary>The seed's potential lies between its layer's and the air's, which reaches no further than 1 MPa below; raked-in seed in wet soil feels the soil alone.</summary>
    private Lanes Seen(Lanes layerMPa, Lanes airMPa)
    {
        var air = LaneMath.Max(airMPa, layerMPa - Vector256.Create(SeedReachMPa));
        var seen = LaneMath.Max(Vector256.Create(-SeedPotential.DriestMPa), (_seedWeight * layerMPa) + ((1.0 - _seedWeight) * air));
        var soilAlone = _patch.OnSurface ? Lanes.Zero : Vector256.GreaterThan(layerMPa, Vector256.Create(-0.05));
        return Vector256.ConditionalSelect(soilAlone, layerMPa, seen);
    }

    /// <summary>Seedbed layers (3, 8, 20, 60, 150, 300 mm deep) onto the column's upper eight.</summary>
    private void ToColumn(Lanes[] layers)
    {
        ReadOnlySpan<int> from = [1, 2, 3, 3, 4, 4, 5, 5];
        for (var i = 0; i < _upperLayers.Length; i++)
        {
            _upperLayers[i] = layers[from[i]];
        }
    }
}
