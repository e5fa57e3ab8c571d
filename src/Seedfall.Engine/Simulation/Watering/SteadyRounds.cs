using System.Runtime.Intrinsics;
using Seedfall.Engine.Simulation.Seedbed;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Watering;

/// <summary>When rounds of one depth are given.</summary>
/// <param name="HoursOfDay">Hours of the rounds, ascending; at least one.</param>
/// <param name="EveryDays">Days from one watering day to the next, 1 or more.</param>
/// <param name="FirstDay">First watering day.</param>
/// <param name="Days">Days looked at.</param>
public sealed record RoundTimes(IReadOnlyList<int> HoursOfDay, int EveryDays, int FirstDay, int Days);

/// <summary>
/// The same rounds on every watering day of past seasons: how deep they must be. The ground is moist at the midnight before the first,
/// for seedbeds are soaked and phases follow watered ones. Four seasons are gone through side by side.
/// </summary>
public sealed class SteadyRounds
{
    /// <summary>Of so many seasons one may fall short: 19 of 20 must not.</summary>
    public const int OneIn = 20;

    private const int Passes = 6;

    private readonly BedGround _ground;
    private readonly IReadOnlyList<SkyLanes> _skies;
    private readonly SeedbedState[] _moist;
    private readonly SeedbedState _bed;
    private readonly int[] _order;
    private readonly int _mayFail;

    /// <param name="patch">The ground.</param>
    /// <param name="layer">Layer to be kept wet, 0 to 5; null for the seed's own.</param>
    /// <param name="seasons">At least one.</param>
    /// <param name="firstDay">Day of the seasons at whose midnight the ground is moist.</param>
    public SteadyRounds(PatchConditions patch, int? layer, PastSkies seasons, int firstDay)
    {
        ArgumentNullException.ThrowIfNull(patch);
        ArgumentNullException.ThrowIfNull(seasons);
        ArgumentOutOfRangeException.ThrowIfZero(seasons.Count, nameof(seasons));
        (_ground, _skies, _mayFail) = (new BedGround(patch, layer), seasons.Lanes, seasons.Count / OneIn);
        (_moist, _bed) = ([.. _skies.Select(sky => Moist(sky, firstDay))], _ground.AtFieldCapacity());
        _order = [.. Enumerable.Range(0, _skies.Count)];
    }

    /// <summary>Least depth of a round that holds in 19 of 20 seasons, to 1/64 of the most; null where the most does not.</summary>
    /// <param name="times">When.</param>
    /// <param name="hold">What to hold from the first round on.</param>
    /// <param name="mostMm">Heaviest round, mm: what the soil takes without runoff.</param>
    public double? LeastMm(RoundTimes times, in Hold hold, double mostMm)
    {
        ArgumentNullException.ThrowIfNull(times);
        ArgumentOutOfRangeException.ThrowIfLessThan(times.EveryDays, 1, nameof(times));
        if (!Enough(times, hold, mostMm))
        {
            return null;
        }

        var (low, high) = (0.0, mostMm);
        for (var pass = 0; pass < Passes; pass++)
        {
            var middle = 0.5 * (low + high);
            (low, high) = Enough(times, hold, middle) ? (low, middle) : (middle, high);
        }

        return high;
    }

    /// <summary>True where rounds of a depth hold in 19 of 20 seasons. Seasons that failed last are tried first.</summary>
    public bool Enough(RoundTimes times, in Hold hold, double depthMm)
    {
        ArgumentNullException.ThrowIfNull(times);
        var failed = 0;
        for (var k = 0; k < _order.Length; k++)
        {
            var four = _order[k];
            var fails = Failing(four, times, hold, depthMm, _mayFail - failed);
            failed += fails;
            if (fails > 0)
            {
                _order.AsSpan(0, k).CopyTo(_order.AsSpan(1));
                _order[0] = four;
            }

            if (failed > _mayFail)
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Seasons of four that do not hold; counted no further than one more than may fail.</summary>
    private int Failing(int four, RoundTimes times, in Hold hold, double depthMm, int mayFail)
    {
        var sky = _skies[four];
        var (first, end) = (24 * times.FirstDay, Math.Min(sky.Hours, 24 * (times.FirstDay + times.Days)));
        var (depth, held, failing) = (Vector256.Create(depthMm), Lanes.One, 0);
        _bed.Take(_moist[four]);
        for (var hour = first; hour < end && failing <= mayFail; hour++)
        {
            var watering = ((hour / 24) - times.FirstDay) % times.EveryDays == 0 && Contains(times.HoursOfDay, hour % 24);
            _ground.Step(_bed, sky.RainMm[hour], sky.DemandMm[hour], watering ? depth : Lanes.Zero);
            if (hour >= first + times.HoursOfDay[0])
            {
                held &= _ground.Held(_bed, hold);
                failing = Fallen(held, sky.Seasons);
            }
        }

        return failing;
    }

    private static int Fallen(Lanes held, int seasons)
    {
        var fallen = 0;
        for (var lane = 0; lane < seasons; lane++)
        {
            fallen += held.GetElement(lane) == 0.0 ? 1 : 0;
        }

        return fallen;
    }

    private static bool Contains(IReadOnlyList<int> hours, int hour)
    {
        for (var k = 0; k < hours.Count; k++)
        {
            if (hours[k] == hour)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Four beds at a day's midnight, after one day from field capacity.</summary>
    private SeedbedState Moist(SkyLanes sky, int firstDay)
    {
        var bed = _ground.AtFieldCapacity();
        for (var hour = 24 * Math.Max(0, firstDay - 1); hour < 24 * firstDay; hour++)
        {
            _ground.Step(bed, sky.RainMm[hour], sky.DemandMm[hour], Lanes.Zero);
        }

        return bed;
    }
}
