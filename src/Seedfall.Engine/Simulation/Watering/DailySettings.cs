namespace Seedfall.Engine.Simulation.Watering;

/// <summary>How careful the daily plan is. Chosen on the development stations: see docs/validation.md.</summary>
/// <param name="HoldMPa">Potential it means to hold in the seed's layer, MPa: wetter than <see cref="PatchConditions.DryMPa"/>.</param>
/// <param name="DemandMargin">Factor on the evaporation it expects.</param>
/// <param name="LeastMm">Lightest round, mm: 0.05 in (common practice).</param>
/// <param name="MostMm">Heaviest round, mm.</param>
/// <param name="DaysAhead">Days it looks ahead, today included.</param>
public sealed record DailySettings(double HoldMPa = -0.4, double DemandMargin = 1.15, double LeastMm = 1.27, double MostMm = 12.0, int DaysAhead = 3)
{
    /// <summary>The rounds such a plan may choose from.</summary>
    public RoundLimits Limits(IReadOnlyList<int> hoursOfDay) => new(hoursOfDay, LeastMm, MostMm, HoldMPa, DaysAhead - 2);
}
