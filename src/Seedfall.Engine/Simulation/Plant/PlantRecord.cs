namespace Seedfall.Engine.Simulation.Plant;

/// <summary>
/// One season of seed-zone conditions as running sums, so that any seed-down hour is answered by a few searches instead of
/// another simulation. Buffers are reused from season to season; nothing is allocated in the hour loop.
/// </summary>
public sealed class PlantRecord
{
    /// <summary>Seeds are followed as this many equal shares, from the quickest to the slowest.</summary>
    public const int Shares = 9;

    private readonly GerminationTraits _traits;
    private readonly double[] _baseMPa = new double[Shares];
    private readonly long[][] _germination = new long[Shares][];
    private readonly long[] _emergence;
    private readonly long[] _leaf;
    private readonly double[] _shallow;
    private readonly double[] _middle;
    private readonly double[] _deep;
    private readonly double[] _heat;

    /// <summary>Buffers for one grass.</summary>
    /// <param name="traits">How it germinates.</param>
    /// <param name="hours">Most hours a season holds.</param>
    public PlantRecord(GerminationTraits traits, int hours)
    {
        ArgumentNullException.ThrowIfNull(traits);
        ArgumentOutOfRangeException.ThrowIfLessThan(hours, 24);
        _traits = traits;
        for (var i = 0; i < Shares; i++)
        {
            _baseMPa[i] = traits.BasePotentialMPa((i + 0.5) / Shares);
            _germination[i] = new long[hours + 1];
        }

        (_emergence, _leaf) = (new long[hours + 1], new long[hours + 1]);
        (_shallow, _middle, _deep, _heat) = (new double[hours + 1], new double[hours + 1], new double[hours + 1], new double[hours + 1]);
    }

    /// <summary>Hours recorded so far.</summary>
    public int Hours { get; private set; }

    /// <summary>Forgets the season.</summary>
    public void Clear() => Hours = 0;

    /// <summary>Adds one hour.</summary>
    /// <param name="seedC">Temperature at the seed, degC.</param>
    /// <param name="seedMPa">Potential the seed sees, MPa.</param>
    /// <param name="shallowMPa">Potential at 3 to 8 mm, MPa.</param>
    /// <param name="middleMPa">Potential at 8 to 20 mm, MPa.</param>
    /// <param name="deepMPa">Potential at 20 to 60 mm, MPa.</param>
    /// <param name="airC">Air temperature for leaves, degC.</param>
    public void Add(double seedC, double seedMPa, double shallowMPa, double middleMPa, double deepMPa, double airC)
    {
        var h = Hours;
        var degrees = _traits.EffectiveDegrees(seedC) / 24.0;
        for (var i = 0; i < Shares; i++)
        {
            var sums = _germination[i];
            var wet = seedMPa - _baseMPa[i];
            sums[h + 1] = wet > 0.0 && degrees > 0.0 ? sums[h] + FixedPoint.From(wet * degrees) : sums[h];
        }

        _emergence[h + 1] = _emergence[h] + FixedPoint.From(Math.Max(0.0, seedC - Emergence.BaseC) / 24.0);
        _leaf[h + 1] = _leaf[h] + FixedPoint.From(Math.Max(0.0, airC) / 24.0);
        _shallow[h + 1] = _shallow[h] + SeedlingHazard.InHour(shallowMPa);
        _middle[h + 1] = _middle[h] + SeedlingHazard.InHour(middleMPa);
        _deep[h + 1] = _deep[h] + SeedlingHazard.InHour(deepMPa);
        _heat[h + 1] = _heat[h] + SeedlingHazard.HeatInHour(seedC, shallowMPa);
        Hours = h + 1;
    }

    /// <summary>What becomes of one share of the seed put down at an hour.</summary>
    /// <param name="share">0 for the quickest to <see cref="Shares"/> - 1.</param>
    /// <param name="seedDownHour">Hour of seed-down, counted from the record's start.</param>
    /// <param name="endHour">Hour the season ends for seedlings, at most <see cref="Hours"/>.</param>
    /// <param name="depthMm">Depth of the seed, mm.</param>
    public SeedlingFate Fate(int share, int seedDownHour, int endHour, double depthMm)
    {
        var germinated = FixedPoint.FirstReached(_germination[share], seedDownHour, endHour, FixedPoint.From(_traits.HydrothermalTimeMPaCd));
        if (germinated < 0)
        {
            return default;
        }

        var emerged = FixedPoint.FirstReached(_emergence, germinated, endHour, FixedPoint.From(Emergence.LagCd(depthMm)));
        if (emerged < 0)
        {
            return new SeedlingFate(germinated, -1, 0.0, 0.0);
        }

        var leaves = 1.0 + (FixedPoint.ToDouble(_leaf[endHour] - _leaf[emerged]) / _traits.PhyllochronCd);
        return new SeedlingFate(germinated, emerged, leaves, Math.Exp(-HazardSince(germinated, endHour)));
    }

    /// <summary>Degree-days above 0 degC between two hours.</summary>
    public double LeafDegreeDays(int from, int to) => FixedPoint.ToDouble(_leaf[to] - _leaf[from]);

    /// <summary>Roots grow through the layers: shallow until 8 mm, middle until 20 mm, deep until 60 mm, then out of danger.</summary>
    private double HazardSince(int germinated, int end)
    {
        var first = Math.Min(end, germinated + (int)(24.0 * 5.0 / SeedlingHazard.RootMmPerDay));
        var second = Math.Min(end, germinated + (int)(24.0 * 17.0 / SeedlingHazard.RootMmPerDay));
        var third = Math.Min(end, germinated + (int)(24.0 * 57.0 / SeedlingHazard.RootMmPerDay));
        return _shallow[first] - _shallow[germinated] + (_middle[second] - _middle[first]) + (_deep[third] - _deep[second])
            + _heat[Math.Min(end, germinated + (24 * SeedlingHazard.OpenDays))] - _heat[germinated];
    }
}
