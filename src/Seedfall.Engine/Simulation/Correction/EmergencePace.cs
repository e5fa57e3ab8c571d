using Seedfall.Engine.Simulation.Ensemble;

namespace Seedfall.Engine.Simulation.Correction;

/// <summary>How much longer or shorter seed and shoot take here than the table says, learned from the first green seen.</summary>
/// <param name="Multiplier">Factor on theta_HT and on the lag from germination to first green, middle of what is believed after.</param>
/// <param name="LogDeviation">Standard deviation of its logarithm after.</param>
/// <param name="UncorrectedDays">Days to first green by the table, one per patch seen; null where it would not have come at all.</param>
/// <param name="CorrectedDays">The same with <paramref name="Multiplier"/>.</param>
public sealed record EmergencePace(double Multiplier, double LogDeviation, IReadOnlyList<double?> UncorrectedDays, IReadOnlyList<double?> CorrectedDays)
{
    /// <summary>Spread of ln(multiplier) between lots and seedbeds before anything is seen (assumed).</summary>
    public const double PriorLogDeviation = 0.3;

    /// <summary>How exactly a first green is noticed, days (judged).</summary>
    public const double SeenDeviationDays = 1.5;

    private const int Points = 25;
    private const double Reach = 3.0;

    /// <summary>
    /// Posterior of ln(multiplier) on a grid: normal prior, heavy-tailed likelihood of the day seen against the day simulated
    /// with that multiplier.
    /// </summary>
    /// <param name="seen">Days from seed-down to first green, with the days simulated by multiplier of <see cref="Grid"/>; one or more.</param>
    public static EmergencePace From(IReadOnlyList<(double SeenDays, IReadOnlyList<double?> Simulated)> seen)
    {
        ArgumentOutOfRangeException.ThrowIfZero(seen.Count, nameof(seen));
        var (sum, first, second) = (0.0, 0.0, 0.0);
        for (var i = 0; i < Points; i++)
        {
            var log = Math.Log(Grid[i]);
            var weight = Math.Exp((-0.5 * log * log / (PriorLogDeviation * PriorLogDeviation)) + seen.Sum(s => Likelihood(s.SeenDays, s.Simulated[i])));
            (sum, first, second) = (sum + weight, first + (weight * log), second + (weight * log * log));
        }

        var mean = first / sum;
        var nearest = Enumerable.Range(0, Points).MinBy(i => Math.Abs(Math.Log(Grid[i]) - mean));
        return new EmergencePace(
            Math.Exp(mean),
            Math.Sqrt(Math.Max(0.0, (second / sum) - (mean * mean))),
            [.. seen.Select(s => s.Simulated[Points / 2])],
            [.. seen.Select(s => s.Simulated[nearest])]);
    }

    /// <summary>Multipliers tried, three prior deviations to either side; the middle one is 1.</summary>
    public static IReadOnlyList<double> Grid { get; } =
        [.. Enumerable.Range(0, Points).Select(i => Math.Exp(Reach * PriorLogDeviation * ((2.0 * i / (Points - 1)) - 1.0)))];

    /// <summary>
    /// Days from seed-down to the first green of the quickest grass, by multiplier of <see cref="Grid"/>, in the first of the seasons; null
    /// where it never comes.
    /// </summary>
    /// <param name="place">Seasons that share their days up to when the green was seen.</param>
    /// <param name="patch">The ground.</param>
    /// <param name="sown">The grasses as sown; at least one.</param>
    /// <param name="watering">Rounds from the first watered day on.</param>
    /// <param name="firstWateredDay">Index of a day.</param>
    /// <param name="seedDownDay">Index of the seed-down day.</param>
    public static IReadOnlyList<double?> FirstGreenDays(
        PlaceSeasons place, PatchConditions patch, IReadOnlyList<SownGrass> sown, WateringRounds watering, int firstWateredDay, int seedDownDay)
    {
        var simulation = new SeasonSimulation(patch, place.Constants.Column, [.. sown.Select(s => s.Traits)], Math.Max(1, place.Days));
        simulation.Run(place.Groups[0], place.Climate, watering, firstWateredDay, 0, place.Days);
        var start = StandSearch.SowingHour(seedDownDay);
        return [.. Grid.Select(multiplier => simulation.Plants
            .Select(plant => plant.Fate(0, 0, start, 24 * place.Days, patch.SeedDepthMm, multiplier))
            .Where(fate => fate.Emerged)
            .Min(fate => (double?)(fate.EmergedHour - start) / 24.0))];
    }

    /// <summary>A day on which none could have come up speaks against the multiplier as if it came a month late.</summary>
    private static double Likelihood(double seenDays, double? simulatedDays) =>
        TailedLikelihood.Log(seenDays - (simulatedDays ?? (seenDays + 30.0)), SeenDeviationDays);
}
