namespace Seedfall.Engine.Simulation.Watering;

/// <summary>How careful the daily plan is. Chosen on the development stations: see docs/validation.md.</summary>
/// <param name="HoldShare">Share of the suction wanted that it lets the layer reach, at most 1.</param>
/// <param name="DemandMargin">Factor on the evaporation it expects.</param>
/// <param name="LeastMm">Lightest round, mm: 0.05 in (common practice).</param>
/// <param name="MostMm">Heaviest round, mm.</param>
/// <param name="DaysAhead">Days it looks ahead, today included.</param>
public sealed record DailySettings(double HoldShare = 1.0, double DemandMargin = 1.0, double LeastMm = 1.27, double MostMm = 12.0, int DaysAhead = 2)
{
    /// <summary>The rounds such a plan may choose from.</summary>
    /// <param name="hoursOfDay">Hours in which a round may fall, ascending.</param>
    /// <param name="wantedMPa">Potential wanted of the seed's layer, MPa.</param>
    /// <param name="rainChance">Chance of a soaking rain on a day.</param>
    public RoundLimits Limits(IReadOnlyList<int> hoursOfDay, double wantedMPa, double rainChance) =>
        new(hoursOfDay, new Hold(HoldShare * wantedMPa, true), LeastMm, MostMm, DaysAhead - 1, rainChance);
}
