using Seedfall.Engine.Units;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Planning.Tests.Water.Coverage;

public sealed class CanFiguresTests
{
    [Fact]
    public void Every_figure_follows_from_the_cans_by_hand()
    {
        // 1 to 8 tenths of an inch in 30 minutes: mean 0.45; the two driest 0.15, the four drier 0.25; mean deviation 0.2.
        var figures = CanFigures.Of(new CatchCanTest([.. Enumerable.Range(1, 8).Select(i => Depth.FromInches(i / 10.0))], 30.0)).ToDictionary(f => f.Id);
        Assert.Equal(0.9 * 25.4, figures["water.cans.rate"].Value, 9);
        Assert.Equal(0.15 / 0.45, figures["water.cans.low-quarter"].Value, 9);
        Assert.Equal(0.25 / 0.45, figures["water.cans.low-half"].Value, 9);
        Assert.Equal(1.0 - (0.2 / 0.45), figures["water.cans.christiansen"].Value, 9);
        Assert.Equal(4.5, figures["water.cans.scheduling"].Value, 9);

        // s = sqrt(0.42 / 7), t (7) = 1.895 by printed tables, common practice, no source read.
        Assert.Equal(1.895 * Math.Sqrt(0.42 / 7.0) / 0.45 / Math.Sqrt(8.0), figures["water.cans.half-width"].Value, 3);
        Assert.True(figures["water.cans.more"].Value > 0.0);
        Assert.All(figures.Values, f => Assert.NotEmpty(f.Working.Source));
    }

    [Fact]
    public void One_can_gives_a_rate_and_no_uniformity_and_a_dry_can_no_scheduling_coefficient()
    {
        Assert.Equal("water.cans.rate", Assert.Single(CanFigures.Of(new CatchCanTest([Depth.FromInches(0.3)], 20.0))).Id);
        Assert.DoesNotContain(CanFigures.Of(new CatchCanTest([Depth.Zero, Depth.FromInches(0.3)], 20.0)), f => f.Id == "water.cans.scheduling");
    }
}
