using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Tests.Timing;

public sealed class SeasonTimingTests
{
    [Fact]
    public void APlainSeasonHasAWindowAroundItsBestDay()
    {
        var timing = Invented.Time(Invented.Weather).Value!;

        Assert.Equal(Enumerable.Range(2004, 19), timing.Seasons);
        Assert.Empty(timing.SeasonsDropped);
        var window = timing.Window!;
        Assert.True(window.Opens <= window.Best && window.Best <= window.Closes);
        Assert.Equal(window.Best, timing.SeedDown);
        Assert.InRange(window.Best, new DateOnly(2023, 8, 5), new DateOnly(2023, 9, 30));
        Assert.Equal(timing.Stand.First(c => c.Date == window.Best).Chance, window.ChanceAtBest);
    }

    [Fact]
    public void ThePlannedSeasonNeverEntersItsOwnEnsemble()
    {
        var choices = new Choices { Season = 2015 };
        var with = Invented.Time(Invented.Weather, choices).Value!;
        var without = Invented.Time(InventedWeather.Days(new DateOnly(2004, 1, 1), new DateOnly(2015, 7, 9)), choices).Value!;

        Assert.Equal(Enumerable.Range(2004, 11), with.Seasons);
        Assert.Equal(without.Stand, with.Stand);
        Assert.Equal(without.SoilFan, with.SoilFan);
        Assert.Equal(without.Frost28, with.Frost28);
        Assert.Equal(without.Window, with.Window);
    }

    [Fact]
    public void WeatherAfterTodayDoesNotCount()
    {
        var choices = new Choices { Season = 2023, Today = new DateOnly(2023, 9, 5) };
        var all = Invented.Time(Invented.Weather, choices).Value!;
        var upToToday = Invented.Time(InventedWeather.Days(new DateOnly(2004, 1, 1), new DateOnly(2023, 9, 5)), choices).Value!;

        Assert.Equal(upToToday.Stand, all.Stand);
        Assert.Equal(upToToday.ThisYear, all.ThisYear);
        Assert.Equal(new DateOnly(2023, 9, 5), all.ThisYear[^1].Date);
        Assert.All(all.ThisYear, day => Assert.True(day.Observed));
    }

    [Fact]
    public void ObservedFrostIsCertain()
    {
        var days = InventedWeather.Days(new DateOnly(2004, 1, 1), new DateOnly(2023, 9, 20)).Days
            .Select(d => d.Date == new DateOnly(2023, 9, 19) ? d with { TminC = -3.0 } : d);
        var timing = Invented.Time(InventedWeather.Of(days), new Choices { Season = 2023, Today = new DateOnly(2023, 9, 20) }).Value!;

        Assert.Equal(1.0, timing.Frost28.First(c => c.Date == new DateOnly(2023, 9, 19)).Chance);
        Assert.Equal(0.0, timing.Frost28.First(c => c.Date == new DateOnly(2023, 9, 18)).Chance);
    }

    [Fact]
    public void ASeasonWithALongGapIsDroppedAndSaid()
    {
        var holed = InventedWeather.Without(Invented.Weather, new DateOnly(2010, 9, 1), new DateOnly(2010, 9, 6));
        var timing = Invented.Time(holed).Value!;

        Assert.DoesNotContain(2010, timing.Seasons);
        Assert.Equal(18, timing.Seasons.Count);
        Assert.Contains("2010: weather is missing from Sep 1 to Sep 6", Assert.Single(timing.SeasonsDropped), StringComparison.Ordinal);
    }

    [Fact]
    public void AGapOutsideTheSeasonDropsNothing()
    {
        var holed = InventedWeather.Without(Invented.Weather, new DateOnly(2010, 2, 1), new DateOnly(2010, 4, 30));

        Assert.Contains(2010, Invented.Time(holed).Value!.Seasons);
    }

    [Fact]
    public void WithoutPastSeasonsThePlanStandsOnANamedAssumption()
    {
        var section = Invented.Time(InventedWeather.Days(new DateOnly(2023, 3, 1), new DateOnly(2023, 8, 20)), new Choices { Season = 2023, Today = new DateOnly(2023, 8, 20) });
        var timing = section.Value!;

        Assert.Contains(section.Assumptions, a => a.Id == "assumed.timing.no-seasons");
        Assert.Empty(timing.Stand);
        Assert.NotNull(timing.Window);
        Assert.Null(timing.Window.ChanceAtBest);
        Assert.Equal(timing.Window.Best, timing.SeedDown);
        Assert.Equal(5, timing.Phases.Count);
        Assert.NotEmpty(timing.ThisYear);
    }

    [Fact]
    public void WithoutAnyWeatherThePlanStands()
    {
        var section = Invented.Time(InventedWeather.None());

        Assert.NotNull(section.Value!.SeedDown);
        Assert.Empty(section.Value.ThisYear);
        Assert.Contains(section.Assumptions, a => a.Id == "assumed.timing.no-seasons");
    }

    [Fact]
    public void FewSeasonsAreSaidToBeRough()
    {
        var timing = Invented.Time(InventedWeather.Years(2020, 2022)).Value!;

        Assert.Equal([2020, 2021, 2022], timing.Seasons);
        Assert.Contains(timing.Advice, a => a.Id == "timing.few-seasons");
        // (3 + 1/2) / (3 + 1): three seasons never promise more than this.
        Assert.All(timing.Stand, c => Assert.InRange(c.Chance, 0.12, 0.88));
    }

    [Fact]
    public void AChosenDayOutsideTheWindowIsPlannedWithAdvice()
    {
        var timing = Invented.Time(Invented.Weather, new Choices { Season = 2023, SeedDown = new DateOnly(2023, 10, 20) }).Value!;

        Assert.Equal(new DateOnly(2023, 10, 20), timing.SeedDown);
        Assert.Contains(timing.Advice, a => a.Id == "timing.outside-window");
        Assert.True(timing.Figures.First(f => f.Id == "timing.chance").Value < 0.3);
    }

    [Fact]
    public void AChosenDayInsideTheWindowNeedsNoAdvice()
    {
        var best = Invented.Time(Invented.Weather).Value!.Window!.Best;
        var timing = Invented.Time(Invented.Weather, new Choices { Season = 2023, SeedDown = best }).Value!;

        Assert.DoesNotContain(timing.Advice, a => a.Id == "timing.outside-window");
    }

    [Theory]
    [InlineData(2023, 1, 5)]
    [InlineData(2023, 7, 4)]
    [InlineData(2022, 9, 1)]
    [InlineData(2023, 11, 30)]
    public void ADayOutsideTheAutumnIsRefusedByAWall(int year, int month, int day)
    {
        var section = Invented.Time(Invented.Weather, new Choices { Season = 2023, SeedDown = new DateOnly(year, month, day) });

        Assert.Equal("timing.outside-season", Assert.Single(section.Walls).Id);
        Assert.Null(section.Value!.SeedDown);
        Assert.Empty(section.Value.Phases);
        Assert.NotNull(section.Value.Window);
    }

    [Fact]
    public void TooLateInAutumnThereIsNoDayButAnotherWindow()
    {
        var timing = Invented.Time(Invented.Weather, new Choices { Season = 2023, Today = new DateOnly(2023, 11, 1) }).Value!;

        Assert.Null(timing.Window);
        Assert.Null(timing.SeedDown);
        Assert.True(timing.OtherWindow!.Opens > new DateOnly(2023, 11, 1));
        Assert.NotNull(timing.OtherWindowName);
    }

    [Fact]
    public void FromTodayOnOnlyComingDaysAreChosen()
    {
        var full = Invented.Time(Invented.Weather).Value!.Window!;
        var today = full.Closes.AddDays(3);
        var timing = Invented.Time(Invented.Weather, new Choices { Season = 2023, Today = today }).Value!;

        Assert.True(timing.SeedDown is null || timing.SeedDown >= today);
        Assert.Contains(timing.Advice, a => a.Id == "timing.window-passed");
    }

    [Fact]
    public void TheSlowestGrassClosesTheWindow()
    {
        var fast = Invented.Time(Invented.Weather, null, null, GrassSpecies.PerennialRyegrass).Value!;
        var slow = Invented.Time(Invented.Weather, null, null, GrassSpecies.PerennialRyegrass, GrassSpecies.KentuckyBluegrass).Value!;

        Assert.All(fast.Stand.Zip(slow.Stand), pair => Assert.True(pair.Second.Chance <= pair.First.Chance));
        Assert.True(slow.Window!.Closes <= fast.Window!.Closes);
        Assert.True(slow.Window.ChanceAtBest <= fast.Window.ChanceAtBest);
    }

    [Fact]
    public void TheSouthernAutumnWorks()
    {
        var timing = Invented.Time(Invented.SouthernWeather, new Choices { Season = 2020 }).Value!;

        Assert.Equal(Enumerable.Range(2004, 16), timing.Seasons);
        Assert.InRange(timing.Window!.Best, new DateOnly(2020, 2, 1), new DateOnly(2020, 4, 15));
        Assert.True(timing.OtherWindow!.Opens > timing.Window.Closes);
    }

    [Fact]
    public void PhasesFollowOneAnotherWithoutGaps()
    {
        var timing = Invented.Time(Invented.Weather).Value!;

        Assert.Equal(["soak", "seedbed", "seedlings", "weaning", "deep"], timing.Phases.Select(p => p.Id));
        Assert.Equal(timing.SeedDown, timing.Phases[1].From);
        Assert.All(timing.Phases.Zip(timing.Phases.Skip(1)), pair => Assert.Equal(pair.First.To.AddDays(1), pair.Second.From));
        Assert.True(timing.Phases[^1].To >= timing.SeedDown!.Value.AddDays(41));
    }

    [Fact]
    public void FigureIdsAreUniqueAndEveryWorkingSpeaks()
    {
        var timing = Invented.Time(Invented.Weather).Value!;

        Assert.Equal(timing.Figures.Count, timing.Figures.Select(f => f.Id).Distinct().Count());
        Assert.All(timing.Figures, f => Assert.NotEmpty(f.Working.Source));
        Assert.Contains(timing.Figures, f => f.Id == "timing.soil70" && f.Kind == QuantityKind.Date);
        Assert.Equal(Sureness.Assumed, timing.StandWorking.Sureness);
    }

    [Fact]
    public void TheChanceLeadsAndTheDateWithoutSkillSaysSo()
    {
        var timing = Invented.Time(Invented.Weather).Value!;

        Assert.Equal("timing.chance", timing.Figures[0].Id);
        Assert.Contains("no skill", timing.Figures.Single(f => f.Id == "timing.soil70").Working.Note!, StringComparison.Ordinal);
    }

    [Fact]
    public void FarWeatherIsSaid()
    {
        var lawn = Invented.Lawn(new Engine.Weather.Place(41.5, -89.0, 200.0));
        var timing = SeasonTimingPlanning.Plan(lawn, new Choices { Season = 2023 }, Invented.Weather, Invented.Tables, Invented.Summaries(lawn), [GrassSpecies.TallFescue]).Value!;

        Assert.Contains(timing.Advice, a => a.Id == "timing.station-far");
    }

    [Fact]
    public void TheSameInputsGiveTheSameTiming()
    {
        var (a, b) = (Invented.Time(Invented.Weather).Value!, Invented.Time(Invented.Weather).Value!);

        Assert.Equal(a.Stand, b.Stand);
        Assert.Equal(a.SoilFan, b.SoilFan);
        Assert.Equal(a.Window, b.Window);
    }

    [Theory]
    [InlineData(1899)]
    [InlineData(2201)]
    public void ASeasonOutOfRangeIsRefusedAtTheDoor(int season) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Invented.Time(Invented.Weather, new Choices { Season = season }));

    [Fact]
    public void AMixOfNothingIsRefusedAtTheDoor()
    {
        var lawn = Invented.Lawn();
        Assert.Throws<ArgumentException>(() => SeasonTimingPlanning.Plan(lawn, new Choices { Season = 2023 }, Invented.Weather, Invented.Tables, Invented.Summaries(lawn), []));
    }
}
