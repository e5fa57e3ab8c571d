using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Plant;

/// <summary>
/// One grass in four seasons: germination as running sums, so that any seed-down hour is answered by a short search instead of
/// another simulation. Buffers are reused from seasons to seasons; nothing is allocated in the hour loop.
/// </summary>
internal sealed class PlantRecord
{
    /// <summary>Seeds are followed as this many equal shares, from the quickest to the slowest.</summary>
    internal const int Shares = 9;

    private readonly GerminationTraits _traits;
    private readonly SeedZoneRecord _zone;
    private readonly double[] _baseMPa = new double[Shares];
    private readonly Lanes[][] _germination = new Lanes[Shares][];
    private readonly double _target;

    /// <summary>Buffers for one grass.</summary>
    /// <param name="traits">How it germinates.</param>
    /// <param name="zone">The seed zone it lies in; its hour is added first.</param>
    internal PlantRecord(GerminationTraits traits, SeedZoneRecord zone)
    {
        (_traits, _zone, _target) = (traits, zone, WholeSteps.Of(traits.HydrothermalTimeMPaCd));
        for (var i = 0; i < Shares; i++)
        {
            _baseMPa[i] = BaseMPa(traits, i);
            _germination[i] = new Lanes[zone.MostHours + 1];
        }
    }

    /// <summary>Base potential of a share of the seed, MPa.</summary>
    internal static double BaseMPa(GerminationTraits traits, int share) => traits.BasePotentialMPa((share + 0.5) / Shares);

    /// <summary>Adds the hour the seed zone has just been given.</summary>
    /// <param name="seedC">Temperature at the seed, degC.</param>
    /// <param name="seedMPa">Potential the seed sees, MPa.</param>
    internal void Add(Lanes seedC, Lanes seedMPa)
    {
        var h = _zone.Hours;
        var degrees = _traits.EffectiveDegrees(seedC) / 24.0;
        for (var i = 0; i < Shares; i++)
        {
            var sums = _germination[i];
            sums[h] = sums[h - 1] + Progress(degrees, seedMPa, _baseMPa[i]);
        }
    }

    /// <summary>Hydrothermal progress of one hour, in whole steps: none where the seed is drier than its base potential.</summary>
    internal static Lanes Progress(Lanes degrees, Lanes seedMPa, double baseMPa) =>
        WholeSteps.Of(LaneMath.Max(Lanes.Zero, seedMPa - Vector256.Create(baseMPa)) * degrees);

    /// <summary>What becomes of one share of the seed put down at an hour.</summary>
    /// <param name="lane">Which of the four seasons.</param>
    /// <param name="share">0 for the quickest to <see cref="Shares"/> - 1.</param>
    /// <param name="seedDownHour">Hour of seed-down, counted from the record's start.</param>
    /// <param name="endHour">Hour the season ends for seedlings, at most the hours recorded.</param>
    /// <param name="depthMm">Depth of the seed, mm.</param>
    /// <param name="pace">Factor on the time seed and shoot need.</param>
    internal SeedlingFate Fate(int lane, int share, int seedDownHour, int endHour, double depthMm, double pace = 1.0)
    {
        var start = default(FateSearch);
        return Fate(lane, share, seedDownHour, endHour, depthMm, WholeSteps.Of(pace * _traits.HydrothermalTimeMPaCd), pace, ref start);
    }

    /// <summary>The same for seed-down hours asked in ascending order: the search goes on from where the one before ended.</summary>
    internal SeedlingFate Fate(int lane, int share, int seedDownHour, int endHour, double depthMm, ref FateSearch search) =>
        Fate(lane, share, seedDownHour, endHour, depthMm, _target, 1.0, ref search);

    private SeedlingFate Fate(int lane, int share, int seedDownHour, int endHour, double depthMm, double target, double pace, ref FateSearch search)
    {
        var germinated = WholeSteps.FirstReached(LaneMath.Doubles(_germination[share]), lane, seedDownHour, endHour, target, search.Germinated);
        if (germinated < 0)
        {
            return default;
        }

        search.Germinated = germinated;
        var emerged = _zone.Emerged(lane, germinated, endHour, pace * _traits.EmergenceLagFactor * Emergence.LagCd(depthMm), search.Emerged);
        if (emerged < 0)
        {
            return new SeedlingFate(germinated, -1, 0.0);
        }

        search.Emerged = emerged;
        return new SeedlingFate(germinated, emerged, 1.0 + (_zone.LeafDegreeDays(lane, emerged, endHour) / _traits.PhyllochronCd));
    }

    /// <summary>Share of seedlings germinated at an hour that is alive at the season's end, 0 to 1.</summary>
    internal double Survival(int lane, int germinatedHour, int endHour) => Math.Exp(-_zone.Hazard(lane, germinatedHour, endHour));
}

/// <summary>Where the last search of one share in one season ended.</summary>
internal struct FateSearch
{
    internal int Germinated;
    internal int Emerged;
}
