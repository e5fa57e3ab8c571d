using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation.Watering;

/// <summary>One soil at every station and pooled.</summary>
/// <param name="Soil">Its name.</param>
/// <param name="Stations">Each station; one that could not be scored has no ways and a note.</param>
/// <param name="Pooled">All seasons of all stations; null where none could be scored.</param>
public sealed record WateringReport(string Soil, IReadOnlyList<WateringScore> Stations, WateringScore? Pooled);

/// <summary>Compares ways of watering a seedbed over past seasons, each left out in turn, under the simulator itself.</summary>
public static class WateringValidation
{
    /// <summary>Every soil at every station.</summary>
    /// <param name="stations">Daily weather.</param>
    /// <param name="scenes">Seedbeds to try.</param>
    /// <param name="usualDay">The seed-down day by latitude, of any year.</param>
    /// <param name="constants">Fitted numbers.</param>
    /// <param name="settings">How careful the daily plan is; null for the product as it is.</param>
    public static IReadOnlyList<WateringReport> Score(
        IReadOnlyList<WeatherHistory> stations, IReadOnlyList<WateringScene> scenes, Func<double, DateOnly> usualDay, SoilHeatConstants constants, DailySettings? settings = null)
    {
        ArgumentNullException.ThrowIfNull(usualDay);
        var careful = settings ?? new DailySettings();
        var ready = stations.Select(history =>
        {
            var notes = new List<string>();
            return (Name: history.StationName, Station: WateringStation.Of(history, usualDay(history.Station?.LatitudeDeg ?? 0.0), constants, notes), Notes: notes);
        }).ToList();
        return [.. scenes.Select(scene =>
        {
            var tried = ready.Select(r => (r.Name, Seasons: r.Station?.Try(scene, careful), r.Notes)).ToList();
            var scored = tried.SelectMany(t => t.Seasons ?? []).ToList();
            return new WateringReport(
                scene.Name,
                [.. tried.Select(t => t.Seasons is { } seasons ? WateringScore.Of(t.Name, seasons) : new WateringScore(t.Name, 0, new Dictionary<string, WayScore>(), t.Notes))],
                scored.Count > 0 ? WateringScore.Of("pooled", scored) : null);
        })];
    }
}
