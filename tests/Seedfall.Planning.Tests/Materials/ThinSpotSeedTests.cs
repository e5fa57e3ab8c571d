using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Tests.Rules;

namespace Seedfall.Planning.Tests.Materials;

public sealed class ThinSpotSeedTests
{
    [Fact]
    public void In_all_a_spot_never_gets_more_than_the_new_lawn_rate_nor_twice_its_patch() =>
        Gen.Select(Gen.Double[0.0, 0.95], Gen.Double[0.0, 0.95], Gen.Double[0.5, 0.67], Gen.Enum<SeedingWork>()).Sample((patchCover, spotCover, overseed, work) =>
        {
            var lawn = Some.Lawn(Some.Patch("front", 5000, patchCover)) with { Work = work };
            var choices = Some.Choices with { OverseedShare = Fraction.Of(overseed) };
            var plan = SeedPlanning.Plan(lawn, choices, Tables.Shipped, Some.Summaries(lawn)).Value!;
            var bare = Some.Lawn(Some.Patch("front", 5000, 0.0)) with { Work = work };
            var newLawn = SeedPlanning.Plan(bare, choices, Tables.Shipped, Some.Summaries(bare)).Value!.Patches[0];

            var spot = ThinSpotSeed.For(lawn, choices, Some.Summaries(lawn)[0], plan.Patches[0], [Spot(spotCover, 400)]);
            var (patchRate, extraRate) = ((plan.Patches[0].Bulk.Value - plan.Patches[0].ThinExtra.Value) / 5000.0, spot.Extra.Value / 400.0);
            Assert.True(extraRate >= 0.0);
            Assert.True(patchRate + extraRate <= newLawn.Bulk.Value / 5000.0 + 1e-12);
            Assert.True(extraRate <= patchRate + 1e-12);
        });

    [Fact]
    public void A_bare_spot_in_half_cover_is_brought_up_to_the_new_lawn_rate()
    {
        var lawn = Some.Lawn(Some.Patch("front", 5000, 0.5));
        var plan = SeedPlanning.Plan(lawn, Some.Choices, Tables.Shipped, Some.Summaries(lawn)).Value!;
        var seed = ThinSpotSeed.For(lawn, Some.Choices, Some.Summaries(lawn)[0], plan.Patches[0], [Spot(0.0, 500), Spot(0.25, 100)]);

        // Half the new-lawn rate lies everywhere, so bare ground takes as much again, and ground with a quarter of its grass half as much: by hand from the rule.
        var perSquareFoot = (plan.Patches[0].Bulk.Value - plan.Patches[0].ThinExtra.Value) / 5000.0;
        Assert.Equal(500.0 * perSquareFoot, seed.Spots[0].Extra.Value, 9);
        Assert.Equal(100.0 * perSquareFoot * 0.5, seed.Spots[1].Extra.Value, 9);
        Assert.Equal(seed.Spots.Sum(s => s.Extra.Value), seed.Extra.Value, 12);
        Assert.Equal(1.2 * seed.Extra.Value, seed.HighExtra.Value, 9);
        Assert.Contains("out of the", seed.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spot_no_thinner_than_its_patch_gets_nothing()
    {
        var lawn = Some.Lawn(Some.Patch("front", 5000, 0.3));
        var plan = SeedPlanning.Plan(lawn, Some.Choices, Tables.Shipped, Some.Summaries(lawn)).Value!;
        var seed = ThinSpotSeed.For(lawn, Some.Choices, Some.Summaries(lawn)[0], plan.Patches[0], [Spot(0.45, 500)]);
        Assert.Equal(0.0, seed.Extra.Value);
        Assert.Contains("no extra seed", seed.Sentence, StringComparison.Ordinal);
    }

    private static FoundThinSpot Spot(double cover, double squareFeet) =>
        new($"spot-{squareFeet:0}", "spot", Area.FromSquareFeet(squareFeet), Area.FromSquareFeet(0.8 * squareFeet), Area.FromSquareFeet(1.2 * squareFeet), Fraction.Of(cover));
}
