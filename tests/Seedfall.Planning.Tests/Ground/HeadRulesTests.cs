using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Sheets;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Planning.Tests.Ground;

public sealed class HeadRulesTests
{
    private static readonly CoverageHead Head = new(new(10, 5), Length.FromMeters(6), FlowRate.FromLitersPerMinute(8), new SprayProfile.Triangular());

    public static TheoryData<string, CoverageHead> Wrong => new()
    {
        { "radius", Head with { Throw = Length.FromMeters(0.4) } },
        { "radius", Head with { Throw = Length.FromMeters(41) } },
        { "flow", Head with { Flow = FlowRate.Zero } },
        { "arc", Head with { ArcDeg = 0 } },
        { "arcFrom", Head with { ArcFromDeg = double.NaN } },
        { "profile", Head with { Profile = new SprayProfile.Leg([2.0]) } },
        { "profile", Head with { Profile = new SprayProfile.Leg([0.0, 0.0]) } },
        { "at", Head with { At = new(27, 5) } },
        { "at", Head with { At = new(10, double.NaN) } },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_no_head_can_be_is_refused_where_it_is(string field, CoverageHead head) =>
        Assert.Equal($"water.sets[0].heads[1].{field}", Assert.Single(LawnRules.Problems(Placed(Head, head))).Path);

    [Fact]
    public void A_head_that_reaches_no_patch_is_named_and_one_beside_the_patch_is_not()
    {
        Assert.Empty(LawnRules.Problems(Placed(Head with { At = new(25.9, 5) })));
        var problem = Assert.Single(LawnRules.Problems(Placed(Head, Head with { At = new(23, 14) }, Head with { At = new(26, 14) })));

        // From (26, 14) to the corner (20, 10): sqrt(36 + 16) = 7.2 m.
        Assert.Equal("head 3 of Corners, 7.2 m off the nearest patch", problem.Found);
    }

    [Fact]
    public void Where_nothing_is_drawn_a_place_says_nothing() =>
        Assert.Empty(LawnRules.Problems(Placed(Head with { At = new(500, 500) }) with { Patches = [Some.Patch("front", 7500)] }));

    [Fact]
    public void Distance_is_to_the_nearest_side_corner_or_none_inside()
    {
        PatchShape.Outline box = new([new(0, 0), new(20, 0), new(20, 10), new(0, 10)], []);
        Assert.Equal(0.0, OutlineDistance.Of(box, new(3, 3)).Meters);
        Assert.Equal(4.0, OutlineDistance.Of(box, new(7, -4)).Meters, 12);
        Assert.Equal(5.0, OutlineDistance.Of(box, new(23, 14)).Meters, 12);
    }

    private static Lawn Placed(params CoverageHead[] heads) =>
        Some.Lawn(Some.Patch("front", 1) with { Shape = new PatchShape.Outline([new(0, 0), new(20, 0), new(20, 10), new(0, 10)], []) }) with
        {
            Sheet = new GroundSheet(),
            Water = new WaterSupply { Sets = [new SprinklerSet { Name = "Corners", PatchIds = ["front"], Heads = heads }] },
        };
}
