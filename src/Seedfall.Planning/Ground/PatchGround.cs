using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground.Sheets;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Ground;

/// <summary>The lawn's patches as the plan sees them: ground area and living cover, with what had to be assumed.</summary>
public static class PatchGround
{
    /// <summary>One summary per patch, in the lawn's order. The lawn must have passed <see cref="LawnRules.Problems"/>.</summary>
    public static Section<IReadOnlyList<PatchSummary>> Summarize(Lawn lawn)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        return new([.. lawn.Patches.Select(Summary)], [], [.. lawn.Patches.SelectMany(GroundDefaults.Of), .. GroundDefaults.Measured(lawn.Patches), .. SheetRemarks.Of(lawn)]);
    }

    private static PatchSummary Summary(Patch patch)
    {
        var area = AreaFigure(patch);
        return new(patch.Id, patch.Name, area, CoverFigure(patch))
        {
            AreaLow = Bound(patch, area, -1.0),
            AreaHigh = Bound(patch, area, 1.0),
            Edge = Edge(patch, "edge", "edge", ShapeEdge.Outer(patch.Shape)),
            BedEdge = Edge(patch, "bedEdge", "edge round beds", ShapeEdge.Beds(patch.Shape)),
        };
    }

    private static Figure Bound(Patch patch, Figure area, double side)
    {
        var band = AreaBand.Of(patch.Shape, patch.Measured);
        var (id, word) = side < 0.0 ? ("areaLow", "at the least") : ("areaHigh", "at the most");
        return Worked.Sourced(
            $"ground.{patch.Id}.{id}", $"{patch.Name}: area {word}, nine times in ten", QuantityKind.Area, area.Value * (1.0 + side * band.Value),
            side < 0.0 ? "A (1 - b)" : "A (1 + b)", "error propagation over the lengths taken", AreaBand.Sureness(patch.Measured), AreaBand.Because(patch.Shape, patch.Measured),
            new("A", "area", new Area(area.Value).SquareFeet, "sq ft"), new("b", "half width of the range", band.Percent, "%"));
    }

    private static Figure? Edge(Patch patch, string id, string label, Length? edge) => edge is { } length
        ? Worked.Computed(
            $"ground.{patch.Id}.{id}", $"{patch.Name}: {label}", QuantityKind.Length, length.Meters,
            "sum of the sides", PatchArea.TakenOnPlan(patch.Shape) && patch.SlopePercent > 0.0 ? "On the plan; up and down the slope it is a little longer." : null)
        : null;

    private static Figure AreaFigure(Patch patch)
    {
        var measured = PatchArea.Of(patch.Shape);
        var slopePercent = patch.SlopePercent ?? GroundDefaults.SlopePercent;
        var (formula, inputs, note) = ShapeWorking.Of(patch.Shape);
        if (!PatchArea.TakenOnPlan(patch.Shape))
        {
            return Worked.Computed($"ground.{patch.Id}.area", $"{patch.Name}: area", QuantityKind.Area, measured.SquareMeters, formula, Joined(note, "Measured along the ground: no slope correction."), inputs);
        }

        var ground = measured * SlopeArea.Factor(slopePercent);
        return Worked.Computed(
            $"ground.{patch.Id}.area", $"{patch.Name}: area", QuantityKind.Area, ground.SquareMeters,
            $"{formula}; ground = A sqrt(1 + (s/100)^2)", Joined(note, "Taken as measured on a plan, so the slope adds ground."),
            [.. inputs, new("s", "slope", slopePercent, "%")]);
    }

    private static Figure CoverFigure(Patch patch)
    {
        var entered = patch.LivingCover;
        return new($"ground.{patch.Id}.cover", $"{patch.Name}: living cover", QuantityKind.Share, entered?.Value ?? GroundDefaults.LivingCover, new Working(
            entered is null ? "assumed" : "entered",
            [],
            entered is null ? "nothing was entered" : "judged or measured on the lawn",
            entered is null ? Sureness.Assumed : Sureness.Measured));
    }

    private static string Joined(string? first, string second) => first is null ? second : $"{first} {second}";
}
