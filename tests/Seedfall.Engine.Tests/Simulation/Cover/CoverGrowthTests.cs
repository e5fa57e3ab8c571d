using CsCheck;
using Seedfall.Engine.Simulation.Cover;

namespace Seedfall.Engine.Tests.Simulation.Cover;

public sealed class CoverGrowthTests
{
    private static readonly CoverTraits Fescue = new(0.075, Rhizomes: false);

    private static readonly CoverTraits Bluegrass = new(0.05, Rhizomes: true);

    private static readonly GrowthConditions Best = new(1.0, 1.0, 1.0);

    [Fact]
    public void DailyStepsFollowTheLogisticExactly()
    {
        // Logistic of 0.03 to 0.95 at 0.12 a day after 28 days: computed, not outside evidence.
        var cover = 0.03;
        for (var day = 0; day < 28; day++)
        {
            cover += CoverGrowth.Logistic(cover, 0.95, 0.12);
        }

        Assert.Equal(0.46000, cover, 5);
    }

    [Fact]
    public void CoverStaysBetweenNothingAndAllAndTurfNeverShrinks()
    {
        var days = Gen.Select(Gen.Double[-10, 35], Gen.Double[0, 500], Gen.Double[0, 1]).Array[1, 120];
        Gen.Select(Gen.Double[0, 1], Gen.Bool, days).Sample((turf, rhizomes, season) =>
        {
            var growth = new CoverGrowth(turf, rhizomes ? Bluegrass : Fescue, Fescue);
            var before = turf;
            foreach (var (air, emerged, lost) in season)
            {
                growth.Day(air, emerged, lost, Best);
                Assert.InRange(growth.Total, 0.0, 1.0);
                Assert.InRange(growth.Seedlings, 0.0, 1.0 - growth.Turf + 1e-12);
                Assert.True(growth.Turf >= before - 1e-12);
                before = growth.Turf;
            }
        });
    }

    [Fact]
    public void RhizomesCloseGapsThatBunchGrassLeavesOpen()
    {
        var (bunch, creeping) = (new CoverGrowth(0.5, Fescue, Fescue), new CoverGrowth(0.5, Bluegrass, Bluegrass));
        for (var day = 0; day < 400; day++)
        {
            bunch.Day(18.0, 0.0, 0.0, Best);
            creeping.Day(18.0, 0.0, 0.0, Best);
        }

        Assert.InRange(bunch.Total, 0.6, 0.68);
        Assert.True(creeping.Total > 0.95);
    }

    [Fact]
    public void FedAndSunnyGrowsFasterThanHungryShade()
    {
        var (fed, hungry) = (new CoverGrowth(0.3, Fescue, Fescue), new CoverGrowth(0.3, Fescue, Fescue));
        for (var day = 0; day < 30; day++)
        {
            fed.Day(16.0, day == 7 ? 5000.0 : 0.0, 0.0, Best);
            hungry.Day(16.0, day == 7 ? 5000.0 : 0.0, 0.0, new GrowthConditions(0.5, 0.6, 1.0));
        }

        Assert.True(fed.Total > hungry.Total);
    }
}
