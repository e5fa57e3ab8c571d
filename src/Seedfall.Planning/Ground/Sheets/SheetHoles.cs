namespace Seedfall.Planning.Ground.Sheets;

/// <summary>A patch outline with what is no grass taken out.</summary>
/// <param name="Outline">The outline, every feature that lies wholly inside it now a hole.</param>
/// <param name="Cut">Names of the features taken out, in the sheet's order.</param>
/// <param name="Crossing">Names of those that lie across its edge or overlap another hole and were left, with a place where they do.</param>
public sealed record CutOutline(PatchShape.Outline Outline, IReadOnlyList<string> Cut, IReadOnlyList<(string Name, GroundPoint At)> Crossing);

/// <summary>Takes the sheet's beds, buildings and paving out of an outline.</summary>
public static class SheetHoles
{
    /// <summary>The outline without the features inside it; nothing is cut that would not leave a sound outline.</summary>
    public static CutOutline Cut(PatchShape.Outline outline, IReadOnlyList<SheetFeature> features)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(features);
        var holes = new List<IReadOnlyList<GroundPoint>>(outline.Holes);
        var cut = new List<string>();
        var crossing = new List<(string, GroundPoint)>();
        foreach (var feature in features)
        {
            if (holes.Prepend(outline.Ring).Select(ring => RingCrossing.Between(ring, feature.Ring)).FirstOrDefault(c => c is not null) is { } meet)
            {
                if (!holes.Any(h => h.SequenceEqual(feature.Ring)))
                {
                    crossing.Add((feature.Name, meet.At));
                }
            }
            else if (RingCrossing.Contains(outline.Ring, feature.Ring[0]) && !holes.Any(h => RingCrossing.Contains(h, feature.Ring[0])))
            {
                holes.RemoveAll(h => RingCrossing.Contains(feature.Ring, h[0]));
                holes.Add(feature.Ring);
                cut.Add(feature.Name);
            }
        }

        return new(outline with { Holes = holes }, cut, crossing);
    }
}
