using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Weather;

public sealed class WeatherHistoryTests
{
    private static readonly DateOnly Start = new(2020, 2, 27);

    [Fact]
    public void ASpanIsThereOnlyWhereEveryDayIs()
    {
        var history = History(0, 1, 2, 3, 6, 7);
        Assert.Equal(4, history.Span(Start, Start.AddDays(3))!.Count);
        Assert.Null(history.Span(Start, Start.AddDays(6)));
        Assert.Null(history.Span(Start.AddDays(6), Start.AddDays(8)));
        Assert.Null(history.Day(Start.AddDays(4)));
    }

    [Fact]
    public void ACopyWithOtherDaysAnswersFromThem()
    {
        var copy = History(0, 1, 2, 3) with { Days = [.. History(10, 11).Days] };
        Assert.Null(copy.Day(Start));
        Assert.Equal(Start.AddDays(11), copy.Day(Start.AddDays(11))!.Date);
        Assert.Equal(2, copy.Span(Start.AddDays(10), Start.AddDays(11))!.Count);
    }

    [Fact]
    public void DaysThatDoNotAscendAreRefused() => Assert.Throws<ArgumentException>(() => History(3, 3));

    private static WeatherHistory History(params int[] offsets) =>
        new(null, "test", [.. offsets.Select(o => new WeatherDay(Start.AddDays(o), 20.0, 10.0, 0.0))], [], []);
}
