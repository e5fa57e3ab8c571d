using Seedfall.Engine.Validation;

namespace Seedfall.Engine.Tests.Validation;

/// <summary>Scores against values worked by hand from their definitions (computed, not outside evidence).</summary>
public sealed class ScoreTests
{
    [Theory]
    [InlineData(0, 1, 0, 0.233695)]
    [InlineData(0, 1, 1, 0.602441)]
    [InlineData(15, 2, 17.5, 1.573968)]
    public void Normal_ranked_probability_score(double mean, double deviation, double observed, double expected) =>
        Assert.Equal(expected, RankedProbabilityScore.Normal(mean, deviation, observed), 1e-6);

    [Fact]
    public void Ensemble_ranked_probability_score()
    {
        Assert.Equal(0.375, RankedProbabilityScore.Ensemble([1, 2, 3, 4], 2.5), 1e-12);
        Assert.Equal(1.0 / 6.0, RankedProbabilityScore.FairEnsemble([1, 2, 3, 4], 2.5), 1e-12);
        Assert.Equal(2.56, RankedProbabilityScore.Ensemble([255, 260, 262, 270, 274], 265), 1e-12);
    }

    [Fact]
    public void A_single_member_scores_its_absolute_error() => Assert.Equal(3.0, RankedProbabilityScore.Ensemble([7], 4), 1e-12);

    [Fact]
    public void Brier_score_and_skill()
    {
        Assert.Equal(0.11 / 3, BrierScore.Of([0.1, 0.7, 0.9], [false, true, true]), 1e-12);
        Assert.Equal(0.75, BrierScore.Skill(0.05, 0.2), 1e-12);
        Assert.Throws<ArgumentException>(() => BrierScore.Of([0.5], []));
    }

    [Fact]
    public void Errors_are_predicted_minus_observed()
    {
        var summary = ErrorSummary.Of([1, 2, 6], [0, 4, 3]);
        Assert.Equal(3, summary.N);
        Assert.Equal(Math.Sqrt(14.0 / 3.0), summary.Rmse, 1e-12);
        Assert.Equal(2.0, summary.Mae, 1e-12);
        Assert.Equal(2.0 / 3.0, summary.Bias, 1e-12);
    }

    [Fact]
    public void Merged_tallies_equal_one_tally()
    {
        var (one, a, b) = (new ErrorTally(), new ErrorTally(), new ErrorTally());
        for (var i = 0; i < 10; i++)
        {
            one.Add(i * i, 3 * i);
            (i % 2 == 0 ? a : b).Add(i * i, 3 * i);
        }

        a.Add(b);
        Assert.Equal(one.Summary()!.Rmse, a.Summary()!.Rmse, 1e-12);
        Assert.Null(new ErrorTally().Summary());
        Assert.Throws<ArgumentOutOfRangeException>(() => one.Add(double.NaN, 1));
    }
}
