using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Validation.Choice;

/// <summary>
/// The past autumns of a station made ready to be seeded by every rule: seed may go down from 1 August to 15 November (half a
/// year off in the south), as in a plan. Only seasons with weather on every day from three weeks before count.
/// </summary>
public sealed class ChoiceStation
{
    /// <summary>Seasons below which a choice is not scored.</summary>
    public const int LeastSeasons = 6;

    /// <summary>Days on which seed may go down.</summary>
    public const int Dates = 107;

    private const int SpinUpDays = 45;
    private const int DaysAfter = 25;
    private const int CompleteBeforeDays = 22;

    private readonly PlaceSeasons _seasons;
    private readonly int _usualDate;

    private ChoiceStation(string name, PlaceSeasons seasons, int usualDate)
    {
        (Name, _seasons, _usualDate) = (name, seasons, usualDate);
    }

    public string Name { get; }

    /// <summary>Seasons that count.</summary>
    public int Seasons => _seasons.Seasons.Count;

    /// <summary>First day on which seed may go down.</summary>
    public static DateOnly FirstDay(int year, double latitudeDeg) => new(year, latitudeDeg < 0.0 ? 2 : 8, 1);

    /// <summary>The station, or null with a note where it cannot be scored.</summary>
    /// <param name="history">Its weather.</param>
    /// <param name="usualDay">The calendar rule's day, of any year.</param>
    /// <param name="constants">Fitted numbers of the soil temperature.</param>
    /// <param name="notes">Receives why not.</param>
    public static ChoiceStation? Of(WeatherHistory history, DateOnly usualDay, SoilHeatConstants constants, ICollection<string> notes)
    {
        if (history.Station is not { } place || history.Days.Count == 0)
        {
            notes.Add("not scored: the files give no position or no days");
            return null;
        }

        var climate = PlaceClimate.FromHistory(history.Days, place);
        var windows = history.Years.Select(year => Cut(history, year, place, climate)).Where(w => w.SeasonDays == SpinUpDays + Dates + DaysAfter).ToList();
        if (windows.Count < LeastSeasons)
        {
            notes.Add($"not scored: {windows.Count} autumns without holes, at least {LeastSeasons} are needed");
            return null;
        }

        var usual = usualDay.DayNumber - FirstDay(usualDay.Year, place.LatitudeDeg).DayNumber;
        return new ChoiceStation(
            history.StationName,
            PlaceSeasons.From(windows, place, climate, InputSets.Of(history.Days), constants),
            Math.Clamp(usual, 0, Dates - 1));
    }

    /// <summary>Every season under every rule. Seedfall's day never knows the season it is tried on.</summary>
    public IReadOnlyList<ChoiceSeason> Try(ChoiceScene scene)
    {
        var table = Stands(scene);
        var scores = DateScores.Of((table, 1.0));
        var seasons = new List<ChoiceSeason>(Seasons);
        for (var season = 0; season < Seasons; season++)
        {
            var soil = SeedDownRules.BySoil(_seasons.Seasons[season].Soil5CmC, SpinUpDays, SpinUpDays + Dates - 1) - SpinUpDays;
            RuleSeason On(int? day) => day is { } d ? new RuleSeason(d, scores.Stood(season, d), scores.Plants(season, d)) : default;
            seasons.Add(new ChoiceSeason(table.Years[season], new Dictionary<string, RuleSeason>
            {
                [SeedDownRules.Seedfall] = On(DateChoice.Of(scores, season)?.Best),
                [SeedDownRules.Soil70] = On(soil),
                [SeedDownRules.Calendar] = On(_usualDate),
                [SeedDownRules.Hindsight] = On(BestOf(scores, season)),
            }));
        }

        return seasons;
    }

    /// <summary>Outcomes by season and date.</summary>
    public StandTable Stands(ChoiceScene scene) =>
        StandEnsemble.Run(_seasons, scene.Ground, scene.Sown, scene.Rounds, new CandidateDays(SpinUpDays, Dates), scene.Rule);

    /// <summary>The date with the most plants.</summary>
    private static int BestOf(DateScores scores, int season)
    {
        var best = 0;
        for (var date = 1; date < scores.Dates; date++)
        {
            best = scores.Plants(season, date) > scores.Plants(season, best) ? date : best;
        }

        return best;
    }

    private static SeasonWindow Cut(WeatherHistory history, int year, Place place, PlaceClimate climate)
    {
        var first = FirstDay(year, place.LatitudeDeg);
        return SeasonWindow.Cut(
            history, year, first.AddDays(-SpinUpDays), first.AddDays(-CompleteBeforeDays), first.AddDays(Dates + DaysAfter - 1), climate, place.LatitudeDeg);
    }
}
