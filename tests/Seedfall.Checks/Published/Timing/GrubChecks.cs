using Seedfall.Checks.Published.Trade;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;

namespace Seedfall.Checks.Published.Timing;

/// <summary>Grub counts in the verdict.</summary>
public sealed class GrubChecks
{
    // Utah State University: May and June beetles 3 to 5 a square foot; seven are over it. University of Arkansas: stressed turf bears half.
    [Theory]
    [InlineData(7.0, VerdictKind.CureFirst)]
    [InlineData(3.0, VerdictKind.Recover)]
    public void SevenGrubsAreTooMany(double perSquareFoot, VerdictKind expected)
    {
        var lawn = TradeLawn.With(l => l with { Patches = [l.Patches[0] with { GrubsPerSquareFoot = perSquareFoot, Cause = DamageCause.Drought }] });
        Assert.Equal(expected, LawnVerdict.Judge(lawn, new Choices { Season = 2024 }, PatchGround.Summarize(lawn).Value!, Timed(), null, null, TradeData.Tables).Kind);
    }

    // Extension: a 4 1/4 in core is 0.0985 sq ft, so a count of 2 is about 20 a square foot (rule of ten).
    [Fact]
    public void TwoInACoreAreTwentyASquareFoot()
    {
        Assert.Equal(0.0985, GrubCount.CoreArea.SquareFeet, 0.0001);
        Assert.InRange(GrubCount.PerSquareFoot(2.0), 19.9, 20.5);
    }

    private static SeasonTiming Timed()
    {
        var lawn = TradeLawn.With(l => l);
        return SeasonTimingPlanning.Plan(
            lawn, new Choices { Season = 2024 }, new Engine.Weather.WeatherHistory(null, "none", [], [], []), TradeData.Tables, [], [GrassSpecies.TallFescue]).Value!;
    }
}
