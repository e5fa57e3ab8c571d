using CsCheck;
using Seedfall.Engine.Numerics;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Walks;

namespace Seedfall.Planning.Tests.Ground.Walks;

public sealed class EdgeWalkTests
{
    private static readonly WalkAir Calm = new(1.0, 1.0, 300.0, 2.0, 0.0);
    private static readonly GroundPoint[] Square = [new(0, 0), new(20, 0), new(20, 20), new(0, 20)];

    [Fact]
    public void A_clean_walk_gives_a_simple_outline_of_the_area_stated()
    {
        foreach (var (name, lawn) in SimulatedWalk.Lawns)
        {
            var walk = Walked(SimulatedWalk.Round(lawn, Calm, new SplitMix64(5)));
            Assert.Equal(1.0, walk.Area.SquareMeters / PolygonArea.Of(lawn, []).SquareMeters, 0.08);
            Assert.Equal(walk.Area.SquareMeters, PatchArea.Of(walk.Outline).SquareMeters, 6);
            Assert.Empty(OutlineFaults.Of(walk.Outline));
            Assert.InRange(walk.Outline.Ring.Count, 3, 60);
            Assert.True(Math.Abs(walk.Edge.Meters / RingLength.Of(lawn).Meters - 1.0) < 0.08, name);
            Assert.NotEmpty(walk.Remarks);
        }
    }

    [Fact]
    public void Poor_fixes_and_jumps_are_dropped_and_told()
    {
        var fixes = SimulatedWalk.Round(Square, Calm, new SplitMix64(6));
        var clean = Walked(fixes);
        var plane = new LocalPlane(SimulatedWalk.Town);
        fixes[0] = fixes[0] with { At = plane.ToEarth(new GroundPoint(300, 300)) };
        fixes[20] = fixes[20] with { At = plane.ToEarth(new GroundPoint(-80, 40)) };
        fixes[21] = fixes[21] with { At = plane.ToEarth(new GroundPoint(-81, 40)) };
        fixes[40] = fixes[40] with { AccuracyM = 65.0, At = plane.ToEarth(new GroundPoint(60, 10)) };
        fixes[50] = fixes[50] with { At = new(double.NaN, 0) };
        fixes[55] = fixes[55] with { Time = fixes[10].Time };
        var dirty = Walked(fixes);
        Assert.Equal(1.0, dirty.Area.SquareMeters / clean.Area.SquareMeters, 0.02);
        Assert.Contains(dirty.Remarks, r => r.StartsWith("3 fixes dropped: that jump", StringComparison.Ordinal));
        Assert.Contains(dirty.Remarks, r => r.StartsWith("1 fix dropped: less accurate", StringComparison.Ordinal));
        Assert.Contains(dirty.Remarks, r => r.StartsWith("1 fix dropped: without a usable", StringComparison.Ordinal));
        Assert.Contains(dirty.Remarks, r => r.StartsWith("1 fix dropped: out of order", StringComparison.Ordinal));
    }

    [Fact]
    public void An_offset_common_to_the_walk_changes_neither_area_nor_band()
    {
        var fixes = SimulatedWalk.Round(Square, new(4.0, 0.98, 60.0, 0.0, 0.0), new SplitMix64(8));
        var moved = fixes.ConvertAll(f => f with { At = new(f.At.LatitudeDeg + 2e-4, f.At.LongitudeDeg - 3e-4) });
        var (a, b) = (Walked(fixes, SimulatedWalk.Town), Walked(moved, SimulatedWalk.Town));
        Assert.Equal(a.Area.SquareMeters, b.Area.SquareMeters, 6);
        Assert.Equal(a.Band.Value, b.Band.Value, 9);
        Assert.Equal(-3e-4 * new LocalPlane(SimulatedWalk.Town).EastMPerDeg, b.Outline.Ring[0].EastM - a.Outline.Ring[0].EastM, 6);
    }

    [Fact]
    public void A_walk_that_goes_on_past_its_start_is_cut_there()
    {
        var once = SimulatedWalk.Round(Square, Calm, new SplitMix64(9));
        List<TrackFix> on = [.. once, .. once.Take(8).Select((f, i) => f with { Time = once[^1].Time!.Value.AddSeconds(i + 1) })];
        var walk = Walked(on);
        Assert.Equal(1.0, walk.Area.SquareMeters / Walked(once).Area.SquareMeters, 0.03);
        Assert.Contains(walk.Remarks, r => r.Contains("runs beside its start", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_times_and_accuracies_the_assumptions_are_told()
    {
        var bare = SimulatedWalk.Round(SimulatedWalk.Lawns[4].Ring, Calm, new SplitMix64(10)).ConvertAll(f => f with { Time = null, AccuracyM = null });
        var walk = Walked(bare);
        Assert.Contains(walk.Remarks, r => r.Contains("no times", StringComparison.Ordinal));
        Assert.Contains(walk.Remarks, r => r.Contains("5 m is taken", StringComparison.Ordinal));
        Assert.InRange(walk.Band.Value, 0.05, 0.3);
    }

    [Fact]
    public void What_gives_no_outline_is_refused_with_its_reason()
    {
        var round = SimulatedWalk.Round(Square, Calm, new SplitMix64(12));
        Assert.Equal(WalkFault.TooFewFixes, Refused([]).Fault);
        Assert.Equal(WalkFault.TooFewFixes, Refused(round.Take(5)).Fault);
        var open = Refused(round.Take(round.Count * 2 / 3));
        Assert.Equal(WalkFault.NotClosed, open.Fault);
        Assert.NotEmpty(open.Path);
        Assert.Equal(WalkFault.TooPoor, Refused(round.ConvertAll(f => f with { AccuracyM = 15.0 })).Fault);
        Assert.Equal(WalkFault.OutOfSize, Refused(round.Select((f, i) => f with { Time = null, At = new(43.1 + 0.05 * Math.Sin(i * 0.1), -89.4 + 0.05 * Math.Cos(i * 0.1)) })).Fault);
    }

    [Fact]
    public void A_figure_of_eight_is_refused_with_the_place_it_crosses()
    {
        GroundPoint[] eight = [new(0, 0), new(20, 0), new(20, 10), new(0, 10), new(0, 20), new(20, 20), new(20, 10.5), new(10, 10.5), new(10, -8), new(0, -8)];
        var refused = Refused(SimulatedWalk.Round(eight, Calm with { AccuracyM = 0.5 }, new SplitMix64(13)));
        Assert.Equal(WalkFault.CrossesItself, refused.Fault);
        Assert.NotEmpty(refused.Crossings);
        Assert.True(refused.Path.Count > 10);
        Assert.NotNull(refused.Origin);
    }

    [Fact]
    public void Anything_at_all_is_an_outline_or_a_refusal() =>
        Gen.Select(Gen.Double[-91, 91], Gen.Double[-181, 181], Gen.Double[-5, 40], Gen.Int[-3, 100], Gen.Bool).Array[0, 60].Sample(
            raw =>
            {
                TrackFix[] fixes = [.. raw.Select(r => new TrackFix(
                    r.Item5 ? new(43 + r.Item1 * 1e-6, -89 + r.Item2 * 1e-6) : new(r.Item1, r.Item2), r.Item3 < 0 ? null : r.Item3, r.Item4 < 0 ? null : DateTimeOffset.UnixEpoch.AddSeconds(r.Item4)))];
                if (EdgeWalk.Outline(fixes) is WalkResult.Walked walk)
                {
                    Assert.Empty(OutlineFaults.Of(walk.Outline));
                    Assert.InRange(walk.Band.Value, 0.0, 0.4);
                }
            },
            iter: 3000);

    private static WalkResult.Walked Walked(IReadOnlyList<TrackFix> fixes, GeoPoint? origin = null)
    {
        var result = EdgeWalk.Outline(fixes, origin);
        return Assert.IsType<WalkResult.Walked>(result);
    }

    private static WalkResult.Refused Refused(IEnumerable<TrackFix> fixes) => Assert.IsType<WalkResult.Refused>(EdgeWalk.Outline([.. fixes]));
}
