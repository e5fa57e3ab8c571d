namespace Seedfall.Engine.Validation.Choice;

/// <summary>How often a rule had its stand.</summary>
/// <param name="Success">Share of seasons with a stand, 0 to 1.</param>
/// <param name="Regret">Share of seasons lost beside each season's own best day: hindsight's success less this.</param>
/// <param name="PlantsOfHindsight">Plants at the season's end over those of the best day, 0 to 1.</param>
/// <param name="MiddleDay">Middle seed-down day over the seasons, days from the first on which seed may go down; null where most had none.</param>
/// <param name="Lead">Seedfall's success less this rule's.</param>
/// <param name="StandardError">Of the success, seasons of a station counted as going together; null for one station.</param>
/// <param name="LeadStandardError">Of the lead, paired by season, likewise.</param>
public sealed record RuleScore(double Success, double Regret, double PlantsOfHindsight, int? MiddleDay, double Lead, double? StandardError, double? LeadStandardError);

/// <summary>Every rule at one station, or pooled over all.</summary>
/// <param name="Station">Name; <c>pooled</c> for all.</param>
/// <param name="Seasons">Seasons tried.</param>
/// <param name="Rules">By name in <see cref="SeedDownRules"/>.</param>
/// <param name="Notes">What was left out and why.</param>
public sealed record ChoiceScore(string Station, int Seasons, IReadOnlyDictionary<string, RuleScore> Rules, IReadOnlyList<string> Notes)
{
    /// <summary>Scores the seasons of some stations, at least one season in all.</summary>
    public static ChoiceScore Of(string name, IReadOnlyList<IReadOnlyList<ChoiceSeason>> stations)
    {
        var seasons = stations.SelectMany(s => s).ToList();
        double Mean(Func<ChoiceSeason, double> value) => seasons.Average(value);
        double? Error(Func<ChoiceSeason, double> value) => stations.Count > 1 ? ClusteredError(stations, value) : null;
        RuleScore Rule(string rule)
        {
            double Stood(ChoiceSeason s) => s.Rules[rule].Stood;
            double Lead(ChoiceSeason s) => s.Rules[SeedDownRules.Seedfall].Stood - s.Rules[rule].Stood;
            var most = Mean(s => s.Rules[SeedDownRules.Hindsight].PlantsPerM2);
            return new RuleScore(
                Mean(Stood),
                Mean(s => s.Rules[SeedDownRules.Hindsight].Stood) - Mean(Stood),
                most > 0.0 ? Mean(s => s.Rules[rule].PlantsPerM2) / most : 0.0,
                Middle(seasons.Select(s => s.Rules[rule].Day)),
                Mean(Lead),
                Error(Stood),
                Error(Lead));
        }

        return new ChoiceScore(name, seasons.Count, SeedDownRules.All.ToDictionary(r => r, Rule), []);
    }

    /// <summary>
    /// Standard error of the mean over all seasons when those of one station go together: (1/N) sqrt(S/(S-1) sum over stations of
    /// (sum over its seasons of x - mean)^2), the usual clustered estimate (common practice). At least two stations.
    /// </summary>
    public static double ClusteredError<T>(IReadOnlyList<IReadOnlyList<T>> clusters, Func<T, double> value)
    {
        var (count, mean) = (clusters.Sum(c => c.Count), clusters.SelectMany(c => c).Average(value));
        var squares = clusters.Sum(c => Math.Pow(c.Sum(x => value(x) - mean), 2.0));
        return Math.Sqrt(clusters.Count / (clusters.Count - 1.0) * squares) / count;
    }

    private static int? Middle(IEnumerable<int?> days)
    {
        var sorted = days.Select(d => d ?? int.MaxValue).Order().ToList();
        return sorted[(sorted.Count - 1) / 2] is var middle && middle < int.MaxValue ? middle : null;
    }
}
