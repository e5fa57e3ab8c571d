using Seedfall.Checks.Published;
using Seedfall.Checks.Published.Trade;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Validation.Choice;
using Seedfall.Planning.Timing;
using Seedfall.Weather;

namespace Seedfall.Checks.Measured;

/// <summary>
/// The choice of the seed-down day on the weather of stations of the U.S. Climate Reference Network (public domain). Judged by the
/// simulator itself: it compares rules, and is no outside evidence of stands.
/// </summary>
public sealed class ChoiceChecks
{
    private static readonly string[] Sample = ["KY_Versailles_3_NNW", "NY_Ithaca_13_E", "IL_Champaign_9_SW", "KS_Manhattan_6_SSW"];

    [Fact]
    public void OverSeasonsLeftOutSeedfallsDayDoesNoWorseThanThermometerAndCalendar()
    {
        var folder = Data.Path("uscrn_daily");
        var stations = StationFolders.Read(folder).Where(s => Sample.Contains(s.Name)).Select(s => s.History!).ToList();
        var reports = ChoiceValidation.Score(stations, ChoiceScenes.All(TradeData.Tables), ChoiceScenes.UsualDay, SoilHeatConstants.Shipped);
        Assert.Equal(["three-rounds", "one-round", "rain-only"], reports.Select(r => r.Scene));
        foreach (var report in reports)
        {
            var pooled = report.Pooled!;
            Assert.True(pooled.Seasons >= 60);
            Assert.True(pooled.Rules[SeedDownRules.Soil70].Lead >= 0.0);
            Assert.True(pooled.Rules[SeedDownRules.Calendar].Lead >= 0.0);
            Assert.InRange(pooled.Rules[SeedDownRules.Seedfall].Regret, 0.0, 0.10);
            Assert.Equal(0.0, pooled.Rules[SeedDownRules.Hindsight].Regret, 12);
        }

        // Dates matter most where nobody waters.
        Assert.True(reports[^1].Pooled!.Rules[SeedDownRules.Calendar].Lead > reports[0].Pooled!.Rules[SeedDownRules.Calendar].Lead);
    }

    [Theory]
    // Purdue AY-3 and University of Minnesota Extension windows (read): mid August to mid September in the north, September further south.
    [InlineData(44.9, 8, 30)]
    [InlineData(47.5, 8, 20)]
    [InlineData(39.0, 9, 15)]
    public void TheCalendarsDayIsTheMiddleOfItsWindow(double latitudeDeg, int month, int day) =>
        Assert.InRange(ChoiceScenes.UsualDay(latitudeDeg).DayNumber - new DateOnly(2001, month, day).DayNumber, -1, 1);
}
