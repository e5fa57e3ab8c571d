namespace Seedfall.Planning.Ground.Sheets;

/// <summary>Patches whose outlines lie on one common plan.</summary>
public static class DrawnPatches
{
    /// <summary>All outlined patches of a lawn with a sheet; without one, the only outline there is, since several say nothing of each other.</summary>
    public static IReadOnlyList<(Patch Patch, PatchShape.Outline Outline)> Of(Lawn lawn)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        (Patch, PatchShape.Outline)[] drawn = [.. lawn.Patches.Where(p => p.Shape is PatchShape.Outline).Select(p => (p, (PatchShape.Outline)p.Shape))];
        return lawn.Sheet is not null || drawn.Length == 1 ? drawn : [];
    }
}
