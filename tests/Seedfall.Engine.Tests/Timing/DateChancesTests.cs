using CsCheck;
using Seedfall.Engine.Timing;

namespace Seedfall.Engine.Tests.Timing;

public sealed class DateChancesTests
{
    private static readonly Gen<(int[] Days, int Seasons)> Ensembles =
        Gen.Select(Gen.Int[-20, 150].Array[0, 30], Gen.Int[1, 8]).Select((days, censored) => (days, days.Length + censored));

    [Fact]
    public void ChanceRisesFromNoneToTheShareReached() => Ensembles.Sample(ensemble =>
    {
        var chances = DateChances.FromDays(ensemble.Days, ensemble.Seasons);
        Assert.Equal(0.0, chances.ChanceBy(-21));
        Assert.Equal((double)ensemble.Days.Length / ensemble.Seasons, chances.ChanceBy(150), 1e-12);
        for (var day = -20; day < 150; day++)
        {
            Assert.True(chances.ChanceBy(day) <= chances.ChanceBy(day + 1));
        }
    });

    [Fact]
    public void QuantileIsTheFirstDayWithThatChance() => Gen.Select(Ensembles, Gen.Double[0.01, 1.0]).Sample((ensemble, share) =>
    {
        var chances = DateChances.FromDays(ensemble.Days, ensemble.Seasons);
        if (chances.Quantile(share) is { } day)
        {
            Assert.True(chances.ChanceBy(day) >= share - 1e-9 && chances.ChanceBy(day - 1) < share);
        }
        else
        {
            Assert.True(chances.ChanceBy(150) < share);
        }
    });

    [Fact]
    public void SeasonsThatNeverReachedItCountAgainstIt()
    {
        var chances = DateChances.FromDays([10, 20, 30], 4);
        Assert.Equal(0.75, chances.ChanceBy(200));
        Assert.Equal(20, chances.Quantile(0.5));
        Assert.Null(chances.Quantile(0.9));
        Assert.Equal(3, chances.SeasonsReached);
    }

    [Fact]
    public void UnknownSeasonsAreLeftOut()
    {
        var season = AutumnSeason.Of(2023, 45);
        var chances = DateChances.From([(season, SeasonDate.On(new DateOnly(2023, 8, 11))), (season, SeasonDate.Unknown), (season, SeasonDate.NotReached)]);
        Assert.Equal(2, chances.Seasons);
        Assert.Equal(0.5, chances.ChanceBy(10));
    }

    [Fact]
    public void NoSeasonsIsRefused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DateChances.FromDays([], 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateChances.FromDays([1, 2], 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => DateChances.FromDays([1], 1).Quantile(0));
    }

    [Fact]
    public void FewSeasonsLeaveDoubtEvenWhereAllAgree()
    {
        Assert.True(DateChances.FromDays([1, 2, 3, 4], 4).StandardError(1.0) > 0.1);
        Assert.True(DateChances.FromDays(Enumerable.Range(0, 40), 40).StandardError(1.0) < 0.05);
    }
}
