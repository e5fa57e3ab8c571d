using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>The ground water is meant for, and what lies about it.</summary>
/// <param name="Patches">Outlines of the patches, at least one; their holes are not watered on purpose.</param>
/// <param name="Features">Paving, beds, buildings; where two overlap, the first counts.</param>
public sealed record CoverageGround(IReadOnlyList<PatchShape.Outline> Patches, IReadOnlyList<CoverageFeature> Features)
{
    /// <summary>One patch and what lies about it.</summary>
    public CoverageGround(PatchShape.Outline patch, IReadOnlyList<CoverageFeature> features)
        : this([patch], features)
    {
    }

    internal const int InPatch = -1;

    internal const int Elsewhere = -2;

    /// <summary>All corners of the patches' outer rings.</summary>
    internal IReadOnlyList<GroundPoint> Corners => [.. Patches.SelectMany(patch => patch.Ring)];

    /// <summary>Index of the feature a point lies on, <see cref="InPatch"/> or <see cref="Elsewhere"/>.</summary>
    internal int At(GroundPoint point)
    {
        for (var f = 0; f < Features.Count; f++)
        {
            if (RingCrossing.Contains(Features[f].Ring, point))
            {
                return f;
            }
        }

        return Patches.Any(patch => RingCrossing.Contains(patch.Ring, point) && !patch.Holes.Any(hole => RingCrossing.Contains(hole, point))) ? InPatch : Elsewhere;
    }
}

/// <summary>Something that is not to be watered.</summary>
/// <param name="Name">As the adviser calls it.</param>
/// <param name="Ring">Its outline.</param>
public sealed record CoverageFeature(string Name, IReadOnlyList<GroundPoint> Ring);
