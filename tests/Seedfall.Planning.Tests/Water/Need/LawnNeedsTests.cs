using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Soil;
using Seedfall.Planning.Tests.Timing;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Water.Need;

/// <summary>What past seasons of the invented weather ask for on one patch.</summary>
public sealed class LawnNeedsTests
{
    private static readonly DateOnly Down = new(2023, 8, 20);

    private static readonly IReadOnlyList<Phase> Phases = SeasonPhases.Of(Down, 14, Down);

    private static readonly PatchConditions Ground = new() { Texture = SoilTexture.Loam, TurfShare = 0.3, SeedDepthMm = 4.0 };

    [Fact]
    public void TheSeedbedsRoundsKeepWithinTheTradesAndShadeAndStrawAskForNoMore()
    {
        var open = Seedbed(Ground);
        Assert.NotNull(open.Patches[0].Figure);
        Assert.InRange(open.RoundsPerDay, 2, 4);
        Assert.True(open.LeastMm >= SeedbedNeed.LightestRound.Millimeters);
        Assert.True(PerDayMm(Seedbed(Ground with { ShadeShare = 0.7 })) <= PerDayMm(open));
        Assert.True(PerDayMm(Seedbed(Ground with { MulchCover = 0.8, MulchKgM2 = 0.1 })) <= PerDayMm(open));
    }

    [Fact]
    public void NoSimulatedRoundIsDeeperThanASteepClayTakes()
    {
        var steep = Ground with { Texture = SoilTexture.Clay, SlopePercent = 15.0 };
        foreach (var need in Needs(steep, 16).Where(n => n.Patches[0].Figure is not null))
        {
            var phase = NeededPhase.All.First(p => p.Id == need.Phase.Id);
            var bed = new WateredBed(steep, phase.Layer);
            Assert.True(bed.Step(new BedWeather(new double[24], new double[24]), 0, need.LeastMm - 0.01).RunoffMm <= 0.0 || need.LeastMm <= phase.LightestMm);
        }
    }

    [Fact]
    public void TooFewSeasonsLeaveItToTheRulesOfThumb()
    {
        Assert.Contains(Needs(Ground, NeedScene.LeastSeasons), need => need.Patches[0].Figure is not null);
        Assert.All(Needs(Ground, NeedScene.LeastSeasons - 1), need => Assert.Null(need.Patches[0].Figure));
    }

    private static double PerDayMm(PhaseNeed need) => need.LeastMm * need.RoundsPerDay;

    private static PhaseNeed Seedbed(PatchConditions ground) => Needs(ground, 16).First(n => n.Phase.Id == "seedbed");

    private static IReadOnlyList<PhaseNeed> Needs(PatchConditions ground, int seasons)
    {
        var weather = Invented.Weather with { Days = [.. Invented.Weather.Days.Where(d => d.Date.Year >= Down.Year - seasons && d.Date < Down)] };
        return LawnNeeds.Of(NeedScene.Of([new PatchBed("front", "Front", 100.0, ground)], Phases, weather, InventedWeather.North, ground.Texture, 1.0));
    }
}
