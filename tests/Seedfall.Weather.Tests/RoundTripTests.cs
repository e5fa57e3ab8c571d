using CsCheck;
using Seedfall.Engine.Weather;
using static Seedfall.Weather.Tests.Files;

namespace Seedfall.Weather.Tests;

/// <summary>What our writer writes, our reader reads back the same, bit for bit.</summary>
public sealed class RoundTripTests
{
    private static readonly Gen<WeatherDay> Day =
        from mid in Gen.Double[-20, 28]
        from range in Gen.Double[0.5, 18]
        from rain in Gen.Frequency((3, Gen.Const(0.0)), (1, Gen.Double[0, 80]))
        from solar in Maybe(0, 35)
        from humidity in Maybe(5, 60)
        from wind in Maybe(0, 20)
        from soil in Maybe(-10, 40)
        from moisture in Maybe(0, 0.6)
        from filled in Gen.Bool
        select new WeatherDay(default, mid + range / 2, mid - range / 2, rain)
        {
            MeanC = solar is null ? null : mid,
            SolarMJ = solar,
            HumidityMinPct = humidity,
            HumidityMaxPct = humidity + 30,
            HumidityMeanPct = humidity + 15.0625,
            WindMs = wind,
            Soil5CmC = soil,
            SoilMoisture5Cm = moisture,
            Quality = filled ? DayQuality.Interpolated : DayQuality.Measured,
        };

    private static readonly Gen<WeatherHistory> History =
        from first in Gen.Int[0, 200_000]
        from days in Day.Array[1, 60]
        from steps in Gen.Frequency((9, Gen.Const(1)), (1, Gen.Int[5, 400])).Array[days.Length]
        from latitude in Gen.Double[-66, 66]
        from hasPlace in Gen.Bool
        select new WeatherHistory(hasPlace ? new Place(latitude, -latitude * 2, Math.Abs(latitude) * 10) : null, "Invented: Hill, \"north\"", Dated(days, steps, first), [], []);

    [Fact]
    public void Written_and_read_days_are_the_same() => History.Sample(history =>
    {
        var read = Good(Read(Text(Written(history)))).History!;
        return history.Days.SequenceEqual(read.Days) && read.Station == history.Station && read.StationName == history.StationName;
    });

    [Fact]
    public void Writing_what_was_read_gives_the_same_bytes() => History.Sample(history =>
    {
        var text = Written(history);
        return Written(Good(Read(Text(text))).History!) == text;
    });

    [Fact]
    public void The_layout_is_fixed()
    {
        var history = new WeatherHistory(
            new Place(42.31, -84.12, 281), "Invented Hill",
            [new WeatherDay(new(2023, 9, 5), 24.6, 11.2, 3.4) { SolarMJ = 18.45 }, new WeatherDay(new(2023, 9, 6), 25, 12, 0) { Quality = DayQuality.Interpolated }],
            [], []);
        Assert.Equal(
            "# station: Invented Hill\r\n# latitude_deg: 42.31\r\n# longitude_deg: -84.12\r\n# elevation_m: 281\r\n"
            + "date,tmax_c,tmin_c,rain_mm,solar_mj_m2,quality\r\n2023-09-05,24.6,11.2,3.4,18.45,\r\n2023-09-06,25,12,0,,filled\r\n",
            Written(history));
    }

    [Theory]
    [InlineData("a\nb")]
    [InlineData("a\u001b[2Jb")]
    public void A_station_name_that_would_break_the_file_is_refused_at_the_door(string name) =>
        Assert.Throws<ArgumentException>(() => Written(new WeatherHistory(null, name, [new WeatherDay(new(2023, 9, 5), 24.6, 11.2, 3.4)], [], [])));

    private static string Written(WeatherHistory history)
    {
        using var writer = new StringWriter();
        WeatherCsv.Write(history, writer);
        return writer.ToString();
    }

    private static Gen<double?> Maybe(double low, double high) =>
        Gen.Frequency((1, Gen.Const(default(double?))), (4, Gen.Double[low, high].Select(v => (double?)v)));

    private static WeatherDay[] Dated(WeatherDay[] days, int[] steps, int first)
    {
        var number = new DateOnly(1750, 1, 1).DayNumber + first % 150_000;
        return [.. days.Select((d, i) => d with { Date = DateOnly.FromDayNumber(number += i == 0 ? 0 : steps[i]) })];
    }
}
