using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field.SprayWeather;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Tests.Field.SprayWeather;

/// <summary>The judgment on the spot.</summary>
public sealed class SprayNowTests
{
    private static readonly DateTimeOffset Forenoon = new(2026, 9, 5, 10, 0, 0, TimeSpan.FromHours(-5));

    private static readonly DaySun Sun = DaySun.At(new Place(41.6, -89.9, 230.0), Forenoon);

    private static SprayReading Fair { get; } = new() { Wind = Speed.FromMilesPerHour(4.0), Gust = Speed.FromMilesPerHour(5.0), Air = Temperature.FromFahrenheit(68.0), Humidity = Fraction.FromPercent(60.0), Sky = SkyCover.Broken, WetLeaves = false, NoRainInSight = true };

    [Fact]
    public void Four_miles_an_hour_at_the_nozzle_on_a_fair_forenoon_is_a_go()
    {
        var judged = SprayNow.Judge(Fair, new SprayLabel { MaximumWind = Speed.FromMilesPerHour(10.0) }, Sun, Forenoon);
        Assert.Equal(SprayVerdict.Go, judged.Verdict);
        Assert.Empty(judged.Reasons);
        Assert.Equal(4.0, new Speed(judged.Figures.Single(f => f.Id == "spray.wind.nozzle").Value).MilesPerHour, 1e-9);
        Assert.All(judged.Figures, f => Assert.NotEmpty(f.Working.Source));
    }

    [Fact]
    public void Wind_over_the_label_is_refused_by_the_label_even_where_the_nozzle_meets_less()
    {
        var judged = SprayNow.Judge(Fair with { Wind = Speed.FromMilesPerHour(10.5), Held = WindHeld.Overhead }, new SprayLabel { MaximumWind = Speed.FromMilesPerHour(10.0) }, Sun, Forenoon);
        Assert.Equal(SprayVerdict.Stop, judged.Verdict);
        Assert.Equal("wind.label", judged.Reasons[0].Id);
        Assert.StartsWith("Wind 10.5 mph (4.7 m/s) is over the label’s 10 mph (4.5 m/s).", judged.Reasons[0].Statement, StringComparison.Ordinal);
        Assert.True(judged.Figures.Single(f => f.Id == "spray.wind.nozzle").Value < Speed.FromMilesPerHour(8.0).MetersPerSecond);
    }

    [Theory]
    [InlineData(0, SprayVerdict.Go, "wind.light")]
    [InlineData(1, SprayVerdict.Go, "wind.light")]
    [InlineData(2, SprayVerdict.Go, null)]
    [InlineData(3, SprayVerdict.Wait, "wind.brisk")]
    [InlineData(4, SprayVerdict.Stop, "wind.label")]
    [InlineData(5, SprayVerdict.Stop, "wind.label")]
    public void Signs_stand_for_the_upper_end_of_their_range(int force, SprayVerdict verdict, string? first)
    {
        var judged = SprayNow.Judge(Fair with { Wind = null, Gust = null, Force = force }, new SprayLabel { MaximumWind = Speed.FromMilesPerHour(10.0) }, Sun, Forenoon);
        Assert.Equal(verdict, judged.Verdict);
        Assert.Equal(first, judged.Reasons.Select(r => r.Id).FirstOrDefault());
    }

    [Fact]
    public void At_dusk_with_smoke_leaning_it_is_a_stop_that_says_what_would_change_it()
    {
        var dusk = new DateTimeOffset(2026, 9, 5, 18, 0, 0, TimeSpan.FromHours(-5));
        var judged = SprayNow.Judge(Fair with { Wind = null, Gust = null, Force = 1, Sky = SkyCover.Clear }, SprayLabel.NothingEntered, Sun, dusk);
        Assert.Equal(SprayVerdict.Stop, judged.Verdict);
        Assert.Equal("layers.likely", judged.Reasons[0].Id);
        Assert.Contains("wind above 3 mph", judged.Reasons[0].Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_read_or_entered_is_named()
    {
        var judged = SprayNow.Judge(new SprayReading { Force = 2, NoRainInSight = true }, SprayLabel.NothingEntered, Sun, Forenoon);
        Assert.Equal(
            ["assumed.label.air", "assumed.label.rainfree", "assumed.label.wind", "assumed.spray.air", "assumed.spray.gust", "assumed.spray.nozzle", "assumed.spray.profile", "assumed.spray.sky"],
            judged.Assumptions.Select(a => a.Id).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_label_decides_and_leaves_nothing_assumed()
    {
        var label = new SprayLabel { MaximumWind = Speed.FromMilesPerHour(10.0), RainFreeHours = 0.0, LowestAir = Temperature.FromFahrenheit(45.0), HighestAir = Temperature.FromFahrenheit(90.0) };
        var judged = SprayNow.Judge(Fair with { RainInMinutes = 10.0, NoRainInSight = false }, label, Sun, Forenoon, Length.FromInches(18.0));
        Assert.Equal(SprayVerdict.Go, judged.Verdict);
        Assert.Equal(["assumed.spray.profile"], judged.Assumptions.Select(a => a.Id));
    }

    [Fact]
    public void Absurd_readings_are_refused_at_the_door()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SprayNow.Judge(Fair with { Wind = Speed.FromMilesPerHour(-1.0) }, SprayLabel.NothingEntered, Sun, Forenoon));
        Assert.Throws<ArgumentOutOfRangeException>(() => SprayNow.Judge(Fair with { Wind = null, Force = 6 }, SprayLabel.NothingEntered, Sun, Forenoon));
        Assert.Throws<ArgumentOutOfRangeException>(() => SprayNow.Judge(Fair with { RainInMinutes = -1.0 }, SprayLabel.NothingEntered, Sun, Forenoon));
        Assert.Throws<ArgumentOutOfRangeException>(() => SprayLimits.For(SprayLabel.NothingEntered, Length.FromMeters(0.05)));
    }

    [Fact]
    public void Weather_written_with_an_application_can_be_judged()
    {
        var written = new FieldWeather { Wind = Speed.FromMilesPerHour(12.0), Gust = Speed.FromMilesPerHour(14.0), Air = Temperature.FromFahrenheit(70.0), Humidity = Fraction.FromPercent(55.0) };
        var judged = SprayNow.Judge(SprayReading.Of(written, WindHeld.Overhead) with { NoRainInSight = true }, new SprayLabel { MaximumWind = Speed.FromMilesPerHour(10.0) }, Sun, Forenoon);
        Assert.Equal(["wind.label", "gust.label"], judged.Reasons.Where(r => r.Weight == SprayVerdict.Stop).Select(r => r.Id));
    }

    [Fact]
    public void One_begins_downwind_and_works_into_the_wind()
    {
        Assert.Contains(SprayHolding.For(WindFrom.West), a => a.Statement.StartsWith("Begin along the east edge and work toward the west", StringComparison.Ordinal));
        Assert.Contains(SprayHolding.For(WindFrom.NorthEast), a => a.Statement.StartsWith("Begin along the southwest edge", StringComparison.Ordinal));
        Assert.Contains(SprayHolding.For(null), a => a.Statement.StartsWith("Begin along the downwind edge", StringComparison.Ordinal));
    }
}
