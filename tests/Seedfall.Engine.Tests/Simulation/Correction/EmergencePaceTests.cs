using Seedfall.Engine.Simulation.Correction;

namespace Seedfall.Engine.Tests.Simulation.Correction;

/// <summary>The pace of germination from the first green seen; days to green in proportion to the pace, so that answers can be checked.</summary>
public sealed class EmergencePaceTests
{
    private static readonly IReadOnlyList<double?> TenDays = [.. EmergencePace.Grid.Select(m => (double?)(10.0 * m))];

    [Fact]
    public void GreenOnTheDayComputedTeachesNothing()
    {
        var pace = EmergencePace.From([(10.0, TenDays)]);
        Assert.InRange(pace.Multiplier, 0.96, 1.04);
        Assert.True(pace.LogDeviation < EmergencePace.PriorLogDeviation);
        Assert.Equal(10.0, pace.UncorrectedDays[0]!.Value, 9);
    }

    [Fact]
    public void LateGreenSlowsAndEarlyGreenQuickens()
    {
        Assert.InRange(EmergencePace.From([(14.0, TenDays)]).Multiplier, 1.2, 1.4);
        Assert.InRange(EmergencePace.From([(7.0, TenDays)]).Multiplier, 0.7, 0.85);
    }

    [Fact]
    public void TwoPatchesTeachMoreThanOneAndAWildOneIsOutvoted()
    {
        var (one, two) = (EmergencePace.From([(14.0, TenDays)]), EmergencePace.From([(14.0, TenDays), (14.0, TenDays)]));
        Assert.True(two.LogDeviation < one.LogDeviation);
        Assert.True(two.Multiplier > one.Multiplier);
        var withWild = EmergencePace.From([(10.0, TenDays), (10.0, TenDays), (40.0, TenDays)]);
        Assert.InRange(withWild.Multiplier, 0.95, 1.15);
    }

    [Fact]
    public void AGridThatNeverComesUpSpeaksAgainstItself()
    {
        IReadOnlyList<double?> onlyQuick = [.. EmergencePace.Grid.Select(m => m > 1.3 ? null : (double?)(10.0 * m))];
        Assert.True(EmergencePace.From([(12.0, onlyQuick)]).Multiplier < 1.3);
    }

    [Fact]
    public void TheGridIsCenteredOnTheTable()
    {
        Assert.Equal(1.0, EmergencePace.Grid[EmergencePace.Grid.Count / 2], 12);
        Assert.Throws<ArgumentOutOfRangeException>(() => EmergencePace.From([]));
    }
}
