using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Site;
using Seedfall.Engine.Weather;

namespace Seedfall.Checks.Published.Site;

/// <summary>Sun position, sunrise and the view of the sky against printed values.</summary>
public sealed class SunChecks
{
    private static readonly Place Golden = new(39.742476, -105.1786, 1830.14);

    // Reda and Andreas 2004, Solar Position Algorithm, NREL/TP-560-34302, appendix A.5, and the output printed in its test program:
    // 820 mbar, 11 degC, zenith 50.111622, azimuth 194.340241 degrees.
    [Fact]
    public void ApparentSunOfTheSolarPositionAlgorithmsExample()
    {
        var sun = SunPosition.At(Golden, new DateTimeOffset(2003, 10, 17, 12, 30, 30, TimeSpan.FromHours(-7)));
        Assert.Equal(90.0 - 50.111622, sun.SeenAltitudeDeg(82.0, 11.0), 0.004);
        Assert.Equal(194.340241, sun.AzimuthDeg, 0.01);
    }

    // The same example: sunrise 06:12:43, sunset 17:20:19 local standard time. The algorithm works in days of universal time, and at
    // seven hours west the sunset within the universal 17 October is that of the evening of the 16th.
    [Fact]
    public void SunriseAndSunsetOfTheSolarPositionAlgorithmsExample()
    {
        var times = SunTimes.On(Golden, new DateOnly(2003, 10, 17));
        Assert.Equal(new DateTimeOffset(2003, 10, 17, 6, 12, 43, TimeSpan.FromHours(-7)), times.Rise, TimeSpan.FromSeconds(5));
        Assert.Equal(new DateTimeOffset(2003, 10, 16, 17, 20, 19, TimeSpan.FromHours(-7)), SunTimes.On(Golden, new DateOnly(2003, 10, 16)).Set, TimeSpan.FromSeconds(5));
    }

    // The same example: incidence 25.187000 degrees on a surface sloped 30 degrees and turned 10 degrees from south to east.
    [Fact]
    public void IncidenceOnASlopeOfTheSolarPositionAlgorithmsExample()
    {
        var sun = SunPosition.At(Golden, new DateTimeOffset(2003, 10, 17, 12, 30, 30, TimeSpan.FromHours(-7)));
        var tilt = new GroundTilt(100.0 * Math.Tan(30.0 * Math.PI / 180.0), 170.0);
        Assert.Equal(25.187, Math.Acos(tilt.CosineIncidence(sun.SeenAltitudeDeg(82.0, 11.0), sun.AzimuthDeg)) * 180.0 / Math.PI, 0.005);
    }

    // Meeus 1998, Astronomical Algorithms, example 25.a, 1992 October 13, 0 h dynamical time: longitude 199.90895, right ascension
    // 198.38083, declination -7.78507 degrees, distance 0.99766 (common practice, no source read: the example from memory).
    [Fact]
    public void SunOfOctober1992()
    {
        var sun = SunCoordinates.At(-0.072183436);
        Assert.Equal(199.90895, sun.LongitudeDeg, 2e-5);
        Assert.Equal(198.38083, (sun.RightAscensionRad * 180.0 / Math.PI) + 360.0, 2e-5);
        Assert.Equal(-7.78507, sun.DeclinationRad * 180.0 / Math.PI, 2e-5);
        Assert.Equal(0.99766, sun.DistanceAu, 1e-5);
    }

    // FAO-56 example 9: 11.7 h of possible sun on 3 September at 20 degrees south; FAO-56 table 2.7 (annex 2): 12.2 h in the
    // middle of September at 40 degrees north, 11.1 h in the middle of October (table from memory: common practice, no source
    // read). Ours count refraction and the sun's width, 8 to 10 minutes more.
    [Theory]
    [InlineData(-20.0, 9, 3, 11.7)]
    [InlineData(40.0, 9, 15, 12.3)]
    [InlineData(40.0, 10, 15, 11.1)]
    public void DayLengths(double latitudeDeg, int month, int day, double hours) =>
        Assert.Equal(hours + 0.15, SunTimes.On(new Place(latitudeDeg, 0, 0), new DateOnly(2001, month, day)).Hours, 0.15);

    // Saemundsson's refraction at the horizon, 28.9 minutes of arc at 1010 mbar and 10 degC (Meeus 1998, chapter 16; common
    // practice, no source read).
    [Fact]
    public void RefractionAtTheHorizon() => Assert.Equal(28.98 / 60.0, new SunPosition(0.0024, 180.0).SeenAltitudeDeg(), 0.005);

    // Oke 1987, Boundary Layer Climates: sky view of a basin with horizon h all around, cos^2 h; along an endless wall half of the
    // horizon at h, (1 + cos^2 h) / 2.
    [Theory]
    [InlineData(10)]
    [InlineData(35)]
    [InlineData(60)]
    public void SkyOfABasin(double heightDeg)
    {
        var cosine = Math.Cos(heightDeg * Math.PI / 180.0);
        Assert.Equal(cosine * cosine, SkyView.Factor([new SkyScreen(0, 360, heightDeg, 0)]), 1e-9);
        Assert.Equal(0.5 * (1.0 + (cosine * cosine)), SkyView.Factor([new SkyScreen(90, 270, heightDeg, 0)]), 1e-9);
    }
}
