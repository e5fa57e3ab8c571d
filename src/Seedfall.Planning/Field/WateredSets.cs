using Seedfall.Planning.Ground;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Field;

/// <summary>The sets that water put on the lawn can have come from: those entered, and the one taken to reach the patches none of them wets.</summary>
public static class WateredSets
{
    /// <summary>Names in the order of the lawn, each with the patches it wets.</summary>
    /// <param name="lawn">A lawn whose patches have an area.</param>
    public static IReadOnlyList<(string Name, IReadOnlyList<string> PatchIds)> Of(Lawn lawn)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        var entered = lawn.Water?.Sets ?? [];
        IReadOnlyList<string> dry = [.. lawn.Patches.Select(p => p.Id).Where(id => !entered.Any(s => s.PatchIds.Contains(id)))];
        return
        [
            .. entered.Select(s => (s.Name, s.PatchIds)),
            .. dry.Count == 0 ? [] : DailySet.Of(lawn, PatchGround.Summarize(lawn).Value!, dry[0]).Select(s => (s.Name, dry)),
        ];
    }
}
