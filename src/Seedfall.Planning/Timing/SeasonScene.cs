using Seedfall.Engine.Weather;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Timing;

/// <summary>What the weather says about a lawn's season whatever day is chosen; worked out once for every question asked of it.</summary>
internal sealed record SeasonScene(
    Lawn Lawn,
    SeasonCalendar Calendar,
    WeatherHistory Weather,
    Place Place,
    PastSeasons Past,
    ThisSeason Season,
    IReadOnlyList<SeasonWeather> Members,
    IReadOnlyList<StandNeed> Needs,
    StandOutcomes Ruled,
    FieldLog Log)
{
    /// <summary>Throws where the season lies outside 1900 to 2200 or no grass is given.</summary>
    internal static SeasonScene Of(Lawn lawn, Choices choices, WeatherHistory weather, TradeTables tables, IReadOnlyList<GrassSpecies> mix, FieldLog log)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(choices.Season, 1900, nameof(choices));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(choices.Season, 2200, nameof(choices));
        if (mix.Count == 0)
        {
            throw new ArgumentException("at least one grass is needed", nameof(mix));
        }

        var calendar = new SeasonCalendar(choices.Season, lawn.Place.LatitudeDeg < 0.0);
        var place = weather.Station ?? lawn.Place;
        var past = PastSeasons.Of(weather, calendar, place);
        var season = ThisSeason.Of(weather, calendar, place, choices.Today, SitedReading.Of(lawn, log, calendar));
        var members = Ensemble.Splice(past.Seasons, season, calendar);
        IReadOnlyList<StandNeed> needs = [.. mix.Distinct().Select(species => StandNeed.Of(species, tables))];
        return new SeasonScene(lawn, calendar, weather, place, past, season, members, needs, StandOutcomes.Of(members, needs), log);
    }
}
