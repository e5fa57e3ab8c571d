using Seedfall.Engine.Simulation;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation.Choice;

/// <summary>One scene at every station and pooled.</summary>
/// <param name="Scene">Its name.</param>
/// <param name="Text">The scene in a sentence.</param>
/// <param name="Stations">Each station; one that could not be scored has no rules and a note.</param>
/// <param name="Pooled">All seasons of all stations; null where none could be scored.</param>
public sealed record ChoiceReport(string Scene, string Text, IReadOnlyList<ChoiceScore> Stations, ChoiceScore? Pooled);

/// <summary>Compares ways to choose the seed-down day over past seasons, each left out in turn, under the simulator itself.</summary>
public static class ChoiceValidation
{
    /// <summary>Every scene at every station; the soil temperature's constants as given, nothing refitted.</summary>
    /// <param name="stations">Daily weather.</param>
    /// <param name="scenes">Seedings to try.</param>
    /// <param name="usualDay">The calendar rule's day by latitude, of any year.</param>
    /// <param name="constants">Fitted numbers; <see cref="SoilHeatConstants.Shipped"/> for the product as it is.</param>
    public static IReadOnlyList<ChoiceReport> Score(
        IReadOnlyList<WeatherHistory> stations, IReadOnlyList<ChoiceScene> scenes, Func<double, DateOnly> usualDay, SoilHeatConstants constants)
    {
        ArgumentNullException.ThrowIfNull(usualDay);
        var ready = stations.Select(history =>
        {
            var notes = new List<string>();
            return (Name: history.StationName, Station: ChoiceStation.Of(history, usualDay(history.Station?.LatitudeDeg ?? 0.0), constants, notes), Notes: notes);
        }).ToList();
        return [.. scenes.Select(scene =>
        {
            var tried = ready.Select(r => (r.Name, Seasons: r.Station?.Try(scene), r.Notes)).ToList();
            var scored = tried.Select(t => t.Seasons).OfType<IReadOnlyList<ChoiceSeason>>().ToList();
            return new ChoiceReport(
                scene.Name,
                scene.Text,
                [.. tried.Select(t => t.Seasons is { } seasons ? ChoiceScore.Of(t.Name, [seasons]) : new ChoiceScore(t.Name, 0, new Dictionary<string, RuleScore>(), t.Notes))],
                scored.Count > 0 ? ChoiceScore.Of("pooled", scored) : null);
        })];
    }
}
