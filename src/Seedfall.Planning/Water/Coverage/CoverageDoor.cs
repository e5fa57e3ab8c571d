using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>Refuses heads and outlines that cannot be meant.</summary>
internal static class CoverageDoor
{
    /// <summary>Farthest a lawn head throws, m; a longer throw is a slip of units.</summary>
    private const double MostThrowM = 60.0;

    /// <summary>Throws from the patch at which a head cannot be meant for it.</summary>
    private const double FarOff = 2.0;

    internal static void Check(IReadOnlyList<CoverageHead> heads, CoverageGround ground)
    {
        if (heads.Count == 0)
        {
            throw new ArgumentException("at least one head is needed", nameof(heads));
        }

        foreach (var head in heads)
        {
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(head.Throw.Meters, nameof(heads));
            ArgumentOutOfRangeException.ThrowIfGreaterThan(head.Throw.Meters, MostThrowM, nameof(heads));
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(head.Flow.LitersPerMinute, nameof(heads));
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(head.ArcDeg, nameof(heads));
            ArgumentOutOfRangeException.ThrowIfGreaterThan(head.ArcDeg, 360.0, nameof(heads));
            if (head.Profile is SprayProfile.Leg leg && (leg.Depths.Count < 2 || leg.Depths.Any(d => d < 0.0 || !double.IsFinite(d)) || !(head.Profile.Moment > 0.0)))
            {
                throw new ArgumentException("a leg needs two cans, none below zero, and water beyond the head", nameof(heads));
            }
        }

        if (ground.Patches.Count == 0)
        {
            throw new ArgumentException("at least one patch is needed", nameof(ground));
        }

        foreach (var patch in ground.Patches)
        {
            Ring(patch.Ring, nameof(ground));
        }

        var ring = ground.Corners;
        for (var h = 0; h < heads.Count; h++)
        {
            var reachM = FarOff * heads[h].Throw.Meters;
            if (heads[h].At is var at && (at.EastM < ring.Min(p => p.EastM) - reachM || at.EastM > ring.Max(p => p.EastM) + reachM || at.NorthM < ring.Min(p => p.NorthM) - reachM || at.NorthM > ring.Max(p => p.NorthM) + reachM))
            {
                throw new ArgumentException($"head {h + 1} stands off the lawn", nameof(heads));
            }
        }

        foreach (var feature in ground.Features)
        {
            Ring(feature.Ring, nameof(ground));
        }
    }

    internal static void Ring(IReadOnlyList<GroundPoint> ring, string name)
    {
        if (ring.Count < 3 || RingCrossing.Within(ring) is not null)
        {
            throw new ArgumentException("an outline of three corners that does not cross itself is needed", name);
        }
    }
}
