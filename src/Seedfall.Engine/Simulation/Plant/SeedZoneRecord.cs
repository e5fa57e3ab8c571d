using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Plant;

/// <summary>
/// Four seasons of seed-zone conditions as running sums, the same for every grass: what carries shoots up, opens leaves and
/// kills. Nothing is allocated in the hour loop.
/// </summary>
internal sealed class SeedZoneRecord
{
    private readonly Lanes[] _emergence;
    private readonly ZoneSums[] _sums;

    /// <summary>Room for a season.</summary>
    /// <param name="hours">Most hours a season holds.</param>
    internal SeedZoneRecord(int hours)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(hours, 24);
        (MostHours, _emergence, _sums) = (hours, new Lanes[hours + 1], new ZoneSums[hours + 1]);
    }

    /// <summary>Hours there is room for.</summary>
    internal int MostHours { get; }

    /// <summary>Hours recorded so far.</summary>
    internal int Hours { get; private set; }

    /// <summary>Forgets the seasons.</summary>
    internal void Clear() => Hours = 0;

    /// <summary>Adds one hour; the grasses' own records follow.</summary>
    /// <param name="seedC">Temperature at the seed, degC.</param>
    /// <param name="shallowMPa">Potential at 3 to 8 mm, MPa.</param>
    /// <param name="middleMPa">Potential at 8 to 20 mm, MPa.</param>
    /// <param name="deepMPa">Potential at 20 to 60 mm, MPa.</param>
    /// <param name="airC">Air temperature for leaves, degC.</param>
    internal void Add(Lanes seedC, Lanes shallowMPa, Lanes middleMPa, Lanes deepMPa, Lanes airC)
    {
        var h = Hours;
        _emergence[h + 1] = _emergence[h] + EmergenceInHour(seedC);
        ref readonly var before = ref _sums[h];
        ref var sums = ref _sums[h + 1];
        sums.LeafCd = before.LeafCd + WholeSteps.Of(LaneMath.Max(Lanes.Zero, airC) / 24.0);
        sums.Shallow = before.Shallow + SeedlingHazard.InHour(shallowMPa);
        sums.Middle = before.Middle + SeedlingHazard.InHour(middleMPa);
        sums.Deep = before.Deep + SeedlingHazard.InHour(deepMPa);
        sums.Heat = before.Heat + SeedlingHazard.HeatInHour(seedC, shallowMPa);
        Hours = h + 1;
    }

    /// <summary>Degree-days toward emergence in one hour, in whole steps.</summary>
    internal static Lanes EmergenceInHour(Lanes seedC) => WholeSteps.Of(LaneMath.Max(Lanes.Zero, seedC - Vector256.Create(Emergence.BaseC)) / 24.0);

    /// <summary>Hour by which a shoot that germinated at an hour is up; -1 where not by the end.</summary>
    internal int Emerged(int lane, int germinated, int end, double lagCd, int notBefore) =>
        WholeSteps.FirstReached(LaneMath.Doubles(_emergence), lane, germinated, end, WholeSteps.Of(lagCd), notBefore);

    /// <summary>Degree-days above 0 degC between two hours.</summary>
    internal double LeafDegreeDays(int lane, int from, int to) => _sums[to].LeafCd.GetElement(lane) - _sums[from].LeafCd.GetElement(lane);

    /// <summary>Hazard gathered since germination: roots grow through the layers, shallow until 8 mm, middle until 20, deep until 60, then out of danger.</summary>
    internal double Hazard(int lane, int germinated, int end)
    {
        ref readonly var start = ref _sums[germinated];
        ref readonly var first = ref _sums[Math.Min(end, germinated + (int)(24.0 * 5.0 / SeedlingHazard.RootMmPerDay))];
        ref readonly var second = ref _sums[Math.Min(end, germinated + (int)(24.0 * 17.0 / SeedlingHazard.RootMmPerDay))];
        ref readonly var third = ref _sums[Math.Min(end, germinated + (int)(24.0 * 57.0 / SeedlingHazard.RootMmPerDay))];
        ref readonly var open = ref _sums[Math.Min(end, germinated + (24 * SeedlingHazard.OpenDays))];
        return first.Shallow.GetElement(lane) - start.Shallow.GetElement(lane)
            + (second.Middle.GetElement(lane) - first.Middle.GetElement(lane))
            + (third.Deep.GetElement(lane) - second.Deep.GetElement(lane))
            + (open.Heat.GetElement(lane) - start.Heat.GetElement(lane));
    }

    /// <summary>Sums up to an hour, four seasons side by side.</summary>
    private struct ZoneSums
    {
        internal Lanes LeafCd;
        internal Lanes Shallow;
        internal Lanes Middle;
        internal Lanes Deep;
        internal Lanes Heat;
    }
}
