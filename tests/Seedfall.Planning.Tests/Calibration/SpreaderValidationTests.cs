using Seedfall.Planning.Calibration.Spreader.Trial;

namespace Seedfall.Planning.Tests.Calibration;

/// <summary>A small run of what docs/validation.md shows in full.</summary>
public sealed class SpreaderValidationTests
{
    private static readonly IReadOnlyList<SpreaderScore> Scores = SpreaderValidation.Score(20, 99);

    [Fact]
    public void From_a_blind_start_it_lands_where_correcting_in_proportion_does_not()
    {
        var (fit, proportion, known) = (All("blind", OpeningWay.Fit), All("blind", OpeningWay.InProportion), All("blind", OpeningWay.KnowsTheCurve));
        Assert.True(fit.Landed >= 0.85, $"landed {fit.Landed}");
        Assert.True(fit.Landed > proportion.Landed + 0.2 && fit.MeanOff < proportion.MeanOff);
        Assert.True(known.Landed >= fit.Landed - 0.05, $"{known.Landed} beside {fit.Landed}: nobody beats the one who knows by much");
    }

    [Fact]
    public void A_known_spreader_is_walked_fewer_times() =>
        Assert.True(All("known", OpeningWay.Fit).Passes < All("blind", OpeningWay.Fit).Passes);

    [Fact]
    public void The_same_seed_gives_the_same_numbers() =>
        Assert.Equal(SpreaderValidation.Score(3, 5), SpreaderValidation.Score(3, 5));

    private static SpreaderScore All(string scene, OpeningWay way) => Scores.Single(s => s.Scene == scene && s.Way == way && s.Family == "all");
}
