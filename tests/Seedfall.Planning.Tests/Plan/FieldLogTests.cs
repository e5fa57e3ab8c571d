using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Tests.Plan;

/// <summary>What is written in the field moves the plan.</summary>
public sealed class FieldLogTests
{
    private static readonly WeatherHistory Weather = InventedWeather.Years(2011, 2023, InventedWeather.North);

    private static readonly Lawn Known = Lawns.Known(InventedWeather.North);

    private static readonly DateOnly Down = new(2023, 8, 28);

    [Fact]
    public void AnEntrySentTwiceStandsOnceAndAStruckOneNotAtAll()
    {
        var (note, wrong) = (Entry(new LogEntry.Note("dew till ten") { Id = Id(1), At = At(Down) }), Reading(At(Down), 20.0));
        var strike = new LogEntry.Struck(wrong.Id, "held the probe in the sun") { Id = Id(3), At = At(Down.AddDays(1)) };
        var log = FieldLog.Of([strike, note, note, wrong]);
        Assert.Equal(3, log.Entries.Count);
        Assert.Equal([note], log.Standing);
    }

    [Fact]
    public void ProblemsAreNamed()
    {
        Assert.Empty(LogRules.Problems(Known, Reading(At(Down), 20.0)));
        Assert.Contains("degF would be", Assert.Single(LogRules.Problems(Known, Reading(At(Down), 87.0))), StringComparison.Ordinal);
        Assert.Contains("back", Assert.Single(LogRules.Problems(Known, Reading(At(Down), 20.0) with { PatchId = "back" })), StringComparison.Ordinal);
        Assert.Contains("range", Assert.Single(LogRules.Problems(Known, Cover(Down, 0.5) with { Low = Fraction.Of(0.6), High = Fraction.Of(0.7) })), StringComparison.Ordinal);
    }

    [Fact]
    public void WarmReadingsMoveTheSoilOfTheDaysAfterThemAndFade()
    {
        var today = new DateOnly(2023, 8, 20);
        var (plain, taught) = (Time(today), Time(today, [.. new[] { 12, 16, 20 }.Select(d => Warm(new DateOnly(2023, 8, d), 3.0))]));
        Assert.Null(plain.Learned);
        Assert.Equal(plain.ThisYear, taught.ThisYearUncorrected);
        Assert.Equal(Soil(plain, new DateOnly(2023, 8, 11)), Soil(taught, new DateOnly(2023, 8, 11)));
        Assert.InRange(Soil(taught, today) - Soil(plain, today), 1.0, 3.0);
        var learned = taught.Learned!;
        Assert.Equal(3, learned.Readings.Count);
        Assert.All(learned.Readings, r => Assert.True(r.Used));
        Assert.InRange(learned.Figures.Single(f => f.Id == "learned.soil.bias").Value, 1.0, 3.0);
        Assert.True(learned.Figures.Single(f => f.Id == "learned.soil.after").Value < learned.Figures.Single(f => f.Id == "learned.soil.before").Value);

        // Warmer ground takes longer to cool: the chance of having cooled falls soon after, and is the same again by late autumn.
        double Cool(SeasonTiming timing, DateOnly day) => timing.SoilCool.Single(c => c.Date == day).Chance;
        Assert.True(Cool(taught, new DateOnly(2023, 9, 5)) <= Cool(plain, new DateOnly(2023, 9, 5)));
        Assert.Equal(Cool(plain, new DateOnly(2023, 11, 20)), Cool(taught, new DateOnly(2023, 11, 20)));
    }

    [Fact]
    public void OneWildReadingIsShownAndMovesNothing()
    {
        var today = new DateOnly(2023, 8, 20);
        var taught = Time(today, Warm(today, 12.0));
        Assert.False(Assert.Single(taught.Learned!.Readings).Used);
        Assert.Equal(Soil(Time(today), today), Soil(taught, today));
    }

    [Fact]
    public void AReadingInTheWrongUnitIsRefusedByName()
    {
        var today = new DateOnly(2023, 8, 20);
        var taught = Time(today, Reading(At(today), 87.0));
        Assert.Contains("check the unit", Assert.Single(taught.Learned!.LeftOut), StringComparison.Ordinal);
        Assert.Equal(Soil(Time(today), today), Soil(taught, today));
    }

    [Fact]
    public void SeedThatIsDownSettlesTheDay()
    {
        var down = new DateOnly(2023, 9, 3);
        var timing = Time(new DateOnly(2023, 9, 10), new LogEntry.SeededDown { Id = Id(9), At = At(down) });
        Assert.Equal(down, timing.SeedDown);
        Assert.Equal(down, timing.Phases.Single(p => p.Id == "seedbed").From);
    }

    [Fact]
    public void ALateFirstGreenSlowsTheSeedAndTheCoverForecast()
    {
        var seeded = new LogEntry.SeededDown { Id = Id(9), At = At(Down) };
        var plain = Time(Down.AddDays(25), seeded);
        var expected = Time(Down.AddDays(25), seeded, Green(Down.AddDays(6))).Learned!.Greens[0].Computed!.Value;
        var (soon, late) = (Time(Down.AddDays(25), seeded, Green(expected)), Time(Down.AddDays(25), seeded, Green(expected.AddDays(4))));
        Assert.InRange(Value(soon, "learned.pace"), 0.9, 1.1);
        Assert.InRange(Value(late, "learned.pace"), 1.15, 2.5);
        Assert.True(late.Learned!.Greens[0].Corrected > expected, $"{late.Learned.Greens[0]} {Value(late, "learned.pace")}");
        Assert.True(late.Figures.Single(f => f.Id == "timing.emergence").Value > plain.Figures.Single(f => f.Id == "timing.emergence").Value);
        Assert.True(late.CoverForecast[40].P50 < plain.CoverForecast[40].P50);
    }

    [Fact]
    public void AFirstGreenBeforeSeedDownIsLeftOutByName()
    {
        var timing = Time(Down.AddDays(25), new LogEntry.SeededDown { Id = Id(9), At = At(Down) }, Green(Down.AddDays(-3)));
        Assert.Contains("before seed-down", Assert.Single(timing.Learned!.LeftOut), StringComparison.Ordinal);
    }

    [Fact]
    public void CoverSeenPullsTheForecastTowardItAndNarrowsIt()
    {
        var seeded = new LogEntry.SeededDown { Id = Id(9), At = At(Down) };
        var plain = Time(Down.AddDays(36), seeded);
        var better = plain.CoverForecast[35].P90 + 0.03;
        var taught = Time(Down.AddDays(36), seeded, Cover(Down.AddDays(21), plain.CoverForecast[21].P90 + 0.02), Cover(Down.AddDays(28), plain.CoverForecast[28].P90 + 0.03), Cover(Down.AddDays(35), better));
        Assert.Equal(3, taught.Learned!.Covers.Count);
        Assert.True(taught.CoverForecast[45].P50 > plain.CoverForecast[45].P50 + 0.02);
        Assert.True(Math.Abs(taught.CoverForecast[35].P50 - better) < Math.Abs(plain.CoverForecast[35].P50 - better));
        Assert.True(taught.CoverForecast[42].P90 - taught.CoverForecast[42].P10 < plain.CoverForecast[42].P90 - plain.CoverForecast[42].P10 + 0.02);
        Assert.True(Value(taught, "learned.cover.after") < Value(taught, "learned.cover.before"));
        Assert.Equal(Known.Patches.Select(p => p.Id), taught.CoverByPatch.Select(p => p.PatchId));
    }

    [Fact]
    public void OneWildCoverDoesNotWreckTheForecast()
    {
        var seeded = new LogEntry.SeededDown { Id = Id(9), At = At(Down) };
        var plain = Time(Down.AddDays(36), seeded);
        LogEntry[] honest = [.. new[] { 14, 21, 28 }.Select(d => Cover(Down.AddDays(d), plain.CoverForecast[d].P50))];
        var (calm, shaken) = (Time(Down.AddDays(36), [seeded, .. honest]), Time(Down.AddDays(36), [seeded, .. honest, Cover(Down.AddDays(29), 0.02)]));
        Assert.InRange(shaken.CoverForecast[45].P50 - calm.CoverForecast[45].P50, -0.05, 0.02);
    }

    [Fact]
    public void ForecastDaysCountAsKnownAndLaterOnesDoNot()
    {
        var today = new DateOnly(2023, 8, 20);
        var hot = Weather with { Days = [.. Weather.Days.Select(d => d.Date > today ? d with { TmaxC = d.TmaxC + 6.0, TminC = d.TminC + 6.0 } : d)] };
        SeasonTiming Ahead(WeatherHistory weather) => RecoveryPlanner.Plan(Known, new Choices { Season = 2023, Today = today }, weather, Tables.Trade).Timing;
        Assert.Equal(Ahead(Weather).Stand, Ahead(hot).Stand);
        var (mild, warm) = (Ahead(Weather.WithDaysAheadForecast(today)), Ahead(hot.WithDaysAheadForecast(today)));
        Assert.NotEqual(mild.Stand, warm.Stand);
        Assert.Equal(today.AddDays(10), warm.ThisYear[^1].Date);
        Assert.All(warm.ThisYear, day => Assert.Equal(day.Date <= today, day.Observed));
        var given = Weather.WithForecast(hot with { Days = [.. hot.Days.Where(d => d.Date > today && d.Date <= today.AddDays(7))] }, today);
        Assert.Equal(today.AddDays(7), Ahead(given).ThisYear[^1].Date);
    }

    [Fact]
    public void ChosenRoundsReachTheProofAndTheSimulation()
    {
        var dry = Weather with { Days = [.. Weather.Days.Select(d => d with { RainMm = 0.15 * d.RainMm })] };
        RecoveryPlan With(int? rounds) => RecoveryPlanner.Plan(Known, new Choices { Season = 2023, SeedDown = Down, SeedbedRounds = rounds }, dry, Tables.Trade);
        Assert.Equal(4.0, With(4).Water.Phases.Single(p => p.PhaseId == "seedbed").RoundsPerDay);
        Assert.Equal(1.0, With(1).Water.Phases.Single(p => p.PhaseId == "seedbed").RoundsPerDay);
        double Chance(int? rounds) => With(rounds).Timing.Figures.Single(f => f.Id == "timing.chance").Value;
        Assert.True(Chance(0) + 0.3 < Chance(3));
        Assert.Contains("choices.seedbedRounds", ChoiceRules.Problems(new Choices { Season = 2023, SeedbedRounds = 9 }).Select(p => p.Path));
        Assert.Contains("choices.roundDepth", ChoiceRules.Problems(new Choices { Season = 2023, RoundDepth = Depth.FromInches(3) }).Select(p => p.Path));
    }

    private static SeasonTiming Time(DateOnly today, params LogEntry[] entries) =>
        RecoveryPlanner.Plan(Known, new Choices { Season = 2023, Today = today, SeedDown = Down }, Weather, Tables.Trade, FieldLog.Of(entries)).Timing;

    /// <summary>A reading so many degrees above what the model says there and then.</summary>
    private static LogEntry.SoilReading Warm(DateOnly day, double byC)
    {
        var computed = Time(day, Reading(At(day), 20.0)).Learned!.Readings[0].ComputedC;
        return Reading(At(day), computed + byC);
    }

    private static LogEntry.SoilReading Reading(DateTimeOffset at, double readC) => new(Depth.FromInches(2), Temperature.FromCelsius(readC)) { Id = Id((int)(at.ToUnixTimeSeconds() % 100_000)), At = at, PatchId = "front" };

    private static LogEntry.FirstGreen Green(DateOnly day) => new() { Id = Id(5), At = At(day), PatchId = "front" };

    private static LogEntry.CoverSeen Cover(DateOnly day, double cover) => new(Fraction.Of(cover), CoverJudged.Photograph) { Id = Id(day.DayNumber), At = At(day), PatchId = "front" };

    private static LogEntry Entry(LogEntry entry) => entry;

    private static double Soil(SeasonTiming timing, DateOnly day) => timing.ThisYear.Single(d => d.Date == day).SoilC;

    private static double Value(SeasonTiming timing, string id) => timing.Learned!.Figures.Single(f => f.Id == id).Value;

    private static DateTimeOffset At(DateOnly day) => new(day.ToDateTime(new TimeOnly(15, 0)), TimeSpan.FromHours(-5));

    private static Guid Id(int n) => new(n, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10);
}
