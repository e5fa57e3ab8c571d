namespace Seedfall.Engine.Simulation.Ensemble;

/// <summary>What every date gave in every season, for one patch or a lawn of several: how much of it stood, and plants.</summary>
public sealed class DateScores
{
    private readonly double[] _stood;
    private readonly double[] _plants;

    private DateScores(int seasons, int dates)
    {
        (Seasons, Dates) = (seasons, dates);
        (_stood, _plants) = (new double[seasons * dates], new double[seasons * dates]);
    }

    public int Seasons { get; }

    public int Dates { get; }

    /// <summary>Weighted mean over patches of the same seasons and dates; throws where they differ or no weight is above 0.</summary>
    public static DateScores Of(params IReadOnlyList<(StandTable Table, double Weight)> patches)
    {
        ArgumentOutOfRangeException.ThrowIfZero(patches.Count, nameof(patches));
        var total = patches.Sum(p => p.Weight);
        if (!(total > 0.0) || patches.Any(p => p.Weight < 0.0))
        {
            throw new ArgumentOutOfRangeException(nameof(patches), total, "weights of 0 or more, one of them above 0, are needed");
        }

        var first = patches[0].Table;
        var scores = new DateScores(first.Years.Count, first.Candidates.Count);
        foreach (var (table, weight) in patches)
        {
            if (table.Years.Count != scores.Seasons || table.Candidates != first.Candidates)
            {
                throw new ArgumentException("tables of the same seasons and dates are needed", nameof(patches));
            }

            scores.Add(table, weight / total);
        }

        return scores;
    }

    /// <summary>Share of the ground that had its stand, 0 to 1.</summary>
    public double Stood(int season, int date) => _stood[(season * Dates) + date];

    /// <summary>Plants per m2 of seedbed.</summary>
    public double Plants(int season, int date) => _plants[(season * Dates) + date];

    /// <summary>Mean share over the seasons, 0 to 1; 0 where there are none.</summary>
    public double Share(int date)
    {
        var sum = 0.0;
        for (var season = 0; season < Seasons; season++)
        {
            sum += Stood(season, date);
        }

        return Seasons == 0 ? 0.0 : sum / Seasons;
    }

    private void Add(StandTable table, double weight)
    {
        for (var season = 0; season < Seasons; season++)
        {
            for (var date = 0; date < Dates; date++)
            {
                _stood[(season * Dates) + date] += table.Stood(season, date) ? weight : 0.0;
                _plants[(season * Dates) + date] += weight * table[season, date].PlantsPerM2;
            }
        }
    }
}
