using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Water.Coverage;

/// <summary>The figures of a depth map.</summary>
internal static class CoverageFigures
{
    private const string Uniformities = "UC Davis CCUH for the low quarter; Christiansen's coefficient and scheduling coefficient common practice, no source read";

    private const string Overlap = "sum of the heads' profiles at each cell of a 1 ft grid, each scaled so that what lands is what left";

    /// <summary>Below this share of the mean a cell counts as dry. Assumed.</summary>
    private const double DryShare = 0.1;

    internal static CoverageResult Of(DepthMap map, int[] where, CoverageGround ground, double landedLph, SprayWind wind)
    {
        int[] cells = [.. Enumerable.Range(0, where.Length).Where(cell => map.InPatch[cell])];
        if (cells.Length == 0)
        {
            throw new ArgumentException("the patch covers no cell of the 1 ft grid", nameof(ground));
        }

        var cellM2 = map.CellM * map.CellM;
        var meanMmh = cells.Average(cell => map.RateMmh[cell]);
        var sureness = wind.Speed.MetersPerSecond > 0.0 ? Sureness.CommonPractice : Sureness.Computed;
        var note = wind.Speed.MetersPerSecond > 0.0
            ? "Wind shifts and narrows the pattern by coefficients from memory, no source read."
            : "Still air, level heads, full pressure: measured low-quarter uniformity on lawns is mostly 0.5 to 0.7. Set out cans.";
        Working Working(string formula, params WorkingInput[] inputs) => new(formula, [new WorkingInput("n", "cells in the patch", cells.Length, ""), .. inputs], Overlap + "; " + Uniformities, sureness, note);
        var figures = new List<Figure>
        {
            new("water.coverage.rate", "Mean precipitation rate over the patch", QuantityKind.PrecipitationRate, meanMmh, Working("sum(PR) / n")),
            new("water.coverage.dry", "Ground that gets almost nothing", QuantityKind.Share, cells.Count(cell => map.RateMmh[cell] < DryShare * meanMmh) / (double)cells.Length, Working("cells below a tenth of the mean / n")),
            new("water.coverage.on-patch", "Water that lands on the patch", QuantityKind.Share, Math.Min(1.0, meanMmh * cells.Length * cellM2 / landedLph), Working("sum(PR) a / landed", new WorkingInput("a", "area of a cell", cellM2, "m2"), new WorkingInput("landed", "water that lands anywhere", landedLph, "L/h"))),
        };
        GroundPoint? driest = null;
        if (meanMmh > 0.0)
        {
            Depth[] depths = [.. cells.Select(cell => Depth.FromMillimeters(map.RateMmh[cell]))];
            var place = DriestPlace.Of(map);
            driest = place.Middle;
            figures.Add(new("water.coverage.low-quarter", "Distribution uniformity, low quarter", QuantityKind.Share, WaterUniformity.LowQuarter(depths)!.Value, Working("mean of the driest quarter / mean")));
            figures.Add(new("water.coverage.low-half", "Distribution uniformity, low half", QuantityKind.Share, WaterUniformity.LowHalf(depths)!.Value, Working("mean of the drier half / mean")));
            figures.Add(new("water.coverage.christiansen", "Coefficient of uniformity", QuantityKind.Number, WaterUniformity.Christiansen(depths)!.Value, Working("1 - sum|x - mean| / (n mean)")));
            figures.Add(new("water.coverage.driest", "Driest place over the mean", QuantityKind.Share, place.MeanMmh / meanMmh, Working("mean of the driest square of about 5 % of the patch / mean", new WorkingInput("s", "side of the square", place.Side, "cells"))));
            if (place.MeanMmh > 0.0)
            {
                figures.Add(new("water.coverage.scheduling", "Scheduling coefficient", QuantityKind.Number, meanMmh / place.MeanMmh, Working("mean / mean of the driest 5 %")));
            }
        }

        for (var f = 0; f < ground.Features.Count; f++)
        {
            figures.Add(Overspray($"water.coverage.over-{f + 1}", $"Water that lands on {ground.Features[f].Name}", f));
        }

        figures.Add(Overspray("water.coverage.elsewhere", "Water that lands elsewhere", CoverageGround.Elsewhere));
        return new CoverageResult(map, new PrecipitationRate(meanMmh), figures, driest);

        Figure Overspray(string id, string label, int place) => new(id, label, QuantityKind.Share,
            Math.Min(1.0, Enumerable.Range(0, where.Length).Where(cell => where[cell] == place).Sum(cell => map.RateMmh[cell]) * cellM2 / landedLph),
            Working("sum(PR) a / landed", new WorkingInput("a", "area of a cell", cellM2, "m2"), new WorkingInput("landed", "water that lands anywhere", landedLph, "L/h")));
    }
}
