using Seedfall.Engine.Numerics;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Planning.Tests.Ground.Walks;

/// <summary>
/// The stated range against simulated walks. What is simulated: an offset common to the walk, a first-order autoregressive
/// wander (the kind of process Soundy and others 2020, Sensors 20(21), 6050, find in stationary receivers), a little jitter,
/// and a phone carried a hand beside the edge. The magnitudes are common practice, no source read.
/// </summary>
public sealed class WalkCoverageTests(ITestOutputHelper output)
{
    private const int WalksEach = 120;

    [Fact]
    public void The_range_holds_nine_times_in_ten()
    {
        var (held, told, refused, misses) = (0, 0, 0, 0.0);
        var chance = new SplitMix64(20260820);
        foreach (var accuracyM in (double[])[2.0, 3.0, 4.5])
        {
            foreach (var (name, lawn) in SimulatedWalk.Lawns)
            {
                var one = Count(lawn, new(accuracyM, 0.98, 60.0, 3.0, 0.09), chance);
                output.WriteLine($"{accuracyM} m, {name}: held {one.Held} of {one.Told}, refused {one.Refused}, mean error {100 * one.Bias / Math.Max(1, one.Told):0.0} %, band {100 * one.Band / Math.Max(1, one.Told):0} %");
                (held, told, refused, misses) = (held + one.Held, told + one.Told, refused + one.Refused, misses + one.Bias);
            }
        }

        output.WriteLine($"all: held {held} of {told} ({100.0 * held / told:0.0} %), refused {refused}, mean error {100 * misses / told:0.00} %");
        Assert.True(told >= 1200, $"{told} walks gave an outline");
        Assert.InRange((double)held / told, 0.86, 0.94);
        Assert.InRange(misses / told, -0.02, 0.02);
    }

    [Theory]
    [InlineData(15.0)]
    [InlineData(30.0)]
    [InlineData(120.0)]
    [InlineData(300.0)]
    public void Air_that_wanders_faster_or_slower_than_taken(double wanderSeconds)
    {
        var (held, told) = (0, 0);
        var chance = new SplitMix64(7);
        foreach (var (_, lawn) in SimulatedWalk.Lawns)
        {
            var one = Count(lawn, new(3.0, 0.98, wanderSeconds, 3.0, 0.09), chance);
            (held, told) = (held + one.Held, told + one.Told);
        }

        output.WriteLine($"{wanderSeconds} s: held {held} of {told} ({100.0 * held / told:0.0} %)");
        Assert.InRange((double)held / told, 0.80, 1.0);
    }

    private static (int Held, int Told, int Refused, double Bias, double Band) Count(GroundPoint[] lawn, WalkAir air, SplitMix64 chance)
    {
        var truthM2 = PolygonArea.Of(lawn, []).SquareMeters;
        var (held, told, refused, bias, band) = (0, 0, 0, 0.0, 0.0);
        for (var i = 0; i < WalksEach; i++)
        {
            if (EdgeWalk.Outline(SimulatedWalk.Round(lawn, air, chance)) is not WalkResult.Walked walk)
            {
                refused++;
                continue;
            }

            told++;
            held += Math.Abs(walk.Area.SquareMeters - truthM2) <= walk.Band.Value * walk.Area.SquareMeters ? 1 : 0;
            bias += walk.Area.SquareMeters / truthM2 - 1.0;
            band += walk.Band.Value;
        }

        return (held, told, refused, bias, band);
    }
}
