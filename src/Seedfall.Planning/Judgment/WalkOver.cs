using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Judgment;

/// <summary>What the walk-over of a patch left open.</summary>
internal static class WalkOver
{
    /// <summary>One assumption naming everything not looked at; null where all was.</summary>
    internal static Assumption? Missing(Patch patch)
    {
        (bool Missing, string Name, string Taken, string How)[] facts =
        [
            (patch.Thatch is null, "thatch", "at most 1/2 in of thatch", "cut a plug and measure the brown layer"),
            (patch.GrubsPerSquareFoot is null, "grubs", "few grubs", "cut ten cores in August and count (a 4 1/4 in core times 10)"),
            (patch.WeedCover is null, "weeds", "few weeds", "judge the share of weeds by eye"),
            (patch.Dormant is null, "dormancy", "brown turf to be dead", "pull: dead plants come up easily, firm white crowns are alive"),
        ];
        var open = facts.Where(fact => fact.Missing).ToArray();
        return open.Length == 0 ? null : new Assumption(
            $"assumed.{patch.Id}.walk-over",
            $"{patch.Name}: {Join(open.Select(f => f.Name))} not entered; taken are {Join(open.Select(f => f.Taken))}.",
            "The verdict may be wrong: thatch and grubs must be cured first, many weeds or dormant turf change it.",
            $"{char.ToUpperInvariant(open[0].How[0])}{string.Join("; ", open.Select(f => f.How))[1..]}.");
    }

    private static string Join(IEnumerable<string> words)
    {
        var all = words.ToArray();
        return all.Length == 1 ? all[0] : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }
}
