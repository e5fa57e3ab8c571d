using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation.Seedbed;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Watering;

/// <summary>Where the water of one hour went.</summary>
/// <param name="EvaporationMm">To the air, roots included, mm.</param>
/// <param name="RunoffMm">Over the edge, mm.</param>
/// <param name="DrainageMm">Below 30 cm, mm.</param>
public readonly record struct BedLosses(double EvaporationMm, double RunoffMm, double DrainageMm);

/// <summary>What a way of watering means to hold.</summary>
/// <param name="SeedMPa">Least potential of the seed's layer, MPa.</param>
/// <param name="Around">
/// True where the layers above it and those below it to 60 mm must not be drier than <see cref="PatchConditions.DryMPa"/> either: a
/// dry surface heats until it scorches, and roots hang on what is below.
/// </param>
public readonly record struct Hold(double SeedMPa, bool Around);

/// <summary>
/// The seedbed's water stepped by the hour with water given as it is decided: the same six layers as the season's simulation,
/// without heat and plants, which the water does not depend on.
/// </summary>
public sealed class WateredBed
{
    private readonly BedGround _ground;
    private readonly SeedbedState _state;
    private readonly SeedbedState _trial;

    /// <summary>A bed at field capacity with nothing on top.</summary>
    /// <param name="patch">The ground.</param>
    /// <param name="layer">Layer to be kept wet, 0 to 5; null for the seed's own.</param>
    public WateredBed(PatchConditions patch, int? layer = null)
        : this(new BedGround(patch, layer))
    {
    }

    private WateredBed(BedGround ground) => (_ground, _state, _trial) = (ground, ground.AtFieldCapacity(), ground.AtFieldCapacity());

    /// <summary>The layer to be kept wet.</summary>
    public int Layer => _ground.Layer;

    /// <summary>Potential of that layer, MPa.</summary>
    public double ZoneMPa => LayerMPa(Layer);

    /// <summary>True where that layer is drier than <see cref="PatchConditions.DryMPa"/>.</summary>
    public bool Dry => ZoneMPa < PatchConditions.DryMPa;

    /// <summary>True where water stands on the ground or the layer is within a twentieth of saturation (judged).</summary>
    public bool TooWet => _state.PondMm.GetElement(0) > 0.0 || _state.WaterContent[Layer].GetElement(0) > 0.95 * _ground.Soil.Hydraulics.Saturation;

    /// <summary>True where the layer is at least as wet as wanted, and those around it where that is asked for.</summary>
    public bool Holds(in Hold hold) => _ground.Held(_state, hold).GetElement(0) == 1.0;

    /// <summary>All water held, mm.</summary>
    public double TotalMm => _state.TotalMm.GetElement(0);

    /// <summary>Potential of a layer, MPa.</summary>
    public double LayerMPa(int layer) => _ground.Soil.PotentialMPa(_state.WaterContent[layer]).GetElement(0);

    /// <summary>A bed like this one in every respect.</summary>
    public WateredBed Copy()
    {
        var copy = new WateredBed(_ground);
        copy._state.Take(_state);
        return copy;
    }

    /// <summary>One hour on.</summary>
    /// <param name="weather">The sky.</param>
    /// <param name="hour">Which of its hours.</param>
    /// <param name="irrigationMm">Water given in it, mm.</param>
    public BedLosses Step(BedWeather weather, int hour, double irrigationMm)
    {
        ArgumentNullException.ThrowIfNull(weather);
        var fluxes = Step(_state, weather, hour, Vector256.Create(irrigationMm));
        return new BedLosses((fluxes.EvaporationMm + fluxes.TranspirationMm).GetElement(0), fluxes.RunoffMm.GetElement(0), fluxes.DrainageMm.GetElement(0));
    }

    /// <summary>First hour from one to another that does not hold, were nothing given; null where all do.</summary>
    public int? DriesAt(BedWeather weather, int from, int until, in Hold hold)
    {
        _trial.Take(_state);
        for (var hour = from; hour < until; hour++)
        {
            Step(_trial, weather, hour, Lanes.Zero);
            if (_ground.Held(_trial, hold).GetElement(0) == 0.0)
            {
                return hour;
            }
        }

        return null;
    }

    /// <summary>
    /// Least depth given now that keeps the layer as wet as wanted until a later hour, by halving four ways at once to 1/600 of the
    /// most; null where even the most does not.
    /// </summary>
    /// <param name="weather">The sky.</param>
    /// <param name="now">Hour in which the water is given.</param>
    /// <param name="until">First hour not looked at.</param>
    /// <param name="hold">What to hold.</param>
    /// <param name="mostMm">Most that may be given, mm.</param>
    public double? LeastMm(BedWeather weather, int now, int until, in Hold hold, double mostMm)
    {
        var (low, high) = (0.0, mostMm);
        if (Holds(weather, now, until, hold, Vector256.Create(mostMm)).GetElement(0) == 0.0)
        {
            return null;
        }

        for (var pass = 0; pass < 4; pass++)
        {
            var step = (high - low) / 5.0;
            var tried = Vector256.Create(low + step, low + (2.0 * step), low + (3.0 * step), low + (4.0 * step));
            var held = Holds(weather, now, until, hold, tried);
            var lane = 0;
            while (lane < LaneMath.Width && held.GetElement(lane) == 0.0)
            {
                lane++;
            }

            (low, high) = (low + (lane * step), lane < LaneMath.Width ? tried.GetElement(lane) : high);
        }

        return high;
    }

    /// <summary>Most that can be given in an hour, up to a bound, with nothing running off, mm.</summary>
    public double MostTakenMm(BedWeather weather, int hour, double boundMm)
    {
        var (low, high) = (0.0, boundMm);
        for (var pass = 0; pass < 4; pass++)
        {
            _trial.Take(_state);
            var step = (high - low) / 4.0;
            var tried = Vector256.Create(low + step, low + (2.0 * step), low + (3.0 * step), high);
            var runoff = Step(_trial, weather, hour, tried).RunoffMm;
            var lane = 0;
            while (lane < LaneMath.Width && runoff.GetElement(lane) <= 0.0)
            {
                lane++;
            }

            if (lane == LaneMath.Width)
            {
                return high;
            }

            (low, high) = (low + (lane * step), low + ((lane + 1) * step));
        }

        return low;
    }

    /// <summary>1 for each depth with which the layer stays wet, else 0.</summary>
    private Lanes Holds(BedWeather weather, int now, int until, in Hold hold, Lanes depthMm)
    {
        _trial.Take(_state);
        var held = Lanes.One;
        for (var hour = now; hour < until; hour++)
        {
            Step(_trial, weather, hour, hour == now ? depthMm : Lanes.Zero);
            held &= _ground.Held(_trial, hold);
            if (Vector256.EqualsAll(held, Lanes.Zero))
            {
                break;
            }
        }

        return held;
    }

    private SeedbedFluxes Step(SeedbedState state, BedWeather weather, int hour, Lanes irrigationMm) =>
        _ground.Step(state, Vector256.Create(weather.RainMm[hour]), Vector256.Create(weather.DemandMm[hour]), irrigationMm);
}
