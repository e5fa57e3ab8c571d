using Seedfall.Planning.Ground.Sheets;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Planning.Ground.Door;

/// <summary>Heads placed on the sheet: figures a head can have, and a place from which it reaches the lawn.</summary>
internal static class HeadRules
{
    private const int MostHeads = 100;
    private const double LeastRadiusM = 0.5;
    private const double MostRadiusM = 40.0;
    private const double MostHeadLitersPerMinute = 400.0;

    internal static void Check(Lawn lawn, SprinklerSet set, string path, Findings found)
    {
        if (set.Heads.Count > MostHeads)
        {
            found.Add($"{path}.heads", $"{set.Heads.Count}", $"at most {MostHeads} heads in one set");
            return;
        }

        PatchShape.Outline[] drawn = [.. DrawnPatches.Of(lawn).Select(d => d.Outline).Where(ShapeRules.Computable)];
        for (var i = 0; i < set.Heads.Count; i++)
        {
            Head(set.Heads[i], $"{path}.heads[{i}]", $"head {i + 1} of {set.Name}", drawn, found);
        }
    }

    private static void Head(CoverageHead head, string path, string name, PatchShape.Outline[] drawn, Findings found)
    {
        found.Range($"{path}.radius", head.Throw.Meters, LeastRadiusM, MostRadiusM, "m");
        found.Above($"{path}.flow", head.Flow.LitersPerMinute, MostHeadLitersPerMinute, "L/min");
        found.Range($"{path}.arcFrom", head.ArcFromDeg, 0.0, 360.0, "degrees");
        found.Above($"{path}.arc", head.ArcDeg, 360.0, "degrees");
        if (head.Profile is SprayProfile.Leg leg && (leg.Depths.Count < 2 || leg.Depths.Any(d => !(d >= 0.0) || !double.IsFinite(d)) || !(leg.Moment > 0.0)))
        {
            found.Add($"{path}.profile", "a leg of cans that holds no pattern", "at least two depths, none below zero, and water beyond the head");
        }

        var awayM = drawn.Length == 0 ? 0.0 : drawn.Min(patch => OutlineDistance.Of(patch, head.At).Meters);
        if (!(awayM <= head.Throw.Meters))
        {
            found.Add($"{path}.at", $"{name}, {Findings.Text(Math.Round(awayM, 1), "m")} off the nearest patch", $"a place within its own radius ({Findings.Text(Math.Round(head.Throw.Meters, 2), "m")}) of a patch");
        }
    }
}
