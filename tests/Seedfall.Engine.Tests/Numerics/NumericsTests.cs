using CsCheck;
using Seedfall.Engine.Numerics;

namespace Seedfall.Engine.Tests.Numerics;

public sealed class NumericsTests
{
    [Fact]
    public void TridiagonalSolutionSatisfiesItsEquations() => Gen.Double[0.1, 5.0].Array[3, 40].Sample(g =>
    {
        var n = g.Length;
        double[] lower = [.. g.Select(v => -v)];
        double[] upper = [.. g.Reverse().Select(v => -v)];
        double[] diagonal = [.. Enumerable.Range(0, n).Select(i => 1.0 - lower[i] - upper[i])];
        double[] right = [.. g.Select((v, i) => Math.Sin(i) * v)];
        var x = new double[n];
        Tridiagonal.Solve(lower, diagonal, upper, right, x, new double[n]);
        for (var i = 0; i < n; i++)
        {
            var sum = diagonal[i] * x[i] + (i > 0 ? lower[i] * x[i - 1] : 0.0) + (i < n - 1 ? upper[i] * x[i + 1] : 0.0);
            Assert.Equal(right[i], sum, 1e-10);
        }
    });

    [Fact]
    public void TridiagonalRefusesUnequalLengths() => Assert.Throws<ArgumentException>(() =>
        Tridiagonal.Solve(new double[3], new double[3], new double[2], new double[3], new double[3], new double[3]));

    // Reference outputs for seed 1234567, printed beside the public-domain C program of Vigna 2015 and in many ports of it
    // (common practice, no source read).
    [Fact]
    public void SplitMix64GivesItsKnownSequence()
    {
        var generator = new SplitMix64(1234567);
        Assert.Equal(6457827717110365317UL, generator.NextUInt64());
        Assert.Equal(3203168211198807973UL, generator.NextUInt64());
        Assert.Equal(9817491932198370423UL, generator.NextUInt64());
    }

    [Fact]
    public void UniformsFillTheirRange()
    {
        var generator = new SplitMix64(7);
        var counts = new int[5];
        var sum = 0.0;
        for (var i = 0; i < 10_000; i++)
        {
            counts[generator.NextInt(5)]++;
            sum += generator.NextDouble();
        }

        Assert.All(counts, count => Assert.InRange(count, 1850, 2150));
        Assert.InRange(sum / 10_000, 0.49, 0.51);
    }

    // Abramowitz and Stegun 1964, table 26.1 and 26.6.
    [Theory]
    [InlineData(0.0, 0.5)]
    [InlineData(1.0, 0.841344746068543)]
    [InlineData(-1.0, 0.158655253931457)]
    [InlineData(1.96, 0.975002104851780)]
    [InlineData(-3.0, 0.001349898031630)]
    [InlineData(-8.0, 6.22096057427178e-16)]
    public void CumulativeMatchesTheTables(double z, double expected) =>
        Assert.Equal(1.0, NormalDistribution.Cumulative(z) / expected, 1e-11);

    [Fact]
    public void InverseUndoesCumulative() => Gen.Double[-8.0, 5.0].Sample(z =>
        Assert.Equal(z, NormalDistribution.Inverse(NormalDistribution.Cumulative(z)), 1e-9));

    [Theory]
    [InlineData(0.0)]
    [InlineData(1.0)]
    [InlineData(double.NaN)]
    public void InverseRefusesTheEnds(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => NormalDistribution.Inverse(probability));

    [Fact]
    public void DensityIsTheSlopeOfCumulative() => Gen.Double[-4.0, 4.0].Sample(z =>
        Assert.Equal(NormalDistribution.Density(z), (NormalDistribution.Cumulative(z + 1e-5) - NormalDistribution.Cumulative(z - 1e-5)) / 2e-5, 1e-7));
}
