using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Ground.Sheets;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>What a set's placed heads lay down over the patches it is meant for, in still air.</summary>
/// <param name="MeanMmh">Mean rate over the patches, all heads together, mm/h; for a moved sprinkler of all its places added up.</param>
/// <param name="LowQuarter">Distribution uniformity of the low quarter.</param>
/// <param name="DrawLpm">What it takes from the tap while it runs: all heads, or the strongest place of a moved one, L/min.</param>
/// <param name="OnTarget">Share of the water that lands on the patches.</param>
/// <param name="Heads">Heads placed.</param>
internal sealed record SetCoverage(double MeanMmh, Fraction LowQuarter, double DrawLpm, double OnTarget, int Heads)
{
    internal const string Source = "heads on the drawn plan, water summed on a 1 ft grid in still air";

    /// <summary>Null where no head is placed, its patches are not drawn, or none of its water lands on them.</summary>
    internal static SetCoverage? Of(SprinklerSet set, Lawn lawn)
    {
        PatchShape.Outline[] drawn = [.. DrawnPatches.Of(lawn).Where(d => set.PatchIds.Contains(d.Patch.Id)).Select(d => d.Outline)];
        if (set.Heads.Count == 0 || drawn.Length == 0 || drawn.Length < set.PatchIds.Distinct().Count())
        {
            return null;
        }

        try
        {
            var result = CoverageMapping.Of(set.Heads, new CoverageGround(drawn, []), SprayWind.Still);
            var lowQuarter = result.Figures.FirstOrDefault(f => f.Id == "water.coverage.low-quarter");
            var away = result.Figures.FirstOrDefault(f => f.Id == "water.coverage.elsewhere")?.Value ?? 0.0;
            return result.MeanRate.MillimetersPerHour <= 0.0 || lowQuarter is null ? null : new SetCoverage(
                result.MeanRate.MillimetersPerHour,
                Fraction.Of(lowQuarter.Value),
                set.Positions > 1 ? set.Heads.Max(h => h.Flow.LitersPerMinute) : set.Heads.Sum(h => h.Flow.LitersPerMinute),
                1.0 - away,
                set.Heads.Count);
        }
        catch (ArgumentException)
        {
            // The map's own door: a plan larger than a map, or a patch smaller than a cell. The set then counts as not placed.
            return null;
        }
    }

    internal Working Rate => new(
        "PR = mean over the patches' cells of the heads' water",
        [new("n", "heads", Heads, ""), new("Q", "drawn while it runs", new FlowRate(DrawLpm).GallonsPerMinute, "gpm"), new("e", "water that lands on the patches", OnTarget, "")],
        Source,
        Sureness.Computed,
        "Wind takes some away: see the coverage page.");

    internal Working Uniformity => new("DU = mean of the driest quarter of cells / mean of all", [new("n", "heads", Heads, "")], Source, Sureness.Computed);
}
