using Seedfall.Engine.Timing;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Timing;

public sealed class SeasonTests
{
    private static WeatherHistory History(DateOnly first, int days, Func<DateOnly, double> meanC, Func<DateOnly, bool>? missing = null, double latitude = 45)
    {
        var rows = Enumerable.Range(0, days).Select(i => first.AddDays(i)).Where(date => missing?.Invoke(date) != true)
            .Select(date => new WeatherDay(date, meanC(date) + 6, meanC(date) - 6, 0)).ToArray();
        return new WeatherHistory(new Place(latitude, 0, 100), "invented", rows, [], []);
    }

    private static double North(DateOnly date) => 10 - (14 * Math.Cos(2 * Math.PI * (date.DayOfYear - 20) / 365.25));

    private static double South(DateOnly date) => 10 + (14 * Math.Cos(2 * Math.PI * (date.DayOfYear - 20) / 365.25));

    [Fact]
    public void SeasonsStartInAugustInTheNorthAndFebruaryInTheSouth()
    {
        Assert.Equal(new DateOnly(2024, 8, 1), AutumnSeason.Of(2024, 40).StartsOn);
        Assert.Equal(new DateOnly(2024, 2, 1), AutumnSeason.Of(2024, -40).StartsOn);
        Assert.Equal(new DateOnly(2024, 1, 1), AutumnSeason.Of(2024, -40).AfterMidsummer);
        Assert.Equal(new DateOnly(2024, 6, 30), AutumnSeason.Of(2024, -40).EndsOn);
    }

    [Fact]
    public void HemispheresMirrorEachOther()
    {
        var north = History(new DateOnly(2022, 1, 1), 1096, North);
        var south = History(new DateOnly(2022, 1, 1), 1096, South, latitude: -45);
        var (seasonNorth, seasonSouth) = (AutumnSeason.Of(2024, 45), AutumnSeason.Of(2024, -45));
        var frostNorth = Frost.FirstOfSeason(north, seasonNorth, Frost.Light);
        var frostSouth = Frost.FirstOfSeason(south, seasonSouth, Frost.Light);
        Assert.InRange(seasonNorth.DayOf(frostNorth.Date!.Value) - seasonSouth.DayOf(frostSouth.Date!.Value), -5, 5);
        Assert.Equal(11, frostNorth.Date.Value.Month);
        Assert.Equal(5, frostSouth.Date.Value.Month);
    }

    [Fact]
    public void FrostBehindAGapIsUnknownAndFrostBeforeItIsNot()
    {
        var first = new DateOnly(2023, 1, 1);
        var season = AutumnSeason.Of(2023, 45);
        var frost = Frost.FirstOfSeason(History(first, 365, North), season, Frost.Light).Date!.Value;
        Assert.Equal(SeasonOutcome.Unknown, Frost.FirstOfSeason(History(first, 365, North, d => d == frost.AddDays(-9)), season, Frost.Light).Outcome);
        Assert.Equal(frost, Frost.FirstOfSeason(History(first, 365, North, d => d == frost.AddDays(1)), season, Frost.Light).Date);
        Assert.Equal(SeasonOutcome.NotReached, Frost.FirstOfSeason(History(first, 365, d => 25), season, Frost.Light).Outcome);
    }

    [Fact]
    public void ATenthThatPrintsAsTheThresholdIsAtIt()
    {
        var season = AutumnSeason.Of(2023, 45);
        var at = Frost.FirstOfSeason(History(new DateOnly(2023, 1, 1), 365, _ => -2.2 + 6), season, Frost.Hard);
        Assert.Equal(season.AfterMidsummer, at.Date);
        Assert.Equal(SeasonOutcome.NotReached, Frost.FirstOfSeason(History(new DateOnly(2023, 1, 1), 365, _ => -2.1 + 6), season, Frost.Hard).Outcome);
    }

    [Fact]
    public void GrowingWeatherAddsUp()
    {
        var days = History(new DateOnly(2023, 9, 1), 10, _ => 20).Days;
        Assert.Equal(200.0, GrowingDays.DegreeDays(days, Temperature.FromCelsius(0)), 1e-9);
        Assert.Equal(10.0, GrowingDays.GrowthDays(days), 1e-9);
        Assert.Equal(0.0, GrowingDays.DegreeDays(Temperature.FromCelsius(3), Temperature.FromCelsius(5)));
    }
}
