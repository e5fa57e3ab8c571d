using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Tests.Rules;

namespace Seedfall.Planning.Tests.Materials;

public sealed class SeedPlanningTests
{
    [Fact]
    public void More_area_never_takes_less_seed() => Gen.Select(Gen.Double[100, 20_000], Gen.Double[0, 5000], Gen.Double[0, 1], Gen.Enum<GrassSpecies>()).Sample((area, more, cover, grass) =>
        Assert.True(Bulk(Some.Lawn(Some.Patch("front", area + more, cover, grass))) >= Bulk(Some.Lawn(Some.Patch("front", area, cover, grass)))));

    [Fact]
    public void More_living_cover_never_takes_more_seed() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Sample((a, b) =>
        Assert.True(Bulk(Some.Lawn(Some.Patch("front", 1000, Math.Max(a, b)))) <= Bulk(Some.Lawn(Some.Patch("front", 1000, Math.Min(a, b)))) + 1e-9));

    [Fact]
    public void Thin_spots_never_get_more_than_twice_the_patch_rate_nor_more_than_the_new_lawn_rate() => Gen.Select(Gen.Double[0, 0.999], Gen.Double[0.5, 0.67]).Sample((cover, overseed) =>
    {
        var share = SeedTarget.ShareOfNewRate(cover, overseed, SeedingWork.Overseed);
        // Rate on the bare part in units of the new-lawn rate: the even spread and the whole extra on (1 - cover) of the ground.
        var onBare = share * (1 + SeedTarget.ThinExtra(cover, share) / (1 - cover));
        Assert.True(onBare <= 2 * share + 1e-9);
        Assert.True(onBare <= 1 + 1e-9);
        Assert.InRange(share, overseed - 1e-12, 1);
    });

    [Fact]
    public void Parts_add_up() => Gen.Select(Gen.Double[50, 9000], Gen.Double[50, 9000], Gen.Double[0, 1]).Sample((a, b, cover) =>
    {
        var plan = Plan(Some.Lawn(Some.Patch("front", a, cover, GrassSpecies.TallFescue, GrassSpecies.KentuckyBluegrass), Some.Patch("back", b, 0.3)));
        Assert.Equal(plan.TotalBulk.Value, plan.Patches.Sum(p => p.Bulk.Value), 9);
        Assert.Equal(plan.TotalBulk.Value, plan.Lots.Sum(l => l.Bulk.Value), 9);
        Assert.Equal(plan.TotalBulk.Value, 2 * plan.HalfPass.Value + plan.Patches.Sum(p => p.ThinExtra.Value), 9);
        Assert.Equal(1.0, plan.Mix.Sum(m => m.ShareByWeight.Value), 9);
        Assert.Equal(1.0, plan.Mix.Sum(m => m.ShareByCount.Value), 9);
    });

    [Fact]
    public void A_tag_decides_the_bulk()
    {
        var lawn = Some.Lawn(Some.Patch("front", 1000, 0.0)) with { SeedLots = [Lot("A-1", 0.49, 0.90, GrassSpecies.KentuckyBluegrass)] };
        var plan = Plan(lawn);
        // 1,500 live seeds per sq ft of 1.4 million per lb is 1.0714 lb per 1,000 sq ft, over 44.1 % pure live seed.
        Assert.Equal(1.0714286 / 0.441, Mass.FromKilograms(plan.TotalBulk.Value).Pounds, 5);
        Assert.Equal(0.441, plan.Mix[0].PureLiveSeed.Value, 9);
        Assert.DoesNotContain(SeedPlanning.Plan(lawn, Some.Choices, Tables.Shipped, Some.Summaries(lawn)).Assumptions, a => a.Id.EndsWith(".tag", StringComparison.Ordinal));
    }

    [Fact]
    public void Half_cover_takes_the_overseeding_share_and_the_rest_of_the_full_rate_on_the_bare_half()
    {
        var bare = Plan(Some.Lawn(Some.Patch("front", 1000, 0.0)));
        var half = Plan(Some.Lawn(Some.Patch("front", 1000, 0.5)));
        Assert.Equal(0.75 * bare.TotalBulk.Value, half.TotalBulk.Value, 9);
        Assert.Equal(0.25 * bare.TotalBulk.Value, half.Patches[0].ThinExtra.Value, 9);
        Assert.Equal(0.0, bare.Patches[0].ThinExtra.Value);
    }

    [Fact]
    public void A_new_lawn_takes_the_full_rate_everywhere()
    {
        var plan = Plan(Some.Lawn(Some.Patch("front", 1000, 0.8)) with { Work = SeedingWork.NewEstablishment });
        Assert.Equal(Plan(Some.Lawn(Some.Patch("front", 1000, 0.0))).TotalBulk.Value, plan.TotalBulk.Value, 9);
    }

    [Fact]
    public void A_mixed_bag_is_sown_as_it_comes()
    {
        var lot = new SeedLot
        {
            LotNumber = "MIX",
            Components =
            [
                new(GrassSpecies.KentuckyBluegrass, Fraction.Of(0.60), Fraction.Of(0.80)),
                new(GrassSpecies.PerennialRyegrass, Fraction.Of(0.38), Fraction.Of(0.90)),
            ],
        };
        var plan = Plan(Some.Lawn(Some.Patch("front", 1000, 0.0)) with { SeedLots = [lot] });
        Assert.Equal(0.48 / 0.822, plan.Mix[0].ShareByWeight.Value, 9);
        // Live seeds on the ground stay what was aimed at, whatever the mix.
        var liveKg = plan.TotalBulk.Value * 0.822;
        var seeds = liveKg * (0.48 / 0.822 * SeedCount.PerKilogram(1_400_000) + 0.342 / 0.822 * SeedCount.PerKilogram(240_000));
        Assert.Equal(1500.0, seeds / 1000, 6);
    }

    [Fact]
    public void A_chosen_mix_is_made_from_lots_of_one_kind_by_live_weight()
    {
        var lawn = Some.Lawn(Some.Patch("front", 1000, 0.0)) with
        {
            SeedLots = [Lot("K", 0.95, 0.80, GrassSpecies.KentuckyBluegrass), Lot("P", 0.98, 0.95, GrassSpecies.PerennialRyegrass)],
        };
        var plan = Plan(lawn, Some.Choices with { MixByWeight = new Dictionary<GrassSpecies, double> { [GrassSpecies.KentuckyBluegrass] = 3, [GrassSpecies.PerennialRyegrass] = 1 } });
        Assert.Equal(0.75, plan.Mix[0].ShareByWeight.Value, 9);
        var live = (plan.Lots[0].Bulk.Value * 0.76, plan.Lots[1].Bulk.Value * 0.931);
        Assert.Equal(3.0, live.Item1 / live.Item2, 9);
    }

    [Fact]
    public void A_chosen_mix_leaves_a_mixed_bag_out_and_says_so()
    {
        var mixed = Lot("M", 0.5, 0.9, GrassSpecies.KentuckyBluegrass) with
        {
            Components = [new(GrassSpecies.KentuckyBluegrass, Fraction.Of(0.5), Fraction.Of(0.9)), new(GrassSpecies.TallFescue, Fraction.Of(0.45), Fraction.Of(0.9))],
        };
        var lawn = Some.Lawn() with { SeedLots = [mixed] };
        var section = SeedPlanning.Plan(lawn, Some.Choices with { MixByWeight = new Dictionary<GrassSpecies, double> { [GrassSpecies.TallFescue] = 1 } }, Tables.Shipped, Some.Summaries(lawn));
        Assert.Contains(section.Assumptions, a => a.Id == "assumed.seed.lot.M");
        Assert.Contains(section.Assumptions, a => a.Id == "assumed.seed.tall-fescue.tag");
    }

    [Fact]
    public void Hard_wear_adds_a_tenth_of_ryegrass_to_bluegrass_and_shade_adds_fine_fescue()
    {
        var worn = Plan(Some.Lawn() with { Use = LawnUse.HardWear });
        Assert.Equal(0.10, worn.Mix.Single(m => m.Species == GrassSpecies.PerennialRyegrass).ShareByWeight.Value, 9);
        var shady = Plan(Some.Lawn(Some.Patch("front", 1000) with { SunHours = 4 }));
        Assert.Equal(0.5, shady.Mix.Single(m => m.Species == GrassSpecies.CreepingRedFescue).ShareByWeight.Value, 9);
        Assert.Contains(shady.Advice, a => a.Id == "seed.front.fescue");
        var dark = Plan(Some.Lawn(Some.Patch("front", 1000) with { SunHours = 1.5 }));
        Assert.Contains(dark.Advice, a => a.Id == "seed.front.shade" && a.Statement.Contains("no lawn grass", StringComparison.Ordinal));
    }

    [Fact]
    public void Patches_that_differ_in_grass_or_shade_get_their_own_mix()
    {
        var lawn = Some.Lawn(
            Some.Patch("side", 1000, 0.5, GrassSpecies.KentuckyBluegrass) with { SunHours = 4 },
            Some.Patch("front", 5000, 0.5, GrassSpecies.KentuckyBluegrass),
            Some.Patch("back", 4000, 0.5, GrassSpecies.KentuckyBluegrass));
        var plan = Plan(lawn);
        Assert.Equal(["mix-1", "mix-2"], plan.Mixes.Select(m => m.Id));
        Assert.Equal(["front", "back"], plan.Mixes[0].PatchIds);
        Assert.Equal(["side"], plan.Mixes[1].PatchIds);
        Assert.Single(plan.Mixes[0].Parts);
        Assert.Equal(["side", "front", "back"], plan.Patches.Select(p => p.PatchId));
        Assert.Equal(plan.HalfPass.Value, plan.Mixes.Sum(m => m.HalfPass.Value), 9);
        // The shady patch's fescue is half its live seed, and a small part of the lawn's.
        Assert.Equal(0.5, plan.Mixes[1].Parts.Single(m => m.Species == GrassSpecies.CreepingRedFescue).ShareByWeight.Value, 9);
        Assert.InRange(plan.Mix.Single(m => m.Species == GrassSpecies.CreepingRedFescue).ShareByWeight.Value, 0.01, 0.2);
        Assert.Equal(2, plan.Lots.Count);
    }

    [Fact]
    public void Lots_of_one_kind_in_hand_go_where_each_is_wanted()
    {
        var lawn = Some.Lawn(Some.Patch("front", 5000), Some.Patch("side", 1000) with { SunHours = 4 }) with
        {
            SeedLots = [Lot("K", 0.95, 0.80, GrassSpecies.KentuckyBluegrass), Lot("F", 0.97, 0.85, GrassSpecies.CreepingRedFescue)],
        };
        var plan = Plan(lawn);
        Assert.Equal(2, plan.Mixes.Count);
        Assert.Equal([GrassSpecies.KentuckyBluegrass], plan.Mixes[0].Parts.Select(m => m.Species));
        Assert.Contains(plan.Advice, a => a.Id == "seed.side.fescue");

        // Without the fescue in hand nothing is said to be added.
        var bluegrassOnly = Plan(lawn with { SeedLots = [lawn.SeedLots[0]] });
        Assert.Single(bluegrassOnly.Mixes);
        Assert.DoesNotContain(bluegrassOnly.Advice, a => a.Id == "seed.side.fescue");
        Assert.Contains(bluegrassOnly.Advice, a => a.Id == "seed.side.shade");
    }

    [Fact]
    public void A_need_a_hair_above_a_bag_says_that_the_bag_alone_would_do()
    {
        var lots = new SeedLot { LotNumber = "A", Components = [new(GrassSpecies.KentuckyBluegrass, Fraction.Of(0.95), Fraction.Of(0.85))], Bags = [new(Mass.FromPounds(5), 30m), new(Mass.FromPounds(1), 9m)] };
        var one = Plan(Some.Lawn(Some.Patch("front", 1000)) with { SeedLots = [lots] });
        var squareFeet = 1000 * 5.05 / Mass.FromKilograms(one.TotalBulk.Value).Pounds;
        var plan = Plan(Some.Lawn(Some.Patch("front", squareFeet)) with { SeedLots = [lots] });
        Assert.Equal(39.0, plan.Purchase!.Cost!.Value);
        Assert.Contains(plan.Advice, a => a.Id == "seed.lot.A.slight" && a.Statement.Contains("1 bag of 5 lb", StringComparison.Ordinal));
        Assert.DoesNotContain(one.Advice, a => a.Id == "seed.lot.A.slight");
    }

    [Fact]
    public void An_entered_mix_of_nothing_throws()
    {
        var lawn = Some.Lawn();
        var nothing = Some.Choices with { MixByWeight = new Dictionary<GrassSpecies, double> { [GrassSpecies.TallFescue] = 0 } };
        Assert.Throws<ArgumentException>(() => SeedPlanning.Plan(lawn, nothing, Tables.Shipped, Some.Summaries(lawn)));
        Assert.Equal("choices.mixByWeight", Assert.Single(ChoiceRules.Problems(nothing)).Path);
    }

    [Fact]
    public void Choices_that_cannot_be_are_named()
    {
        Assert.Empty(ChoiceRules.Problems(Some.Choices));
        Assert.Equal("choices.seedDown", Assert.Single(ChoiceRules.Problems(Some.Choices with { SeedDown = new DateOnly(2024, 9, 1) })).Path);
        Assert.Equal("choices.overseedShare", Assert.Single(ChoiceRules.Problems(Some.Choices with { OverseedShare = Fraction.Of(0.9) })).Path);
        Assert.Equal("choices.season", ChoiceRules.Problems(Some.Choices with { Season = 20 })[0].Path);
    }

    [Fact]
    public void Tall_fescue_stays_at_nine_tenths_beside_bluegrass()
    {
        var plan = Plan(Some.Lawn(Some.Patch("front", 1000, 0.5, GrassSpecies.KentuckyBluegrass, GrassSpecies.TallFescue)));
        Assert.Equal(0.9, plan.Mix.Single(m => m.Species == GrassSpecies.TallFescue).ShareByWeight.Value, 9);
    }

    [Fact]
    public void Poor_old_and_poisonous_lots_are_flagged()
    {
        var lot = Lot("OLD", 0.80, 0.60, GrassSpecies.TallFescue) with
        {
            OtherCrop = Fraction.Of(0.02),
            Inert = Fraction.Of(0.17),
            WeedSeed = Fraction.Of(0.01),
            TestDate = new DateOnly(2023, 5, 1),
            Endophyte = true,
        };
        var ids = Plan(Some.Lawn(Some.Patch("front", 1000, 0.5, GrassSpecies.TallFescue)) with { SeedLots = [lot], GrazedOrFed = true }).Advice.Select(a => a.Id).ToList();
        foreach (var what in (string[])["other-crop", "weed", "inert", "germination.tall-fescue", "test", "endophyte"])
        {
            Assert.Contains($"seed.lot.OLD.{what}", ids);
        }
    }

    [Fact]
    public void Lots_with_bags_are_bought_and_the_purchase_covers_the_need()
    {
        var lawn = Some.Lawn() with { SeedLots = [Lot("A", 0.95, 0.85, GrassSpecies.KentuckyBluegrass) with { Bags = [new(Mass.FromPounds(25), 90m), new(Mass.FromPounds(5), 24m)] }] };
        var plan = Plan(lawn);
        Assert.True(plan.Purchase!.Bought.Value >= plan.TotalBulk.Value);
        Assert.NotNull(plan.Purchase.Cost);
    }

    private static SeedPlan Plan(Lawn lawn, Choices? choices = null) => SeedPlanning.Plan(lawn, choices ?? Some.Choices, Tables.Shipped, Some.Summaries(lawn)).Value!;

    private static double Bulk(Lawn lawn) => Plan(lawn).TotalBulk.Value;

    private static SeedLot Lot(string number, double purity, double germination, GrassSpecies species) =>
        new() { LotNumber = number, Components = [new(species, Fraction.Of(purity), Fraction.Of(germination))] };
}
