using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Timing;

/// <summary>Chooses the season's dates from past seasons' weather.</summary>
public static class SeasonTimingPlanning
{
    /// <summary>
    /// The season's timing over past seasons. The season planned for never enters its own ensemble. The value is never
    /// null; a chosen day outside the season's calendar is refused by a wall and leaves the seed-down day null.
    /// </summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="choices">Season, chosen seed-down day, today.</param>
    /// <param name="weather">Daily weather of the place; may hold few or no past seasons.</param>
    /// <param name="tables">The trade's tables.</param>
    /// <param name="patches">The patches as the plan sees them.</param>
    /// <param name="mix">Grasses to be seeded; the slowest of them closes the window. At least one.</param>
    public static Section<SeasonTiming> Plan(
        Lawn lawn,
        Choices choices,
        WeatherHistory weather,
        TradeTables tables,
        IReadOnlyList<PatchSummary> patches,
        IReadOnlyList<GrassSpecies> mix) =>
        throw new NotSupportedException("the season's timing is being built");
}
