using Seedfall.Engine.Simulation;

namespace Seedfall.Engine.Tests.Simulation;

public sealed class SoilCrossingTests
{
    [Fact]
    public void A_steady_fall_crosses_when_the_trailing_mean_does()
    {
        // 30, 29, ... : the mean of five days is the value two days back, below 20.5 first on the day of 18.
        double[] falling = [.. Enumerable.Range(0, 25).Select(i => 30.0 - i)];
        Assert.Equal(12, SoilCrossing.FirstFallBelow(falling, 20.5, 0));
    }

    [Fact]
    public void One_cool_day_is_no_crossing()
    {
        double[] values = [22, 22, 22, 22, 22, 10, 22, 22, 25, 25, 25, 22, 22];
        Assert.Null(SoilCrossing.FirstFallBelow(values, 19.5, 0));
    }

    [Fact]
    public void Days_before_the_first_index_do_not_cross() =>
        Assert.Equal(6, SoilCrossing.FirstFallBelow([10, 10, 10, 10, 10, 10, 10, 10, 10, 10], 15, 6));

    [Fact]
    public void A_fall_that_cannot_be_held_to_the_end_is_no_crossing() =>
        Assert.Null(SoilCrossing.FirstFallBelow([20, 20, 20, 20, 20, 20, 1, 1], 15, 0));
}
