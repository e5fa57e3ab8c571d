using System.Security.Cryptography;
using Seedfall.Engine.Weather;
using Seedfall.Exchange.Demo;
using Seedfall.Weather;

namespace Seedfall.Exchange.Tests.Demo;

public sealed class DemoTownTests
{
    [Fact]
    public void The_three_lawns_are_read_and_say_they_are_invented()
    {
        Assert.Equal(DemoTown.Names, DemoTown.Lawns.Select(l => l.Id));
        Assert.All(DemoTown.Lawns, l => Assert.Contains("(invented)", l.Name));
        Assert.Contains("invented", DemoTown.WeatherFileName);
        Assert.Contains("INVENTED", DemoTown.StationName);
    }

    [Fact]
    public void The_weather_is_the_same_bytes_every_time()
    {
        using var writer = new StringWriter();
        WeatherCsv.Write(DemoTown.Weather, writer);
        var hash = Convert.ToHexStringLower(SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(writer.ToString())));
        Assert.Equal("02d3777b19089694641546726e86b1854f02e056990ed1b9001fb9ad15334177", hash);
    }

    [Fact]
    public void The_written_weather_is_read_back_without_loss()
    {
        var file = new MemoryStream();
        using (var writer = new StreamWriter(file, leaveOpen: true))
        {
            WeatherCsv.Write(DemoTown.Weather, writer);
        }

        var result = WeatherFiles.Read([new WeatherInput(DemoTown.WeatherFileName, file.Length, () => new MemoryStream(file.ToArray()))]);
        Assert.True(result.IsRead, string.Join('\n', result.Problems));
        Assert.Equal(DemoTown.Weather.Days, result.History.Days);
        Assert.Equal(DemoTown.StationName, result.History.StationName);
    }

    [Fact]
    public void The_weather_looks_like_a_cool_humid_summer_climate()
    {
        var days = DemoTown.Weather.Days;
        Assert.InRange(days.Average(d => d.AverageC), 8.5, 11.5);
        Assert.InRange(Month(days, 7).Average(d => d.AverageC), 22.0, 26.0);
        Assert.InRange(Month(days, 1).Average(d => d.AverageC), -7.0, -1.0);
        Assert.InRange(days.Sum(d => d.RainMm) / (days.Count / 365.25), 600.0, 1000.0);
        Assert.All(days, d => Assert.True(d.TminC <= d.TmaxC && d.RainMm >= 0.0 && d.SolarMJ >= 0.0 && d.HumidityMinPct <= d.HumidityMaxPct));
    }

    private static List<WeatherDay> Month(IReadOnlyList<WeatherDay> days, int month) => [.. days.Where(d => d.Date.Month == month)];
}
