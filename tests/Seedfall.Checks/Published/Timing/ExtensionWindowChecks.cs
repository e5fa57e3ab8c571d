using Seedfall.Checks.Published.Trade;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;
using Seedfall.Weather;

namespace Seedfall.Checks.Published.Timing;

/// <summary>
/// Windows from measured weather of the U.S. Climate Reference Network against what extension services print. The assumed thresholds
/// of the chance curve were set with an eye on these windows, so agreement shows that they can agree, not that they predict.
/// </summary>
public sealed class ExtensionWindowChecks
{
    private static readonly Dictionary<string, SeasonTiming> Timed = [];

    // Purdue AY-3: northern Illinois August 15 to September 15. UNL 2021: Nebraska August 15 to September 15. K-State agents (at second
    // hand): September. UMN Extension: north-western Minnesota August 1 to September 1.
    [Theory]
    [InlineData("IL_Champaign_9_SW", GrassSpecies.TallFescue, 8, 15, 9, 15)]
    [InlineData("IL_Champaign_9_SW", GrassSpecies.KentuckyBluegrass, 8, 15, 9, 15)]
    [InlineData("NE_Whitman_5_ENE", GrassSpecies.TallFescue, 8, 15, 9, 15)]
    [InlineData("NE_Whitman_5_ENE", GrassSpecies.KentuckyBluegrass, 8, 15, 9, 15)]
    [InlineData("KS_Manhattan_6_SSW", GrassSpecies.TallFescue, 9, 1, 9, 30)]
    [InlineData("MN_Goodridge_12_NNW", GrassSpecies.KentuckyBluegrass, 8, 1, 9, 1)]
    public void TheBestDayLiesInThePrintedWindow(string station, GrassSpecies species, int fromMonth, int fromDay, int toMonth, int toDay)
    {
        var window = Time(station, species).Window!;

        Assert.InRange(window.Best, new DateOnly(2024, fromMonth, fromDay), new DateOnly(2024, toMonth, toDay));
        Assert.True(window.Closes <= new DateOnly(2024, toMonth, toDay).AddDays(7));
    }

    // UNL (Browning 2021): tall fescue no later than mid-September in Nebraska.
    [Fact]
    public void TallFescueInNebraskaIsLateByTheEndOfSeptember() =>
        Assert.True(Time("NE_Whitman_5_ENE", GrassSpecies.TallFescue).Stand.First(c => c.Date == new DateOnly(2024, 9, 25)).Chance < 0.3);

    // Bluegrass is the slowest to establish (Maine Department of Agriculture: 30 to 90 days against 14 to 21 for ryegrass).
    [Theory]
    [InlineData("IL_Champaign_9_SW")]
    [InlineData("PA_Avondale_2_N")]
    [InlineData("WI_Necedah_5_WNW")]
    public void BluegrassClosesBeforeRyegrass(string station) =>
        Assert.True(Time(station, GrassSpecies.KentuckyBluegrass).Window!.Closes <= Time(station, GrassSpecies.PerennialRyegrass).Window!.Closes);

    // UMN Extension: dormant seeding early to mid November in Minnesota.
    [Theory]
    [InlineData("MN_Goodridge_12_NNW")]
    public void DormantSeedingInMinnesota(string station)
    {
        var timing = Time(station, GrassSpecies.KentuckyBluegrass);
        Assert.Equal("dormant seeding", timing.OtherWindowName);
        Assert.InRange(timing.OtherWindow!.Opens, new DateOnly(2024, 10, 25), new DateOnly(2024, 11, 20));
    }

    private static SeasonTiming Time(string station, GrassSpecies species)
    {
        var key = $"{station} {species}";
        lock (Timed)
        {
            return Timed.TryGetValue(key, out var timing) ? timing : Timed[key] = Plan(station, species);
        }
    }

    private static SeasonTiming Plan(string station, GrassSpecies species)
    {
        var weather = WeatherFiles.Read([Data.Path("uscrn_daily", station)]).History!;
        var lawn = TradeLawn.With(l => l with { Place = weather.Station ?? new Place(43.0, -90.0, 250.0) });
        return SeasonTimingPlanning.Plan(lawn, new Choices { Season = 2024 }, weather, TradeData.Tables, [], [species]).Value!;
    }
}
