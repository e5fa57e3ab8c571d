using Seedfall.Engine.Workings;
using Seedfall.Planning.Judgment.Survey;
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
        var patches = SurveyedPatch.Of(lawn).Patches;
        return new([.. patches.Select(Summary)], [], [.. patches.SelectMany(GroundDefaults.Of)]);
    }

    private static PatchSummary Summary(Patch patch) => new(patch.Id, patch.Name, AreaFigure(patch), CoverFigure(patch));

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
        return new($"ground.{patch.Id}.cover", $"{patch.Name}: living cover", QuantityKind.Share, entered?.Value ?? GroundDefaults.LivingCover, SurveyedPatch.CoverWorking(patch) ?? new Working(
            entered is null ? "assumed" : "entered",
            [],
            entered is null ? "nothing was entered" : "judged or measured on the lawn",
            entered is null ? Sureness.Assumed : Sureness.Measured));
    }

    private static string Joined(string? first, string second) => first is null ? second : $"{first} {second}";
}
