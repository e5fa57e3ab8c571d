using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Timing;

/// <summary>Chooses the season's dates from past seasons' weather.</summary>
public static class SeasonTimingPlanning
{
    /// <summary>
    /// The season's timing over past seasons. The season planned for never enters its own ensemble, nor does any later one; days of
    /// it up to <see cref="Choices.Today"/> stand at the head of every member. The value is never null; a chosen day outside the
    /// season's calendar is refused by a wall and leaves the seed-down day null.
    /// </summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="choices">Season (1900 to 2200), chosen seed-down day, today.</param>
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
        IReadOnlyList<GrassSpecies> mix)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(choices.Season, 1900, nameof(choices));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(choices.Season, 2200, nameof(choices));
        if (mix.Count == 0)
        {
            throw new ArgumentException("at least one grass is needed", nameof(mix));
        }

        var calendar = new SeasonCalendar(choices.Season, lawn.Place.LatitudeDeg < 0.0);
        var place = weather.Station ?? lawn.Place;
        var season = ThisSeason.Of(weather, calendar, place, choices.Today);
        var facts = Facts(choices, calendar, PastSeasons.Of(weather, calendar, place), season, [.. mix.Distinct().Select(species => StandNeed.Of(species, tables))], lawn.Place);
        var barred = choices.SeedDown is { } chosen && facts.SeedDown is null;
        return new Section<SeasonTiming>(
            Timing(facts, season, lawn, weather.Station),
            barred ? [TimingAdvice.OutsideSeason(choices.SeedDown!.Value, calendar)] : [],
            TimingAdvice.Assumptions(facts));
    }

    private static TimingFacts Facts(
        Choices choices, SeasonCalendar calendar, PastSeasons past, ThisSeason season, IReadOnlyList<StandNeed> needs, Place place)
    {
        var members = Ensemble.Splice(past.Seasons, season);
        var outcomes = StandOutcomes.Of(members, needs);
        var coolDays = ChanceCurves.CoolDays(members);
        var first = Math.Max(SeasonCalendar.FirstSeeding, choices.Today is { } today ? calendar.Index(today) : 0);
        var window = members.Count > 0
            ? WindowChoice.Of(outcomes, first, SeasonCalendar.LastSeeding, coolDays?.Quantile(0.5))
            : From(CalendarWindow.For(place.LatitudeDeg), first);
        return new TimingFacts(
            calendar,
            choices,
            past,
            members,
            needs,
            outcomes,
            coolDays,
            ChanceCurves.FrostDays(members, Frosts.FrostC),
            ChanceCurves.FrostDays(members, Frosts.HardFrostC),
            window,
            SeedDown(choices, calendar, window));
    }

    private static ChosenWindow? From(ChosenWindow window, int first) =>
        first > window.Closes ? null : new ChosenWindow(Math.Max(first, window.Opens), Math.Max(first, window.Best), window.Closes);

    private static int? SeedDown(Choices choices, SeasonCalendar calendar, ChosenWindow? window)
    {
        if (choices.SeedDown is not { } chosen)
        {
            return window?.Best;
        }

        var day = calendar.Index(chosen);
        return day is >= SeasonCalendar.FirstSeeding and <= SeasonCalendar.LastSeeding ? day : null;
    }

    private static SeasonTiming Timing(TimingFacts facts, ThisSeason season, Lawn lawn, Place? station)
    {
        var calendar = facts.Calendar;
        var other = OtherSeeding.Of(facts.Past, calendar, lawn.Place.LatitudeDeg);
        return new SeasonTiming
        {
            Seasons = [.. facts.Past.Seasons.Select(past => past.Year)],
            SeasonsDropped = facts.Past.Dropped,
            SoilFan = ChanceCurves.SoilFan(facts.Past.Seasons, calendar),
            ThisYear = season.Line,
            SoilCool = ChanceCurves.ByDate(facts.CoolDays, calendar),
            Frost32 = ChanceCurves.ByDate(facts.Frost32Days, calendar),
            Frost28 = ChanceCurves.ByDate(facts.Frost28Days, calendar),
            Stand = ChanceCurves.Stand(facts.Outcomes, calendar),
            StandWorking = StandWorking.Of(facts),
            Window = facts.Window is { } window ? Dated(window, facts) : null,
            SeedDown = facts.SeedDown is { } day ? calendar.Date(day) : null,
            Phases = facts.SeedDown is { } seedDown ? Phases(facts, seedDown) : [],
            Figures = TimingFigures.For(facts),
            OtherWindow = other.Window,
            OtherWindowName = other.Name,
            Advice = TimingAdvice.For(facts, lawn, station),
        };
    }

    private static SeedWindow Dated(ChosenWindow window, TimingFacts facts) => new(
        facts.Calendar.Date(window.Opens),
        facts.Calendar.Date(window.Best),
        facts.Calendar.Date(window.Closes),
        facts.Members.Count > 0 ? facts.Outcomes.Chance(window.Best) : null);

    private static IReadOnlyList<Phase> Phases(TimingFacts facts, int seedDown)
    {
        var usual = facts.Members.Count > 0 ? facts.UsualEmergence(seedDown) - seedDown : null;
        var end = facts.Members.Count > 0 ? facts.UsualHardFrost ?? SeasonCalendar.Length - 1 : 0;
        return SeasonPhases.Of(facts.Calendar.Date(seedDown), usual ?? SeasonPhases.MostSeedbedDays, facts.Calendar.Date(end));
    }
}
