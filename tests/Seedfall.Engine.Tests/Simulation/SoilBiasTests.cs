using CsCheck;
using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Units;

namespace Seedfall.Engine.Tests.Simulation;

public sealed class SoilBiasTests
{
    private static readonly DateOnly Day = new(2021, 9, 1);
    private static readonly BiasSettings Independent = new(ThermometerC: 0.0);

    [Theory]
    [InlineData(1, 0.6098)]
    [InlineData(2, 0.7576)]
    [InlineData(5, 0.8865)]
    [InlineData(10, 0.9398)]
    public void GainOfIndependentReadings(int count, double gain)
    {
        // Normal shrinkage n / (n + s2 / b2), computed, not outside evidence.
        var bias = SoilBias.From(Enumerable.Repeat((Day, 15.5, 15.0), count), Independent);
        Assert.Equal(0.5 * gain, bias.AtC(Day), 1e-4);
        Assert.Equal(Math.Sqrt(1.0 - gain), bias.DeviationC(Day), 1e-3);
    }

    [Fact]
    public void ManyReadingsOfOneThermometerNeverBuyFullTrust()
    {
        var bias = SoilBias.From(Enumerable.Repeat((Day, 15.5, 15.0), 200));
        Assert.Equal(0.5 * 0.862, bias.AtC(Day), 0.005);
    }

    [Fact]
    public void WhatWasLearnedFadesInTwentyDaysToAThird()
    {
        var bias = SoilBias.From([(Day, 17.0, 16.0)]);
        Assert.Equal(0.0, bias.AtC(Day.AddDays(-1)));
        Assert.Equal(bias.AtC(Day) * Math.Exp(-1.0), bias.AtC(Day.AddDays(20)), 1e-12);
    }

    [Fact]
    public void AWildReadingIsShownAndLeftOut()
    {
        var bias = SoilBias.From([(Day, 15.6, 15.0), (Day.AddDays(2), 30.0, 15.0), (Day.AddDays(4), 15.5, 15.0)]);
        Assert.Equal([true, false, true], bias.Updates.Select(u => u.Used));
        Assert.InRange(bias.AtC(Day.AddDays(4)), 0.2, 0.6);
    }

    [Fact]
    public void ALoneReadingFarOffMovesTheSoilByLessThanTwoDegrees() =>
        Gen.Double[-40, 40].Sample(off => Assert.InRange(Math.Abs(SoilBias.From([(Day, 15.0 + off, 15.0)]).AtC(Day)), 0.0, 2.0));

    [Fact]
    public void TrueOffsetsAreApproachedFromReadings() =>
        Gen.Select(Gen.Double[-1.5, 1.5], Gen.Double[-0.5, 0.5].Array[6]).Sample((offset, noise) =>
        {
            var bias = SoilBias.From(noise.Select((n, i) => (Day.AddDays(i), 15.0 + offset + n, 15.0)));
            Assert.True(Math.Abs(offset - bias.AtC(Day.AddDays(5))) <= (0.45 * Math.Abs(offset)) + 0.5);
        });

    [Theory]
    [InlineData(87.0, "check the unit")]
    [InlineData(-40.0, "soil temperature from")]
    public void ImpossibleReadingsAreRefusedByName(double celsius, string expected)
    {
        var reading = new ProbeReading(Day, 14.0, Depth.FromInches(2.0), Temperature.FromCelsius(celsius));
        Assert.Contains(expected, reading.Problem()!, StringComparison.Ordinal);
    }

    [Fact]
    public void ImpossibleDepthsAndHoursAreRefused()
    {
        Assert.Contains("depth", new ProbeReading(Day, 14.0, Depth.FromMillimeters(900), Temperature.FromCelsius(15)).Problem()!, StringComparison.Ordinal);
        Assert.Contains("hour", new ProbeReading(Day, 25.0, Depth.FromInches(2), Temperature.FromCelsius(15)).Problem()!, StringComparison.Ordinal);
        Assert.Null(new ProbeReading(Day, null, Depth.FromInches(2), Temperature.FromCelsius(15)).Problem());
    }
}
