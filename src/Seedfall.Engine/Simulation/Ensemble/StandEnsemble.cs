using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;

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

    /// <summary>Water given on the candidate days, by season, mm.</summary>
    public IReadOnlyList<double> IrrigationMm { get; }

    /// <summary>Hours of the candidate days in which the seed's layer was dry, by season.</summary>
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
    /// <param name="place">Seasons of one place.</param>
    /// <param name="patch">The ground.</param>
    /// <param name="sown">The grasses as sown; at least one.</param>
    /// <param name="watering">What the tap can give, from the first candidate day on.</param>
    /// <param name="candidates">Dates to try; inside the season, or it throws.</param>
    /// <param name="rule">What counts as a stand.</param>
    public static StandTable Run(
        PlaceSeasons place, PatchConditions patch, IReadOnlyList<SownGrass> sown, WateringRounds watering, CandidateDays candidates, StandRule rule)
    {
        var seasons = place.Seasons;
        RequireHeld(place, candidates);
        var simulation = new SeasonSimulation(patch, place.Constants.Column, [.. sown.Select(s => s.Traits)], Math.Max(1, place.Days));
        var outcomes = new StandOutcome[seasons.Count * candidates.Count];
        var (irrigation, dry) = (new double[seasons.Count], new int[seasons.Count]);
        for (var first = 0; first < seasons.Count; first += LaneMath.Width)
        {
            var four = Math.Min(LaneMath.Width, seasons.Count - first);
            simulation.Run(place.Groups[first / LaneMath.Width], place.Climate, watering, candidates.FirstDay, candidates.Count, LastNeeded(seasons, first, four, candidates, rule));
            for (var lane = 0; lane < four; lane++)
            {
                var i = first + lane;
                (irrigation[i], dry[i]) = (simulation.IrrigationMm.GetElement(lane), (int)simulation.DryHours.GetElement(lane));
                StandSearch.Fill(simulation.Plants, lane, sown, seasons[i].TminC, candidates, patch.SeedDepthMm, rule, outcomes.AsSpan(i * candidates.Count, candidates.Count));
            }
        }

        return new StandTable([.. seasons.Select(s => s.Year)], candidates, rule, outcomes, irrigation, dry);
    }

    /// <summary>Days to simulate: until the frost that ends the last candidate's season has come in each of the four.</summary>
    private static int LastNeeded(IReadOnlyList<SeasonForcing> seasons, int first, int count, CandidateDays candidates, StandRule rule)
    {
        var last = candidates.FirstDay + candidates.Count;
        for (var i = first; i < first + count; i++)
        {
            last = Math.Max(last, StandSearch.EndDay(seasons[i].TminC, candidates.FirstDay + candidates.Count - 1, rule.HardFrostC));
        }

        return last;
    }

    private static void RequireHeld(PlaceSeasons place, CandidateDays candidates)
    {
        if (place.Seasons.Count > 0 && (candidates.FirstDay < 0 || candidates.Count < 1 || candidates.FirstDay + candidates.Count > place.Days))
        {
            throw new ArgumentOutOfRangeException(nameof(candidates), candidates, $"candidate days must lie inside the {place.Days} days of a season");
        }
    }
}
