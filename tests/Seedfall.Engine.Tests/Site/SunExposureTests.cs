using CsCheck;
using Seedfall.Engine.Site;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Site;

public sealed class SunExposureTests
{
    private static readonly Place Here = new(42.31, -84.12, 280);
    private static readonly DateOnly Day = new(2026, 9, 21);

    private static readonly Gen<SkyScreen> AnyScreen = Gen.Select(Gen.Double[0, 359], Gen.Double[1, 359], Gen.Double[0, 90], Gen.Double[0, 1])
        .Select((from, wide, height, through) => new SkyScreen(from, (from + wide) % 360.0, height, through));

    [Fact]
    public void Open_level_ground_has_the_whole_day_and_all_its_light()
    {
        var day = SunExposure.On(Here, Day, []);
        Assert.Equal(day.OpenHours, day.DirectHours, 1e-6);
        Assert.Equal(1.0, day.KeptShare, 1e-9);
        Assert.Equal(SunTimes.On(Here, Day).Rise, day.FirstSun!.Value, TimeSpan.FromSeconds(1));
        Assert.Equal(SunTimes.On(Here, Day).Set, day.LastSun!.Value, TimeSpan.FromSeconds(1));
    }

    [Fact]
    public void A_wall_all_around_leaves_only_the_top_of_the_suns_path()
    {
        Assert.Equal(0.0, SunExposure.On(Here, Day, [new(0, 360, 90, 0)]).DirectHours);
        var low = SunExposure.On(Here, Day, [new(0, 360, 30, 0)]);
        Assert.InRange(low.DirectHours, 5.0, 7.0);
        Assert.Null(SunExposure.On(Here, Day, [new(0, 360, 90, 0)]).FirstSun);
    }

    [Fact]
    public void A_house_in_the_east_takes_the_morning()
    {
        var day = SunExposure.On(Here, Day, [new(0, 180, 90, 0)]);
        Assert.Equal(0.5 * day.OpenHours, day.DirectHours, 0.1);
        Assert.Equal(SunTimes.On(Here, Day).Set, day.LastSun!.Value, TimeSpan.FromSeconds(1));
    }

    [Fact]
    public void A_southern_slope_gains_in_autumn_and_a_northern_one_loses()
    {
        Assert.InRange(SunExposure.On(Here, Day, [], new GroundTilt(20, 180)).KeptShare, 1.05, 1.3);
        Assert.InRange(SunExposure.On(Here, Day, [], new GroundTilt(20, 0)).KeptShare, 0.6, 0.9);
    }

    [Fact]
    public void Hours_fall_by_what_the_screen_keeps_back() =>
        AnyScreen.Sample(screen =>
        {
            var (open, dark, veiled) = (SunExposure.On(Here, Day, [], stepMinutes: 4), SunExposure.On(Here, Day, [screen with { Through = 0 }], stepMinutes: 4), SunExposure.On(Here, Day, [screen], stepMinutes: 4));
            Assert.Equal(open.DirectHours - ((1.0 - screen.Through) * (open.DirectHours - dark.DirectHours)), veiled.DirectHours, 1e-9);
            Assert.InRange(veiled.KeptShare, dark.KeptShare - 1e-12, open.KeptShare + 1e-12);
        }, iter: 60);

    [Fact]
    public void Another_screen_never_adds_light() =>
        Gen.Select(AnyScreen, AnyScreen).Sample((a, b) =>
        {
            var (one, two) = (SunExposure.On(Here, Day, [a], stepMinutes: 6), SunExposure.On(Here, Day, [a, b], stepMinutes: 6));
            Assert.True(two.DirectHours <= one.DirectHours + 1e-12);
            Assert.True(two.KeptShare <= one.KeptShare + 1e-12);
            Assert.InRange(SkyView.Factor([a, b]), 0.0, SkyView.Factor([a]) + 1e-12);
        }, iter: 40);

    [Theory]
    [InlineData(-36.0, 147.0)]
    [InlineData(66.0, 25.0)]
    [InlineData(52.0, 179.5)]
    [InlineData(52.0, -179.5)]
    public void Rise_and_set_belong_to_the_places_own_day(double latitudeDeg, double longitudeDeg)
    {
        for (var day = new DateOnly(2026, 1, 1); day.Year == 2026; day = day.AddDays(13))
        {
            var times = SunTimes.On(new Place(latitudeDeg, longitudeDeg, 0), day);
            Assert.InRange(times.Hours, 0.0, 24.0);
            var noon = times.Rise + ((times.Set - times.Rise) / 2);
            Assert.Equal(day, DateOnly.FromDateTime(noon.UtcDateTime.AddHours(longitudeDeg / 15.0)));
        }
    }

    [Fact]
    public void Polar_night_has_no_sun_and_polar_day_is_whole()
    {
        Assert.Equal(0.0, SunExposure.On(new Place(75, 20, 0), new DateOnly(2026, 12, 21), []).DirectHours);
        Assert.Equal(24.0, SunTimes.On(new Place(75, 20, 0), new DateOnly(2026, 6, 21)).Hours, 1e-6);
    }
}
