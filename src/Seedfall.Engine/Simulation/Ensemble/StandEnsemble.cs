using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Ensemble;

/// <summary>Dates tried in every season: the same day offsets for all.</summary>
/// <param name="FirstDay">Index of the first candidate day in a season, spin-up included.</param>
/// <param name="Count">Candidate days, one after the other.</param>
public readonly record struct CandidateDays(int FirstDay, int Count);

/// <summary>Outcomes by season and candidate day, all seasons under the same watering (common random numbers).</summary>
public sealed class StandTable
{
    private readonly StandOutcome[] _outcomes;

    internal StandTable(IReadOnlyList<int> years, CandidateDays candidates, StandRule rule, StandOutcome[] outcomes, IReadOnlyList<double> irrigationMm, IReadOnlyList<int> dryHours)
    {
        (Years, Candidates, Rule, _outcomes, IrrigationMm, DryHours) = (years, candidates, rule, outcomes, irrigationMm, dryHours);
    }

    /// <summary>Seasons, in the order they were given.</summary>
    public IReadOnlyList<int> Years { get; }

    public CandidateDays Candidates { get; }

    public StandRule Rule { get; }

    /// <summary>Water given from the first candidate day to the season's end, by season, mm.</summary>
    public IReadOnlyList<double> IrrigationMm { get; }

    /// <summary>Hours in which the seed's layer was dry, by season.</summary>
    public IReadOnlyList<int> DryHours { get; }

    /// <summary>What one season made of one candidate day (0 is the first).</summary>
    public StandOutcome this[int season, int candidate] => _outcomes[(season * Candidates.Count) + candidate];

    /// <summary>True where the stand was had.</summary>
    public bool Stood(int season, int candidate) => this[season, candidate].PlantsPerM2 >= Rule.PlantsPerM2;

    /// <summary>Share of seasons in which the stand was had on a candidate day; NaN-free: 0 where there are no seasons.</summary>
    public double Share(int candidate)
    {
        var stood = 0;
        for (var season = 0; season < Years.Count; season++)
        {
            stood += Stood(season, candidate) ? 1 : 0;
        }

        return Years.Count == 0 ? 0.0 : (double)stood / Years.Count;
    }
}

/// <summary>All past seasons times all candidate dates times all grasses of a patch.</summary>
public static class StandEnsemble
{
    /// <summary>Runs every season once and answers every date from its running sums.</summary>
    /// <param name="seasons">Seasons of one place, all of the same length.</param>
    /// <param name="climate">The usual year of the place.</param>
    /// <param name="place">Where.</param>
    /// <param name="patch">The ground.</param>
    /// <param name="parameters">The column's fitted numbers.</param>
    /// <param name="sown">The grasses as sown; at least one.</param>
    /// <param name="watering">What the tap can give, from the first candidate day on.</param>
    /// <param name="candidates">Dates to try.</param>
    /// <param name="rule">What counts as a stand.</param>
    public static StandTable Run(
        IReadOnlyList<SeasonForcing> seasons,
        PlaceClimate climate,
        Place place,
        PatchConditions patch,
        HeatParameters parameters,
        IReadOnlyList<SownGrass> sown,
        WateringRounds watering,
        CandidateDays candidates,
        StandRule rule)
    {
        RequireHeld(seasons, candidates);
        var longest = seasons.Count == 0 ? 1 : seasons.Max(s => s.Days);
        var simulation = new SeasonSimulation(patch, parameters, [.. sown.Select(s => s.Traits)], longest);
        var outcomes = new StandOutcome[seasons.Count * candidates.Count];
        var (irrigation, dry) = (new double[seasons.Count], new int[seasons.Count]);
        for (var i = 0; i < seasons.Count; i++)
        {
            simulation.Run(seasons[i], climate, place.LatitudeDeg, watering, candidates.FirstDay);
            (irrigation[i], dry[i]) = (simulation.IrrigationMm, simulation.DryHours);
            Answer(simulation, seasons[i], sown, candidates, patch.SeedDepthMm, rule, outcomes.AsSpan(i * candidates.Count, candidates.Count));
        }

        return new StandTable([.. seasons.Select(s => s.Year)], candidates, rule, outcomes, irrigation, dry);
    }

    private static void Answer(
        SeasonSimulation simulation, SeasonForcing season, IReadOnlyList<SownGrass> sown, CandidateDays candidates, double depthMm, StandRule rule, Span<StandOutcome> outcomes)
    {
        var end = -1;
        for (var c = 0; c < candidates.Count; c++)
        {
            var day = candidates.FirstDay + c;
            end = end > day ? end : StandSearch.EndDay(season.TminC, day, rule.HardFrostC);
            outcomes[c] = StandSearch.Of(simulation.Plants, sown, day, end, depthMm, rule);
        }
    }

    private static void RequireHeld(IReadOnlyList<SeasonForcing> seasons, CandidateDays candidates)
    {
        foreach (var season in seasons)
        {
            if (candidates.FirstDay < 0 || candidates.Count < 1 || candidates.FirstDay + candidates.Count > season.Days)
            {
                throw new ArgumentOutOfRangeException(nameof(candidates), candidates, $"candidate days must lie inside the {season.Days} days of season {season.Year}");
            }
        }
    }
}
