using CsCheck;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Timing;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Timing;

public sealed class SeasonTests
{
    private static readonly Temperature Seventy = Temperature.FromFahrenheit(70);

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
    public void CrossingNeedsThreeDaysBelow()
    {
        // Trailing means: below on days 9 and 10, above on 11, below for good from 16.
        double[] soil = [25, 25, 25, 25, 25, 22, 20, 19, 19, 19, 19, 33, 25, 18, 15, 13, 13, 13, 13, 13];
        var first = new DateOnly(2024, 8, 1);
        var crossing = Crossing.FirstBelow(soil, first, first, first.AddDays(60), Temperature.FromCelsius(20));
        var means = Enumerable.Range(4, 16).Select(i => (Day: i, Mean: soil[(i - 4)..(i + 1)].Average())).ToArray();
        var expected = means.First(m => m.Mean < 20 && means.Any(n => n.Day == m.Day + 1 && n.Mean < 20) && means.Any(n => n.Day == m.Day + 2 && n.Mean < 20)).Day;
        Assert.Equal(first.AddDays(expected), crossing);
        Assert.True(means.First(m => m.Mean < 20).Day < expected);
    }

    [Fact]
    public void CrossingAfterTheLastAllowedDayIsNone()
    {
        double[] soil = [.. Enumerable.Repeat(25.0, 30), .. Enumerable.Repeat(10.0, 10)];
        var first = new DateOnly(2024, 8, 1);
        Assert.Null(Crossing.FirstBelow(soil, first, first, first.AddDays(20), Seventy));
        Assert.NotNull(Crossing.FirstBelow(soil, first, first, first.AddDays(40), Seventy));
    }

    [Fact]
    public void CoolerSoilNeverCrossesLater() => Gen.Select(Gen.Double[10.0, 30.0].Array[40], Gen.Double[0.0, 5.0]).Sample((soil, drop) =>
    {
        var first = new DateOnly(2024, 8, 1);
        var warm = Crossing.FirstBelow(soil, first, first, first.AddDays(39), Seventy);
        var cool = Crossing.FirstBelow([.. soil.Select(t => t - drop)], first, first, first.AddDays(39), Seventy);
        Assert.True(warm is null || cool <= warm);
    });

    [Fact]
    public void HemispheresMirrorEachOther()
    {
        var north = History(new DateOnly(2022, 1, 1), 1096, North);
        var south = History(new DateOnly(2022, 1, 1), 1096, South, latitude: -45);
        var soilNorth = SoilTemperatureSeries.Compute(north.Days, north.Station!, Fraction.All, SoilTexture.Loam);
        var soilSouth = SoilTemperatureSeries.Compute(south.Days, south.Station!, Fraction.All, SoilTexture.Loam);
        var (seasonNorth, seasonSouth) = (AutumnSeason.Of(2024, 45), AutumnSeason.Of(2024, -45));
        var threshold = Temperature.FromFahrenheit(60);
        var crossNorth = Crossing.InSeason(soilNorth, seasonNorth, threshold);
        var crossSouth = Crossing.InSeason(soilSouth, seasonSouth, threshold);
        Assert.InRange(seasonNorth.DayOf(crossNorth.Date!.Value) - seasonSouth.DayOf(crossSouth.Date!.Value), -5, 5);
        var frostNorth = Frost.FirstOfSeason(north, seasonNorth, Frost.Light);
        var frostSouth = Frost.FirstOfSeason(south, seasonSouth, Frost.Light);
        Assert.InRange(seasonNorth.DayOf(frostNorth.Date!.Value) - seasonSouth.DayOf(frostSouth.Date!.Value), -5, 5);
        Assert.Equal(11, frostNorth.Date.Value.Month);
        Assert.Equal(5, frostSouth.Date.Value.Month);
    }

    [Fact]
    public void SoilFollowsTheSeasonsWithALag()
    {
        var history = History(new DateOnly(2022, 1, 1), 730, North);
        var soil = SoilTemperatureSeries.Compute(history.Days, history.Station!, Fraction.All, SoilTexture.Loam);
        var warmest = Enumerable.Range(0, 365).MaxBy(i => soil.MeanC[365 + i]);
        Assert.InRange(warmest, 190, 230); // air is warmest on day 203
        Assert.InRange(soil.On(new DateOnly(2023, 7, 25))!.Value.Celsius, 22, 30);
        Assert.Null(soil.On(new DateOnly(2024, 1, 1)));
    }

    [Fact]
    public void DeeperSoilSwingsLessAndBareSoilMore()
    {
        var history = History(new DateOnly(2022, 1, 1), 730, North);
        double Swing(Fraction cover, Depth depth)
        {
            var year = SoilTemperatureSeries.Compute(history.Days, history.Station!, cover, SoilTexture.Loam, depth).MeanC[365..].ToArray();
            return year.Max() - year.Min();
        }

        Assert.True(Swing(Fraction.All, Depth.FromCentimeters(50)) < Swing(Fraction.All, Depth.FromCentimeters(5)));
        Assert.True(Swing(Fraction.None, Depth.FromCentimeters(5)) > Swing(Fraction.All, Depth.FromCentimeters(5)));
    }

    [Fact]
    public void AGapInTheSoilSeriesIsBridged()
    {
        var whole = History(new DateOnly(2022, 1, 1), 730, North);
        var holed = History(new DateOnly(2022, 1, 1), 730, North, date => date >= new DateOnly(2023, 3, 1) && date < new DateOnly(2023, 3, 4));
        var soil = SoilTemperatureSeries.Compute(whole.Days, whole.Station!, Fraction.All, SoilTexture.Loam);
        var bridged = SoilTemperatureSeries.Compute(holed.Days, holed.Station!, Fraction.All, SoilTexture.Loam);
        Assert.Equal(soil.MeanC.Length, bridged.MeanC.Length);
        Assert.Equal(soil.On(new DateOnly(2023, 9, 1))!.Value.Celsius, bridged.On(new DateOnly(2023, 9, 1))!.Value.Celsius, 0.01);
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
