using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;
using Seedfall.Planning.Judgment.Survey;

namespace Seedfall.Planning.Tests.Judgment.Survey;

public sealed class EstimateTests
{
    // Chi-square tables, 5 % and 95 % points: chi2(0.05, 2G) / 2 and chi2(0.95, 2G + 2) / 2, as Garwood 1936 shows.
    [Theory]
    [InlineData(0, 0.0, 2.996)]
    [InlineData(5, 1.970, 10.513)]
    [InlineData(10, 5.425, 16.962)]
    [InlineData(15, 9.246, 23.097)]
    public void ThePoissonRangeIsThatOfTheChiSquareTables(int count, double low, double high)
    {
        var range = PoissonRange.Of(count);
        Assert.Equal(low, range.Low, 0.001);
        Assert.Equal(high, range.High, 0.001);
    }

    [Fact]
    public void TwoThrowsGiveTheirMeanAndTheirSpread()
    {
        var cover = CoverEstimate.Living([new(50, 20), new(50, 30)])!;
        Assert.Equal(0.50, cover.Share, 1e-12);

        // Squares about the mean 0.02, and three throws' worth of 0.5 * 0.5 / 50 + 0.15^2, over 4 degrees of freedom and 2 throws.
        Assert.Equal(Math.Sqrt((0.02 + (3.0 * (0.005 + 0.0225))) / 4.0 / 2.0), cover.StandardError, 1e-12);
        Assert.Equal(100, cover.Points);
        Assert.InRange(cover.Low, 0.0, 0.5);
        Assert.InRange(cover.High, 0.5, 1.0);
        Assert.True(cover.More > 0);
    }

    [Fact]
    public void EqualThrowsAreStillNoSurerThanTheirPoints()
    {
        var cover = CoverEstimate.Living([new(25, 10), new(25, 10), new(25, 10)])!;
        Assert.True(cover.StandardError >= Math.Sqrt(0.4 * 0.6 / 75.0));
    }

    [Fact]
    public void APhotographStandsInForAThrow()
    {
        var cover = CoverEstimate.Living([new(50, 20), new(null, null, null, Fraction.Of(0.6)), new(50, 25)])!;
        Assert.Equal(0.5, cover.Share, 1e-12);
        Assert.Equal(3, cover.Throws);
        Assert.True(cover.High - cover.Low < CoverEstimate.Living([new(50, 25)])!.High - CoverEstimate.Living([new(50, 25)])!.Low);
        Assert.Equal(100, cover.Points);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(25)]
    public void NothingAndEverythingStillHaveARange(int hits)
    {
        var cover = CoverEstimate.Living([.. Enumerable.Repeat(new Quadrat(25, hits), 5)])!;
        Assert.Equal(hits / 25.0, cover.Share, 1e-12);
        Assert.InRange(cover.High - cover.Low, 0.005, 0.15);
    }

    [Fact]
    public void NoThrowIsNoEstimate()
    {
        Assert.Null(CoverEstimate.Living([]));
        Assert.Null(CoverEstimate.Weeds([new(25, 10)]));
        Assert.Null(GrubEstimate.Of(null));
    }

    [Fact]
    public void WeedsAreEstimatedFromTheThrowsThatToldThemApart() =>
        Assert.Equal(0.2, CoverEstimate.Weeds([new(50, 20, 10), new(50, 20)])!.Share, 1e-12);

    /// <summary>
    /// Against made-up ground with a known mean: throws whose own cover varies from place to place, each seen through a grid.
    /// The range is to hold the truth about nine times in ten.
    /// </summary>
    [Theory]
    [InlineData(0.5, 0.15, 8, 25)]
    [InlineData(0.3, 0.20, 5, 50)]
    [InlineData(0.8, 0.10, 10, 25)]
    [InlineData(0.6, 0.00, 4, 25)]
    [InlineData(0.5, 0.20, 2, 25)]
    [InlineData(0.4, 0.22, 10, 25)]
    public void TheRangeHoldsTheTruthNineTimesInTen(double mean, double spread, int throws, int points)
    {
        var random = new SplitMix64(20260901);
        const int trials = 3000;
        var held = 0;
        for (var trial = 0; trial < trials; trial++)
        {
            var cover = CoverEstimate.Living([.. Enumerable.Range(0, throws).Select(_ => Throw(random, mean, spread, points))])!;
            held += cover.Low <= mean && mean <= cover.High ? 1 : 0;
        }

        Assert.InRange(held / (double)trials, 0.87, 1.0);
    }

    [Fact]
    public void TheThrowsAskedForBringTheRangeDown()
    {
        var few = CoverEstimate.Living([new(25, 8), new(25, 14), new(25, 11), new(25, 16)])!;
        Quadrat[] pattern = [new(25, 8), new(25, 14), new(25, 11), new(25, 16)];
        var more = CoverEstimate.Living([.. Enumerable.Range(0, few.Throws + few.More).Select(i => pattern[i % 4])])!;
        Assert.True(few.More > 0);
        Assert.True(more.More <= 1, $"{more.More} more");
        Assert.InRange((more.High - more.Low) / 2.0, 0.03, 0.055);
    }

    [Theory]
    [InlineData(new[] { 0, 1, 0, 0, 1 }, GrubStanding.ClearlyBelow)]
    [InlineData(new[] { 9, 12, 8, 11 }, GrubStanding.ClearlyAbove)]
    [InlineData(new[] { 7 }, GrubStanding.NeedsMore)]
    public void GrubsAreClearOfTheLineOrNeedMoreLifts(int[] counts, GrubStanding expected)
    {
        var grubs = GrubEstimate.Of(new(counts, Area.FromSquareFeet(1.0)))!;
        Assert.Equal(expected, grubs.Standing);
        Assert.Equal(counts.Average(), grubs.PerSquareFoot, 1e-12);
        Assert.Equal(expected == GrubStanding.NeedsMore, grubs.More is null or > 0);
    }

    [Fact]
    public void CoresCountForTheirOwnGround() =>
        Assert.Equal(10.15, GrubEstimate.Of(new([1, 1, 1], Seedfall.Planning.Judgment.GrubCount.CoreArea))!.PerSquareFoot, 0.01);

    [Fact]
    public void ClumpsWidenTheRange()
    {
        var even = GrubEstimate.Of(new([5, 5, 5, 5], Area.FromSquareFeet(1.0)))!;
        var clumped = GrubEstimate.Of(new([0, 20, 0, 0], Area.FromSquareFeet(1.0)))!;
        Assert.Equal(even.PerSquareFoot, clumped.PerSquareFoot, 1e-12);
        Assert.True(clumped.High - clumped.Low > 2.0 * (even.High - even.Low));
    }

    private static Quadrat Throw(SplitMix64 random, double mean, double spread, int points)
    {
        var place = Math.Clamp(mean + (spread * Math.Sqrt(3.0) * ((2.0 * random.NextDouble()) - 1.0)), 0.0, 1.0);
        return new(points, Enumerable.Range(0, points).Count(_ => random.NextDouble() < place));
    }
}
