using System.Globalization;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Plan;

/// <summary>Sums over a lawn's patches.</summary>
internal static class GroundTotals
{
    internal static Figure Area(IReadOnlyList<PatchSummary> patches) => new(
        "ground.area",
        "Lawn area",
        QuantityKind.Area,
        patches.Sum(p => p.Area.Value),
        new Working(
            "sum of the patches",
            [.. patches.Select((p, i) => new WorkingInput($"A{i + 1}", p.Name, p.Area.Value, "m2"))],
            "arithmetic on the patch areas",
            Sureness.Computed,
            Range(patches.Sum(p => p.AreaLow.Value), patches.Sum(p => p.AreaHigh.Value))));

    private static string Range(double lowM2, double highM2) => string.Create(
        CultureInfo.InvariantCulture,
        $"Nine times in ten between {new Engine.Units.Area(lowM2).SquareFeet:#,##0} and {new Engine.Units.Area(highM2).SquareFeet:#,##0} sq ft ({lowM2:#,##0} and {highM2:#,##0} m2), even where all patches are off the same way.");
}
