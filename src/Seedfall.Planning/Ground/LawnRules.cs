using Seedfall.Planning.Ground.Door;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Ground;

/// <summary>Something on a lawn that cannot be right.</summary>
/// <param name="Path">Where, as the lawn file writes it, for example <c>patches[1].livingCover</c>.</param>
/// <param name="Found">What stands there.</param>
/// <param name="Expected">What was expected instead.</param>
public sealed record LawnProblem(string Path, string Found, string Expected);

/// <summary>The door check of a whole lawn; used by <c>seedfall check</c>, the file reader and the form.</summary>
public static class LawnRules
{
    /// <summary>Every problem found, part by part; empty means the lawn may be planned.</summary>
    /// <param name="lawn">The lawn as entered.</param>
    /// <param name="tables">Where given, the rule pack is looked up in it.</param>
    public static IReadOnlyList<LawnProblem> Problems(Lawn lawn, TradeTables? tables = null)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        var found = new Findings();
        PlaceRules.Check(lawn, tables, found);
        PatchRules.Check(lawn.Patches, found);
        SheetRules.Check(lawn, found);
        SoilRules.Check(lawn, found);
        WaterRules.Check(lawn, found);
        MaterialRules.Check(lawn, found);
        SprayRules.Check(lawn, found);
        return found.All;
    }

    /// <summary>What may be meant and yet looks like a slip, as lines worth knowing; nothing is refused for it.</summary>
    /// <param name="lawn">The lawn as entered.</param>
    public static IReadOnlyList<Advice> Remarks(Lawn lawn)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        return [.. HoursRemarks.Of(lawn.Water)];
    }
}
