using Seedfall.Engine.Weather;
using Seedfall.Planning.Field;
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
        ArgumentNullException.ThrowIfNull(patches);
        return Plan(SeasonScene.Of(lawn, choices, weather, tables, mix, FieldLog.Empty), choices, null);
    }

    /// <summary>The same from a season worked out before; by rules of thumb alone where no simulated stands are given.</summary>
    internal static Section<SeasonTiming> Plan(SeasonScene scene, Choices choices, SimulatedStands? simulated)
    {
        var facts = Facts(scene, choices, simulated);
        var barred = choices.SeedDown is { } chosen && facts.SeedDown is null;
        return new Section<SeasonTiming>(
            Timing(facts, scene),
            barred ? [TimingAdvice.OutsideSeason(choices.SeedDown!.Value, scene.Calendar)] : [],
            [.. TimingAdvice.Assumptions(facts), .. simulated?.Assumptions ?? []]);
    }

    /// <summary>Middle day of a window, or of the usual one of the latitude where there is none.</summary>
    internal static int Middle(SeasonScene scene, SeedWindow? window) => window is not null
        ? (scene.Calendar.Index(window.Opens) + scene.Calendar.Index(window.Closes)) / 2
        : CalendarWindow.For(scene.Lawn.Place.LatitudeDeg).Best;

    private static TimingFacts Facts(SeasonScene scene, Choices choices, SimulatedStands? simulated)
    {
        var coolDays = ChanceCurves.CoolDays(scene.Members);
        var first = Math.Max(SeasonCalendar.FirstSeeding, choices.Today is { } today ? scene.Calendar.Index(today) : 0);
        var window = simulated is not null
            ? simulated.Window(first, SeasonCalendar.LastSeeding)
            : scene.Members.Count > 0
                ? WindowChoice.Of(scene.Ruled, first, SeasonCalendar.LastSeeding, coolDays?.Quantile(0.5))
                : From(CalendarWindow.For(scene.Lawn.Place.LatitudeDeg), first);
        return new TimingFacts(
            scene.Calendar,
            choices,
            scene.Past,
            scene.Members,
            scene.Needs,
            simulated?.Outcomes ?? scene.Ruled,
            simulated,
            coolDays,
            ChanceCurves.FrostDays(scene.Members, Frosts.FrostC),
            ChanceCurves.FrostDays(scene.Members, Frosts.HardFrostC),
            window,
            SeedDown(choices, scene.Calendar, window),
            scene.Log,
            scene.Lawn.PreEmergent);
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

    private static SeasonTiming Timing(TimingFacts facts, SeasonScene scene)
    {
        var calendar = facts.Calendar;
        var other = OtherSeeding.Of(facts.Past, calendar, scene.Lawn.Place.LatitudeDeg);
        var cover = facts.SeedDown is { } sown ? facts.Simulated?.Cover(sown) ?? CoverOutlook.Nothing : CoverOutlook.Nothing;
        var learned = LearnedFigures.Of(scene, facts.Simulated?.Pace ?? PaceLearned.Nothing, cover.Seen);
        return new SeasonTiming
        {
            Seasons = [.. facts.Past.Seasons.Select(past => past.Year)],
            SeasonsDropped = facts.Past.Dropped,
            SoilFan = ChanceCurves.SoilFan(facts.Past.Seasons, calendar),
            ThisYear = scene.Season.Line,
            SoilCool = ChanceCurves.ByDate(facts.CoolDays, calendar),
            Frost32 = ChanceCurves.ByDate(facts.Frost32Days, calendar),
            Frost28 = ChanceCurves.ByDate(facts.Frost28Days, calendar),
            Stand = ChanceCurves.Stand(facts.Outcomes, calendar),
            StandMethod = facts.Simulated is null ? StandMethod.RuleOfThumb : StandMethod.Simulated,
            StandByRule = facts.Simulated is null ? [] : ChanceCurves.Stand(scene.Ruled, calendar),
            StandWorking = StandWorking.Of(facts),
            Window = facts.Window is { } window ? Dated(window, facts) : null,
            SeedDown = facts.SeedDown is { } day ? calendar.Date(day) : null,
            Phases = facts.SeedDown is { } seedDown ? Phases(facts, seedDown) : [],
            Figures = TimingFigures.For(facts),
            CoverForecast = cover.Lawn,
            CoverByPatch = cover.Patches,
            ThisYearUncorrected = scene.Season.Uncorrected,
            Learned = learned.IsEmpty ? null : learned,
            CoverWorking = facts.Simulated?.CoverWorking,
            OtherWindow = other.Window,
            OtherWindowName = other.Name,
            Advice = TimingAdvice.For(facts, scene.Lawn, scene.Weather.Station),
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
