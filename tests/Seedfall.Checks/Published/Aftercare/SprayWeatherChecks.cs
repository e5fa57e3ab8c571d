using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field.SprayWeather;

namespace Seedfall.Checks.Published.Aftercare;

/// <summary>Wind, still air and the sun of the spray window against what is printed.</summary>
public sealed class SprayWeatherChecks
{
    // Pesticide Environmental Stewardship (university consortium): 3 to 8 mph where the label is silent.
    [Theory]
    [InlineData(8.0, false)]
    [InlineData(8.1, true)]
    public void WithoutALabelEightMilesAnHourIsTheMost(double mph, bool stopped) =>
        Assert.Equal(stopped, SprayRules.Judge(Day(mph), SprayLimits.For(SprayLabel.NothingEntered)).Any(r => r.Weight == SprayVerdict.Stop));

    // Trade extension article: an inversion breaks with wind above 3 mph or 3 degF above the morning's low.
    [Theory]
    [InlineData(3.0, 2.9, true)]
    [InlineData(3.1, 2.9, false)]
    [InlineData(3.0, 3.1, false)]
    public void AnInversionBreaksByWindOrWarmth(double mph, double warmedF, bool layers) =>
        Assert.Equal(layers, Stopped(Day(mph) with { WarmedC = warmedF / 1.8, CloudPct = 0.0 }));

    // Iowa State, label example: from 1 h after sunrise to 2 h before sunset.
    [Theory]
    [InlineData(59, 600, true)]
    [InlineData(61, 600, false)]
    [InlineData(600, 119, true)]
    [InlineData(600, 121, false)]
    public void StillAirIsLeftAloneEarlyAndLate(double risen, double toSet, bool layers) =>
        Assert.Equal(layers, Stopped(Day(2.0) with { AfterSunriseMinutes = risen, BeforeSunsetMinutes = toSet, CloudPct = 0.0 }));

    // FAO-56 example 14: 3.2 m/s at 10 m is 2.4 m/s at 2 m. The nozzle's share by eq. 47 at 0.5 m: ln(67.8 x 0.5 - 5.42) / 4.87, computed.
    [Fact]
    public void WindFallsOffTowardTheGround()
    {
        var limits = SprayLimits.For(SprayLabel.NothingEntered, Length.FromMeters(0.5));
        Assert.Equal(2.4, 3.2 * limits.TwoMeterShare, 0.05);
        Assert.Equal(0.688, limits.NozzleShare, 0.001);
    }

    // Beaufort scale of the World Meteorological Organization in mph: 0 under 1, 1 1-3, 2 4-7, 3 8-12, 4 13-18, 5 19-24 (from memory, no source read);
    // and v = 0.836 B^1.5 m/s, the scale's own equation (from memory), lies within each range, half a mph left for rounding.
    [Fact]
    public void BeaufortRangesHoldTheScalesEquation() => Assert.All(Beaufort.All, b =>
        Assert.InRange(new Speed(0.836 * Math.Pow(b.Force, 1.5)).MilesPerHour, b.LeastMph - 0.5, b.MostMph + 0.5));

    // FAO-56 example 9: at 20 degrees south on September 3 the day is 11.7 h long.
    [Fact]
    public void TheSunsClockHasTheDaysLength()
    {
        var sun = DaySun.At(new Place(-20.0, 0.0, 0.0), new DateTimeOffset(2026, 9, 3, 12, 0, 0, TimeSpan.Zero));
        Assert.Equal(11.7, 2.0 * sun.HalfDayHours, 0.05);
    }

    private static bool Stopped(SprayMoment moment) => SprayRules.Judge(moment, SprayLimits.For(SprayLabel.NothingEntered)).Any(r => r.Id == "layers.likely");

    private static SprayMoment Day(double mph) => new()
    {
        WallMs = Speed.FromMilesPerHour(mph).MetersPerSecond,
        StillMs = Speed.FromMilesPerHour(mph).MetersPerSecond,
        NozzleMs = Speed.FromMilesPerHour(mph).MetersPerSecond * 0.6,
        AfterSunriseMinutes = 240.0,
        BeforeSunsetMinutes = 400.0,
        RainKnown = true,
    };
}
