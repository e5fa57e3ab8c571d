using Seedfall.Checks.Published.Trade;
using Seedfall.Engine.Timing;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Timing;

namespace Seedfall.Checks.Published.Timing;

/// <summary>Days to emergence and leaves as the chance curve reckons them.</summary>
public sealed class EmergenceAndLeafChecks
{
    // K-State (Johnson County) and university authors in a turf magazine of 2008: on watered lawns ryegrass is up in 5 to 7 days, tall
    // fescue in about 10, bluegrass in up to 14 to 28. Soil at 68 degF is assumed; a fifth of the days is allowed either way.
    [Theory]
    [InlineData(GrassSpecies.PerennialRyegrass, 5.0, 9.5)]
    [InlineData(GrassSpecies.TallFescue, 8.0, 12.0)]
    [InlineData(GrassSpecies.KentuckyBluegrass, 11.0, 28.0)]
    public void WatchedLawnsComeUpInTheDaysReported(GrassSpecies species, double least, double most) =>
        Assert.InRange(DaysToEmergence(species, 20.0), least, most);

    // Lincoln 1996: half field emergence of unwatered autumn sowings took 15.5 days for ryegrass, 19.4 for tall fescue. Watered seed is
    // sooner, yet never as soon as the laboratory's (Larsen and Bibby 2005). Soil at 57 degF is assumed.
    [Theory]
    [InlineData(GrassSpecies.PerennialRyegrass, 6.1, 15.5)]
    [InlineData(GrassSpecies.TallFescue, 8.0, 19.4)]
    public void BetweenLaboratoryAndUnwateredField(GrassSpecies species, double laboratory, double field) =>
        Assert.InRange(DaysToEmergence(species, 14.0), laboratory, field);

    // Larsen and Bibby 2005 give red fescue less thermal time than ryegrass, against lawn experience (textbook: 7 to 21 days against 5 to
    // 14, common practice, no source read). The curve must not bring it up first.
    [Fact]
    public void FineFescueIsNotUpBeforeRyegrass() => Assert.True(
        DaysToEmergence(GrassSpecies.CreepingRedFescue, 16.0) > DaysToEmergence(GrassSpecies.PerennialRyegrass, 16.0));

    // Bartholomew and Williams, USDA-ARS 127545: a tall fescue leaf each 84 degree-days (base 0 taken): three leaves at 15 degC in 16.8 days.
    [Fact]
    public void ThreeTallFescueLeaves() => Assert.Equal(
        16.8, StandNeed.Of(GrassSpecies.TallFescue, TradeData.Tables).LeavesDegreeDays / 15.0, 0.1);

    // Robson 1973: a leaf per 10.8 days at 10 degC, per 5.2 days at 25 degC, hence 108 and 130 degC d: above the seedlings' 84.
    [Theory]
    [InlineData(10.0, 10.8)]
    [InlineData(25.0, 5.2)]
    public void EstablishedTallFescueIsSlowerPerLeafThanSeedlings(double celsius, double days)
    {
        var perLeaf = days * GrowingDays.DegreeDays(Temperature.FromCelsius(celsius), Temperature.FromCelsius(0.0));
        Assert.InRange(perLeaf, StandNeed.Of(GrassSpecies.TallFescue, TradeData.Tables).LeavesDegreeDays / StandNeed.Leaves, 131.0);
    }

    // Sharifiamina et al. 2016 and Larsen and Bibby 2005: no germination at or below the base temperature.
    [Theory]
    [InlineData(GrassSpecies.TallFescue, 3.5)]
    [InlineData(GrassSpecies.KentuckyBluegrass, 2.6)]
    [InlineData(GrassSpecies.PerennialRyegrass, 3.6)]
    public void NothingComesUpAtTheBaseTemperature(GrassSpecies species, double celsius)
    {
        var season = new SeasonWeather(2001, Filled(celsius), Filled(10.0));
        Assert.Null(new StandDates(StandNeed.Of(species, TradeData.Tables), season).Emerged(0));
    }

    private static double DaysToEmergence(GrassSpecies species, double soilC)
    {
        var season = new SeasonWeather(2001, Filled(soilC), Filled(10.0));
        return new StandDates(StandNeed.Of(species, TradeData.Tables), season).Emerged(0)!.Value + 1;
    }

    private static double[] Filled(double value)
    {
        var days = new double[SeasonCalendar.Length];
        Array.Fill(days, value);
        return days;
    }
}
