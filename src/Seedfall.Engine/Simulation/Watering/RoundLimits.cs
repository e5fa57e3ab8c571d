namespace Seedfall.Engine.Simulation.Watering;

/// <summary>Within what a round may be chosen.</summary>
/// <param name="HoursOfDay">Hours in which a round may fall, ascending; at least one.</param>
/// <param name="LeastMm">Lightest round, mm; a round is this or more, or none.</param>
/// <param name="MostMm">Heaviest round, mm; less where the soil does not take it.</param>
/// <param name="Hold">What to hold.</param>
/// <param name="ReachDays">Days a round may be meant to last beyond the next one.</param>
/// <param name="RainChance">Chance that a day's rain makes water given for later needless, 0 to below 1.</param>
public sealed record RoundLimits(IReadOnlyList<int> HoursOfDay, Hold Hold, double LeastMm = 0.0, double MostMm = 12.0, int ReachDays = 2, double RainChance = 0.0)
{
    /// <summary>Chance that a round so many hours ahead is still needed: that no rain came before.</summary>
    internal double StillNeeded(int hours) => RainChance <= 0.0 ? 1.0 : Math.Pow(1.0 - RainChance, hours / 24.0);

    /// <summary>Rounds to come from an hour on, as hours of the weather, up to its end.</summary>
    internal IEnumerable<int> From(int hour, int end)
    {
        for (var day = hour / 24; 24 * day < end; day++)
        {
            foreach (var at in HoursOfDay)
            {
                if ((24 * day) + at >= hour && (24 * day) + at < end)
                {
                    yield return (24 * day) + at;
                }
            }
        }
    }
}
