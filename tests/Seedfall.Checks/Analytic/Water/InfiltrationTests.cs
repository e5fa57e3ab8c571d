using CsCheck;
using Seedfall.Engine.Soil.Water;

namespace Seedfall.Checks.Analytic.Water;

public sealed class InfiltrationTests
{
    [Theory]
    // Green-Ampt class values of Rawls et al. 1983 (from memory, common practice); depths after an hour of ponding computed.
    [InlineData(6.5, 166.8, 0.34, 31.648, 18.148)]
    [InlineData(3.4, 88.9, 0.34, 16.687, 9.558)]
    [InlineData(10.9, 110.1, 0.30, 34.542, 21.323)]
    public void AnHourOfPonding(double conductivity, double suction, double deficit, double depthMm, double rateMmH)
    {
        var soil = new GreenAmpt(conductivity, suction, deficit);
        Assert.Equal(depthMm, soil.PondedMm(1.0), 1e-3);
        Assert.Equal(rateMmH, soil.CapacityMmH(soil.PondedMm(1.0)), 1e-3);
    }

    [Theory]
    // Ponding under 20 mm/h: t = K psi d / (i (i - K)), computed.
    [InlineData(6.5, 166.8, 0.34, 1.3653, 27.306)]
    [InlineData(3.4, 88.9, 0.34, 0.3095, 6.191)]
    [InlineData(10.9, 110.1, 0.30, 1.9782, 39.563)]
    public void SteadyRainPonds(double conductivity, double suction, double deficit, double hours, double depthMm)
    {
        var soil = new GreenAmpt(conductivity, suction, deficit);
        Assert.Equal(hours, soil.PondingHours(20.0)!.Value, 1e-4);
        Assert.Equal(depthMm, 20.0 * soil.PondingHours(20.0)!.Value, 1e-2);
        Assert.Equal(20.0, soil.CapacityMmH(20.0 * soil.PondingHours(20.0)!.Value), 1e-9);
        Assert.Null(soil.PondingHours(conductivity));
    }

    [Fact]
    public void ThePondedDepthSolvesItsEquationAndNothingInfiltratesAtOnce()
    {
        Gen.Select(Gen.Double[0.3, 120], Gen.Double[40, 320], Gen.Double[0.01, 0.45], Gen.Double[1e-4, 48]).Sample((conductivity, suction, deficit, hours) =>
        {
            var depth = new GreenAmpt(conductivity, suction, deficit).PondedMm(hours);
            var scale = suction * deficit;
            Assert.Equal(conductivity * hours, depth - (scale * Math.Log(1.0 + (depth / scale))), 1e-8 * (1.0 + depth));
        });
        Assert.Equal(0.0, new GreenAmpt(5.0, 100.0, 0.3).PondedMm(0.0));
    }

    [Fact]
    public void EarlyPondingFollowsThePhilipRootOfTime()
    {
        // Green-Ampt for short times is Philip's first term with S^2 = 2 K psi d (Philip 1957); the second is K / 3 larger than 0.
        var soil = new GreenAmpt(6.5, 166.8, 0.34);
        var philip = new Philip(Math.Sqrt(2.0 * 6.5 * 166.8 * 0.34), 2.0 * 6.5 / 3.0);
        Assert.All([1e-4, 1e-3, 1e-2, 0.1], hours => Assert.InRange(philip.InfiltratedMm(hours) / soil.PondedMm(hours), 0.995, 1.005));
        Assert.Equal((philip.InfiltratedMm(0.501) - philip.InfiltratedMm(0.499)) / 0.002, philip.RateMmH(0.5), 1e-4);
    }
}
