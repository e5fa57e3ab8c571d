using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Plan;

public sealed class SimulatedTimingTests
{
    private static readonly WeatherHistory Weather = InventedWeather.Years(2011, 2023, InventedWeather.North);

    private static readonly Lawn Known = Lawns.Known(InventedWeather.North);

    [Fact]
    public void TheChanceCurveIsSimulatedAndTheRuleOfThumbStandsBesideIt()
    {
        var timing = Time(Known);
        Assert.Equal(StandMethod.Simulated, timing.StandMethod);
        Assert.NotEmpty(timing.StandByRule);
        var window = timing.Window!;
        Assert.InRange(window.Best, window.Opens, window.Closes);
        Assert.InRange(window.Best, new DateOnly(2023, 8, 1), new DateOnly(2023, 9, 30));
        Assert.Equal(timing.Stand.Single(c => c.Date == window.Best).Chance, window.ChanceAtBest);
        Assert.True(timing.Stand[^1].Chance < 0.1);
        Assert.Contains("soil", timing.StandWorking.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void DatesAreTriedSixtyDaysBothWaysOfTheWindowsMiddle()
    {
        var timing = Time(Known);
        var middle = timing.Window!.Best.DayNumber;
        Assert.True(middle - timing.Stand[0].Date.DayNumber >= 35);
        Assert.True(timing.Stand[^1].Date.DayNumber - middle >= 60);
    }

    [Fact]
    public void HindsightIsNeverWorseThanTheDayChosenWithoutTheSeason()
    {
        var timing = Time(Known);
        Assert.True(Value(timing, "timing.left-out") <= Value(timing, "timing.hindsight"));
    }

    [Fact]
    public void FewPastSeasonsLeaveTheRuleOfThumb()
    {
        var timing = Time(Known, InventedWeather.Years(2020, 2023, InventedWeather.North));
        Assert.Equal(StandMethod.RuleOfThumb, timing.StandMethod);
        Assert.Empty(timing.StandByRule);
        Assert.Empty(timing.CoverForecast);
        Assert.Null(timing.CoverWorking);
    }

    [Fact]
    public void CoverGrowsFromTheSeedDownDayOnInsideItsBand()
    {
        var timing = Time(Known);
        var cover = timing.CoverForecast;
        Assert.Equal(timing.SeedDown, cover[0].Date);
        Assert.InRange(cover[0].P50, 0.54, 0.60);
        Assert.All(cover, day => Assert.True(day.P10 <= day.P50 && day.P50 <= day.P90 && day.P90 <= 1.0));
        Assert.All(cover.Zip(cover.Skip(1)), pair => Assert.True(pair.Second.P50 >= pair.First.P50 - 1e-12));
        Assert.True(cover[42].P50 > cover[0].P50 + 0.1);
        Assert.True(cover[42].P90 > cover[42].P10);
    }

    [Fact]
    public void ATapThatCannotWaterTakesTheChanceAway()
    {
        var dry = InventedWeather.Years(2011, 2023, InventedWeather.North);
        dry = dry with { Days = [.. dry.Days.Select(d => d with { RainMm = 0.15 * d.RainMm })] };
        var locked = Known with
        {
            Water = Known.Water! with { Allowed = [new WateringWindow(WeekDays.Sunday, new TimeOnly(6, 0), new TimeOnly(6, 1))] },
        };
        var day = new DateOnly(2023, 8, 28);
        double At(Lawn lawn) => Time(lawn, dry).Stand.Single(c => c.Date == day).Chance;
        Assert.True(At(locked) + 0.3 < At(Known));
    }

    [Fact]
    public void PatchesDifferBySoilShadeAndCover()
    {
        var shaded = Known with { Patches = [Known.Patches[0] with { SunHours = 6, LivingCover = Fraction.FromPercent(50) }] };
        Assert.NotEqual(Time(Known).Stand, Time(shaded).Stand);
        Assert.True(Time(shaded).CoverForecast[40].P50 < Time(Known).CoverForecast[40].P50);
    }

    [Fact]
    public void ASeasonUnderWayCountsWhatWasSeenAndNothingLater()
    {
        var today = new DateOnly(2023, 8, 20);
        var choices = new Choices { Season = 2023, Today = today };
        var known = InventedWeather.Years(2011, 2023, InventedWeather.North);
        var cut = known with { Days = [.. known.Days.Where(d => d.Date <= today)] };
        var hot = known with { Days = [.. known.Days.Select(d => d.Date.Year == 2023 && d.Date <= today ? d with { TmaxC = d.TmaxC + 6.0, TminC = d.TminC + 6.0 } : d)] };
        var (all, upToToday, afterHeat) = (Time(Known, known, choices), Time(Known, cut, choices), Time(Known, hot, choices));
        Assert.Equal(all.Stand, upToToday.Stand);
        Assert.Equal(all.CoverForecast, upToToday.CoverForecast);
        Assert.NotEqual(all.Stand, afterHeat.Stand);
        Assert.True(all.SeedDown >= today);
    }

    private static SeasonTiming Time(Lawn lawn, WeatherHistory? weather = null, Choices? choices = null) =>
        RecoveryPlanner.Plan(lawn, choices ?? new Choices { Season = 2023 }, weather ?? Weather, Tables.Trade).Timing;

    private static double Value(SeasonTiming timing, string id) => timing.Figures.Single(f => f.Id == id).Value;
}
