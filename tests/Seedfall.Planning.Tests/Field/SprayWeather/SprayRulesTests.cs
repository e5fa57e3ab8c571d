using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Field.SprayWeather;

namespace Seedfall.Planning.Tests.Field.SprayWeather;

/// <summary>The rules themselves, reason by reason and over whatever weather comes.</summary>
public sealed class SprayRulesTests
{
    private static readonly Gen<SprayLabel> AnyLabel = Gen.Select(
        Gen.Double[2, 20].Nullable(), Gen.Double[0, 4].Nullable(), Gen.Double[0, 24].Nullable(), Gen.Double[0, 15].Nullable(), Gen.Double[20, 40].Nullable(),
        (most, least, dry, low, high) => new SprayLabel
        {
            MaximumWind = most is { } m ? Speed.FromMilesPerHour(m) : null,
            MinimumWind = least is { } l ? Speed.FromMilesPerHour(l) : null,
            RainFreeHours = dry,
            LowestAir = low is { } c ? Temperature.FromCelsius(c) : null,
            HighestAir = high is { } h ? Temperature.FromCelsius(h) : null,
        });

    private static readonly Gen<SprayMoment> AnyMoment = Gen.Select(
        Gen.Select(Gen.Double[0, 15].Nullable(), Gen.Double[0.4, 1.0], Gen.Double[0, 20].Nullable()),
        Gen.Select(Gen.Double[-10, 42].Nullable(), Gen.Double[0, 100].Nullable(), Gen.Double[0, 100].Nullable()),
        Gen.Select(Gen.Double[-600, 900], Gen.Double[-600, 900], Gen.Double[-2, 15].Nullable()),
        Gen.Select(Gen.Bool, Gen.Bool.Nullable(), Gen.Double[0, 2000].Nullable(), Gen.Bool),
        (wind, air, sun, rest) => Windy(new SprayMoment
        {
            GustWallMs = wind.Item3,
            GustNozzleMs = wind.Item3 * wind.Item2,
            AirC = air.Item1,
            HumidityPct = air.Item2,
            CloudPct = air.Item3,
            AfterSunriseMinutes = sun.Item1,
            BeforeSunsetMinutes = sun.Item2,
            WarmedC = sun.Item3,
            Hangs = rest.Item1,
            WetLeaves = rest.Item2,
            RainInMinutes = rest.Item3,
            RainKnown = rest.Item4,
        }, wind.Item1, wind.Item2));

    [Fact]
    public void A_fair_forenoon_is_a_go() => Assert.Equal(SprayVerdict.Go, Verdict(Fair));

    [Fact]
    public void More_wind_never_makes_a_worse_hour_better() => Gen.Select(AnyMoment, AnyLabel, Gen.Double[0, 15], Gen.Double[0, 10]).Sample((moment, label, wind, more) =>
    {
        var limits = SprayLimits.For(label);
        var from = Math.Max(limits.CalmMs, limits.LeastMs ?? 0.0) + 1.0e-9 + wind;
        var (less, stronger) = (Verdict(Windy(moment, from, 0.7), limits), Verdict(Windy(moment, from + more, 0.7), limits));
        Assert.True(stronger >= less, $"{from} m/s: {less}, {from + more} m/s: {stronger}");
    });

    [Fact]
    public void Above_the_labels_wind_is_always_a_stop() => Gen.Select(AnyMoment, AnyLabel, Gen.Double[1.0e-6, 10]).Sample((moment, label, over) =>
    {
        var limits = SprayLimits.For(label);
        Assert.Equal(SprayVerdict.Stop, Verdict(Windy(moment, limits.WallMs + over, 0.7), limits));
        Assert.Equal(SprayVerdict.Stop, Verdict(moment with { GustWallMs = limits.WallMs + over }, limits));
    });

    [Fact]
    public void Above_the_preferred_wind_at_the_nozzle_is_never_a_go() => Gen.Select(AnyMoment, AnyLabel, Gen.Double[1.0e-6, 10]).Sample((moment, label, over) =>
    {
        var limits = SprayLimits.For(label);
        Assert.NotEqual(SprayVerdict.Go, Verdict(moment with { WallMs = limits.PreferredNozzleMs + over, NozzleMs = limits.PreferredNozzleMs + over }, limits));
    });

    [Fact]
    public void Rain_nearer_is_never_better() => Gen.Select(AnyMoment, AnyLabel, Gen.Double[0, 1500], Gen.Double[0, 1500]).Sample((moment, label, minutes, later) =>
    {
        var limits = SprayLimits.For(label);
        var (near, far) = (Verdict(moment with { RainInMinutes = minutes }, limits), Verdict(moment with { RainInMinutes = minutes + later }, limits));
        Assert.True(near >= far, $"rain in {minutes}: {near}, in {minutes + later}: {far}");
    });

    [Fact]
    public void A_stricter_label_never_makes_an_hour_better() => Gen.Select(AnyMoment, AnyLabel, Gen.Double[0, 1], Gen.Double[0, 12]).Sample((moment, label, share, hours) =>
    {
        var entered = label with { MaximumWind = label.MaximumWind ?? Speed.FromMilesPerHour(8.0), RainFreeHours = label.RainFreeHours ?? 6.0 };
        var stricter = entered with { MaximumWind = entered.MaximumWind!.Value * share, RainFreeHours = entered.RainFreeHours + hours };
        Assert.True(Verdict(moment, SprayLimits.For(stricter)) >= Verdict(moment, SprayLimits.For(entered)));
    });

    [Fact]
    public void What_is_seen_to_hang_or_to_fall_always_stops() => Gen.Select(AnyMoment, AnyLabel).Sample((moment, label) =>
    {
        Assert.Equal(SprayVerdict.Stop, Verdict(moment with { Hangs = true }, SprayLimits.For(label)));
        Assert.Equal(SprayVerdict.Stop, Verdict(moment with { RainInMinutes = 0.0 }, SprayLimits.For(label)));
    });

    [Fact]
    public void Every_reason_has_words_and_the_worst_comes_first() => Gen.Select(AnyMoment, AnyLabel).Sample((moment, label) =>
    {
        var reasons = SprayRules.Judge(moment, SprayLimits.For(label));
        Assert.All(reasons, r => Assert.DoesNotContain('{', r.Statement + r.Instead));
        Assert.Equal(reasons.OrderByDescending(r => r.Weight).Select(r => r.Weight), reasons.Select(r => r.Weight));
        Assert.Equal(reasons.Select(r => r.Id).Distinct().Count(), reasons.Count);
        Assert.Equal(reasons.Count == 0 ? SprayVerdict.Go : reasons[0].Weight, SprayRules.VerdictOf(reasons));
    });

    [Theory]
    [InlineData(30, 600, null, 0, "layers.likely")]
    [InlineData(120, 600, 1.0, 0, "layers.likely")]
    [InlineData(120, 600, 2.0, 0, "wind.light")]
    [InlineData(120, 600, null, 0, "wind.light")]
    [InlineData(600, 100, null, 0, "layers.likely")]
    [InlineData(600, 100, null, 100, "wind.light")]
    [InlineData(600, 130, null, 0, "wind.light")]
    public void Still_air_lies_in_layers_while_the_sun_is_low_and_the_sky_open(double risen, double toSet, double? warmed, double cloud, string expected)
    {
        var still = Windy(Fair, Speed.FromMilesPerHour(2.0).MetersPerSecond, 0.7) with { AfterSunriseMinutes = risen, BeforeSunsetMinutes = toSet, WarmedC = warmed, CloudPct = cloud };
        Assert.Contains(expected, SprayRules.Judge(still, SprayLimits.For(SprayLabel.NothingEntered)).Select(r => r.Id));
        Assert.DoesNotContain(SprayRules.Judge(Windy(still, 1.4, 0.7), SprayLimits.For(SprayLabel.NothingEntered)), r => r.Id == "layers.likely");
    }

    [Theory]
    [InlineData(359.0, true, "rain.label", SprayVerdict.Stop)]
    [InlineData(359.0, false, "rain.usual", SprayVerdict.Wait)]
    [InlineData(360.0, true, null, SprayVerdict.Go)]
    public void Rain_too_soon_is_a_stop_only_where_the_label_says_so(double minutes, bool entered, string? id, SprayVerdict verdict)
    {
        var limits = SprayLimits.For(new SprayLabel { RainFreeHours = entered ? 6.0 : null });
        var reasons = SprayRules.Judge(Fair with { RainInMinutes = minutes }, limits);
        Assert.Equal(id, reasons.Select(r => r.Id).FirstOrDefault());
        Assert.Equal(verdict, SprayRules.VerdictOf(reasons));
    }

    [Fact]
    public void Degrees_stop_by_label_and_wait_by_custom()
    {
        var hot = Fair with { AirC = 31.0, HumidityPct = 60.0 };
        Assert.Equal(SprayVerdict.Wait, Verdict(hot));
        Assert.Equal(SprayVerdict.Stop, Verdict(hot, SprayLimits.For(new SprayLabel { HighestAir = Temperature.FromFahrenheit(85) })));
        Assert.Equal(SprayVerdict.Go, Verdict(hot, SprayLimits.For(new SprayLabel { HighestAir = Temperature.FromFahrenheit(90) })));
        Assert.Equal(SprayVerdict.Wait, Verdict(Fair with { AirC = 3.0, HumidityPct = 60.0 }));
    }

    [Theory]
    [InlineData(30, 30, "delta.dry")]
    [InlineData(28, 45, "delta.drying")]
    [InlineData(15, 88, "delta.damp")]
    public void Delta_t_has_its_bands_and_says_that_they_are_not_the_custom(double celsius, double humidity, string id)
    {
        var reason = SprayRules.Judge(Fair with { AirC = celsius, HumidityPct = humidity, WetLeaves = false }, SprayLimits.For(SprayLabel.NothingEntered)).First(r => r.Id.StartsWith("delta", StringComparison.Ordinal));
        Assert.Equal(id, reason.Id);
        Assert.Contains("Not standard practice in the United States", reason.Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_known_of_wind_or_rain_is_a_wait_that_says_so()
    {
        var ids = SprayRules.Judge(new SprayMoment { AfterSunriseMinutes = 300, BeforeSunsetMinutes = 300 }, SprayLimits.For(SprayLabel.NothingEntered)).Select(r => r.Id).ToList();
        Assert.Equal(["wind.unknown", "rain.unknown"], ids);
    }

    internal static SprayMoment Fair { get; } = Windy(new SprayMoment { AirC = 20.0, HumidityPct = 60.0, CloudPct = 20.0, AfterSunriseMinutes = 200.0, BeforeSunsetMinutes = 500.0, RainKnown = true }, 2.0, 0.7);

    private static SprayVerdict Verdict(SprayMoment moment, SprayLimits? limits = null) => SprayRules.VerdictOf(SprayRules.Judge(moment, limits ?? SprayLimits.For(SprayLabel.NothingEntered)));

    private static SprayMoment Windy(SprayMoment moment, double? atTwoMetersMs, double share) => moment with { WallMs = atTwoMetersMs, StillMs = atTwoMetersMs, NozzleMs = atTwoMetersMs * share };
}
