using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>The ground water is meant for, and what lies about it.</summary>
/// <param name="Patch">Outline of the patch; its holes are not watered on purpose.</param>
/// <param name="Features">Paving, beds, buildings; where two overlap, the first counts.</param>
public sealed record CoverageGround(PatchShape.Outline Patch, IReadOnlyList<CoverageFeature> Features)
{
    internal const int InPatch = -1;

    internal const int Elsewhere = -2;

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

        return RingCrossing.Contains(Patch.Ring, point) && !Patch.Holes.Any(hole => RingCrossing.Contains(hole, point)) ? InPatch : Elsewhere;
    }
}

/// <summary>Something that is not to be watered.</summary>
/// <param name="Name">As the adviser calls it.</param>
/// <param name="Ring">Its outline.</param>
public sealed record CoverageFeature(string Name, IReadOnlyList<GroundPoint> Ring);
