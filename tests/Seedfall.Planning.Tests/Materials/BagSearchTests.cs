using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Tests.Materials;

public sealed class BagSearchTests
{
    private static readonly Gen<BagOffer[]> Priced =
        Gen.Select(Gen.Int[1, 50], Gen.Int[1, 9000]).Select(o => new BagOffer(Mass.FromPounds(o.Item1), o.Item2 / 100m)).Array[1, 4];

    private static readonly Gen<BagOffer[]> Unpriced = Gen.Int[2, 50].Select(o => new BagOffer(Mass.FromPounds(o), null)).Array[1, 4];

    [Fact]
    public void Bags_bought_always_cover_the_need() => Gen.Select(Gen.Double[0.1, 400], Gen.OneOf(Priced, Unpriced)).Sample((needPounds, offers) =>
        Assert.True(Bought(BagSearch.Cheapest(Mass.FromPounds(needPounds), offers), offers) >= needPounds - 1e-4));

    [Fact]
    public void No_other_counts_cost_less() => Gen.Select(Gen.Int[1, 120], Priced).Sample((needPounds, offers) =>
    {
        var best = Cost(BagSearch.Cheapest(Mass.FromPounds(needPounds), offers), offers);
        Assert.Equal(AllCounts(needPounds, offers).Min(c => Cost(c, offers)), best);
    }, iter: 200);

    [Fact]
    public void Without_prices_no_other_counts_leave_less() => Gen.Select(Gen.Int[1, 120], Unpriced).Sample((needPounds, offers) =>
    {
        var bought = Bought(BagSearch.Cheapest(Mass.FromPounds(needPounds), offers), offers);
        Assert.Equal(AllCounts(needPounds, offers).Min(c => Bought(c, offers)), bought, 6);
    }, iter: 200);

    [Fact]
    public void A_big_bag_beats_small_ones_when_it_is_cheaper_though_more_is_left()
    {
        BagOffer[] offers = [new(Mass.FromPounds(50), 100m), new(Mass.FromPounds(10), 40m)];
        Assert.Equal([1, 0], BagSearch.Cheapest(Mass.FromPounds(30), offers));
        Assert.Equal([0, 2], BagSearch.Cheapest(Mass.FromPounds(20), offers));
        Assert.Equal([1, 1], BagSearch.Cheapest(Mass.FromPounds(60), offers));
    }

    [Fact]
    public void Ties_go_to_less_left_over_then_fewer_bags()
    {
        BagOffer[] offers = [new(Mass.FromPounds(25), 50m), new(Mass.FromPounds(50), 100m), new(Mass.FromPounds(60), 100m)];
        Assert.Equal([0, 1, 0], BagSearch.Cheapest(Mass.FromPounds(50), offers));
    }

    [Fact]
    public void Nothing_needed_buys_nothing_and_bad_offers_throw()
    {
        Assert.Equal([0], BagSearch.Cheapest(Mass.Zero, [new(Mass.FromPounds(5), null)]));
        Assert.Throws<ArgumentException>(() => BagSearch.Cheapest(Mass.FromPounds(5), []));
        Assert.Throws<ArgumentException>(() => BagSearch.Cheapest(Mass.FromPounds(5), [new(Mass.Zero, 1m)]));
    }

    [Fact]
    public void A_big_need_over_odd_sizes_is_still_found()
    {
        BagOffer[] offers = [new(Mass.FromPounds(49.9), 121m), new(Mass.FromPounds(25.1), 66m), new(Mass.FromKilograms(10.3), 61m), new(Mass.FromPounds(7.7), 23m)];
        var counts = BagSearch.Cheapest(Mass.FromPounds(3001.7), offers);
        Assert.True(Bought(counts, offers) >= 3001.7);
        Assert.True(Cost(counts, offers) <= 61 * 121m);
    }

    [Fact]
    public void A_price_missing_on_the_bag_comes_from_the_price_by_weight()
    {
        var purchase = BagPurchase.For("test", Mass.FromPounds(30), [new(Mass.FromPounds(25), null), new(Mass.FromPounds(5), 30m)], 3.20m)!;
        Assert.Equal(110.0, purchase.Cost!.Value);
        Assert.Equal(0.0, purchase.LeftOver.Value, 6);
        Assert.Null(BagPurchase.For("test", Mass.FromPounds(30), [new(Mass.FromPounds(25), null)], null)!.Cost);
        Assert.Null(BagPurchase.For("test", Mass.FromPounds(30), [], 3m));
    }

    private static IEnumerable<int[]> AllCounts(double needPounds, BagOffer[] offers, int from = 0)
    {
        if (from == offers.Length)
        {
            if (needPounds <= 1e-6)
            {
                yield return new int[offers.Length];
            }

            yield break;
        }

        var size = offers[from].Size.Pounds;
        for (var count = 0; count <= Math.Max(0, (int)Math.Ceiling(needPounds / size)); count++)
        {
            foreach (var rest in AllCounts(needPounds - count * size, offers, from + 1))
            {
                rest[from] = count;
                yield return rest;
            }
        }
    }

    private static double Bought(IReadOnlyList<int> counts, BagOffer[] offers) => counts.Zip(offers, (c, o) => c * o.Size.Pounds).Sum();

    private static decimal Cost(IReadOnlyList<int> counts, BagOffer[] offers) => counts.Zip(offers, (c, o) => c * o.Price!.Value).Sum();
}
