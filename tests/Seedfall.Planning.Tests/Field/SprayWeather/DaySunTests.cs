using CsCheck;
using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field.SprayWeather;

namespace Seedfall.Planning.Tests.Field.SprayWeather;

/// <summary>The sun's clock against the position of the sun by another way.</summary>
public sealed class DaySunTests
{
    private static readonly Gen<(Place Place, DateTimeOffset Instant)> Anywhere = Gen.Select(Gen.Double[-58, 58], Gen.Double[-180, 180], Gen.Int[0, 365 * 24 * 60])
        .Select((latitude, longitude, minutes) => (new Place(latitude, longitude, 100.0), new DateTimeOffset(2026, 1, 1, 0, 0, 0, TimeSpan.Zero).AddMinutes(minutes)));

    [Fact]
    public void At_its_sunrise_and_sunset_the_sun_stands_near_the_horizon() => Anywhere.Sample(at =>
    {
        var sun = DaySun.At(at.Place, at.Instant);
        foreach (var edge in (DateTimeOffset[])[at.Instant.AddMinutes(-sun.AfterSunriseMinutes(at.Instant)), at.Instant.AddMinutes(sun.BeforeSunsetMinutes(at.Instant))])
        {
            Assert.InRange(SunPosition.At(at.Place, edge).AltitudeDeg, -1.5, 1.5);
        }
    });

    [Fact]
    public void It_is_day_while_the_sun_stands_well_above_the_horizon_and_night_well_below() => Anywhere.Sample(at =>
    {
        var sun = DaySun.At(at.Place, at.Instant);
        var altitude = SunPosition.At(at.Place, at.Instant).AltitudeDeg;
        var up = sun.AfterSunriseMinutes(at.Instant) >= 0.0 && sun.BeforeSunsetMinutes(at.Instant) >= 0.0;
        Assert.True(Math.Abs(altitude) < 2.0 || up == altitude > 0.0, $"{at.Place} {at.Instant:u}: {altitude} degrees");
    });
}
