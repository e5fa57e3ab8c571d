using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Planning.Tests.Water.Coverage;

public sealed class CoverageTests
{
    /// <summary>Side of the squares summed over, m.</summary>
    private const double Step = 0.06;

    private static readonly Gen<SprayProfile> AnyProfile = Gen.OneOf<SprayProfile>(
        Gen.Const<SprayProfile>(new SprayProfile.Triangular()), Gen.Const<SprayProfile>(new SprayProfile.Parabolic()), Gen.Const<SprayProfile>(new SprayProfile.Elliptic()), Gen.Const<SprayProfile>(new SprayProfile.Uniform()),
        Gen.Double[0.1, 3.0].Array[2, 8].Select(SprayProfile (depths) => new SprayProfile.Leg(depths)));

    [Fact]
    public void WhatLandsIsWhatLeft() => Gen.Select(AnyProfile, Gen.Double[6.0, 9.0], Gen.Double[60.0, 360.0], Gen.Double[0.0, 360.0], Gen.Double[0.0, 6.0], Gen.Double[0.0, 360.0]).Sample(
        (profile, throwM, arc, from, windMs, windFrom) =>
        {
            var head = Head(0.0, 0.0, throwM, profile) with { ArcDeg = arc, ArcFromDeg = from };
            var pattern = new SprayPattern(head, new SprayWind(Speed.FromMetersPerSecond(windMs), windFrom));
            var landed = 0.0;
            for (var east = -pattern.ReachM + (Step / 2.0); east < pattern.ReachM; east += Step)
            {
                for (var north = -pattern.ReachM + (Step / 2.0); north < pattern.ReachM; north += Step)
                {
                    landed += pattern.RateMmh(new GroundPoint(east, north)) * Step * Step;
                }
            }

            var lost = windMs <= 0.0 ? 0.0 : 0.035 + (0.0175 * Math.Max(0.0, windMs - 2.0));
            Assert.InRange(landed / (600.0 * (1.0 - lost)), 0.98, 1.02);
        },
        iter: 40);

    [Fact]
    public void SharesOfPatchFeaturesAndElsewhereAddUp()
    {
        var ground = new CoverageGround(Square(-5.0, 5.0), [new CoverageFeature("walk", Ring(5.0, -5.0, 7.0, 5.0))]);
        var result = CoverageMapping.Of([Head(4.0, 0.0, 6.0, new SprayProfile.Parabolic())], ground, SprayWind.Still);
        double Value(string id) => result.Figures.Single(f => f.Id == id).Value;
        Assert.InRange(Value("water.coverage.on-patch") + Value("water.coverage.over-1") + Value("water.coverage.elsewhere"), 0.98, 1.02);
        Assert.InRange(Value("water.coverage.over-1"), 0.2, 0.4);
        Assert.True(result.Driest!.Value.EastM < 0.0);
    }

    [Fact]
    public void TwoHalvesTogetherAreTheWhole()
    {
        CoverageHead[] heads = [Head(1.0, 2.0, 6.0, new SprayProfile.Triangular())];
        var whole = CoverageMapping.Of(heads, new CoverageGround(new PatchShape.Outline(Ring(-5.0, -5.0, 5.0, 5.0), []), []), SprayWind.Still);
        var halves = CoverageMapping.Of(heads, new CoverageGround([new(Ring(-5.0, -5.0, 0.0, 5.0), []), new(Ring(0.0, -5.0, 5.0, 5.0), [])], []), SprayWind.Still);
        Assert.Equal(whole.Figures.Select(f => f.Value), halves.Figures.Select(f => f.Value));
    }

    [Fact]
    public void WindMovesWaterDownwind()
    {
        var ground = new CoverageGround(Square(-20.0, 20.0), []);
        double EastOfHead(double windMs)
        {
            var map = CoverageMapping.Of([Head(0.0, 0.0, 8.0, new SprayProfile.Triangular())], ground, new SprayWind(Speed.FromMetersPerSecond(windMs), 270.0)).Map;
            return Enumerable.Range(0, map.RateMmh.Count).Sum(c => map.RateMmh[c] * map.Middle(c).EastM) / map.RateMmh.Sum();
        }

        Assert.InRange(EastOfHead(0.0), -0.05, 0.05);
        Assert.True(EastOfHead(2.0) > 0.3 && EastOfHead(4.0) > EastOfHead(2.0));
    }

    [Fact]
    public void ASquareOfFourHalfThrowsNeedsFourPlacesAndALongStripOneInARow()
    {
        // A uniform disc of radius 5 m covers the square inscribed in it, 7.07 m wide: 14 m by 14 m wants 4, 6 m by 6 m wants 1.
        var sprinkler = new MovedSprinkler(Length.FromMeters(5.2), FlowRate.FromLitersPerMinute(10.0), new SprayProfile.Uniform(), [(0.0, 360.0)]);
        var four = PositionSearch.Of(new CoverageGround(Square(0.0, 14.0), []), sprinkler);
        Assert.Equal((4, 4.0, true), (four.Heads.Count, four.Fewest.Value, four.Proven));
        Assert.Single(PositionSearch.Of(new CoverageGround(Square(0.0, 6.0), []), sprinkler).Heads);
        var strip = PositionSearch.Of(new CoverageGround(new PatchShape.Outline(Ring(0.0, 0.0, 24.0, 4.0), []), []), sprinkler);
        Assert.Equal((3, true), (strip.Heads.Count, strip.Proven));
        Assert.Equal(0.0, strip.Unreached.Value);
    }

    [Fact]
    public void TheFewestSetsAreThoseThatTryingAllFinds() => Gen.Select(Gen.Int[1, 9], Gen.Int[1, 14]).SelectMany((sets, elements) => Gen.Select(Gen.Bool.Array[elements].Array[sets], Gen.Int[0, 1000].Array[sets])).Sample(
        (raw, costs) =>
        {
            int[] coverable = [.. Enumerable.Range(0, raw[0].Length).Where(e => raw.Any(set => set[e]))];
            IReadOnlyList<bool>[] covers = [.. raw.Select(set => (IReadOnlyList<bool>)[.. coverable.Select(e => set[e])])];
            var best = Enumerable.Range(0, 1 << covers.Length)
                .Where(bits => Enumerable.Range(0, coverable.Length).All(e => Enumerable.Range(0, covers.Length).Any(s => (bits >> s & 1) == 1 && covers[s][e])))
                .Min(bits => (Count: System.Numerics.BitOperations.PopCount((uint)bits), Cost: Enumerable.Range(0, covers.Length).Where(s => (bits >> s & 1) == 1).Sum(s => costs[s])));
            var cover = SetCover.Fewest(covers, costs);
            Assert.Equal((best.Count, best.Count), (cover.Chosen.Count, cover.Bound));
            Assert.True(best.Count <= 1 || best.Cost == cover.Chosen.Sum(s => costs[s]));
        },
        iter: 200);

    [Fact]
    public void TheSameGroundGivesTheSamePlaces()
    {
        var ground = new CoverageGround(new PatchShape.Outline([new(0, 0), new(20, 2), new(18, 14), new(9, 9), new(1, 15)], [Ring(8.0, 3.0, 10.0, 5.0)]), [new CoverageFeature("drive", Ring(-4.0, 0.0, -0.5, 15.0))]);
        var sprinkler = new MovedSprinkler(Length.FromMeters(6.0), FlowRate.FromLitersPerMinute(12.0), new SprayProfile.Triangular(), [(0.0, 360.0), (0.0, 180.0)]);
        Assert.Equal(PositionSearch.Of(ground, sprinkler).Heads, PositionSearch.Of(ground, sprinkler).Heads);
    }

    [Fact]
    public void MoreSpreadWantsMoreCansAndATTableIsMet()
    {
        // Student's t, one-sided 0.95: 6.314, 2.920, 2.353, 2.132, 1.812 (10), 1.699 (29); printed tables, common practice, no source read.
        Assert.Equal([6.314, 2.920, 2.353, 2.132, 1.812, 1.699], new[] { 1, 2, 3, 4, 10, 29 }.Select(v => CanPrecision.StudentT(v)), (a, b) => Math.Abs(a - b) < 0.012);
        Assert.True(CanPrecision.CansFor(0.2) < CanPrecision.CansFor(0.5));
        var alike = CanPrecision.Of([.. Enumerable.Repeat(Depth.FromInches(0.3), 8)]);
        Assert.Equal((0.0, 0.0), (Math.Round(alike.HalfWidth!.Value, 12), alike.More!.Value));
        Assert.Null(CanPrecision.Of([Depth.FromInches(0.3)]).HalfWidth);
    }

    [Fact]
    public void WhatCannotBeMeantIsThrownOut()
    {
        var ground = new CoverageGround(Square(0.0, 10.0), []);
        var head = Head(5.0, 5.0, 5.0, new SprayProfile.Uniform());
        CoverageHead[] absurd = [head with { Throw = Length.Zero }, head with { Throw = Length.FromMeters(500.0) }, head with { Flow = FlowRate.Zero }, head with { ArcDeg = 0.0 }, head with { ArcDeg = 400.0 }, head with { Profile = new SprayProfile.Leg([0.0, 0.0]) }, head with { At = new GroundPoint(5000.0, 5.0) }];
        Assert.All(absurd, bad => Assert.ThrowsAny<ArgumentException>(() => CoverageMapping.Of([bad], ground, SprayWind.Still)));
        Assert.ThrowsAny<ArgumentException>(() => CoverageMapping.Of([], ground, SprayWind.Still));
        Assert.ThrowsAny<ArgumentException>(() => CoverageMapping.Of([head], new CoverageGround(new PatchShape.Outline([new(0, 0), new(5, 5), new(5, 0), new(0, 5)], []), []), SprayWind.Still));
    }

    private static CoverageHead Head(double eastM, double northM, double throwM, SprayProfile profile) =>
        new(new GroundPoint(eastM, northM), Length.FromMeters(throwM), FlowRate.FromLitersPerMinute(10.0), profile);

    private static PatchShape.Outline Square(double lowM, double highM) => new(Ring(lowM, lowM, highM, highM), []);

    private static IReadOnlyList<GroundPoint> Ring(double west, double south, double east, double north) => [new(west, south), new(east, south), new(east, north), new(west, north)];
}
