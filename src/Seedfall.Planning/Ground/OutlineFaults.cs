namespace Seedfall.Planning.Ground;

/// <summary>What is wrong with an outline.</summary>
public enum OutlineFaultKind
{
    /// <summary>A ring with fewer than three different points.</summary>
    TooFewPoints,

    /// <summary>A ring that crosses or touches itself.</summary>
    CrossesItself,

    /// <summary>A hole whose edge meets the outer edge.</summary>
    HoleMeetsEdge,

    /// <summary>A hole that lies outside.</summary>
    HoleOutside,

    /// <summary>A hole that overlaps another.</summary>
    HolesOverlap,
}

/// <summary>One fault, with the place to show it at.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Ring">0 for the outer ring, 1 for the first hole and so on.</param>
/// <param name="Other">The other ring where two are concerned, else the same.</param>
/// <param name="Side">1-based side of <paramref name="Ring"/>; 0 where no side is concerned.</param>
/// <param name="OtherSide">1-based side of <paramref name="Other"/>; 0 where none is.</param>
/// <param name="At">Where.</param>
public sealed record OutlineFault(OutlineFaultKind Kind, int Ring, int Other, int Side, int OtherSide, GroundPoint At);

/// <summary>Every fault of an outline, so that a page can show where it crosses instead of only refusing it.</summary>
public static class OutlineFaults
{
    /// <summary>All faults, at most about fifty a ring; empty for a sound outline. Coordinates must be finite.</summary>
    public static IReadOnlyList<OutlineFault> Of(PatchShape.Outline outline)
    {
        ArgumentNullException.ThrowIfNull(outline);
        IReadOnlyList<GroundPoint>[] rings = [outline.Ring, .. outline.Holes];
        var faults = new List<OutlineFault>();
        for (var r = 0; r < rings.Length; r++)
        {
            if (rings[r].Distinct().Count() < 3)
            {
                faults.Add(new(OutlineFaultKind.TooFewPoints, r, r, 0, 0, rings[r].FirstOrDefault()));
                continue;
            }

            faults.AddRange(RingCrossings.Within(rings[r]).Select(c => new OutlineFault(OutlineFaultKind.CrossesItself, r, r, c.FirstSide, c.SecondSide, c.At)));
        }

        for (var hole = 1; hole < rings.Length; hole++)
        {
            faults.AddRange(Placed(rings, hole));
        }

        return faults;
    }

    private static IEnumerable<OutlineFault> Placed(IReadOnlyList<GroundPoint>[] rings, int hole)
    {
        if (rings[hole].Count == 0)
        {
            yield break;
        }

        var edge = RingCrossings.Between(rings[hole], rings[0]);
        foreach (var c in edge)
        {
            yield return new(OutlineFaultKind.HoleMeetsEdge, hole, 0, c.FirstSide, c.SecondSide, c.At);
        }

        if (edge.Count == 0 && !RingCrossing.Contains(rings[0], rings[hole][0]))
        {
            yield return new(OutlineFaultKind.HoleOutside, hole, 0, 0, 0, rings[hole][0]);
        }

        for (var other = 1; other < hole; other++)
        {
            if (rings[other].Count == 0)
            {
                continue;
            }

            var meets = RingCrossings.Between(rings[hole], rings[other]);
            foreach (var c in meets)
            {
                yield return new(OutlineFaultKind.HolesOverlap, hole, other, c.FirstSide, c.SecondSide, c.At);
            }

            if (meets.Count == 0 && (RingCrossing.Contains(rings[other], rings[hole][0]) || RingCrossing.Contains(rings[hole], rings[other][0])))
            {
                yield return new(OutlineFaultKind.HolesOverlap, hole, other, 0, 0, rings[hole][0]);
            }
        }
    }
}
