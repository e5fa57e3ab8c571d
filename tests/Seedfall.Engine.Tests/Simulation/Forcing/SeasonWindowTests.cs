using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Simulation.Forcing;

public sealed class SeasonWindowTests
{
    private const double Latitude = 41.6;

    private static readonly DateOnly First = new(2020, 6, 1);

    private static readonly DateOnly Last = new(2020, 12, 10);

    private static readonly PlaceClimate Climate = PlaceClimate.FromHistory([.. Days(2019), .. Days(2020), .. Days(2021)], new Place(Latitude, -93.6, 280.0));

    [Fact]
    public void AWholeSeasonIsCutWithItsRunUp()
    {
        var window = Cut(Days(2020), First);
        Assert.Equal(First.AddDays(-SeasonWindow.UsualRunUpDays), window.Days[0].Date);
        Assert.Equal(Last, window.Days[^1].Date);
        Assert.Equal(193, window.SeasonDays);
    }

    [Fact]
    public void AHoleInTheRunUpIsBridgedAndOneInTheSeasonEndsIt()
    {
        var days = Days(2020).Where(d => d.Date.Month != 5 && d.Date != new DateOnly(2020, 9, 9)).ToArray();
        var window = Cut(days, First);
        Assert.Equal(new DateOnly(2020, 9, 8), window.Days[^1].Date);
        Assert.Equal(0.0, window.Days.Where(d => d.Date.Month == 5).Sum(d => d.RainMm), 12);
        Assert.Equal(window.Days.Length, window.Days.Select((d, i) => d.Date.DayNumber - i).Count(n => n == window.Days[0].Date.DayNumber));
    }

    [Fact]
    public void ASeasonInProgressKeepsWhatWasSeenAndTakesThePastFromThereOn()
    {
        var past = SeasonWindow.Cut(History(Days(2019)), 2019, new DateOnly(2019, 6, 1), new DateOnly(2019, 6, 1), new DateOnly(2019, 12, 10), Climate, Latitude);
        var known = SeasonWindow.Cut(History(Warm(Days(2020))), 2020, First, First, new DateOnly(2020, 8, 20), Climate, Latitude);
        var joined = past.After(known, Climate, Latitude);
        Assert.Equal(2019, joined.Year);
        Assert.Equal(past.Days.Length, joined.Days.Length);
        Assert.Equal(Enumerable.Range(0, joined.Days.Length).Select(known.Days[0].Date.AddDays), joined.Days.Select(d => d.Date));
        Assert.Equal(known.Days, joined.Days[..known.Days.Length]);
        var n = known.Days.Length;
        Assert.InRange(joined.Days[n].TmaxC - past.Days[n].TmaxC, 3.0, 6.5);
        Assert.Equal(past.Days[^1].TmaxC, joined.Days[^1].TmaxC, 3);
        Assert.Equal(past.Days[n].RainMm, joined.Days[n].RainMm);
    }

    [Fact]
    public void AnotherRunUpIsRefused()
    {
        var window = Cut(Days(2020), First);
        Assert.Throws<ArgumentException>(() => window.After(window with { RunUpDays = 10 }, Climate, Latitude));
    }

    private static SeasonWindow Cut(WeatherDay[] days, DateOnly needed) => SeasonWindow.Cut(History(days), 2020, First, needed, Last, Climate, Latitude);

    private static WeatherHistory History(WeatherDay[] days) => new(null, "invented", days, [], []);

    private static WeatherDay[] Warm(WeatherDay[] days) => [.. days.Select(d => d with { TmaxC = d.TmaxC + 5.0, TminC = d.TminC + 5.0 })];

    private static WeatherDay[] Days(int year) => [.. Enumerable.Range(0, DateTime.IsLeapYear(year) ? 366 : 365).Select(i =>
    {
        var mean = 10.0 - (14.0 * Math.Cos(2.0 * Math.PI * (i - 15) / 365.25)) + Math.Sin(i);
        return new WeatherDay(new DateOnly(year, 1, 1).AddDays(i), mean + 5.0, mean - 5.0, i % 5);
    })];
}
